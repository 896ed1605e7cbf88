// On paper: the figures in their paper form, nothing to click, nothing wider than the sheet.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openPage, settled, startBrowser } from "./browser.mjs";
import { mapped } from "./editing.mjs";

let browser;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());

for (const theme of ["light", "dark"]) {
  test(`printed from a ${theme} screen`, async () => {
    const { page, complaints } = await openPage(browser, { theme });
    await settled(page);
    await mapped(page);
    const count = await page.locator("figure img.screen-only").count();
    assert.ok(count >= 4, `pictures: ${count}`);
    await page.emulateMedia({ media: "print", colorScheme: "light" });
    const seen = await page.evaluate(() => ({
      screen: [...document.querySelectorAll("img.screen-only")].filter((part) => part.checkVisibility()).length,
      paper: [...document.querySelectorAll("img.paper-only")].filter((part) => part.checkVisibility() && part.naturalWidth > 0).length,
      clickable: [...document.querySelectorAll("main select, main input, main button:not(.number), main summary, main progress")].filter((part) => part.checkVisibility()).map((part) => part.id || part.textContent),
      wide: [...document.querySelectorAll("main img, main table")].filter((part) => part.checkVisibility() && part.getBoundingClientRect().right > document.documentElement.clientWidth).map((part) => part.alt ?? part.id),
    }));
    assert.deepEqual(seen, { screen: 0, paper: count, clickable: [], wide: [] });
    assert.deepEqual(complaints, []);
    await page.context().close();
  });
}

test("a narrower window and another theme ask for the pictures anew, and keep the words", async () => {
  const { page } = await openPage(browser);
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
  await page.context().close();
});
