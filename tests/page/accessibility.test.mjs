// axe-core finds nothing to complain of (its rules for WCAG 2.2 AA and good practice).
import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { at, mapped } from "./editing.mjs";
import { settled, themes, until, widths } from "./browser.mjs";
import { visits } from "./visit.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const visit = visits();

async function found(page) {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const result = await window.axe.run({ rules: { "target-size": { enabled: true } } });
    if (result.passes.length < 10) throw new Error("axe hardly looked at anything");
    return result.violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(" ")}: ${node.failureSummary}`),
    );
  });
}

for (const width of widths) {
  for (const theme of themes) {
    test(`axe finds nothing, ${width} px, ${theme}, nor with the arithmetic open`, async () => {
      const { page } = await visit(undefined, { width, theme });
      await settled(page);
      assert.deepEqual(await found(page), []);
      await page.locator("[data-explain]:visible").first().click();
      await until(page, () => document.querySelector("#explain").checkVisibility());
      assert.deepEqual(await found(page), []);
    });
  }
}

// Colours of each kind, and what may stand open in them.
const COLOURS = [{ theme: "light" }, { theme: "dark" }, { theme: "light", forcedColors: "active" }, { theme: "dark", forcedColors: "active" }];
const OPEN = [
  // The sources of a figure.
  (page) => page.locator("#flips-found .behind > summary").click(),
  // The editors, and a bad entry at its field.
  async (page) => { for (const id of ["edit", "edit-alternatives", "edit-site"]) await page.locator(`#${id} > summary`).click(); },
  async (page) => {
    await at(page, "line[1].quantity").fill("abc");
    await at(page, "line[1].quantity").press("Tab");
    await until(page, () => document.querySelector("[aria-invalid=true]"));
  },
  // The words of a part of a picture.
  async (page) => {
    await page.locator("#stages-found .spot").first().focus();
    await page.keyboard.press("ArrowDown");
    await until(page, () => document.querySelector("#stages-found .tip").checkVisibility());
  },
];

for (const colours of COLOURS) {
  test(`axe finds nothing, ${colours.theme}${colours.forcedColors ? ", colours forced" : ""}, with all this open at once`, async () => {
    const { page } = await visit(undefined, { width: 820, ...colours });
    await settled(page);
    for (const open of OPEN) await open(page);
    assert.equal(await page.locator("#flips-found .behind[open], #edit[open], #edit-alternatives[open], #edit-site[open], [aria-invalid=true], #stages-found .tip:visible").count(), 6);
    assert.deepEqual(await found(page), []);
  });
}

test("where colours are forced, pictures are drawings that keep their colours, not canvases", async () => {
  const { page } = await visit(undefined, { forcedColors: "active" });
  await settled(page);
  const seen = await page.evaluate(() => [...document.querySelectorAll(".picture")].map((frame) => ({
    canvas: frame.querySelector("canvas")?.checkVisibility() ?? false,
    drawn: [...frame.querySelectorAll("img")].filter((one) => one.checkVisibility() && one.naturalWidth > 200).length,
    adjusted: getComputedStyle(frame.querySelector("img")).forcedColorAdjust,
    covered: !/, 0\)$/.test(getComputedStyle(frame.querySelector(".spot")).backgroundColor),
  })));
  assert.ok(seen.length >= 9, `${seen.length} pictures`);
  for (const one of seen) assert.deepEqual(one, { canvas: false, drawn: 1, adjusted: "none", covered: false });
});

test("nothing on the page moves by itself", async () => {
  const { page } = await visit();
  await page.emulateMedia({ reducedMotion: "no-preference" });
  await settled(page);
  await mapped(page);
  assert.equal(await page.evaluate(() => document.getAnimations().length), 0);
  const smooth = await page.evaluate(() => [...document.querySelectorAll("*")].filter((part) => getComputedStyle(part).scrollBehavior !== "auto" || getComputedStyle(part).transitionDuration !== "0s").length);
  assert.equal(smooth, 0);
});

for (const width of [1440, 820, 390, 320]) {
  test(`axe finds nothing with all of the county's order unfolded, ${width} px`, async () => {
    const { page } = await visit(undefined, { width });
    await page.locator('[data-field="demo"]').selectOption("county");
    await settled(page);
    await mapped(page);
    await page.evaluate(() => { for (const part of document.querySelectorAll("main details")) part.open = true; });
    assert.deepEqual(await found(page), []);
  });
}

for (const width of widths) {
  test(`axe finds nothing with rows of a spreadsheet shown, ${width} px`, async () => {
    const { page } = await visit(undefined, { width });
    await page.locator("#from-rows > summary").click();
    await page.locator("#rows-text").fill("code\tsize\tqty\nR1-1\t30 in\t2\nTH-9\t18x24\t1,200");
    await until(page, () => document.querySelector("#rows-leave"));
    assert.deepEqual(await found(page), []);
  });
}

test("a picture without a name would be found", async () => {
  const { page } = await visit();
  await page.evaluate(() => document.querySelector("main").append(document.createElement("img")));
  const faults = await found(page);
  assert.ok(faults.some((fault) => fault.startsWith("image-alt:")), faults.join("\n"));
});

test("one first heading, a language, a name, landmarks", async () => {
  const { page } = await visit();
  const seen = await page.evaluate(() => ({
    language: document.documentElement.lang,
    title: document.title.length > 0,
    main: document.querySelectorAll("main").length,
    first: document.querySelectorAll("h1").length,
  }));
  assert.deepEqual(seen, { language: "en", title: true, main: 1, first: 1 });
});

test("every control is reached by the Tab key, and shows it", async () => {
  const { page } = await visit();
  await settled(page);
  const wanted = ["quantity", "batch", "designs", "life", "demo"].map((field) => `[data-field="${field}"]`);
  wanted.push("#swings input[type=range]", "[data-explain]", "#f-pair", "#f-indicator", "#f-over", "#f-across", "#f-down", "#make-map");
  wanted.push("#loads .spot", "#loads .saves button", "#swings .spot", "#swings-saved .saves button", "#stages-found .spot", "#stages-found .saves button", "#flips-found .saves button", "#flips-found summary", "#sure-found .saves button", "#choices-found .wide-table");
  await page.locator("#edit > summary").press("Enter");
  await page.locator("h1").click();
  const missing = new Set(wanted);
  const hidden = [];
  for (let step = 0; step < 400 && missing.size > 0; step += 1) {
    await page.keyboard.press("Tab");
    const seen = await page.evaluate((names) => {
      const part = document.activeElement;
      const style = getComputedStyle(part);
      const ring = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) > 0;
      return {
        name: `${part.tagName} ${part.id} ${part.className}`,
        marked: ring || style.boxShadow !== "none",
        matches: names.filter((name) => part.matches(name)),
      };
    }, wanted);
    for (const name of seen.matches) missing.delete(name);
    if (!seen.marked && !seen.name.startsWith("BODY")) hidden.push(seen.name);
  }
  assert.deepEqual([...missing], [], "not reached by Tab");
  assert.deepEqual(hidden, [], "focus without a visible mark");
});
