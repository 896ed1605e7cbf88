// Alternatives are added, changed, renamed and removed; `otherwise` makes what one cannot.
import assert from "node:assert/strict";
import { test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { at, changes, compared, fileOf, notUpdated } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits("edit-alternatives");
const open = async (demo) => { ({ page } = await visit(demo)); };
const rows = () => page.locator("#alternatives-edit tbody tr");

test("an alternative is added as a copy, and compared", async () => {
  await open("stop");
  const old = await compared(page);
  await changes(page, ["#numbers"], () => page.locator("#add-alternative").click());
  const now = await compared(page);
  assert.equal(now.length, old.length + 1);
  assert.equal(new Set(now).size, now.length, "each has its own name");
  assert.equal(await rows().count(), now.length);
  const focus = await page.evaluate(() => document.activeElement.id);
  assert.equal(focus, "add-alternative", "the focus stays");
});

test("as film an alternative has neither ink nor drying, and other loads", async () => {
  await open("stop");
  assert.equal(await at(page, "alternative[1].ink").count(), 1);
  assert.equal(await at(page, "alternative[1].drying").count(), 1);
  const routes = await at(page, "alternative[1].route").evaluate((select) => [...select.options].map((one) => [one.value, one.text]));
  assert.equal(routes.length, 4);
  const [film] = routes.find(([, text]) => /film/.test(text));
  await changes(page, ["#numbers"], () => at(page, "alternative[1].route").selectOption(film));
  assert.equal(await at(page, "alternative[1].ink").count(), 0);
  assert.equal(await at(page, "alternative[1].drying").count(), 0);
  assert.equal(await notUpdated(page), "");
  const shown = await page.locator("#alternatives dd").first().textContent();
  assert.match(shown, /film/);
});

test("a new ink brings a drying that suits it", async () => {
  await open("stop");
  const old = await at(page, "alternative[1].drying").inputValue();
  await changes(page, ["#numbers"], () => at(page, "alternative[1].ink").selectOption("uv"));
  assert.notEqual(await at(page, "alternative[1].drying").inputValue(), old);
  assert.equal(await notUpdated(page), "");
});

test("an alternative is removed, and gone from every list", async () => {
  await open("stop");
  const old = await compared(page);
  await changes(page, ["#numbers"], () => rows().nth(1).locator("button", { hasText: "remove" }).click());
  assert.deepEqual(await compared(page), old.filter((_, index) => index !== 1));
  const pairs = await page.locator("#f-pair option").allTextContents();
  assert.ok(pairs.length > 0 && pairs.every((words) => !words.split(" and ").includes(old[1])), pairs.join("; "));
});

test("the last one left cannot be removed", async () => {
  await open("stop");
  for (let left = await rows().count(); left > 1; left -= 1) await rows().last().locator("button", { hasText: "remove" }).click();
  assert.equal(await rows().count(), 1);
  assert.ok(await rows().first().locator("button", { hasText: "remove" }).isDisabled());
});

test("a new name goes where the old one stood", async () => {
  await open("county");
  const [old] = await at(page, "alternative[1].otherwise").evaluateAll(([select]) => [select.value]);
  const place = (await compared(page)).indexOf(old) + 1;
  assert.ok(place > 0, `county's first alternative leaves lines to another, got: ${old}`);
  await at(page, `alternative[${place}].id`).fill("renamed");
  await at(page, `alternative[${place}].id`).press("Tab");
  await until(page, () => document.querySelector("#numbers thead").innerText.includes("renamed"));
  assert.equal(await at(page, "alternative[1].otherwise").inputValue(), "renamed");
  assert.equal(await notUpdated(page), "");
});

test("without `otherwise` lines go unmade, with it they are covered", async () => {
  await open("county");
  const other = await at(page, "alternative[1].otherwise").inputValue();
  assert.notEqual(other, "");
  const covered = await wordsOf(page, "#answer");
  assert.match(covered, new RegExp(`cannot make it: .* so ${other} makes it`));
  await changes(page, ["#answer"], () => at(page, "alternative[1].otherwise").selectOption(""));
  const [name] = await compared(page);
  const bare = await wordsOf(page, "#answer");
  // Alone or among others of which the same is said.
  assert.doesNotMatch(bare, new RegExp(`: ([^:\\n]* )?${name}(,| and)? ([^:\\n]* )?cannot make it: .* so ${other} makes it`));
  await changes(page, ["#answer"], () => at(page, "alternative[1].otherwise").selectOption(other));
  assert.equal(await wordsOf(page, "#answer"), covered, "the same order has the same answer");
});

test("one is copied beside itself, changed and put back, and all are put back", async () => {
  await open("county");
  const opened = await fileOf(page);
  const names = await compared(page);
  await page.locator("#copy-alternative-1").click();
  assert.deepEqual((await compared(page)).length, names.length + 1);
  assert.equal((await compared(page))[0], names[0]);
  await page.locator("#remove-alternative-2").click();
  assert.equal(await fileOf(page), opened, "a copy that is removed leaves no trace");
  assert.ok(await page.locator("#put-back-alternative-1").isDisabled());
  await at(page, "alternative[1].otherwise").selectOption("");
  assert.notEqual(await fileOf(page), opened);
  await page.locator("#put-back-alternative-1").click();
  assert.equal(await fileOf(page), opened);
  await page.locator("#remove-alternative-2").click();
  await at(page, "alternative[1].otherwise").selectOption("");
  await page.locator("#alternatives-back").click();
  assert.equal(await fileOf(page), opened);
  assert.ok(await page.locator("#alternatives-back").isDisabled());
});
