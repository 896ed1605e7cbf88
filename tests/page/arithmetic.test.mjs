// A number opens its arithmetic: how it was computed, from which source, of which grade.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
let page;
beforeEach(async () => { ({ page } = await visit()); });

const open = () => until(page, () => document.querySelector("#explain").checkVisibility());
const closed = () => until(page, () => !document.querySelector("#explain").checkVisibility());
const number = () => page.locator("[data-explain]:visible").first();

function speaksOfEvidence(words) {
  assert.match(words, /source/i, "names its source");
  assert.match(words, /grade:?\s*\(?(A|B|C|D|own)\b/i, "says the grade");
  assert.match(words, /\d/, "shows numbers");
}

test("a click opens the arithmetic, Esc closes it", async () => {
  await number().click();
  await open();
  speaksOfEvidence(await wordsOf(page, "#explain"));
  await page.keyboard.press("Escape");
  await closed();
});

test("the keyboard opens and closes it, and comes back to the number", async () => {
  for (const key of ["Enter", "Space"]) {
    await number().focus();
    await page.keyboard.press(key);
    await open();
    speaksOfEvidence(await wordsOf(page, "#explain"));
    const inside = await page.evaluate(() =>
      document.querySelector("#explain").contains(document.activeElement),
    );
    assert.ok(inside, `${key}: focus goes into the arithmetic`);
    await page.keyboard.press("Escape");
    await closed();
    const back = await number().evaluate((button) => button === document.activeElement);
    assert.ok(back, `${key}: focus comes back to the number`);
  }
});

test("every number has arithmetic of its own", async () => {
  const count = await page.locator("[data-explain]:visible").count();
  assert.ok(count >= 10, `numbers that open: ${count}`);
  const seen = new Map();
  for (let place = 0; place < count; place += 1) {
    const button = page.locator("[data-explain]:visible").nth(place);
    const key = await button.getAttribute("data-explain");
    await button.evaluate((part) => part.click());
    await open();
    const words = await wordsOf(page, "#explain");
    assert.match(words, /\d/, `${key} shows numbers`);
    seen.set(key, words);
    await page.keyboard.press("Escape");
    await closed();
  }
  assert.equal(new Set(seen.values()).size, seen.size, "two different numbers, one arithmetic");
});
