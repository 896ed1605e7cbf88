// Rows of a spreadsheet: pasted or opened, shown before anything changes, and put into the order by mouse or by keyboard.
import assert from "node:assert/strict";
import { after, afterEach, before, test } from "node:test";
import { startBrowser, until } from "./browser.mjs";
import { openDemo, orderOf } from "./editing.mjs";

const CELLS = [
  ["MUTCD", "Size", "Qty", "Colours", "Note"],
  ["R1-1", '30"', "12", "", ""],
  ["W1-2L", '30"', "4", "", ""],
  ["TH-9", '24" x 30"', "2", "blue 60 %; white 40 %", "depot"],
  ["TH-4", "18 x 24 in", "1", "", "ferry"],
].map((row) => row.join("\t")).join("\n");

let browser;
let page;
let complaints = [];
let requests = [];
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());
afterEach(async () => {
  await page?.context().close();
  assert.deepEqual(complaints, []);
  assert.deepEqual(requests.filter((url) => !/^(file|blob|data):/.test(url)), []);
});

async function open(options) {
  ({ page, complaints, requests } = await openDemo(browser, "stop", "from-rows", options));
}

// Pastes as a person does: the browser decides what becomes of it.
const paste = (text) => page.evaluate((words) => {
  const field = document.querySelector("#rows-text");
  field.focus();
  const data = new DataTransfer();
  data.setData("text/plain", words);
  const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
  if (field.dispatchEvent(event)) document.execCommand("insertText", false, words);
}, text);

const openFile = (name, bytes) => page.locator("#rows-file").setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(bytes) });
const says = async (words) => {
  await until(page, (wanted) => document.querySelector("#rows-found").innerText.replace(/\s+/g, " ").includes(wanted), words, words);
};
const taken = () => page.locator("#rows-found select[id^=rows-column]").evaluateAll((all) => all.map((one) => one.value));
const lines = async () => JSON.parse(await orderOf(page)).line;
const text = (id) => page.locator(id).evaluate((part) => part.textContent);

test("pasted cells are shown as they are understood, and change nothing", async () => {
  await open();
  const before = await orderOf(page);
  await paste(CELLS);
  await says("4 rows, tab between cells; the first row names the columns. 2 rows became 2 lines of 16 signs; 2 rows could not be taken.");
  assert.deepEqual(await taken(), ["code", "size", "quantity", "colours", ""]);
  await says("row 4 column A (`MUTCD`) `TH-9`");
  await says("row 5 column A (`MUTCD`) `TH-4`");
  assert.equal(await orderOf(page), before);
});

test("a column is taken as something else, and no field twice", async () => {
  await open();
  await paste(CELLS);
  await page.locator("#rows-column-4").selectOption("label");
  await until(page, () => document.querySelector("#rows-column-4")?.value === "label");
  await page.locator("#rows-column-4").selectOption("colours");
  await until(page, () => document.querySelector("#rows-column-3")?.value === "");
  assert.deepEqual(await taken(), ["code", "size", "quantity", "", "colours"]);
});

