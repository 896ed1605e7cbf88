// Changing the order changes the answer; a bad entry is met at its field and changes nothing.
import assert from "node:assert/strict";
import { afterEach, beforeEach, after, before, test } from "node:test";
import { openPage, startBrowser, until, wordsOf } from "./browser.mjs";

let browser;
let page;
let complaints;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());
beforeEach(async () => {
  ({ page, complaints } = await openPage(browser));
  await page.locator("#edit > summary").click();
});
afterEach(async () => {
  await page.context().close();
  assert.deepEqual(complaints, []);
});

// The field of the order's first line.
const field = (name) => page.locator(`[data-field="${name}"]`).first();

async function write(name, value) {
  await field(name).fill(value);
  await field(name).press("Tab");
}

const differs = ([parts, old]) =>
  parts.map((name) => document.querySelector(name).innerText).join("\n") !== old;

async function changes(parts, act) {
  const old = await wordsOf(page, ...parts);
  await act();
  await until(page, differs, [parts, old], `${parts} change`);
}

test("another quantity, another answer", async () => {
  assert.notEqual(await field("quantity").inputValue(), "12");
  await changes(["#answer"], () => write("quantity", "12"));
  assert.match(await wordsOf(page, "#order-line"), /\b12\b/);
  const at12 = await wordsOf(page, "#answer");
  await changes(["#answer"], () => write("quantity", "1000"));
  await changes(["#answer"], () => write("quantity", "12"));
  assert.equal(await wordsOf(page, "#answer"), at12, "the same order has the same answer");
});

test("other designs, other loads", async () => {
  await changes(["#loads"], async () => write("designs", String(Number(await field("designs").inputValue()) + 3)));
});

test("every demo order has its own answer", async () => {
  const names = await field("demo").evaluate((select) => [...select.options].map((o) => o.value));
  assert.ok(names.length > 1, "several demo orders");
  const answers = new Set();
  for (const name of names) {
    const old = await wordsOf(page, "#order-line", "#answer");
    const chosen = await field("demo").inputValue();
    await field("demo").selectOption(name);
    if (chosen !== name) await until(page, differs, [["#order-line", "#answer"], old], `demo ${name}`);
    answers.add(await wordsOf(page, "#order-line", "#answer"));
  }
  assert.equal(answers.size, names.length);
});

for (const bad of ["abc", "-3", "0", "", "1e999", "NaN", "<img src=x onerror=alert(1)>"]) {
  test(`quantity \`${bad}\` is met at its field, the answer stays`, async () => {
    const old = await wordsOf(page, "#answer");
    await write("quantity", bad);
    await until(page, () => document.querySelector('[data-field="quantity"]').getAttribute("aria-invalid") === "true");
    const message = await field("quantity").evaluate((input) => {
      const ids = `${input.getAttribute("aria-errormessage") ?? ""} ${input.getAttribute("aria-describedby") ?? ""}`;
      const parts = ids.split(/\s+/).map((id) => id && document.getElementById(id)).filter(Boolean);
      return parts.filter((part) => part.checkVisibility()).map((part) => part.innerText).join(" ");
    });
    assert.ok(message.trim().length > 10, `a message tied to the field, got: ${message}`);
    const now = await wordsOf(page, "#answer");
    for (const line of old.split("\n")) assert.ok(now.includes(line), `the answer keeps: ${line}`);
    assert.equal(await page.evaluate(() => document.documentElement.dataset.state), "ready");

    await write("quantity", "12");
    await until(page, () => document.querySelector('[data-field="quantity"]').getAttribute("aria-invalid") !== "true");
    assert.notEqual(await wordsOf(page, "#answer"), old, "a good entry counts again");
  });
}

test("a slider moves the numbers, and back", async () => {
  const slider = page.locator("#swings input[type=range]").first();
  const start = await slider.inputValue();
  const parts = ["#answer", "#loads"];
  const old = await wordsOf(page, ...parts);
  await slider.focus();
  await page.keyboard.press("End");
  const moved = await slider.inputValue();
  if (moved === start) await page.keyboard.press("Home");
  assert.notEqual(await slider.inputValue(), start, "the slider moved");
  await until(page, differs, [parts, old], "the numbers move");
  await slider.evaluate((input, value) => {
    input.value = value;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    input.dispatchEvent(new Event("change", { bubbles: true }));
  }, start);
  await until(page, ([names, words]) =>
    names.map((name) => document.querySelector(name).innerText).join("\n") === words,
  [parts, old], "the numbers come back");
});

test("each slider says what it is and where it stands", async () => {
  const sliders = await page.locator("#swings input[type=range]").evaluateAll((all) =>
    all.map((input) => ({
      name: input.getAttribute("aria-label") ?? input.labels?.[0]?.innerText ?? input.getAttribute("aria-labelledby") ?? "",
      spoken: input.getAttribute("aria-valuetext") ?? "",
    })),
  );
  assert.ok(sliders.length >= 5, `sliders: ${sliders.length}`);
  for (const { name, spoken } of sliders) {
    assert.ok(name.trim().length > 2, "a slider without a name");
    assert.match(spoken, /\d.*\S/, `${name}: its value with the unit`);
  }
});
