// A slider that moves: what is in sight follows at once, what is out of sight when it rests.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openPage, settled, startBrowser, until } from "./browser.mjs";

let browser;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());

/** What a picture shows. */
const shown = (page, id) => page.evaluate((name) => document.getElementById(name).toDataURL(), id);

test("moved numbers are those that the same values give from the start", async () => {
  const { page, complaints } = await openPage(browser);
  await settled(page);
  const slider = page.locator("#swings input[type=range]").first();
  await slider.scrollIntoViewIfNeeded();
  const old = await shown(page, "panel-co2e");
  const texts = () => page.evaluate(() => ["#numbers tbody", "#moves-now"].map((name) => document.querySelector(name).textContent));
  for (const key of ["End", "ArrowLeft", "ArrowLeft"]) await slider.press(key);
  await until(page, () => document.documentElement.dataset.draws === "under-way", undefined, "it moves");
  await settled(page);
  assert.notEqual(await shown(page, "panel-co2e"), old, "the panel out of sight follows");
  const moved = await texts();
  // Another functional unit and back: everything is made anew, with the same values moved.
  await page.locator("#f-per").selectOption("order");
  await page.locator("#f-per").selectOption("m2");
  await settled(page);
  const anew = await texts();
  assert.deepEqual(anew, moved);
  assert.deepEqual(complaints, []);
});
