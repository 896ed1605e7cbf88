// The sources behind the comparison: each with its licence, the credit that a licence asks for, and the tables' mark.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { test } from "node:test";
import { wordsOf } from "./browser.mjs";
import { commandLine, target } from "./place.mjs";
import { visits } from "./visit.mjs";

const visit = visits();

const sources = execFileSync(join(target, "release", "faceload"), ["sources"]).toString();

test("each source stands with its licence, and with the credit in the words of the licence", async () => {
  const { page } = await visit("county");
  await page.locator("#credits-shown > summary").click();
  const shown = await page.locator("#credits li").allInnerTexts();
  assert.ok(shown.length >= 15, `only ${shown.length} sources`);
  for (const one of shown) assert.match(one, /licence: \S+.*/, one);
  const asking = sources.split("\n").filter((line) => line.includes("; credit, as the licence asks: "));
  const said = asking.filter((line) => shown.some((one) => one.includes(line.trim())));
  assert.ok(said.some((line) => line.includes("Open Government Licence v3.0, https://")), `the licence and where it can be read: ${said}`);
  // Every source of the page says what the command line says of it.
  for (const one of shown) assert.ok(sources.includes(one.split("\n").at(-1)), one);
});

test("on paper the credits stand open, and are shut again after it", async () => {
  const { page } = await visit("stop");
  const open = () => page.locator("#credits-shown").evaluate((part) => part.open);
  assert.equal(await open(), false);
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  assert.equal(await open(), true);
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  assert.equal(await open(), false);
});

test("the page names the tables by the fingerprint of the command line", async () => {
  const { page } = await visit("stop");
  const mark = JSON.parse(commandLine(await page.evaluate(() => JSON.parse(window.faceload.demosJson())[0].order), "m2", "face")).factors.sha_256;
  assert.match(mark, /^[0-9a-f]{64}$/);
  assert.ok((await wordsOf(page, "#tables")).startsWith(`Tables ${mark.slice(0, 12)}: `));
});
