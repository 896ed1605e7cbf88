// On paper: the figures in their paper form, nothing to click, nothing wider than the sheet.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();

for (const theme of ["light", "dark"]) {
  test(`printed from a ${theme} screen`, async () => {
    const { page } = await visit(undefined, { theme });
    await settled(page);
    await mapped(page);
    const count = await page.locator("img.screen-only").count() + await page.locator("main canvas").count();
    assert.ok(count >= 10, `pictures: ${count}`);
    await page.emulateMedia({ media: "print", colorScheme: "light" });
    const seen = await page.evaluate(() => ({
      screen: [...document.querySelectorAll("img.screen-only, main canvas, .spot, .forced-only")].filter((part) => part.checkVisibility()).length,
      paper: [...document.querySelectorAll("img.paper-only")].filter((part) => part.checkVisibility() && part.naturalWidth > 0).length,
      clickable: [...document.querySelectorAll("main select, main input, main button:not(.number), main summary, main progress")].filter((part) => part.checkVisibility()).map((part) => part.id || part.textContent),
      wide: [...document.querySelectorAll("main img, main table")].filter((part) => part.checkVisibility() && part.getBoundingClientRect().right > document.documentElement.clientWidth).map((part) => part.alt ?? part.id),
    }));
    assert.deepEqual(seen, { screen: 0, paper: count, clickable: [], wide: [] });
  });
}

test("a narrower window and another theme ask for the pictures anew, and keep the words", async () => {
  const { page } = await visit();
  await settled(page);
  const picture = () => page.locator("#flips-found img.screen-only").getAttribute("src");
  const words = await page.locator("#sure-found").innerText();
  const seen = new Set([await picture()]);
  for (const change of [() => page.setViewportSize({ width: 700, height: 900 }), () => page.emulateMedia({ colorScheme: "dark" })]) {
    await change();
    await page.waitForTimeout(100);
    assert.equal(await page.locator("#sure-found").innerText(), words, "the words stay");
    const end = Date.now() + 10_000;
    while (seen.has(await picture()) && Date.now() < end) await page.waitForTimeout(50);
    seen.add(await picture());
  }
  assert.equal(seen.size, 3, "another picture each time");
});

// How many sheets a print takes.
async function sheets(page) {
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  return pdf.match(/\/Type \/Page\b/g).length;
}

test("an order of one line takes few sheets; what was unfolded is on them", async () => {
  const { page } = await visit("stop");
  await settled(page);
  const folded = await sheets(page);
  assert.ok(folded >= 4 && folded <= 8, `${folded} sheets`);
  await page.locator("#factors-shown > summary").click();
  assert.ok(await sheets(page) > folded, "the inputs take sheets of their own");
});

test("no picture is split over two sheets", async () => {
  const { page } = await visit("county");
  await settled(page);
  await page.emulateMedia({ media: "print" });
  // A sheet's height, less its margins, at 96 dots an inch.
  const sheet = (297 - 32) / 25.4 * 96;
  const tall = await page.locator(".picture img.paper-only").evaluateAll((all) => all.map((one) => [one.alt, one.getBoundingClientRect().height, getComputedStyle(one).breakInside]));
  assert.ok(tall.length >= 9);
  for (const [name, height, inside] of tall) assert.ok(height > 50 && height < sheet && inside === "avoid", `${name}: ${height} px, ${inside}`);
});