test("rows that cannot be taken stop the order until the user leaves them out", async () => {
  await open();
  await paste(CELLS);
  await page.locator("#rows-missing-shape").fill("rectangle");
  await page.locator("#rows-missing-shape").press("Tab");
  await says("3 rows became 3 lines of 18 signs; 1 row could not be taken.");
  const before = await orderOf(page);
  await page.locator("#rows-add").click();
  assert.match(await text("#rows-stop"), /^1 row could not be taken: mend them/);
  assert.equal(await orderOf(page), before);
  assert.equal(await page.evaluate(() => document.activeElement.id), "rows-leave");

  const [saved] = await Promise.all([page.waitForEvent("download"), page.locator("#rows-save").click()]);
  const stream = await saved.createReadStream();
  let csv = "";
  for await (const part of stream) csv += part;
  assert.match(csv, /^"MUTCD","Size","Qty","Colours","Note","reason"\r\n"TH-4","18 x 24 in","1","","ferry","row 5: /);

  await page.locator("#rows-leave").check();
  await page.locator("#rows-add").click();
  assert.match(await text("#rows-done"), /^Added to the order: 3 lines of 18 signs; 1 row left out/);
  const labels = (await lines()).map((line) => line.label);
  assert.deepEqual(labels.slice(1), ["stop", "W1-2L", "TH-9 (shape assumed)"]);
  assert.equal(await page.locator("#not-updated").isVisible(), false);
  assert.match(await text("#order-line"), /112 stop signs/);
});

test("a file takes the place of the lines, by keyboard alone", async () => {
  await open();
  await openFile("bay.csv", "code;size;qty\nR1-1;36 in;7\nR1-2;36 in;5\n");
  await says("2 rows became 2 lines of 12 signs; no row is left out.");
  await page.locator("#rows-column-0").focus();
  for (let step = 0; step < 30 && (await page.evaluate(() => document.activeElement.id)) !== "rows-replace"; step += 1) {
    await page.keyboard.press("Tab");
  }
  await page.keyboard.press("Enter");
  assert.match(await text("#rows-done"), /^Now the order's lines: 2 lines of 12 signs\./);
  assert.deepEqual((await lines()).map((line) => [line.code, line.size, String(line.quantity)]), [["R1-1", "36 in", "7"], ["R1-2", "36 in", "5"]]);
  assert.equal(await page.evaluate(() => document.activeElement.textContent), "Rows from a spreadsheet");
});

test("the focus goes on to the next field when what is missing is written", async () => {
  await open();
  await paste(CELLS);
  await page.locator("#rows-missing-shape").fill("rectangle");
  await page.keyboard.press("Tab");
  await says("1 row could not be taken.");
  assert.equal(await page.evaluate(() => document.activeElement.id), "rows-missing-colours");
});

test("hostile cells stay text", async () => {
  await open();
  await page.evaluate(() => { window.ran = 0; });
  const bad = '<img src=x onerror="window.ran = 1">';
  await paste(`code\tsize\tlabel\t${bad}\nR1-1\t30 in\t${bad}\t=1+1\n${bad}\t24 in\t<script>window.ran = 1</script>\t@x`);
  await says("1 row became 1 line");
  await says(bad);
  await page.locator("#rows-leave").check();
  await page.locator("#rows-replace").click();
  assert.equal((await lines())[0].label, bad);
  assert.equal(await page.evaluate(() => window.ran + document.querySelectorAll("main img[src=x]").length), 0);
});

test("a large paste is taken without standing in the field, and without a long wait", async () => {
  await open();
  const many = ["code\tsize\tlabel", ...Array.from({ length: 20_000 }, (_, at) => `R7-1\t12" X 18"\tno parking, post ${at % 700} ${"x".repeat(40)}`)].join("\n");
  assert.ok(many.length > 1_000_000);
  const start = Date.now();
  await paste(many);
  await says("20 000 rows became 700 lines of 20 000 signs, equal signs added up");
  const took = Date.now() - start;
  assert.ok(took < 8_000, `${took} ms`);
  assert.equal(await page.locator("#rows-text").inputValue(), "");
  await paste("x".repeat(5_100_000));
  await says("more than 5 MB where rows of at most 5 MB was wanted; split them into several files");
});

test("what is no text, or holds nothing, is refused in words", async () => {
  await open();
  const before = await orderOf(page);
  await openFile("sheet.csv", "PK\u0003\u0004 and so on");
  await says("a spreadsheet program's own file where rows as text (CSV) was wanted");
  await openFile("names.csv", "code,size\n");
  await says("column names alone where rows of signs below them was wanted");
  await page.locator("#rows-clear").click();
  assert.equal(await text("#rows-found"), "");
  assert.equal(await orderOf(page), before);
});
