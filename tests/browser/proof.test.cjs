/* SPDX-License-Identifier: ISC */
/* The proof in a real browser: it renders, its ties hold both ways, its
 * switches recalculate, it works by keyboard, it prints cards. */
"use strict";

const assert = require("node:assert/strict");
const fs = require("node:fs");
const { after, before, test } = require("node:test");

const { axe_faults, open, start, stop, write } = require("./browser.cjs");

const GALLEY = "examples/galley/episode.txt";

/* Said so plainly that no change of the grammar should read it otherwise. */
const PLAIN = `# Oat bread

[0:05] Serves 4. Heat the oven to 350 degrees Fahrenheit.
[0:20] Add 2 cups of milk, 100 grams of butter and 3 eggs.
[0:40] Add 1 teaspoon of salt. Bake it for 40 minutes.

# Bean soup

[1:00] Add 500 grams of white beans. Simmer it for 1 hour.

# Plum jam

[1:30] Add 1 pound of plums. Boil it for 20 minutes.
`;

before(start);
after(stop);

const opened = async (t, script, options) => {
  const page = await open(write(script), options);
  t.after(async () => {
    assert.deepEqual(page.complaints, []);
    await page.close();
  });
  return page;
};

const texts = (page, selector) => page.locator(selector).allInnerTexts();
const ingredient = (page, item) =>
  page.locator(".ingredients li").filter({ hasText: item }).first();
const SYSTEMS = ["as-said", "metric", "us"];
const TIMES = ["1/2", "1", "3/2", "2", "3", "4"];
const units = (page, system) =>
  page.locator(`.units input[value="${SYSTEMS.indexOf(system)}"]`).check();
const amounts = (recipe, times) => recipe.locator("select").selectOption(`${TIMES.indexOf(times)}`);
const line = async (page, item) => (await ingredient(page, item).innerText()).trim();

test("the page renders its sections", async (t) => {
  const page = await opened(t, GALLEY);

  assert.deepEqual(
    (await texts(page, "h2")).map((s) => s.toLowerCase()),
    ["timeline", "script", "recipes", "queries"],
  );
  assert.ok((await page.locator(".row").count()) > 5);
  assert.ok((await page.locator(".words a").count()) > 40);
  assert.ok((await page.locator(".picture svg .bar").count()) > 2);
  assert.equal(
    await page.locator(".margin .query").count(),
    await page.locator(".queries li").count(),
  );
});

test("the bars of the timeline bear their temperature and place", async (t) => {
  const page = await opened(t, PLAIN);
  const bar = page.locator(".picture a", { hasText: "40 minutes" }).first();

  assert.match(await bar.textContent(), /350 °F · 40 minutes/);
  const box = await bar.locator("rect").boundingBox();
  const picture = await page.locator(".picture > svg").nth(1).boundingBox();
  assert.ok(Math.abs(box.width - picture.width) < 2);
});

test("pointing at an amount lights its words, and back", async (t) => {
  const page = await opened(t, PLAIN);
  const milk = ingredient(page, "milk");

  await milk.locator("a").hover();
  assert.deepEqual(await texts(page, ".words .lit"), ["2 cups", " of milk"].map((s) => s.trim()));
  await page.locator(".words a", { hasText: "100 grams" }).hover();
  assert.match((await texts(page, ".ingredients .lit"))[0], /100 g butter/);
  assert.equal(await page.locator(".ingredients .lit").count(), 1);
  await page.mouse.move(0, 0);
  assert.equal(await page.locator(".lit").count(), 0);
});

test("pointing at a query lights what it is about", async (t) => {
  const page = await opened(t, `${PLAIN}\n[2:00] Boil it for ten to eight minutes.\n`);

  await page.locator(".query.error").first().hover();
  assert.match((await texts(page, ".words .lit")).join(" "), /ten to eight minutes/);
});

test("times, temperatures and bars are tied to their step", async (t) => {
  const page = await opened(t, PLAIN);

  await page.locator(".words a", { hasText: "40 minutes" }).hover();
  assert.match((await texts(page, ".method .lit"))[0], /40 minutes/);
  assert.equal(await page.locator(".picture .lit").count(), 1);
  await page.locator(".words a", { hasText: "350 degrees" }).hover();
  assert.ok((await page.locator(".method .lit").count()) >= 1);
});

test("a click shows the other end and leaves it lit", async (t) => {
  const page = await opened(t, GALLEY);

  await ingredient(page, "butter").locator("a").first().click();
  assert.match(await page.evaluate(() => document.activeElement.textContent), /grams/);
  const place = await page.evaluate(() => {
    const r = document.activeElement.getBoundingClientRect();
    return r.top > 0 && r.bottom < innerHeight;
  });
  assert.ok(place);
  await page.mouse.move(0, 0);
  assert.ok((await page.locator(".words .lit").count()) > 0);
  await page.keyboard.press("Escape");
  assert.equal(await page.locator(".lit").count(), 0);
});

test("a query's number leads to its note and back", async (t) => {
  const page = await opened(t, GALLEY);

  await page.locator(".words .mark").nth(2).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), "n3");
  await page.locator("#n3 .number").click();
  assert.equal(await page.evaluate(() => document.activeElement.id), "m3");
  await page.locator(".queries a").nth(1).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), "n2");
});

