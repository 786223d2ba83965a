/* SPDX-License-Identifier: ISC */
/* What tamis writes, read by readers that others made: an HTML checker, a
 * JSON-LD processor, the vocabulary of schema.org as types, a WebVTT parser, a
 * CSV parser. For every script of the tree, and for one that tries to be
 * markup in each of them. */
"use strict";

const assert = require("node:assert/strict");
const { execFileSync } = require("node:child_process");
const fs = require("node:fs");
const { createRequire } = require("node:module");
const path = require("node:path");
const { test } = require("node:test");

/* tests/npm.sh says where the packages are. */
const need = createRequire(process.env.MODULES);
const TAMIS = path.resolve(process.env.B || "build", "tamis");

const EVIL = `# =2+2 </script><b> "pie", 'tart' & --> & 10

@HOST: hello --> there

[0:00] Hello there, everybody, and welcome.
[0:15] Serves 4. Add 2 cups of =SUM(A1) <i>flour</i> --> and "100 grams", of butter.
[0:40] Bake it at 350 F for ten minutes </script><script>x()</script> until golden.
[1:30] And that is it --> bye.
`;

const files = (folder, pattern) =>
  fs.readdirSync(folder).filter((f) => pattern.test(f)).map((f) => path.join(folder, f));
const folders = (folder) =>
  files(folder, /^/).filter((f) => fs.statSync(f).isDirectory());

const scripts = [
  ...files("corpus", /\.(txt|md|vtt|srt)$/),
  ...folders("examples").flatMap((f) => files(f, /^episode\.(txt|md|vtt|srt)$/)),
  ...folders("tests/cases").flatMap((f) => files(f, /^input\./)),
];

/* The text in a format, of a file or of EVIL. */
const write = (format, script, ...options) =>
  execFileSync(TAMIS, ["write", "--format", format, ...options, script || "-"], {
    input: script ? "" : EVIL,
    encoding: "utf8",
    stdio: ["pipe", "pipe", "inherit"],
    maxBuffer: 1 << 28,
  });

const every = [...scripts, null];
const video = ["--video-url", "https://example.org/watch?a=1&b=2"];

/* ---- HTML ---- */

const { HtmlValidate } = need("html-validate");

const checker = new HtmlValidate({
  root: true,
  extends: ["html-validate:standard"],
  elements: ["html5"],
  rules: { "long-title": "off", "require-sri": "off" },
});

test("the checker sees faults", async () => {
  const broken = '<!DOCTYPE html>\n<html lang="en"><head><title>x</title></head><body><p id="a"><div id="a"></p></body></html>';

  assert.equal((await checker.validateString(broken)).valid, false);
});

for (const format of ["html", "card", "index"])
  test(`${format} is valid HTML`, async () => {
    for (const script of every) {
      const report = await checker.validateString(write(format, script, ...video));
      const faults = report.results.flatMap((r) =>
        r.messages.map((m) => `${script}:${m.line}:${m.column}: ${m.ruleId}: ${m.message}`),
      );

      assert.deepEqual(faults, []);
    }
  });

/* ---- JSON-LD ---- */

const jsonld = need("jsonld");

/* schema.org's context maps every term of its vocabulary to itself. */
const loader = async (url) => {
  assert.equal(url, "https://schema.org");
  return {
    contextUrl: null,
    documentUrl: url,
    document: { "@context": { "@vocab": "https://schema.org/" } },
  };
};

/* Every value with its property, in one list. */
const plain_values = (v, key, out = []) => {
  if (Array.isArray(v)) for (const one of v) plain_values(one, key, out);
  else if (v && typeof v === "object")
    for (const [k, one] of Object.entries(v)) {
      if (k !== "@context") plain_values(one, k, out);
    }
  else out.push(`${key}=${v}`);
  return out;
};

const SCHEMA = "https://schema.org/";
const bare = (s) => String(s).replace(SCHEMA, "");

