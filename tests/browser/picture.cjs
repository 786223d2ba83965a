/* SPDX-License-Identifier: ISC */
/* Takes the picture of the proof that README.md shows.
 *   node tests/browser/picture.cjs EPISODE PICTURE.png */
"use strict";

const fs = require("node:fs");

const { open, start, stop, write } = require("./browser.cjs");

const MOST = 300000;

const take = async ([episode, picture]) => {
  await start();
  const page = await open(write(episode), { width: 1280 });

  await page.setViewportSize({ width: 1280, height: 760 });
  const butter = page.locator(".ingredients li", { hasText: "butter" }).first();
  await butter.locator("a").click();
  await butter.evaluate((e) => e.closest(".recipe").scrollIntoView());
  await page.locator(".row", { has: page.locator(".words .lit") }).first().evaluate((e) => {
    e.previousElementSibling.scrollIntoView();
  });
  await butter.locator("a").hover();
  await page.screenshot({ path: picture });
  if (fs.statSync(picture).size > MOST) throw new Error(`${picture} is over ${MOST} bytes`);
  await stop();
};

take(process.argv.slice(2)).catch((e) => {
  console.error(e);
  process.exitCode = 1;
});
