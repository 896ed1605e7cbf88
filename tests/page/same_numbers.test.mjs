// The page has the numbers of the command line, byte for byte, in a real browser.
import { test } from "node:test";
import { sameBytes } from "./same_bytes.mjs";
import { visits } from "./visit.mjs";

const visit = visits();

test("the page and the command line give the same bytes", async (t) => {
  const { page } = await visit();
  const compare = (order, per, boundary) =>
    page.evaluate((words) => window.faceload.compareJson(...words), [order, per, boundary]);
  await sameBytes(t, await page.evaluate(() => window.faceload.demosJson()), compare);
});