test("units are recalculated", async (t) => {
  const page = await opened(t, PLAIN);

  assert.match(await line(page, "butter"), /^100 g butter \(/);
  assert.equal(await line(page, "salt"), "1 tsp salt");
  await units(page, "us");
  assert.match(await line(page, "butter"), /(cup|tbsp).* butter$/);
  assert.match(await line(page, "milk"), /^2 cups milk/);
  assert.match((await texts(page, ".method li"))[0], /350 °F(?!.*°C)/);
  await units(page, "metric");
  assert.equal(await line(page, "plums"), "450 g plums");
  assert.equal(await line(page, "beans"), "500 g white beans");
  assert.match((await texts(page, ".method li"))[0], /180 °C(?!.*°F)/);
  await units(page, "as-said");
  assert.match(await line(page, "butter"), /^100 g butter \(/);
  assert.match((await texts(page, ".method li"))[0], /350 °F \(180 °C\)/);
});

test("servings are recalculated, each dish by itself", async (t) => {
  const page = await opened(t, PLAIN);
  const bread = page.locator(".recipe").first();
  const beans = await line(page, "beans");

  await amounts(bread, "2");
  assert.match(await line(page, "milk"), /^4 cups milk/);
  assert.match(await line(page, "butter"), /^200 g butter/);
  assert.equal(await line(page, "eggs"), "6 eggs");
  assert.equal(await line(page, "salt"), "2 tsp salt");
  assert.equal((await bread.locator(".yield").innerText()).trim(), "Serves 8");
  assert.equal(await line(page, "beans"), beans);
  await amounts(bread, "1/2");
  assert.match(await line(page, "milk"), /^1 cup milk/);
  assert.equal(await line(page, "salt"), "½ tsp salt");
  await amounts(bread, "1");
  assert.match(await line(page, "butter"), /^100 g butter/);
  assert.equal((await bread.locator(".yield").innerText()).trim(), "Serves 4");
});

/* What the switches show is what the program writes with the same options. */
const lines = (page) =>
  page.$$eval(".ingredients li, .method li, .yield", (all) =>
    all.map((li) => {
      const copy = li.cloneNode(true);
      for (const e of copy.querySelectorAll(".at, .mark")) e.remove();
      return copy.textContent.replace(/\s+/g, " ").trim();
    }),
  );

test("the switches show what the program writes", async () => {
  const scripts = fs
    .readdirSync("corpus")
    .filter((f) => /\.(txt|md|vtt|srt)$/.test(f))
    .map((f) => `corpus/${f}`);
  const every = SYSTEMS.flatMap((s) => TIMES.map((t) => [s, t]));
  let compared = 0;

  for (const [i, script] of [GALLEY, PLAIN, ...scripts].entries()) {
    const page = await open(write(script));
    /* All for the first two, then one each in turn. */
    const some = i < 2 ? every : [every[i % every.length]];

    for (const [system, times] of some) {
      await units(page, system);
      for (const recipe of await page.locator(".recipe").all()) await amounts(recipe, times);
      const card = await open(write(script, "card", "--units", system, "--scale", times));
      const want = await lines(card);

      assert.deepEqual(await lines(page), want, `${script}, ${system}, ${times}`);
      compared += want.length;
      await card.close();
    }
    assert.deepEqual(page.complaints, []);
    await page.close();
  }
  assert.ok(compared > 300, `${compared} compared`);
});

test("the page opens in the units that are asked for", async () => {
  const page = await open(write(PLAIN, "html", "--units", "metric", "--servings", "8"));

  assert.equal(await page.locator(".units input:checked").inputValue(), "1");
  assert.match(await line(page, "butter"), /^200 g butter$/);
  await units(page, "as-said");
  assert.match(await line(page, "milk"), /^4 cups milk/);
  await page.close();
});

test("the page is walked by keyboard", async (t) => {
  const page = await opened(t, GALLEY);
  const active = (what) => page.evaluate((w) => document.activeElement[w], what);
  const press = async (...keys) => {
    for (const key of keys) await page.keyboard.press(key);
  };

  await press("Tab");
  assert.equal(await active("textContent"), "Timeline");
  await page.locator(".units input").first().focus();
  await press("ArrowRight");
  assert.equal(await page.locator(".units input:checked").inputValue(), "1");
  await page.locator("#script .words a[tabindex='0']").first().focus();
  const first = await active("textContent");
  assert.ok((await page.locator(".lit").count()) > 1 || first);
  await press("ArrowRight", "ArrowRight");
  assert.notEqual(await active("textContent"), first);
  await press("Home");
  assert.equal(await active("textContent"), first);
  await press("End", "Home");
  /* One stop of the Tab key for all words. */
  assert.equal(await page.locator(".words a[tabindex='0']").count(), 1);
  await press("Enter");
  assert.match(await active("id"), /^r\d+$/);
  await press("Escape");
  assert.ok((await page.locator(".recipe .said").count()) > 10);
  await page.locator(".recipe .said").nth(3).focus();
  assert.ok((await page.locator(".words .lit").count()) > 0);
  await press("Enter");
  assert.match(await active("id"), /^w\d+$/);
});

test("print is one card for each dish and nothing else", async (t) => {
  const page = await opened(t, PLAIN);

  await page.emulateMedia({ media: "print" });
  for (const gone of [".masthead", ".strip", ".timeline", ".script", ".list", ".scale"])
    assert.equal(await page.locator(gone).first().isVisible(), false, gone);
  assert.equal(await page.locator(".recipe").first().isVisible(), true);
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  assert.equal((pdf.match(/\/Type \/Page\b/g) || []).length, 3);
});

for (const width of [360, 1400])
  for (const scheme of ["light", "dark"])
    test(`at ${width} pixels, ${scheme}: it fits, and axe finds no fault`, async (t) => {
      const page = await opened(t, GALLEY, { width, scheme });

      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), width);
      assert.deepEqual(await axe_faults(page), []);
    });

test("an episode without a recipe has a page too", async (t) => {
  const page = await opened(t, "[0:00] Hello there. Nice weather.\n");

  assert.deepEqual(await axe_faults(page), []);
});
