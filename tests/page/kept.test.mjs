// The order kept in the browser: a convenience that says what it is, overwrites nothing in silence, and may be refused.
import assert from "node:assert/strict";
import { test } from "node:test";
import { drawn, hosted, until, wordsOf } from "./browser.mjs";
import { fileOf, noticed, write } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(options = {}) { ({ page } = await visit("", { address: hosted, ...options })); }
const said = () => page.locator("#kept").textContent();
const stored = () => page.evaluate(() => localStorage.getItem("faceload.order"));
async function again(address = hosted) {
  await page.goto("about:blank");
  await page.goto(address);
  await drawn(page);
  await until(page, () => document.documentElement.dataset.state === "ready");
}
async function edited(years) {
  await write(page, "life", years);
  await until(page, (years) => (localStorage.getItem("faceload.order") ?? "").includes(years), years);
}

test("it is kept after a change, offered after a reload, and opened only when asked", async () => {
  await open();
  assert.equal(await stored(), null, "nobody's work is not kept");
  await edited("13");
  assert.match(await said(), /Kept in this browser, not in a file/);
  await page.locator("#f-per").selectOption("order");
  const mine = await fileOf(page);
  await again();
  assert.notEqual(await fileOf(page), mine);
  assert.match(await noticed(page), /An order from before is kept in this browser: Tern Harbour County, stop signs/);
  await page.getByRole("button", { name: "Open it" }).click();
  assert.equal(await fileOf(page), mine);
  await edited("14");
});

test("while it is offered nothing is written over it", async () => {
  await open();
  await edited("13");
  const kept = await stored();
  await again();
  await write(page, "life", "21");
  await page.waitForTimeout(200);
  assert.equal(await stored(), kept);
  assert.match(await said(), /nothing is written over it/);
  await page.locator("#notice").getByRole("button", { name: "Forget it" }).click();
  assert.equal(await stored(), null);
  await edited("22");
});

test("another window's order is not overwritten", async () => {
  await open();
  await edited("13");
  await page.evaluate(() => localStorage.setItem("faceload.order", "of another window"));
  await write(page, "life", "14");
  await until(page, () => document.querySelector("#kept").textContent.includes("another order is kept there"));
  assert.equal(await stored(), "of another window");
  await page.locator("#forget").click();
  assert.equal(await stored(), null);
  await edited("15");
});

test("a link in the address comes first, and what is kept stays", async () => {
  await open();
  await edited("13");
  const kept = await stored();
  await page.locator("#f-demo").selectOption("diamonds");
  await page.evaluate((kept) => localStorage.setItem("faceload.order", kept), kept);
  await page.locator("#share").click();
  const link = await page.locator("#link-text").inputValue();
  await again(link);
  assert.match(await noticed(page), /The order in the link is open/);
  assert.match(await fileOf(page), /warning A/);
  assert.equal(await stored(), kept);
  assert.match(await said(), /Another order is kept in this browser/);
});

test("what was kept and does not read as an order is not opened, and can be forgotten", async () => {
  await open();
  for (const bad of ["{", "[]", '{"version":1,"order":"{}"}', '{"version":2,"order":""}', "<script>1</script>"]) {
    await page.evaluate((bad) => localStorage.setItem("faceload.order", bad), bad);
    await again();
    assert.match(await said(), /does not read as an order/);
    assert.equal(await stored(), bad);
  }
  await page.locator("#forget").click();
  assert.equal(await stored(), null);
});

for (const [what, before] of [
  ["refused", () => { Object.defineProperty(window, "localStorage", { get() { throw new DOMException("no", "SecurityError"); } }); }],
  ["full", () => { Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }; }],
]) {
  test(`where storage is ${what} the page works and says so in one quiet sentence`, async () => {
    await open({ before });
    await write(page, "life", "13");
    await until(page, () => document.querySelector("#kept").textContent !== "");
    assert.match(await said(), /Not kept in this browser: it refuses, or has no room/);
    assert.equal(await noticed(page), "");
    assert.match(await wordsOf(page, "#order-extent"), /13 years/);
  });
}
