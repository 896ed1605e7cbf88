// A value of the shop's own: with a unit, a note and a grade, marked by a word wherever it shows, put back by one or all.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until, wordsOf } from "./browser.mjs";
import { at, fileOf } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits("factors-shown");
async function open() { ({ page } = await visit("stop")); }
const ID = "printer.power.solvent";
const row = (id = ID) => page.locator("#factors tbody tr", { has: page.locator("code", { hasText: new RegExp(`^${id.replaceAll(".", "\\.")}$`) }) });
async function give(value, note, id = ID) {
  await row(id).locator("button", { hasText: /own value|change/ }).click();
  await page.locator("#own-value").fill(value);
  await page.locator("#own-note").fill(note);
  await page.locator("#own button[type=submit]").click();
}
const withOf = async (alternative) => JSON.parse(await fileOf(page)).alternative?.find((one) => one.id === alternative)?.with;

test("a meter reading goes into the alternatives that use it, and is marked by a word where it shows", async () => {
  await open();
  const before = [await fileOf(page), await wordsOf(page, "#numbers")];
  assert.match(await row().innerText(), /grade|[BCD]:/);
  await give("1900 W", "meter, week 14");
  await until(page, () => !document.querySelector("#own").open);
  assert.deepEqual(await withOf("digital"), { [ID]: { value: "1900 W", note: "meter, week 14", grade: "own" } });
  assert.equal(await withOf("screen"), undefined);
  const words = await row().innerText();
  for (const said of [/1900|1\.9/, /of this order/, /own: /, /meter, week 14/]) assert.match(words, said);
  assert.match(await page.locator("#own-count").textContent(), /1 value is this order's own/);
  assert.equal(await page.locator("#undo").textContent(), "Undo: own value of " + (await row().locator("th").evaluate((head) => head.firstChild.textContent)).replace(/ \(.* only\)$/, ""));
  await settled(page);
  await page.locator('[data-explain="digital energy"]').click();
  assert.match(await page.locator("#explain-body").innerText(), /of this order, not the tables'/);
  await page.keyboard.press("Escape");
  await row().locator("button", { hasText: "put back" }).click();
  assert.deepEqual([await fileOf(page), await wordsOf(page, "#numbers")], before);
});

test("without a note, without a unit, or for nobody it is refused at its field", async () => {
  await open();
  const before = await fileOf(page);
  await give("1.9 kW", "");
  assert.match(await page.locator("#own-note-fault").innerText(), /where the value comes from/);
  for (const [value, said] of [["1.9", /kW/], ["3 stones", /kW/], ["-1 kW", /above 0/], ["1,9 kW", /./], ["", /a value with its unit/], ["NaN kW", /kW/]]) {
    await page.locator("#own-value").fill(value);
    await page.locator("#own-note").fill("x");
    await page.locator("#own button[type=submit]").click();
    assert.match(await page.locator("#own-value-fault").innerText(), said, value);
    assert.equal(await page.evaluate(() => document.activeElement.id), "own-value");
  }
  await page.locator("#own-value").fill("1.9 kW");
  await page.locator("#own-note").fill("n".repeat(201));
  await page.locator("#own button[type=submit]").click();
  assert.match(await page.locator("#own-note-fault").innerText(), /200 characters/);
  await page.locator("#own-note").fill("n");
  for (const box of await page.locator("#own-whose input:checked").all()) await box.uncheck();
  await page.locator("#own button[type=submit]").click();
  assert.match(await page.locator("#own-whose-fault").innerText(), /at least one/);
  await page.locator("#own-cancel").click();
  assert.equal(await fileOf(page), before);
});

test("ventilation and curing: the caution stands in the dialog", async () => {
  await open();
  await row("oven.exhaust").locator("button", { hasText: "own value" }).click();
  assert.match(await page.locator("#own-caution").innerText(), /exposure limits, fire codes/);
});

test("for one alternative only, then all put back", async () => {
  await open();
  const before = await fileOf(page);
  await row("printer.misprint").locator("button", { hasText: "own value" }).click();
  await page.locator("#own-value").fill("3 %");
  await page.locator("#own-note").fill("counted in March");
  await page.locator("#own-grade").selectOption("C");
  await page.locator("#own-whose input[value=digital-uv]").uncheck();
  await page.locator("#own button[type=submit]").click();
  await give("2 kW", "meter");
  assert.deepEqual(Object.keys(await withOf("digital")).sort(), ["printer.misprint", ID]);
  assert.equal((await withOf("digital-uv"))?.["printer.misprint"], undefined);
  assert.equal(await row("printer.misprint").count(), 2, "the tables' value and the order's own stand beside each other");
  await page.locator("#own-back").click();
  assert.equal(await fileOf(page), before);
  assert.equal(await page.locator("#own-count").textContent(), "");
});

test("a slider that was moved is kept as a value with one button", async () => {
  await open();
  await settled(page);
  const slider = page.locator("#swings input[type=range]").first();
  const id = await slider.getAttribute("data-input");
  await slider.focus();
  await slider.press("End");
  await until(page, () => !document.querySelector("#put-back").hidden);
  const moved = await wordsOf(page, "#numbers");
  await page.locator(".slider.moved .keep").click();
  const order = JSON.parse(await fileOf(page));
  const entries = order.alternative.flatMap((one) => (one.with?.[id] ? [one.with[id]] : []));
  assert.ok(entries.length > 0 && entries.every((entry) => entry.grade === "D" && /moved by hand/.test(entry.note)), JSON.stringify(entries));
  const digits = entries[0].value.split(" ")[0].replace(".", "").replace(/^0+/, "").length;
  assert.ok(digits > 0 && digits <= 4, `${entries[0].value}: as precise as a slider is`);
  assert.ok(await page.locator("#put-back").isHidden(), "no slider is moved any more");
  const numbers = (words) => words.split("\n").filter((line) => /^(energy|water|solvent|waste|CO2e)/.test(line)).length;
  assert.equal(numbers(await wordsOf(page, "#numbers")), numbers(moved));
  assert.match(await page.locator("#undo").textContent(), /^Undo: keeping /);
  await page.locator("#undo").click();
  assert.ok(await page.locator("#put-back").isVisible(), "undone, the slider is where it was");
});
