// The page as it looks: four widths, light, dark, forced colours, open dialogs, and paper, written to target/screenshots.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { openPage, settled, startBrowser, themes } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { target } from "./place.mjs";

const folder = join(target, "screenshots");
mkdirSync(folder, { recursive: true });
const browser = await startBrowser();

async function shot(name, options, demo = "stop", act = async () => {}) {
  const { page } = await openPage(browser, options);
  if (demo !== "stop") await page.locator("#f-demo").selectOption(demo);
  await settled(page);
  await act(page);
  if (name.startsWith("print")) await page.pdf({ path: join(folder, `${name}.pdf`), format: "A4" });
  else await page.screenshot({ path: join(folder, `${name}.png`), fullPage: !name.includes("open") });
  await page.context().close();
}

for (const width of [1440, 820, 390, 320]) {
  for (const theme of themes) await shot(`${width}-${theme}`, { width, theme }, "stop", mapped);
}
await shot("county-1440", {}, "county", mapped);
for (const theme of themes) await shot(`forced-${theme}`, { theme, forcedColors: "active" }, "stop", mapped);
await shot("arithmetic-open-1440", {}, "stop", (page) => page.locator("[data-explain]").first().click());
await shot("arithmetic-open-390", { width: 390 }, "stop", (page) => page.locator("[data-explain]").first().click());
await shot("spot-open-1440", {}, "stop", async (page) => { await page.locator("#swings .spot").first().focus(); await page.keyboard.press("ArrowDown"); });
await shot("spot-open-390", { width: 390 }, "stop", async (page) => { await page.locator("#loads .spot").first().focus(); await page.keyboard.press("End"); });
await shot("print-stop", {});
await shot("print-county", {}, "county");
await shot("print-county-unfolded", {}, "county", async (page) => {
  await mapped(page);
  await page.evaluate(() => { for (const part of document.querySelectorAll("main details")) part.open = true; });
  await page.waitForTimeout(300);
});
await browser.close();
