// What moves it: the pair that is chosen is the pair that is drawn, and its sliders work.
import assert from "node:assert/strict";
import { test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { changes } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
let page;

const chosen = () => page.locator("#f-pair").evaluate((select) => select.selectedOptions[0].text);

async function speaksOf(pair) {
  const words = await wordsOf(page, "#moves-now");
  for (const name of pair.split(" and ")) assert.match(words, new RegExp(`(?<![\\w-])${name}(?![\\w-])`), `${pair}: ${words}`);
}

for (const demo of ["stop", "county", "custom"]) {
  test(`${demo}: what is chosen is what is shown, for every pair`, async () => {
    ({ page } = await visit(demo));
    await speaksOf(await chosen());
    const pairs = await page.locator("#f-pair option").allTextContents();
    assert.ok(pairs.length > 1, pairs.join("; "));
    for (const pair of pairs) {
      await page.locator("#f-pair").selectOption({ label: pair });
      await speaksOf(pair);
      assert.ok((await page.locator("#swings input[type=range]").count()) > 0, `${pair} has sliders`);
    }
  });
}

test("a pair is chosen, its slider moves it, and is put back", async () => {
  ({ page } = await visit("stop"));
  await changes(page, ["#moves-now"], () => page.locator("#f-pair").selectOption({ index: 1 }));
  const pair = await chosen();
  const old = await wordsOf(page, "#moves-now", "#numbers");
  const slider = page.locator("#swings input[type=range]").first();
  await slider.focus();
  await changes(page, ["#moves-now"], () => page.keyboard.press("End"));
  assert.equal(await chosen(), pair);
  await speaksOf(pair);
  await page.locator("#put-back").click();
  const same = (words) => ["#moves-now", "#numbers"].map((name) => document.querySelector(name).innerText).join("\n") === words;
  await until(page, same, old, "the numbers come back");
});

test("a slider whose input moves nothing any more stays in reach", async () => {
  ({ page } = await visit("stop"));
  const sliders = page.locator("#swings input[type=range]");
  const count = await sliders.count();
  for (const end of ["Home", "End"]) {
    for (let place = 0; place < count; place += 1) {
      await sliders.nth(place).focus();
      await page.keyboard.press(end);
    }
    await until(page, () => !document.querySelector("#put-back").hidden);
    const boxes = await sliders.evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().top)));
    assert.equal(new Set(boxes).size, count, `sliders lie over each other: ${boxes}`);
  }
});
