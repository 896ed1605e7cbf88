// What leaves the page: the sentence with its draws, and nothing of a result that is not of the order on the screen.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until } from "./browser.mjs";
import { fileOf, saved, write } from "./editing.mjs";
import { printed } from "./place.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits("edit");
async function open(options) {
  ({ page } = await visit("stop", options));
  await settled(page);
}
const enabled = (id) => page.locator(id).isEnabled();

test("the sentence says order, per what, in how many draws, what got worse, and what it is not", async () => {
  await open({ permissions: ["clipboard-read", "clipboard-write"] });
  await page.locator("#f-pair").selectOption({ label: "screen and film" });
  await settled(page);
  await page.locator("#copy-message").click();
  await until(page, () => document.querySelector("#message-said").textContent === "Copied.");
  const text = await page.evaluate(() => navigator.clipboard.readText());
  // The statement of the command line, whose lines are folded.
  const wanted = printed(await fileOf(page), "statement", "--between", "screen,film").trim().replace(/\n/g, " ");
  assert.equal(text, wanted);
  for (const said of [/^Per m2 of sign face kept in service 10 years, face only/, /of 100 draws of our input ranges/, /screen was lower in waste/, /film was lower in solvent/,
    /not verified by a third party, not a public comparative assertion/, /screen \(screen printing, solvent ink/]) assert.match(text, said);
  assert.doesNotMatch(text, /\n|undefined|NaN/);
  await page.locator("#f-per").selectOption("order");
  await page.locator("#f-pair").selectOption({ label: "film and digital" });
  await settled(page);
  await page.locator("#copy-message").click();
  await until(page, () => document.querySelector("#message-said").textContent === "Copied.");
  assert.match(await page.evaluate(() => navigator.clipboard.readText()), /^For the whole order, .*of film .*of digital .*of 100 draws of our input ranges/);
});

test("where the clipboard is refused the text is shown, selected", async () => {
  await open({ before: () => { Object.defineProperty(navigator, "clipboard", { value: { writeText: () => Promise.reject(new DOMException("no", "NotAllowedError")) } }); } });
  await page.locator("#copy-message").click();
  await until(page, () => document.querySelector("#message-said textarea") === document.activeElement);
  const seen = await page.evaluate(() => ({ selected: document.getSelection().toString() || document.activeElement.value.slice(document.activeElement.selectionStart, document.activeElement.selectionEnd), said: document.querySelector("#message-said").innerText }));
  assert.match(seen.selected, /^Per m2 of sign face kept in service 10 years/);
  assert.match(seen.said, /refuses its clipboard/);
});

test("while draws are under way there is no sentence to copy, and the button says why", async () => {
  await open();
  const why = await page.evaluate(() => {
    const field = document.querySelector('[data-path="line[1].quantity"]');
    field.value = "12";
    field.dispatchEvent(new Event("change", { bubbles: true }));
    return new Promise((next) => { queueMicrotask(() => next([document.querySelector("#copy-message").disabled, document.querySelector("#why-not").textContent])); });
  });
  assert.deepEqual(why, [true, "The draws are under way."]);
  await settled(page);
  assert.ok(await enabled("#copy-message"));
});

test("while an input is at fault nothing of a result leaves, the order file does, and paper shows the fault alone", async () => {
  await open();
  await write(page, "line[1].quantity", "many");
  for (const id of ["#copy-message", "#share"]) assert.ok(!(await enabled(id)), id);
  const saves = await page.locator(".saves button").evaluateAll((all) => all.map((one) => [one.disabled, one.title]));
  assert.ok(saves.length > 3 && saves.every(([off, why]) => off && /Not updated: .*quantity/.test(why)), JSON.stringify(saves));
  assert.match((await saved(page)).text, /"many"/);
  await page.emulateMedia({ media: "print" });
  const paper = await page.locator("body").innerText();
  assert.match(paper, /Not updated/);
  assert.doesNotMatch(paper, /kg CO2e|loads least/);
  await page.emulateMedia({ media: "screen" });
  await write(page, "line[1].quantity", "12");
  await settled(page);
  for (const id of ["#copy-message", "#share"]) assert.ok(await enabled(id), id);
  assert.ok(await page.locator(".saves button").first().isEnabled());
  await page.emulateMedia({ media: "print" });
  assert.match(await page.locator("body").innerText(), /kg CO2e/);
});

test("one alternative has no sentence", async () => {
  await open();
  await page.locator("#edit-alternatives > summary").click();
  for (let left = 6; left > 1; left -= 1) await page.locator("#remove-alternative-1").click();
  await settled(page);
  assert.equal(await page.locator("#why-not").textContent(), "There is no pair of alternatives that share a line to speak of.");
  assert.match(await fileOf(page), /digital-uv/);
});
