// The page has the numbers of the command line, byte for byte, in a real browser.
import assert from "node:assert/strict";
import { test } from "node:test";
import { openPage, startBrowser } from "./browser.mjs";
import { sameBytes } from "./same_bytes.mjs";

// One page for all of its parts, closed after the last of them.
test("the page and the command line give the same bytes", async (t) => {
  const browser = await startBrowser();
  t.after(() => browser.close());
  const { page, complaints } = await openPage(browser);
  const compare = (order, per, boundary) =>
    page.evaluate((words) => window.faceload.compareJson(...words), [order, per, boundary]);
  await sameBytes(t, await page.evaluate(() => window.faceload.demosJson()), compare);
  assert.deepEqual(complaints, []);
});
