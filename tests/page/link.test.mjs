// The link: it reopens an order with what was looked at, leaves the shop's own values out unless asked, and a bad one harms nothing.
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { hosted, until, wordsOf } from "./browser.mjs";
import { at, fileOf, noticed, openFile, saved, write } from "./editing.mjs";
import { pageAddress } from "./place.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits("edit");
async function open(options = {}) { ({ page } = await visit("stop", options)); }
async function follow(address, options = {}) {
  await page.context().close();
  ({ page } = await visit("", { address, ...options }));
}
async function linkOf() {
  await page.locator("#share").click();
  return page.locator("#link-text").inputValue();
}
const METER = { value: "1.9 kW", note: "meter in hall two", grade: "own" };
const OWN = JSON.stringify({
  schema_version: 1, line: [{ code: "R1-1", size: "30 in", quantity: 7 }],
  alternative: [{ id: "ours", route: "digital-printing", with: { "printer.power.solvent": METER, "printer.misprint": { value: "0.03", note: "seen", grade: "C" } } }, { id: "film", route: "overlay-film" }],
});

test("it reopens the order with per what, boundary, pair, indicator", async () => {
  await open({ address: hosted });
  await write(page, "line[1].quantity", "12");
  await page.locator("#f-per").selectOption("m2-year");
  await page.locator("#f-boundary").selectOption("face-with-blank");
  await page.locator("#f-pair").selectOption({ label: "film and digital" });
  await page.locator("#f-indicator").selectOption("waste");
  const shown = async () => [JSON.parse(await fileOf(page)), await wordsOf(page, "#answer", "#numbers", "#moves-now"),
    await page.evaluate(() => ["f-per", "f-boundary", "f-indicator"].map((id) => document.getElementById(id).value).concat(document.getElementById("f-pair").selectedOptions[0].text))];
  const old = await shown();
  const link = await linkOf();
  assert.ok(link.startsWith(`${hosted}#1.`) && link.length < 2000, link);
  await follow(link, { width: 390 });
  assert.deepEqual(await shown(), old);
  assert.match(await noticed(page), /The order in the link is open/);
  await page.locator("#undo").click();
  assert.equal(JSON.parse(await fileOf(page)).line[0].quantity, 100, "undone, the page's first order is there");
});

test("the address is copied where the page is hosted", async () => {
  await open({ address: hosted, permissions: ["clipboard-read", "clipboard-write"] });
  const link = await linkOf();
  assert.equal(await page.locator("#copy-link").textContent(), "Copy the link");
  await page.locator("#copy-link").click();
  await until(page, () => document.querySelector("#link-said").textContent === "Copied.");
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), link);
});

test("from a disk it says that the address leads nowhere for others, and offers the file and the ending", async () => {
  await open();
  const ending = await linkOf();
  assert.ok(ending.startsWith("#1."), ending);
  assert.match(await page.locator("#link-words").innerText(), /open from a disk: its address leads nowhere for others/);
  const { text } = await saved(page, "#link-file");
  assert.equal(text, await fileOf(page));
  await follow(pageAddress + ending);
  assert.deepEqual(JSON.parse(await fileOf(page)), JSON.parse(text));
});

test("without own values unless asked; the link then says that its numbers are generic", async () => {
  await open({ address: hosted });
  await openFile(page, "own.json", OWN);
  const generic = await linkOf();
  assert.match(await page.locator("#link-words").innerText(), /Without the shop's own value: .* generic/);
  await page.locator("#link-own").check();
  const whole = await page.locator("#link-text").inputValue();
  assert.notEqual(whole, generic);
  await follow(generic);
  const text = await fileOf(page);
  assert.ok(!text.includes(METER.note) && text.includes('"seen"'), text);
  assert.match(await noticed(page), /made without one value of the shop's own: its numbers are generic/);
  await follow(whole);
  assert.deepEqual(JSON.parse(await fileOf(page)), JSON.parse(OWN));
  assert.doesNotMatch(await noticed(page), /generic/);
});

test("an order too long for a link offers its file", async () => {
  await open({ address: hosted });
  const line = Array.from({ length: 400 }, (_, index) => ({ label: `place ${(index * 7919) % 9973} km ${(index * 104729) % 99991}`, code: "R1-1", size: "30 in", quantity: 1 + index }));
  await openFile(page, "long.json", JSON.stringify({ schema_version: 1, line }));
  await page.locator("#share").click();
  assert.match(await page.locator("#link-words").innerText(), /links beyond 2000 are often cut|where at most/);
  assert.ok(await page.locator("#link-text").isHidden());
  assert.equal((await saved(page, "#link-file")).text, await fileOf(page));
});

for (const [what, hash, said] of [
  ["of a later version", "#2.abcd", /a link that has `#1\.` in it was wanted/], ["cut", "#1.q1YqTs5", /breaks off/],
  ["with a script in it", "#1.<script>document.title=1</script>", /was not opened/], ["without end", `#1.${"A".repeat(17_000)}`, /at most 16384/], ["of nothing", "#1.", /breaks off/],
]) {
  test(`a bad link, ${what}: a message, and the order stays`, async () => {
    ({ page } = await visit());
    const title = await page.title();
    await write(page, "life", "12");
    const old = await fileOf(page);
    await page.evaluate((hash) => { window.location.hash = hash; }, hash);
    await until(page, () => !document.querySelector("#notice").hidden);
    assert.match(await noticed(page), said);
    assert.equal(await fileOf(page), old);
    assert.equal(await page.title(), title);
    await follow(pageAddress + hash);
    assert.match(await noticed(page), /The link was not opened/);
    assert.ok((await wordsOf(page, "#answer")).length > 100, "the page has its first order");
  });
}

test("a link that would unpack to two megabytes, and one that holds a bad order", async () => {
  await open();
  const old = await fileOf(page);
  const { deflateRawSync } = await import("node:zlib");
  const link = (text) => `#1.${deflateRawSync(text).toString("base64url")}`;
  const looked = { per: "m2", boundary: "face", indicator: "co2e", tables: "" };
  for (const [text, said] of [
    [" ".repeat(2_000_000), /too large for a link/],
    [JSON.stringify({ order: { schema_version: 1, line: [{ quantity: "1,234" }] }, ...looked }), /the order in the link.*1,234/],
    [JSON.stringify({ order: JSON.parse(OWN), ...looked, per: "<b>" }), /`<b>` is no functional unit/],
    [JSON.stringify({ order: JSON.parse(OWN), ...looked, moved: [["printer.misprint", 1e9]] }), /move it within its range/],
  ]) {
    await page.evaluate((hash) => { window.location.hash = hash; }, link(text));
    await until(page, (source) => new RegExp(source).test(document.querySelector("#notice").innerText), said.source, String(said));
    assert.equal(await fileOf(page), old);
  }
});

test("after an edit the address no longer holds the old order", async () => {
  await open({ address: hosted });
  await follow(await linkOf());
  assert.match(page.url(), /#1\./);
  await write(page, "life", "12");
  assert.equal(page.url(), hosted);
});

const kept = join(import.meta.dirname, "links");
for (const name of readdirSync(kept)) {
  test(`the link of ${name} opens for ever`, async () => {
    const [link, wanted] = readFileSync(join(kept, name), "utf8").trim().split("\n");
    ({ page } = await visit("", { address: pageAddress + link }));
    assert.match(await noticed(page), /The order in the link is open/);
    assert.equal(JSON.stringify(JSON.parse(await fileOf(page))), wanted);
  });
}
