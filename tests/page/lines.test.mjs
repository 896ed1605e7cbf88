// The lines: base and sides change loads, a line is removed; line by line says who cannot, and why.
import assert from "node:assert/strict";
import { test } from "node:test";
import { wordsOf } from "./browser.mjs";
import { at, changes, notUpdated, orderOf, write } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(demo, editor) {
  ({ page } = await visit(demo));
  await page.locator(`#${editor} > summary`).click();
}

test("another base, other loads", async () => {
  await open("stop", "edit");
  const select = at(page, "line[1].base");
  const chosen = await select.inputValue();
  const bases = await select.evaluate((one) => [...one.options].map((option) => option.value));
  assert.ok(bases.length > 1);
  const old = await wordsOf(page, "#numbers");
  const seen = new Set([old]);
  for (const base of bases) {
    await select.selectOption(base);
    if ((await notUpdated(page)) === "") seen.add(await wordsOf(page, "#numbers"));
  }
  assert.ok(seen.size > 1, `no base of ${bases} changes a load`);
  await select.selectOption(chosen);
  assert.equal(await wordsOf(page, "#numbers"), old);
});

test("two sides, other loads for the order", async () => {
  await open("stop", "edit");
  await page.locator("#f-per").selectOption("order");
  await changes(page, ["#numbers"], () => at(page, "line[1].sides").selectOption("2"));
  assert.equal(await notUpdated(page), "");
});

test("a line is removed, and its job with it", async () => {
  await open("county", "edit");
  const rows = page.locator("#lines tbody tr");
  const count = await rows.count();
  assert.ok(count > 2);
  await changes(page, ["#answer"], () => rows.first().locator("button", { hasText: "remove" }).click());
  assert.equal(await rows.count(), count - 1);
});

test("line by line gives a load, or the reason why not", async () => {
  await open("county", "by-line-shown");
  const blocks = await page.locator("#by-line tbody").evaluateAll((all) => all.map((part) => part.innerText));
  assert.ok(blocks.length > 2, `jobs: ${blocks.length}`);
  const unable = blocks.find((words) => /, no: /.test(words));
  assert.ok(unable, "a job that some route cannot make");
  for (const words of unable.split("\n").filter((line) => line.includes(", no: "))) {
    assert.match(words, /^\S+, no: .{10,}/, "says who, and why");
  }
  assert.match(unable, /\d/, "and the loads of those that can");
});

test("a long order shows its lines in parts, and is whole all the same", async () => {
  await open("stop", "from-rows");
  const many = ["code\tsize\tlabel\tqty", ...Array.from({ length: 814 }, (_, index) => `R7-1\t12" X 18"\tpost ${index + 1}\t${1 + (index % 7)}`)].join("\n");
  await page.locator("#rows-text").fill(many);
  await page.locator("#rows-replace").click();
  await page.locator("#edit > summary").click();
  const rows = () => page.locator("#lines tbody:not(.rest) tr").count();
  assert.equal(await rows(), 50);
  assert.equal(JSON.parse(await orderOf(page)).line.length, 814);
  assert.match(await page.locator("#lines .rest").innerText(), /Lines 51 to 814 of 814 are in the order and not shown here/);
  // What was typed stays when more is shown.
  await write(page, "line[2].quantity", "12");
  await page.getByRole("button", { name: "Show lines 51 to 100" }).click();
  assert.equal(await rows(), 100);
  assert.equal(await page.evaluate(() => document.activeElement.dataset.path), "line[51].label");
  await changes(page, ["#numbers"], () => write(page, "line[60].quantity", "9000"));
  const { line } = JSON.parse(await orderOf(page));
  assert.deepEqual([line[1].quantity, line[59].quantity, line[813].label], ["12", "9000", "post 814"]);
  // A copy of the last line that is shown is shown too.
  await page.locator("#copy-line-100").click();
  assert.equal(await at(page, "line[101].label").inputValue(), "post 100");
});

test("a fault in a line that is not shown opens its part", async () => {
  await open("stop", "edit");
  const bad = { ...JSON.parse(await orderOf(page)) };
  bad.line = Array.from({ length: 300 }, (_, index) => ({ ...bad.line[0], label: `post ${index + 1}`, quantity: index === 219 ? "many" : "3" }));
  await page.evaluate((order) => { window.faceload.order.show(order); window.faceload.changed(); }, bad);
  const field = at(page, "line[220].quantity");
  assert.equal(await field.getAttribute("aria-invalid"), "true");
  assert.ok(await field.isVisible());
  assert.equal(await page.locator("#lines tbody:not(.rest) tr").count(), 100);
  assert.deepEqual(await page.locator("#lines .rest span").allInnerTexts(), ["Lines 51 to 200 of 300 are in the order and not shown here.", "Lines 251 to 300 of 300 are in the order and not shown here."]);
  await write(page, "line[220].quantity", "4");
  assert.equal(await notUpdated(page), "");
});

test("an edit of a long order is answered within a second", async () => {
  await open("stop", "edit");
  const order = JSON.parse(await orderOf(page));
  order.line = Array.from({ length: 814 }, (_, index) => ({ ...order.line[0], label: `post ${index + 1}`, size: `${24 + (index % 40)} in`, quantity: String(1 + (index % 9)) }));
  const took = await page.evaluate((order) => {
    window.faceload.order.show(order);
    window.faceload.changed();
    const times = ["12", "13", "14", "15", "16"].map((quantity) => {
      const start = performance.now();
      const field = document.querySelector('[data-path="line[2].quantity"]');
      field.value = quantity;
      field.dispatchEvent(new Event("change", { bubbles: true }));
      return performance.now() - start;
    });
    return Math.min(...times);
  }, order);
  assert.ok(took < 1000, `${took} ms`);
});
