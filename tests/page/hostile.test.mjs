// Texts that want to be more than text, through fields, files, links, notes and file names: they stay text or are refused.
import assert from "node:assert/strict";
import { after, afterEach, before, test } from "node:test";
import { deflateRawSync } from "node:zlib";
import { openPage, settled, startBrowser, until } from "./browser.mjs";
import { at, fileOf, noticed, openFile, saved, write } from "./editing.mjs";

const TEXTS = [
  "<script>window.hit=1</script>", "</script><script>window.hit=1</script>", "<img src=x onerror=window.hit=1>", "\"><svg onload=window.hit=1>", "' onmouseover='window.hit=1",
  "javascript:window.hit=1", "{{constructor.constructor('window.hit=1')()}}", "${window.hit=1}", "&lt;b&gt; &amp;", "=HYPERLINK(\"x\")", "__proto__", "constructor", "toString",
  "\u202Estop\u202C", "\u200Fsign\u200E", "\u{1F6D1}\u{1F3F4}\u200D\u2620\uFE0F", "e\u0301\u0327", "\u0000x", "a\nb", "`x`", "\\u003cscript\\u003e", "]]>", "<!--", "%00%0a",
  "\uD800", "l".repeat(10_000), " ", "../../etc/x", "CON",
];

let browser;
let page;
let complaints = [];
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());
afterEach(async () => {
  const hit = await page.evaluate(() => [window.hit, Object.prototype.polluted, document.querySelectorAll("main script, main svg, main iframe, main img[onerror]").length]);
  await page.context().close();
  assert.deepEqual(hit, [undefined, undefined, 0], "a text became more than text");
  assert.deepEqual(complaints, []);
});
async function open(options) { ({ page, complaints } = await openPage(browser, options)); }
const orderWith = (text) => ({ schema_version: 1, name: text, line: [{ label: text, code: "R1-1", size: "30 in", quantity: 7, artwork: text }],
  alternative: [{ id: text, route: "digital-printing", with: { "printer.misprint": { value: "0.02", note: text, grade: "own" } } }, { id: "film", route: "overlay-film" }] });

/** The texts that an order may hold are there as they are; the others are refused and named. */
const isTaken = (text) => text.trim() !== "" && !/[\u0000-\u001f]/.test(text) && [...text].length <= 200;

test("in a file: taken as text wherever it shows, or refused with the old order in place", async () => {
  await open();
  for (const text of TEXTS) {
    const file = JSON.stringify(orderWith(text));
    const old = await fileOf(page);
    await openFile(page, "mine.json", file);
    const words = await noticed(page);
    if (/is open/.test(words)) {
      assert.ok(isTaken(text), `taken: ${text.slice(0, 40)}`);
      assert.equal(await fileOf(page), file);
      const shown = await page.evaluate(() => [document.querySelector("#order-extent").textContent, document.querySelector('[data-path="line[1].label"]').value, document.querySelector("#numbers thead th.number").textContent]);
      assert.ok(shown[0].startsWith(text.trim()) && shown[1] === text && shown[2] === text.trim(), `${JSON.stringify(text)}: ${JSON.stringify(shown)}`);
    } else {
      assert.ok(!isTaken(text) || text === "\uD800", `refused: ${text.slice(0, 40)}: ${words}`);
      assert.equal(await fileOf(page), old);
    }
    await page.evaluate(() => window.faceload.notice.close());
  }
  await page.evaluate(() => { for (const part of document.querySelectorAll("main details")) part.open = true; });
  await settled(page);
});

test("in a field: kept as typed, and the page says what is wrong where it is", async () => {
  await open();
  await page.locator("#edit > summary").click();
  for (const text of TEXTS.filter((text) => !/[\n\uD800]/.test(text))) {
    await at(page, "line[1].label").evaluate((field, text) => { field.value = text; field.dispatchEvent(new Event("change", { bubbles: true })); }, text);
    const typed = JSON.parse(await fileOf(page)).line[0].label ?? "";
    assert.equal(typed, text.trim());
    const refused = (await at(page, "line[1].label").getAttribute("aria-invalid")) === "true";
    assert.equal(refused, text.trim() !== "" && !isTaken(text), `${JSON.stringify(text.slice(0, 40))}`);
  }
  for (const text of TEXTS.filter((text) => text.trim() !== "" && !/[\n\uD800]/.test(text))) {
    await at(page, "line[1].quantity").evaluate((field, text) => { field.value = text; field.dispatchEvent(new Event("change", { bubbles: true })); }, text);
    assert.equal(await at(page, "line[1].quantity").getAttribute("aria-invalid"), "true", text.slice(0, 40));
  }
});

test("in a note of an own value", async () => {
  await open();
  await page.locator("#factors-shown > summary").click();
  await page.locator('#factors tbody tr:has(code:text-is("printer.misprint")) button').first().click();
  await page.locator("#own-value").fill("0.02");
  await page.locator("#own-note").fill(TEXTS[0]);
  await page.locator("#own button[type=submit]").click();
  await until(page, (text) => document.querySelector("#factors").textContent.includes(text), TEXTS[0]);
});

test("in a link", async () => {
  await open();
  for (const text of TEXTS.filter((text) => text !== "\uD800")) {
    const old = await fileOf(page);
    const linked = { order: orderWith(text), per: "m2", boundary: "face", pair: [text, "film"], indicator: "co2e", tables: text };
    await page.evaluate((hash) => { window.faceload.notice.close(); window.location.hash = hash; }, `#1.${deflateRawSync(JSON.stringify(linked)).toString("base64url")}`);
    await until(page, () => !document.querySelector("#notice").hidden);
    const words = await noticed(page);
    if (isTaken(text)) assert.deepEqual(JSON.parse(await fileOf(page)), linked.order, words);
    else assert.equal(await fileOf(page), old, words);
    assert.match(words, isTaken(text) ? /is open/ : /was not opened/);
  }
  const keys = '{"order":{"schema_version":1,"__proto__":{"polluted":1},"line":[{"code":"R1-1","size":"30 in","quantity":7}]},"per":"m2","boundary":"face","indicator":"co2e","tables":""}';
  await page.evaluate((hash) => { window.faceload.notice.close(); window.location.hash = hash; }, `#1.${deflateRawSync(keys).toString("base64url")}`);
  await until(page, () => document.querySelector("#notice").textContent.includes("__proto__"));
});

test("as a file's name, coming and going", async () => {
  await open();
  for (const name of ["<img src=x onerror=window.hit=1>.json", "\u202Enosj.exe", "n".repeat(200)]) {
    await openFile(page, name, "{");
    assert.match(await noticed(page), /was not opened/);
    await page.evaluate(() => window.faceload.notice.close());
  }
  for (const [text, wanted] of [["../../etc/x", "etc-x.json"], ["<b>", "b.json"], ["\u{1F6D1}", "order.json"], ["\u202Egpj.exe", "gpj-exe.json"], ["Straße 7", "straße-7.json"]]) {
    await openFile(page, "mine.json", JSON.stringify(orderWith(text)));
    assert.equal((await saved(page)).name, wanted);
    await page.evaluate(() => window.faceload.notice.close());
  }
  await write(page, "life", "12");
});