const expanded_values = (v, key, out = []) => {
  if (Array.isArray(v)) for (const one of v) expanded_values(one, key, out);
  else if (v && typeof v === "object") {
    if ("@value" in v) out.push(`${key}=${v["@value"]}`);
    else
      for (const [k, one] of Object.entries(v))
        expanded_values(one, bare(k), out);
  } else out.push(`${key}=${key === "@type" ? bare(v) : v}`);
  return out;
};

test("jsonld is expanded without loss", async () => {
  for (const script of every)
    for (const options of [[], video]) {
      const blocks = JSON.parse(write("jsonld", script, ...options));

      for (const block of blocks) {
        const expanded = await jsonld.expand(block, { documentLoader: loader });

        assert.equal(block["@context"], "https://schema.org");
        assert.deepEqual(expanded_values(expanded).sort(), plain_values(block).sort());
      }
    }
});

test("jsonld is Recipe as schema.org has it", () => {
  const ts = need("typescript");
  const file = path.join(process.env.MODULES, "recipes.ts");
  const blocks = every.flatMap((s) => JSON.parse(write("jsonld", s, ...video)));
  const source =
    'import type { Recipe, WithContext } from "schema-dts";\n' +
    "// @ts-expect-error: the checker sees what is no property\n" +
    'export const no: WithContext<Recipe> = { "@context": "https://schema.org", "@type": "Recipe", "oven": 1 };\n' +
    blocks.map((b, i) => `export const r${i}: WithContext<Recipe> = ${JSON.stringify(b)};\n`).join("");

  fs.writeFileSync(file, source);
  const program = ts.createProgram([file], {
    noEmit: true,
    strict: true,
    skipLibCheck: true,
    moduleResolution: ts.ModuleResolutionKind.Node10,
    types: [],
  });
  const faults = ts
    .getPreEmitDiagnostics(program)
    .map((d) => ts.flattenDiagnosticMessageText(d.messageText, "\n"));

  assert.deepEqual(faults, []);
  assert.ok(blocks.length > 20);
});

test("a card carries the same data", () => {
  for (const script of every) {
    const card = write("card", script, ...video);
    const found = [...card.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs)];

    assert.deepEqual(
      found.map((m) => JSON.parse(m[1])),
      JSON.parse(write("jsonld", script, ...video)),
    );
  }
});

/* ---- WebVTT ---- */

const { WebVTTParser } = need("webvtt-parser");

test("chapters are WebVTT", () => {
  for (const script of every) {
    const { cues, errors } = new WebVTTParser().parse(write("chapters", script), "chapters");

    assert.deepEqual(errors, [], script);
    if (cues.length) assert.equal(cues[0].startTime, 0);
    cues.forEach((c, i) => {
      assert.ok(c.endTime - c.startTime >= 10, `${script}: ${c.text}`);
      if (i > 0) assert.equal(c.startTime, cues[i - 1].endTime);
      assert.ok(c.text.trim());
    });
  }
});

test("the description's chapters rise from 0:00", () => {
  const seconds = (s) => s.split(":").reduce((a, b) => a * 60 + Number(b), 0);

  for (const script of every) {
    const text = write("description", script);
    const [, list] = /^Chapters\n((?:\d+:.*\n)+)/m.exec(text) || [];

    if (!list) continue;
    const times = list.trim().split("\n").map((l) => seconds(l.split(" ")[0]));
    assert.equal(times[0], 0);
    assert.ok(times.length >= 3);
    for (let i = 1; i < times.length; i++) assert.ok(times[i] - times[i - 1] >= 9, script);
  }
});

/* ---- CSV ---- */

const papa = need("papaparse");

test("the shopping list is CSV without formulas", () => {
  for (const script of every) {
    const text = write("shopping-csv", script);
    const { data, errors, meta } = papa.parse(text, { skipEmptyLines: false, newline: "\r\n" });

    assert.deepEqual(errors, []);
    assert.equal(meta.linebreak, "\r\n");
    assert.deepEqual(data.pop(), [""]);
    for (const row of data) {
      assert.equal(row.length, 8, script);
      for (const cell of row) assert.doesNotMatch(cell, /^[=+\-@\t\r|]/);
    }
    assert.equal(papa.unparse(data, { newline: "\r\n" }) + "\r\n", text);
  }
});
