// axe-core finds nothing to complain of (its rules for WCAG 2.2 AA and good practice).
import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { mapped } from "./editing.mjs";
import { openPage, settled, startBrowser, themes, until, widths } from "./browser.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());

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
    test(`axe finds nothing, ${width} px, ${theme}`, async () => {
      const { page } = await openPage(browser, { width, theme });
      await settled(page);
      assert.deepEqual(await found(page), []);
      await page.context().close();
    });
    test(`axe finds nothing with the arithmetic open, ${width} px, ${theme}`, async () => {
      const { page } = await openPage(browser, { width, theme });
      await page.locator("[data-explain]:visible").first().click();
      await until(page, () => document.querySelector("#explain").checkVisibility());
      assert.deepEqual(await found(page), []);
      await page.context().close();
    });
  }
}

for (const width of [1440, 820, 390]) {
  test(`axe finds nothing with all of the county's order unfolded, ${width} px`, async () => {
    const { page } = await openPage(browser, { width });
    await page.locator('[data-field="demo"]').selectOption("county");
    await settled(page);
    await mapped(page);
    await page.evaluate(() => { for (const part of document.querySelectorAll("main details")) part.open = true; });
    assert.deepEqual(await found(page), []);
    await page.context().close();
  });
}

for (const width of widths) {
  test(`axe finds nothing with rows of a spreadsheet shown, ${width} px`, async () => {
    const { page } = await openPage(browser, { width });
    await page.locator("#from-rows > summary").click();
    await page.locator("#rows-text").fill("code\tsize\tqty\nR1-1\t30 in\t2\nTH-9\t18x24\t1,200");
    await until(page, () => document.querySelector("#rows-leave"));
    assert.deepEqual(await found(page), []);
    await page.context().close();
  });
}

test("a picture without a name would be found", async () => {
  const { page } = await openPage(browser);
  await page.evaluate(() => document.querySelector("main").append(document.createElement("img")));
  const faults = await found(page);
  assert.ok(faults.some((fault) => fault.startsWith("image-alt:")), faults.join("\n"));
  await page.context().close();
});

test("one first heading, a language, a name, landmarks", async () => {
  const { page } = await openPage(browser);
  const seen = await page.evaluate(() => ({
    language: document.documentElement.lang,
    title: document.title.length > 0,
    main: document.querySelectorAll("main").length,
    first: document.querySelectorAll("h1").length,
  }));
  assert.deepEqual(seen, { language: "en", title: true, main: 1, first: 1 });
  await page.context().close();
});

test("every control is reached by the Tab key, and shows it", async () => {
  const { page } = await openPage(browser);
  await settled(page);
  const wanted = ["quantity", "batch", "designs", "life", "demo"].map((field) => `[data-field="${field}"]`);
  wanted.push("#swings input[type=range]", "[data-explain]", "#f-pair", "#f-indicator", "#f-over", "#f-across", "#f-down", "#make-map");
  wanted.push("#stages-found .saves button", "#flips-found .saves button", "#flips-found summary", "#sure-found .saves button", "#choices-found .wide-table");
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
  await page.context().close();
});
