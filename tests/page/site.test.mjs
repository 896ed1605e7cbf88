// The shop's site counts: its grid, its cold, its ways; a bad text is met at its field.
import assert from "node:assert/strict";
import { after, afterEach, before, beforeEach, test } from "node:test";
import { startBrowser, until, wordsOf } from "./browser.mjs";
import { at, changes, notUpdated, openDemo } from "./editing.mjs";

let browser;
let page;
let complaints;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());
beforeEach(async () => { ({ page, complaints } = await openDemo(browser, "stop", "edit-site")); });
afterEach(async () => {
  await page.context().close();
  assert.deepEqual(complaints, []);
});

test("every other electricity, another answer", async () => {
  const select = at(page, "site.electricity");
  const grids = await select.evaluate((one) => [...one.options].map((option) => option.value));
  assert.ok(grids.length > 1);
  const seen = new Set();
  for (const grid of grids) {
    await select.selectOption(grid);
    seen.add(await wordsOf(page, "#numbers"));
  }
  assert.equal(seen.size, grids.length);
});

test("a colder site has other loads", async () => {
  await changes(page, ["#numbers"], async () => {
    await at(page, "site.degree_days").fill("5000 K.d");
    await at(page, "site.degree_days").press("Tab");
  });
  assert.match(await wordsOf(page, "#order-extent"), /5\D?000 K/);
});

for (const bad of ["cold", "-5 K.d", "2800 furlongs", "<b>1</b>"]) {
  test(`degree-days \`${bad}\` are met at their field, the answer stays`, async () => {
    const field = at(page, "site.degree_days");
    const old = await wordsOf(page, "#answer");
    await field.fill(bad);
    await field.press("Tab");
    await until(page, () => document.querySelector('[data-path="site.degree_days"]').getAttribute("aria-invalid") === "true");
    const said = await field.evaluate((input) => document.getElementById(input.getAttribute("aria-describedby")).innerText);
    assert.ok(said.length > 10, said);
    assert.match(await notUpdated(page), /Not updated/);
    assert.equal(await wordsOf(page, "#answer"), old);
    await field.fill("2800 K.d");
    await field.press("Tab");
    await until(page, () => !document.querySelector("[aria-invalid]"));
    assert.equal(await notUpdated(page), "");
    assert.equal(await wordsOf(page, "#answer"), old, "the same order has the same answer");
  });
}
