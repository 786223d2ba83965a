/* SPDX-License-Identifier: ISC */
/* What the browser tests share: the program, pages made with it, Chromium. */
"use strict";

const { execFileSync } = require("node:child_process");
const fs = require("node:fs");
const { createRequire } = require("node:module");
const os = require("node:os");
const path = require("node:path");

/* tests/npm.sh says where the packages are. */
const need = createRequire(process.env.MODULES);
const { chromium } = need("playwright-core");

const TAMIS = path.resolve(process.env.B || "build", "tamis");
const folder = fs.mkdtempSync(path.join(os.tmpdir(), "tamis-browser-"));

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--no-first-run",
  "--disable-lcd-text",
];

/* With a user data folder of its own; closed by stop(). */
let context;

const start = async () => {
  context = await chromium.launchPersistentContext(path.join(folder, "user"), {
    executablePath: process.env.CHROMIUM || "/usr/bin/chromium",
    args: quiet,
    viewport: { width: 1400, height: 1000 },
  });
  return context;
};

const stop = async () => {
  if (context) await context.close();
  fs.rmSync(folder, { recursive: true, force: true });
};

let made = 0;

/* The page of a script (its path, or its text), as a file. */
const write = (script, format = "html", ...options) => {
  const given = fs.existsSync(script);
  const file = path.join(folder, `${++made}.html`);
  const input = given ? undefined : script;

  execFileSync(
    TAMIS,
    ["write", "--format", format, "--output", file, ...options, given ? script : "-"],
    { input, stdio: ["pipe", "inherit", "inherit"] },
  );
  return file;
};

/* Opens a file; fails on whatever the page complains of or asks for. */
const open = async (file, { width = 1400, scheme = "light" } = {}) => {
  const page = await context.newPage();
  const complaints = [];

  page.on("console", (m) => complaints.push(m.text()));
  page.on("pageerror", (e) => complaints.push(String(e)));
  page.on("request", (r) => {
    if (!r.url().startsWith("file:")) complaints.push(`asks for ${r.url()}`);
  });
  page.on("dialog", (d) => {
    complaints.push(`dialog: ${d.message()}`);
    d.dismiss();
  });
  page.complaints = complaints;
  await page.setViewportSize({ width, height: width < 500 ? 800 : 1000 });
  await page.emulateMedia({ colorScheme: scheme, reducedMotion: "reduce" });
  await page.goto(`file://${file}`);
  return page;
};

/* Serious and critical faults, one line each. */
const axe_source = () => fs.readFileSync(need.resolve("axe-core/axe.min.js"), "utf8");
const axe_faults = async (page) => {
  await page.evaluate(axe_source());
  const { violations } = await page.evaluate(() =>
    window.axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    }),
  );
  return violations
    .filter((v) => v.impact === "serious" || v.impact === "critical")
    .flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target} ${n.failureSummary}`));
};

module.exports = { start, stop, write, open, axe_faults, folder };
