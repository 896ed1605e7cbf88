// Undo and redo: named steps by button and by keyboard; a hundred of them leave the order as it was, byte for byte.
import assert from "node:assert/strict";
import { test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { at, fileOf, notUpdated, openFile, write } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(demo = "stop", editor = "edit") { ({ page } = await visit(demo, { editor })); }
const undo = () => page.locator("#undo");
const redo = () => page.locator("#redo");

test("an edit is undone and done again by its name, with its answer", async () => {
  await open();
  const before = [await fileOf(page), await wordsOf(page, "#numbers")];
  await write(page, "line[1].quantity", "12");
  assert.equal(await undo().textContent(), "Undo: quantity in line 1");
  const edited = await fileOf(page);
  await undo().click();
  assert.deepEqual([await fileOf(page), await wordsOf(page, "#numbers")], before);
  assert.equal(await at(page, "line[1].quantity").inputValue(), "100");
  assert.equal(await redo().textContent(), "Redo: quantity in line 1");
  await redo().click();
  assert.equal(await fileOf(page), edited);
  assert.ok(await redo().isDisabled());
});

test("a hundred edits and a hundred undos leave the order byte for byte, and a hundred redos do what was done", async () => {
  await open();
  const opened = await fileOf(page);
  const edit = (count) => page.evaluate((count) => {
    for (let step = 1; step <= count; step += 1) {
      const field = document.querySelector('[data-path="line[1].quantity"]');
      field.value = String(1000 + step);
      field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  }, count);
  await edit(100);
  const edited = await fileOf(page);
  assert.match(edited, /"quantity": "1100"/);
  const press = (id, count) => page.evaluate(([id, count]) => { for (let step = 0; step < count; step += 1) document.querySelector(id).click(); }, [id, count]);
  // One step more is the demo chosen in place of the first order.
  await press("#undo", 100);
  assert.equal(await fileOf(page), opened);
  await press("#redo", 100);
  assert.equal(await fileOf(page), edited);
});

test("by keyboard: the browser's own while a text is typed, ours elsewhere", async () => {
  await open();
  const opened = await fileOf(page);
  await write(page, "line[1].quantity", "12");
  await at(page, "line[1].quantity").focus();
  await page.keyboard.press("End");
  await page.keyboard.type("0");
  assert.equal(await at(page, "line[1].quantity").inputValue(), "120");
  await page.keyboard.press("Control+z");
  assert.notEqual(await at(page, "line[1].quantity").inputValue(), "120", "the letter is gone");
  assert.equal(await undo().textContent(), "Undo: quantity in line 1", "no step of ours");
  await at(page, "line[1].quantity").fill("12");
  await page.keyboard.press("Control+z");
  assert.equal(await fileOf(page), opened, "a field that says what it said is not being edited");
  await page.keyboard.press("Control+Shift+z");
  assert.match(await fileOf(page), /"quantity": "12"/);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+y");
  assert.match(await fileOf(page), /"quantity": "12"/);
});

test("rows, alternatives, presets, sliders and files are steps", async () => {
  await open("county", "edit");
  await page.locator("#edit-alternatives > summary").click();
  const states = [await fileOf(page)];
  const step = async (name, act) => {
    await act();
    assert.match(await undo().textContent(), name);
    states.push(await fileOf(page));
  };
  await step(/^Undo: copying /, () => page.locator("#copy-line-1").click());
  await step(/^Undo: removing /, () => page.locator("#remove-line-3").click());
  await step(/^Undo: adding an alternative/, () => page.locator("#add-alternative").click());
  await step(/^Undo: remove /, () => page.locator("#remove-alternative-2").click());
  await step(/^Undo: electricity/, () => at(page, "site.electricity").evaluate((field) => { field.value = "de"; field.dispatchEvent(new Event("change")); }));
  await step(/^Undo: starting from /, () => page.locator("#f-demo").selectOption("stop"));
  await step(/^Undo: opening mine.json/, () => openFile(page, "mine.json", states[0]));
  const slider = page.locator("#swings input[type=range]").first();
  await slider.focus();
  await slider.press("End");
  assert.match(await undo().textContent(), /^Undo: slider: /);
  await until(page, () => !document.querySelector("#put-back").hidden);
  await undo().click();
  assert.ok(await page.locator("#put-back").isHidden(), "the slider is back");
  for (const state of states.slice(0, -1).reverse()) {
    await undo().click();
    assert.equal(await fileOf(page), state);
  }
});

test("a text at fault is a step too, and comes back with its message", async () => {
  await open();
  await write(page, "line[1].quantity", "1,234");
  assert.match(await notUpdated(page), /Not updated/);
  await undo().click();
  assert.equal(await notUpdated(page), "");
  await redo().click();
  assert.equal(await at(page, "line[1].quantity").inputValue(), "1,234");
  assert.match(await notUpdated(page), /Not updated/);
});

test("after a new edit there is nothing to do again", async () => {
  await open();
  await write(page, "line[1].quantity", "12");
  await undo().click();
  await write(page, "line[1].quantity", "13");
  assert.ok(await redo().isDisabled());
  await undo().focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+z");
  const focus = await page.evaluate(() => document.activeElement.id);
  assert.ok(["undo", "redo"].includes(focus), `the focus stays by the buttons: ${focus}`);
});
