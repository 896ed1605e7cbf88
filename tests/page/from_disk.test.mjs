// The page opens from a disk, without a network: no complaint, no request, nothing beside the sheet.
import assert from "node:assert/strict";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { openPage, startBrowser, themes, until, widths, wordsOf } from "./browser.mjs";
import { folder, pageFile, shots, withoutPacked } from "./place.mjs";

let browser;
before(async () => {
  mkdirSync(shots, { recursive: true });
  browser = await startBrowser();
});
after(() => browser?.close());

for (const width of widths) {
  for (const theme of themes) {
    test(`opens from a disk, ${width} px, ${theme}`, async () => {
      const { page, complaints, requests } = await openPage(browser, { width, theme });
      assert.ok((await wordsOf(page, "#answer")).trim().length > 40, "the answer has sentences");
      assert.ok((await page.locator("#loads canvas").count()) > 0, "loads are drawn");
      assert.ok(await until(page, inked, "#loads canvas"), "the first panel has ink");
      await page.screenshot({ path: join(shots, `${width}-${theme}.png`), fullPage: true });
      await page.waitForTimeout(700);
      assert.deepEqual(complaints, []);
      const outside = requests.filter((address) => !/^(file|blob|data):/.test(address));
      assert.deepEqual(outside, [], "requests that leave the machine");
      const files = requests.filter((address) => address.startsWith("file:"));
      assert.equal(files.length, 1, `one file is read: ${files}`);
      await page.context().close();
    });
  }
}

for (const width of [820, 390, 320]) {
  test(`nothing scrolls sideways at ${width} px`, async () => {
    const { page } = await openPage(browser, { width });
    const wide = await page.evaluate(() => {
      const room = document.documentElement.clientWidth;
      const scrolls = (part) => part && (getComputedStyle(part).overflowX !== "visible" || scrolls(part.parentElement));
      const out = [...document.querySelectorAll("body *")].filter(
        (part) => part.getBoundingClientRect().right > room + 0.5 && !scrolls(part.parentElement),
      );
      return {
        over: document.documentElement.scrollWidth - room,
        parts: out.slice(0, 8).map((part) => `${part.tagName} ${part.id} ${part.className}`),
      };
    });
    assert.equal(wide.over, 0, `wider than the window: ${wide.parts.join(", ")}`);
    await page.context().close();
  });
}

test("the ground is exactly white or #121212, as the page says", async () => {
  for (const [theme, ground] of [["light", "rgb(255, 255, 255)"], ["dark", "rgb(18, 18, 18)"]]) {
    const { page } = await openPage(browser, { theme });
    const seen = await page.evaluate(() =>
      [document.body, document.documentElement]
        .map((part) => getComputedStyle(part).backgroundColor)
        .find((colour) => colour !== "rgba(0, 0, 0, 0)"),
    );
    assert.equal(seen ?? "rgb(255, 255, 255)", ground, theme);
    await page.context().close();
  }
});

test("prints", async () => {
  const { page, complaints } = await openPage(browser);
  const pdf = await page.pdf({ path: join(folder, "print.pdf"), format: "A4" });
  assert.equal(pdf.subarray(0, 5).toString(), "%PDF-");
  assert.deepEqual(complaints, []);
  await page.context().close();
});

test("without what is packed the page says so in words", async () => {
  const cut = join(folder, "without-wasm.html");
  writeFileSync(cut, withoutPacked(readFileSync(pageFile, "utf8")));
  const address = pathToFileURL(cut).href;
  const { page } = await openPage(browser, { address, state: "failed" });
  const words = (await wordsOf(page, "#answer")).trim();
  assert.ok(words.length > 20, `a reason a reader understands, got: ${words}`);
  await page.context().close();
});

test("a script that the policy does not name is not run, and the page says so", async () => {
  const changed = join(folder, "other-policy.html");
  const html = readFileSync(pageFile, "utf8");
  const other = html.replace(/('sha256-[^']+') ('sha256-[^']+') 'sha256-[^']+' 'wasm-unsafe-eval'/, "$1 $2 'wasm-unsafe-eval'");
  assert.notEqual(other, html);
  writeFileSync(changed, other);
  const { page, complaints } = await openPage(browser, { address: pathToFileURL(changed).href, state: "failed" });
  assert.match(await wordsOf(page, "#answer"), /its scripts are damaged/);
  assert.match(complaints.join("\n"), /Content Security Policy/);
  await page.context().close();
});

// Whether a canvas has more than one colour.
function inked(name) {
  const canvas = document.querySelector(name);
  if (!canvas.width || !canvas.height) return false;
  const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
  const dots = new Uint32Array(data.buffer);
  return dots.some((dot) => dot !== dots[0]);
}

test("where storage is refused the page works all the same", async () => {
  const before = () => {
    for (const name of ["localStorage", "sessionStorage", "indexedDB", "caches"]) {
      Object.defineProperty(window, name, { get() { throw new DOMException("refused", "SecurityError"); } });
    }
  };
  const { page, complaints } = await openPage(browser, { before });
  assert.ok((await wordsOf(page, "#answer")).trim().length > 40);
  assert.deepEqual(complaints, []);
  await page.context().close();
});
