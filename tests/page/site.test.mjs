// The shop's site counts: its grid, its cold, its ways; a bad text is met at its field.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { at, changes, notUpdated } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits("edit-site");
let page;
beforeEach(async () => { ({ page } = await visit("stop")); });

test("electricity areas stand by name under their country, the newest year first", async () => {
  const groups = await at(page, "site.electricity").evaluate((one) =>
    [...one.children].map((group) => ({ tag: group.tagName, country: group.label, names: [...group.children].map((option) => option.text) })));
  assert.ok(groups.length > 40);
  for (const { tag, country, names } of groups) {
    assert.equal(tag, "OPTGROUP");
    const years = names.map((name) => Number(/, (\d{4})$/.exec(name)?.[1]));
    assert.ok(country.length > 1 && years.every(Number.isInteger), `${country}: ${names}`);
    assert.deepEqual(years, [...years].sort((a, b) => b - a), country);
  }
  assert.ok(groups.find((group) => group.country === "United States").names.includes("RFC West (RFCW), 2023"));
});

test("another electricity, another answer", async () => {
  const select = at(page, "site.electricity");
  const seen = new Set();
  const grids = ["us.rfcw", "us.rfcw-2022", "us.nyup", "us.state-tx-2022", "uk", "uk.life-cycle", "de", "de-2024", "no", "in"];
  for (const grid of grids) {
    await select.selectOption(grid);
    seen.add(await wordsOf(page, "#numbers"));
  }
  assert.equal(seen.size, grids.length);
  assert.match(await wordsOf(page, "#order-extent"), /India, 2025.*life-cycle/s);
});

test("freight of another country, another answer; what does not fit the area is met at its field", async () => {
  await changes(page, ["#numbers"], () => at(page, "site.freight").selectOption("us.truck-2021"));
  await at(page, "site.electricity").selectOption("de");
  await until(page, () => document.querySelector('[data-path="site.freight"]').getAttribute("aria-invalid") === "true");
  assert.match(await notUpdated(page), /Not updated/);
  await at(page, "site.freight").selectOption("");
  await until(page, () => !document.querySelector("[aria-invalid]"));
  assert.equal(await notUpdated(page), "");
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
