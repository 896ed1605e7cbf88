// The page has the numbers of the command line, byte for byte, in a real browser.
import { after, before, test } from "node:test";
import { openPage, startBrowser } from "./browser.mjs";
import { sameBytes } from "./same_bytes.mjs";

let browser;
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());

test("the page and the command line give the same bytes", async (t) => {
  const { page } = await openPage(browser);
  const compare = (order, per, boundary) =>
    page.evaluate((words) => window.faceload.compareJson(...words), [order, per, boundary]);
  await sameBytes(t, await page.evaluate(() => window.faceload.demosJson()), compare);
});
