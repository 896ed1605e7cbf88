// What the tests of the editors share: a page with a demo order open, its fields, and what it shows.
import { downloaded, openPage, until, wordsOf } from "./browser.mjs";

// The page with a demo order, an editor of it unfolded.
export async function openDemo(browser, demo, editor, options) {
  const opened = await openPage(browser, options);
  const { page } = opened;
  await page.locator('[data-field="demo"]').selectOption(demo);
  if (editor) await page.locator(`#${editor} > summary`).click();
  return opened;
}

// The field that writes this path of the order.
export const at = (page, path) => page.locator(`[data-path="${path}"]`);

// Does something and waits until these parts read otherwise.
export async function changes(page, parts, act) {
  const old = await wordsOf(page, ...parts);
  await act();
  const differs = ([names, words]) => names.map((name) => document.querySelector(name).innerText).join("\n") !== words;
  await until(page, differs, [parts, old], `${parts} change`);
}

// Chooses in a select and reads what the page says at once, before any draw can be there: words that are seen,
// by the name of their part, and whether the answer says that it is not yet whole.
export const atOnce = (page, select, value, parts) => page.evaluate(([id, wanted, names]) => {
  const field = document.querySelector(id);
  field.value = wanted;
  field.dispatchEvent(new Event("change", { bubbles: true }));
  return {
    seen: Object.fromEntries(names.map((name) => [name, document.querySelector(name).innerText])),
    busy: document.querySelector("#answer").getAttribute("aria-busy"),
  };
}, [select, value, parts]);

// The order on the screen, as text.
export const orderOf = (page) => page.evaluate(() => JSON.stringify(window.faceload.order.typed()));

// Makes the map and waits until it is there.
export async function mapped(page) {
  await page.locator("#make-map").click();
  await until(page, () => document.querySelector("#map-found figure") && document.querySelector("#map-way").hidden, undefined, "a map");
}

// The names at the head of the table of loads.
export const compared = (page) =>
  page.locator("#numbers thead th.number").evaluateAll((all) => all.map((part) => part.textContent));

// What the page says is not updated, or nothing.
export const notUpdated = (page) =>
  page.locator("#not-updated").evaluate((part) => (part.hidden ? "" : part.textContent));

// Writes into a field and leaves it.
export async function write(page, path, text) {
  await at(page, path).fill(text);
  await at(page, path).press("Tab");
}

// The order as its file would be.
export const fileOf = (page) => page.evaluate(() => window.faceload.order.text());

// Saves by a button; the file's name and text.
export async function saved(page, button = "#save-order") {
  const { name, bytes } = await downloaded(page, () => page.locator(button).click());
  return { name, text: bytes.toString() };
}

// Opens a file by the button.
export async function openFile(page, name, text) {
  await page.locator("#f-file").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  await until(page, () => !document.querySelector("#notice").hidden, undefined, "what became of the file");
}

// What the page has to say, or nothing.
export const noticed = (page) => page.locator("#notice").evaluate((place) => (place.hidden ? "" : place.innerText));
