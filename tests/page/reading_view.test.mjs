// The view for reading hides what edits and keeps what is read; a link may ask for it.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until, wordsOf } from "./browser.mjs";
import { fileOf } from "./editing.mjs";
import { pageAddress } from "./place.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(ending, options) { ({ page } = await visit("", { address: pageAddress + ending, ...options })); }
const EDITS = ["#f-demo", "#f-life", "#tools", "#edit", "#edit-alternatives", "#edit-site", "#undo", "#save-order", "#share", ".sliders", "#kept", "#own-back"];
const READ = ["#order-line", "#order-extent", "#f-per", "#f-boundary", "#answer", "#copy-message", "#loads", "#numbers", "#f-pair", "#f-indicator", "#stages-found", "#swings canvas", "#flips-found", "#sure-found", "#limits", "#standing"];

for (const width of [1440, 390]) {
  test(`nothing that edits is seen or reached, all that is read is, ${width} px`, async () => {
    await open("", { width });
    await settled(page);
    const words = await wordsOf(page, "#answer", "#numbers");
    await page.context().close();
    await open("#view=read", { width });
    await settled(page);
    for (const id of EDITS) assert.ok(await page.locator(id).first().isHidden(), id);
    for (const id of READ) assert.ok(await page.locator(id).first().isVisible(), id);
    assert.equal(await wordsOf(page, "#answer", "#numbers"), words);
    await page.evaluate(() => { document.querySelector("#factors-shown").open = true; });
    assert.equal(await page.locator("#factors td.editing:visible").count(), 0);
    assert.ok(await page.locator("#factors tbody th").first().isVisible());
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    assert.equal(wide, 0);
  });
}

test("undo by keyboard and dropped files do nothing there", async () => {
  await open("#view=read");
  const old = await fileOf(page);
  await page.keyboard.press("Control+z");
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.items.add(new File(['{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":7}]}'], "dropped.json"));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
  });
  await page.waitForTimeout(200);
  assert.equal(await fileOf(page), old);
});

test("a link for reading opens so, and can be turned to editing", async () => {
  await open("");
  await page.locator("#f-demo").selectOption("diamonds");
  await page.locator("#share").click();
  await page.locator("#link-read").check();
  const ending = await page.locator("#link-text").inputValue();
  assert.ok(ending.endsWith("&view=read"), ending);
  await page.context().close();
  await open(ending);
  assert.match(await fileOf(page), /warning A/);
  assert.ok(await page.locator("#tools").isHidden());
  await page.locator("#to-editing").click();
  await until(page, () => !document.documentElement.dataset.view);
  assert.ok(await page.locator("#tools").isVisible());
  assert.match(page.url(), /#1\.[^&]*$/);
});
