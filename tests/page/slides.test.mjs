// A slider that moves: what is in sight follows at once, what is out of sight when it rests.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openPage, settled, startBrowser, until } from "./browser.mjs";

let browser;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());

/** A picture's pixels, in short. */
const pixels = (id) => {
  const canvas = document.getElementById(id);
  const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
  return data.reduce((sum, value, place) => (sum * 31 + value * (place + 1)) % 2_147_483_647, 7);
};

test("moved numbers are those that the same values give from the start", async () => {
  const { page, complaints } = await openPage(browser);
  await settled(page);
  const slider = page.locator("#swings input[type=range]").first();
  await slider.scrollIntoViewIfNeeded();
  const old = await page.evaluate(pixels, "panel-co2e");
  const texts = () => page.evaluate(() => ["#numbers tbody", "#moves-now"].map((name) => document.querySelector(name).textContent));
  for (const key of ["End", "ArrowLeft", "ArrowLeft"]) await slider.press(key);
  await until(page, () => document.documentElement.dataset.draws === "under-way", undefined, "it moves");
  await settled(page);
  assert.notEqual(await page.evaluate(pixels, "panel-co2e"), old, "the panel out of sight follows");
  const moved = await texts();
  // Another functional unit and back: everything is made anew, with the same values moved.
  await page.locator("#f-per").selectOption("order");
  await page.locator("#f-per").selectOption("m2");
  await settled(page);
  const anew = await texts();
  assert.deepEqual(anew, moved);
  assert.deepEqual(complaints, []);
});
