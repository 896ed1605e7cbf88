// The report: printed at A4 and Letter, its board part on exactly two sheets; the page makes the same file as the command line.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { after, before, test } from "node:test";
import { drawn, openPage, startBrowser, until } from "./browser.mjs";
import { target } from "./place.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const scratch = mkdtempSync(join(tmpdir(), "report-"));
const written = new Map();
let browser;
before(async () => {
  browser = await startBrowser();
  for (const order of ["stop", "county", "guide"]) {
    const file = join(scratch, `${order}.html`);
    execFileSync(join(target, "release", "faceload"), ["report", order, "-o", file]);
    written.set(order, file);
  }
});
after(async () => { await browser?.close(); rmSync(scratch, { recursive: true }); });

/** The report in a browser, with what it complained of. */
async function opened(order, options = {}) {
  const context = await browser.newContext({ offline: true, viewport: { width: options.width ?? 1440, height: 900 } });
  const page = await context.newPage();
  const complaints = [];
  page.on("console", (line) => { if (["error", "warning"].includes(line.type())) complaints.push(line.text()); });
  await page.goto(pathToFileURL(written.get(order)).href);
  return { page, complaints };
}

/** How many sheets a part of it takes, by printing that part alone. */
async function sheets(page, format, without) {
  const style = await page.addStyleTag({ content: `${without} { display: none !important; }` }).catch(() => null);
  assert.equal(style, null, "the policy lets no other style in");
  await page.evaluate((names) => { for (const part of document.querySelectorAll(names)) part.hidden = true; }, without);
  const pdf = (await page.pdf({ format, printBackground: false })).toString("latin1");
  await page.evaluate((names) => { for (const part of document.querySelectorAll(names)) part.hidden = false; }, without);
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g).length;
}

for (const format of ["A4", "Letter"]) {
  for (const order of ["stop", "county", "guide"]) {
    test(`the board part of ${order} is two sheets of ${format}`, async () => {
      const { page, complaints } = await opened(order);
      assert.equal(await sheets(page, format, ".nothing, .rest"), 2);
      const whole = await sheets(page, format, ".nothing");
      assert.ok(whole > 10 && whole < 50, `${whole} sheets`);
      // Only the style that the test tried to add was refused.
      assert.ok(complaints.every((line) => line.includes("Content Security Policy")), complaints.join("\n"));
      await page.context().close();
    });
  }
}

test("on paper nothing is wider than the sheet, and no row, picture or line of a list is split", async () => {
  const { page } = await opened("county", { width: 680 });
  await page.emulateMedia({ media: "print" });
  const seen = await page.evaluate(() => ({
    wide: [...document.querySelectorAll("table, svg, p, li")].filter((part) => part.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map((part) => part.textContent.slice(0, 60)),
    split: [...document.querySelectorAll("tr, figure, li")].filter((part) => getComputedStyle(part).breakInside !== "avoid").length,
    heads: [...document.querySelectorAll("thead")].filter((part) => getComputedStyle(part).display !== "table-header-group").length,
    backgrounds: [...document.querySelectorAll("main *")].filter((part) => !part.closest("svg") && getComputedStyle(part).backgroundColor !== "rgba(0, 0, 0, 0)").length,
  }));
  assert.deepEqual(seen, { wide: [], split: 0, heads: 0, backgrounds: 0 });
  await page.context().close();
});

for (const width of [1440, 390]) {
  test(`axe finds nothing in the report, ${width} px`, async () => {
    const { page, complaints } = await opened("stop", { width });
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const result = await window.axe.run();
      if (result.passes.length < 10) throw new Error("axe hardly looked at anything");
      return result.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(" ")}: ${node.failureSummary}`));
    });
    assert.deepEqual(found, []);
    assert.deepEqual(complaints, []);
    await page.context().close();
  });
}

test("a route is told without colour: by its name at each bar, and by its mark among those of its route", async () => {
  const { page } = await opened("stop");
  const first = await page.locator(".panels svg").first().evaluate((svg) => [...svg.querySelectorAll("text")].map((text) => text.textContent.trim()));
  for (const id of ["screen", "screen-uv", "film", "direct", "digital", "digital-uv"]) assert.ok(first.includes(id), id);
  await page.context().close();
});

test("the page makes the report of the command line, byte for byte, shows it, and prints it alone", async () => {
  const { page, complaints } = await openPage(browser);
  await drawn(page);
  const saving = page.waitForEvent("download", { timeout: 60_000 });
  await page.locator("#save-report").click();
  const saved = readFileSync(await (await saving).path(), "utf8");
  const order = await page.evaluate(() => window.faceload.findings.asking().order);
  const between = await page.evaluate(() => document.querySelector("#f-pair").selectedOptions[0].text.split(" and ").join(","));
  const file = join(scratch, "order.json");
  writeFileSync(file, order);
  const wanted = execFileSync(join(target, "release", "faceload"), ["report", file, "--between", between, "-o", "-"], { maxBuffer: 1 << 28 }).toString();
  let at = 0;
  while (at < wanted.length && wanted[at] === saved[at]) at += 1;
  assert.ok(saved === wanted, `differs at ${at}: ${JSON.stringify(saved.slice(at - 60, at + 40))} where the command line has ${JSON.stringify(wanted.slice(at - 60, at + 40))}`);

  await page.locator("#read-report").click();
  await until(page, () => document.querySelector("#report-read").checkVisibility());
  const words = await page.locator("#report-found").innerText();
  assert.ok(words.includes("For a critical reviewer") && words.includes("References"), words.slice(0, 200));
  assert.equal(await page.locator("#report-found main").count(), 0, "one main part");
  await page.evaluate(axe);
  const found = await page.evaluate(async () => (await window.axe.run("#report-read")).violations.map(({ id, nodes }) => `${id}: ${nodes[0].target.join(" ")}`));
  assert.deepEqual(found, []);

  await page.locator("#report-close").click();
  await page.evaluate(() => { window.print = () => { window.printed = (window.printed ?? 0) + 1; }; });
  await page.locator("#print-report").click();
  await until(page, () => window.printed === 1);
  await page.emulateMedia({ media: "print" });
  const shown = await page.evaluate(() => [...document.body.children].filter((part) => part.checkVisibility()).map((part) => part.id || part.tagName));
  assert.deepEqual(shown, ["report-read"]);
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  assert.ok(!(await page.evaluate(() => document.querySelector("#report-read").checkVisibility())), "the page prints itself again");
  assert.deepEqual(complaints, []);
  await page.context().close();
});

test("another order closes the report that is open", async () => {
  const { page } = await openPage(browser);
  await drawn(page);
  await page.locator("#read-report").click();
  await until(page, () => document.querySelector("#report-read").checkVisibility());
  await page.locator("#f-per").selectOption("order");
  await until(page, () => !document.querySelector("#report-read").checkVisibility());
  await page.context().close();
});
