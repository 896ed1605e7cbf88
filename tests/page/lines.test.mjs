// The lines: base and sides change loads, a line is removed; line by line says who cannot, and why.
import assert from "node:assert/strict";
import { test } from "node:test";
import { wordsOf } from "./browser.mjs";
import { at, changes, notUpdated } from "./editing.mjs";
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
