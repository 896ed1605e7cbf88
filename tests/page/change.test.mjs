// Changing the order changes the answer; a bad entry is met at its field and changes nothing.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { until, wordsOf } from "./browser.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
let page;
beforeEach(async () => {
  ({ page } = await visit());
  await page.locator("#edit > summary").click();
});

// The field of the order's first line.
const field = (name) => page.locator(`[data-field="${name}"]`).first();

async function write(name, value) {
  await field(name).fill(value);
  await field(name).press("Tab");
}

const differs = ([parts, old]) =>
  parts.map((name) => document.querySelector(name).innerText).join("\n") !== old;

// What stands on each canvas of the loads.
const pictures = () =>
  page.locator("#loads canvas").evaluateAll((all) => all.map((canvas) => canvas.toDataURL()));

// What the page says is wrong, seen by the reader.
const notes = () =>
  page.locator(".fault:visible").evaluateAll((all) => all.map((part) => part.innerText).join(" ") || "says nothing");

// Sets a slider as a finger does: while it moves, and when it rests.
const put = (slider, value) =>
  slider.evaluate((input, to) => {
    input.value = to;
    for (const kind of ["input", "change"]) input.dispatchEvent(new Event(kind, { bubbles: true }));
  }, value);

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
  await field("demo").selectOption("diamonds"); // made to order: each design has its set-up
  const more = String(Number(await field("designs").inputValue()) + 3);
  await changes(["#numbers"], () => write("designs", more));
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

test("a slider moves the numbers and the pictures, and back", async () => {
  const slider = page.locator("#swings input[type=range]").first();
  const start = await slider.inputValue();
  const parts = ["#answer", "#numbers"];
  const old = await wordsOf(page, ...parts);
  const drawn = await pictures();
  await slider.focus();
  for (let step = 0; step < 5; step += 1) await page.keyboard.press("PageDown");
  assert.notEqual(await slider.inputValue(), start, "the slider moved");
  await until(page, differs, [parts, old], "the numbers move");
  // What is out of sight is drawn when the slider rests.
  const redrawn = (old) => [...document.querySelectorAll("#loads canvas")].map((canvas) => canvas.toDataURL()).join() !== old;
  await until(page, redrawn, drawn.join(), "the pictures move with them");
  await put(slider, start);
  const same = ([names, words]) => names.map((name) => document.querySelector(name).innerText).join("\n") === words;
  await until(page, same, [parts, old], "the numbers come back");
  await until(page, (old) => [...document.querySelectorAll("#loads canvas")].map((canvas) => canvas.toDataURL()).join() === old, drawn.join(), "the pictures come back");
});

test("every slider moves the numbers at both its ends", async () => {
  const parts = ["#answer", "#numbers"];
  const dead = [];
  for (const slider of await page.locator("#swings input[type=range]").all()) {
    const start = await slider.inputValue();
    const old = await wordsOf(page, ...parts);
    for (const end of ["min", "max"]) {
      await put(slider, await slider.getAttribute(end));
      await page.waitForTimeout(150);
      if ((await wordsOf(page, ...parts)) === old) {
        const at = await slider.getAttribute("aria-valuetext");
        dead.push(`${await slider.getAttribute("data-input")} at ${at}: ${await notes()}`);
      }
      await put(slider, start);
      await page.waitForTimeout(150);
    }
  }
  assert.deepEqual(dead, [], "without effect");
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
