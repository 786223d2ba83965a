/* SPDX-License-Identifier: ISC */
/* Cards and the package's first page; scripts that try to be markup; how fast
 * the proof of a long episode is. */
"use strict";

const assert = require("node:assert/strict");
const fs = require("node:fs");
const path = require("node:path");
const { after, before, test } = require("node:test");

const { axe_faults, folder, open, start, stop, write } = require("./browser.cjs");

const GALLEY = "examples/galley/episode.txt";

before(start);
after(stop);

for (const format of ["card", "index"])
  for (const width of [360, 1400])
    for (const scheme of ["light", "dark"])
      test(`${format} at ${width} pixels, ${scheme}`, async () => {
        const page = await open(write(GALLEY, format), { width, scheme });

        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), width);
        assert.deepEqual(await axe_faults(page), []);
        assert.deepEqual(page.complaints, []);
        await page.close();
      });

test("a card's times lead into the video", async () => {
  const page = await open(write(GALLEY, "card", "--video-url", "https://example.org/v"));
  const links = await page.$$eval(".at a", (all) => all.map((a) => a.href));

  assert.ok(links.length > 5);
  for (const link of links) assert.match(link, /^https:\/\/example\.org\/v#t=\d+$/);
  await page.close();
});

/* ---- scripts that try to be markup ---- */

const EVIL = [
  "<script>window.hacked = 1</script>",
  '"><img src=x onerror="window.hacked=2">',
  "'><svg onload=alert(3)>",
  "</style></title></textarea><script>window.hacked = 4</script>",
  "<!-- --><iframe src=javascript:alert(5)></iframe>",
  "&lt;script&gt;window.hacked = 6&lt;/script&gt;",
  "<a href='javascript:window.hacked=7'>here</a>",
  "]]><script>window.hacked = 8</script>",
];

const evil_scripts = EVIL.flatMap((e) => [
  `# ${e} pie\n\nHOST ${e}: hello\n\n[0:05] Add 2 cups of ${e} flour. ${e}\n` +
    `[0:20] Bake the ${e} pie at 350 for ten to eight minutes ${e}.\n`,
  `WEBVTT ${e}\n\nNOTE ${e}\n\n00:05.000 --> 00:09.000\n<v ${e}>Add 2 cups of ${e} flour.\n\n` +
    `00:10.000 --> 00:19.000\nThis is ${e} pie. Bake it for ten to eight minutes.\n`,
  `1\n00:00:05,000 --> 00:00:09,000\nAdd 2 cups of ${e} flour. Bake the ${e} pie.\n`,
]);

test("markup in a script stays text", async () => {
  for (const script of evil_scripts)
    for (const format of ["html", "card", "index"]) {
      const page = await open(write(script, format));
      const found = await page.evaluate(() => ({
        hacked: window.hacked,
        frames: document.querySelectorAll("iframe, img, object, embed, form, base").length,
        scripts: [...document.scripts].filter((s) => !s.type).length,
        handlers: [...document.querySelectorAll("*")].filter((e) =>
          [...e.attributes].some((a) => a.name.startsWith("on")),
        ).length,
        links: [...document.querySelectorAll("a")].filter((a) =>
          (a.getAttribute("href") || "").trim().toLowerCase().startsWith("javascript"),
        ).length,
      }));

      assert.deepEqual(
        found,
        {
          hacked: undefined,
          frames: 0,
          scripts: format === "html" ? 1 : 0,
          handlers: 0,
          links: 0,
        },
        script,
      );
      assert.deepEqual(page.complaints, []);
      await page.close();
    }
});

/* ---- an hour ---- */

const seconds = (stamp) => stamp.split(":").reduce((s, part) => s * 60 + Number(part), 0);
const stamp = (s) => `[${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}]`;

/* The stamped scripts of the corpus, one after the other, until 60 minutes. */
const hour = () => {
  const scripts = fs
    .readdirSync("corpus")
    .filter((f) => f.endsWith(".txt"))
    .sort()
    .map((f) => fs.readFileSync(path.join("corpus", f), "utf8"));
  const out = [];
  let from = 0, last = 0;

  for (let i = 0; last < 3600; i++, from = last + 20)
    for (const line of scripts[i % scripts.length].split("\n")) {
      const at = /^\[((?:\d+:)?\d+:\d\d)\]/.exec(line);

      if (at) last = Math.max(last, from + seconds(at[1]));
      out.push(at ? stamp(from + seconds(at[1])) + line.slice(at[0].length) : line);
    }
  return out.join("\n");
};

test("the proof of an hour is small and soon ready", async (t) => {
  const script = path.join(folder, "hour.txt");

  fs.writeFileSync(script, hour());
  const file = write(script);
  const { size } = fs.statSync(file);
  const times = [];

  for (let i = 0; i < 3; i++) {
    const page = await open(file);
    /* The page's script sets data-ready at its end; a frame later it shows. */
    times.push(
      await page.evaluate(
        () =>
          new Promise((done) =>
            requestAnimationFrame(() =>
              setTimeout(() =>
                done(document.documentElement.dataset.ready === "" && performance.now()),
              ),
            ),
          ),
      ),
    );
    assert.deepEqual(page.complaints, []);
    await page.close();
  }
  const best = Math.min(...times);
  t.diagnostic(`${(size / 1024).toFixed(0)} KiB, ready after ${best.toFixed(0)} ms`);
  assert.ok(size < 1.5e6, `${size} bytes`);
  assert.ok(best > 0 && best < 1000, `${times} ms`);
});
