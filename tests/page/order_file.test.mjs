// Order files: saved and opened again byte for byte, read by the command line; a bad one leaves the order that is there.
import assert from "node:assert/strict";
import { test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { at, fileOf, notUpdated, noticed, openFile, saved, write } from "./editing.mjs";
import { commandLine, printed } from "./place.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(demo = "stop", editor = "edit") { ({ page } = await visit(demo, { editor })); }
const ORDER = { schema_version: 1, name: "Tern Harbour: spring / summer", line: [{ code: "R1-1", size: "30 in", quantity: 7 }] };

test("every demo is saved as it was opened, and so is a file of any form", async () => {
  await open();
  const demos = await page.evaluate(() => JSON.parse(window.faceload.demosJson()));
  for (const { name, order } of demos) {
    await page.locator("#f-demo").selectOption(name);
    assert.equal((await saved(page)).text, order, name);
  }
  for (const text of [JSON.stringify(ORDER), `\ufeff${JSON.stringify(ORDER, null, 7)}\r\n\n`, JSON.stringify(ORDER).replace(":7", ":7.0")]) {
    await openFile(page, "mine.json", text);
    assert.equal((await saved(page)).text, text);
  }
});

test("an edited order is saved readable, opens to the same, and the command line agrees", async () => {
  await open();
  await write(page, "line[1].quantity", "12");
  await page.locator("#edit-alternatives > summary").click();
  await at(page, "alternative[1].ink").selectOption("water");
  const { name, text } = await saved(page);
  assert.equal(name, "tern-harbour-county-stop-signs.json");
  assert.match(text, /^\{\n {2}"schema_version": 1,\n/);
  assert.match(text, /"quantity": "12"/);
  const result = await page.evaluate((order) => window.faceload.compareJson(order, "m2", "face"), text);
  assert.equal(commandLine(text, "m2", "face").replaceAll(/"file":[^,]*,/g, ""), result.replaceAll(/"file":[^,]*,/g, "") );
  assert.equal(printed(text, "order"), text, "the command writes the same JSON");
  const words = await wordsOf(page, "#numbers");
  await page.locator("#f-demo").selectOption("stop");
  await openFile(page, name, text);
  assert.equal(await wordsOf(page, "#numbers"), words);
  assert.equal(await fileOf(page), text);
  assert.equal(await page.locator("#f-demo").inputValue(), "", "it is none of the demos");
});

test("what is not changed is not written: defaults stay out", async () => {
  await open();
  await openFile(page, "mine.json", JSON.stringify(ORDER));
  await write(page, "line[1].quantity", "8");
  assert.deepEqual(JSON.parse(await fileOf(page)), { ...ORDER, line: [{ ...ORDER.line[0], quantity: "8" }] });
});

for (const [what, name, text, said] of [
  ["a fault in two fields", "bad.json", JSON.stringify({ schema_version: 1, line: [{ code: "R1-1", size: "30", quantity: "1,234" }] }), [/line\[1\]\.size/, /line\[1\]\.quantity.*1,234/]],
  ["text that is no JSON", "bad.json", "{\n\"line\": [", [/bad\.json, line 2/]],
  ["a key that is not known", "bad.json", JSON.stringify({ ...ORDER, __proto: 1 }), [/__proto/]],
  ["`__proto__` as a key", "bad.json", '{"schema_version":1,"__proto__":{"polluted":1},"line":[]}', [/__proto__/]],
  ["a key twice", "bad.json", '{"schema_version":1,"schema_version":1}', [/second time/]],
  ["a table", "orders.csv", "code,quantity\nR1-1,7\n", [/orders\.csv.*not JSON/]],
  ["TOML", "mine.toml", "schema_version = 1\n", [/TOML/, /faceload order FILE\.toml > FILE\.json/]],
  ["nothing", "empty.json", "", [/empty\.json/]],
]) {
  test(`${what}: every fault is said, the order stays`, async () => {
    await open();
    await write(page, "line[1].quantity", "12");
    const old = [await fileOf(page), await wordsOf(page, "#answer")];
    await openFile(page, name, text);
    const words = await noticed(page);
    assert.match(words, /was not opened; the order on the screen is as it was/);
    for (const each of said) assert.match(words, each);
    assert.deepEqual([await fileOf(page), await wordsOf(page, "#answer")], old);
    assert.equal(await page.locator("#undo").textContent(), "Undo: quantity in line 1");
    assert.equal(await page.evaluate(() => document.activeElement.id), "notice", "the summary has the focus");
    await page.getByRole("button", { name: "Close" }).first().click();
    assert.equal(await noticed(page), "");
  });
}

test("bytes that are not UTF-8 and a file of more than 5 MB are refused", async () => {
  await open();
  const old = await fileOf(page);
  for (const [buffer, said] of [[Buffer.from([0x7b, 0xff, 0x7d]), /not UTF-8/], [Buffer.alloc(5_000_001, 32), /5 MB/]]) {
    await page.locator("#f-file").setInputFiles({ name: "bad.json", mimeType: "application/json", buffer });
    await until(page, () => !document.querySelector("#notice").hidden);
    assert.match(await noticed(page), said);
    await page.getByRole("button", { name: "Close" }).first().click();
  }
  assert.equal(await fileOf(page), old);
});

test("a file is opened by dropping it on the page", async () => {
  await open();
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], "dropped.json"));
    for (const type of ["dragover", "drop"]) document.body.dispatchEvent(new DragEvent(type, { dataTransfer: data, bubbles: true, cancelable: true }));
  }, JSON.stringify(ORDER));
  await until(page, () => document.querySelector("#undo").textContent === "Undo: opening dropped.json");
  assert.equal(await fileOf(page), JSON.stringify(ORDER));
  assert.match(await noticed(page), /dropped\.json is open/);
});

test("an order at fault is saved as it was typed, and says so", async () => {
  await open();
  await write(page, "line[1].quantity", "1,234");
  assert.match(await notUpdated(page), /Not updated/);
  const { text } = await saved(page);
  assert.match(text, /"quantity": "1,234"/);
  assert.match(await noticed(page), /with its fault/);
});

test("a file's boundary is what is counted", async () => {
  await open();
  await openFile(page, "mine.json", JSON.stringify({ ...ORDER, boundary: "face with blank" }));
  assert.equal(await page.locator("#f-boundary").inputValue(), "face-with-blank");
});
