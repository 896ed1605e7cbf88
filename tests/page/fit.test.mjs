// Every demo order fits its window with everything unfolded, and every control is named and large enough.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();

// In the page: all that is wrong with what is shown now.
function faults() {
  const room = document.documentElement.clientWidth;
  const wrong = [];
  if (document.documentElement.scrollWidth > room) wrong.push(`scrolls sideways: ${document.documentElement.scrollWidth} in ${room}`);
  const scrolls = (part) => part && (getComputedStyle(part).overflowX !== "visible" || scrolls(part.parentElement));
  const say = (part) => `${part.tagName} ${part.id || part.className} ${part.textContent.slice(0, 30)}`;
  for (const part of document.querySelectorAll("main *")) {
    const box = part.getBoundingClientRect();
    if (box.width > 0 && box.right > room + 0.5 && !scrolls(part.parentElement)) wrong.push(`beyond the window: ${say(part)}`);
  }
  for (const part of document.querySelectorAll("main input, main select, main button, main summary")) {
    if (!part.checkVisibility()) continue;
    const box = part.getBoundingClientRect();
    // A part of a picture is as large as it is drawn; its number stands in the table, where it is large enough.
    if (!part.matches(".spot") && (box.width < 24 || box.height < 24)) wrong.push(`smaller than 24 px: ${say(part)} ${box.width} x ${box.height}`);
    const name = part.getAttribute("aria-label") ?? part.labels?.[0]?.textContent ?? part.textContent;
    if (!name.trim() || /undefined|null/.test(name)) wrong.push(`without a name: ${say(part)}`);
  }
  for (const part of document.querySelectorAll(".wide-table")) {
    if (part.tabIndex !== 0 || part.getAttribute("role") !== "region" || !(part.ariaLabel || part.getAttribute("aria-labelledby"))) wrong.push(`not to be scrolled by keyboard: ${say(part)}`);
  }
  const ids = [...document.querySelectorAll("[id]")].map((part) => part.id);
  for (const id of new Set(ids)) if (ids.filter((one) => one === id).length > 1) wrong.push(`an id twice: ${id}`);
  return wrong;
}

for (const width of [1440, 820, 390, 320]) {
  test(`every demo order fits at ${width} px, unfolded, without complaint`, async () => {
    const { page } = await visit(undefined, { width });
    const names = await page.locator('[data-field="demo"] option').evaluateAll((all) => all.map((one) => one.value));
    assert.ok(names.length > 1);
    for (const name of names) {
      await page.locator('[data-field="demo"]').selectOption(name);
      await settled(page);
      await mapped(page);
      await page.evaluate(() => { for (const part of document.querySelectorAll("main details")) part.open = true; });
      assert.deepEqual(await page.evaluate(faults), [], name);
      assert.ok(await page.locator("#not-updated").isHidden(), `${name} is answered`);
    }
  });
}
