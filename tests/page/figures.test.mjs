// Every figure of the page has the numbers, sentences and CSV of the command line.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, afterEach, before, test } from "node:test";
import { settled, startBrowser } from "./browser.mjs";
import { mapped, openDemo, orderOf } from "./editing.mjs";
import { printed } from "./place.mjs";

// The page makes fewer draws where a curve or a table asks for many.
const FIGURES = [
  ["#stages-found", "stages"],
  ["#drivers-found", "drivers", "--most", "20"],
  ["#flips-found", "break-even", "--draws", "500"],
  ["#map-found", "map", "--draws", "500"],
  ["#sure-found", "spread"],
  ["#choices-found", "switches", "--draws", "500"],
  ["#plan-found", "plan", "--draws", "500"],
];

let browser;
let page;
let complaints = [];
before(async () => { browser = await startBrowser(); });
after(() => browser?.close());
afterEach(async () => {
  await page?.context().close();
  assert.deepEqual(complaints, []);
});

// A figure as it is shown.
const shown = (place) => page.locator(`${place} figure`).evaluate((figure) => ({
  heading: figure.querySelector("h3").textContent,
  sentences: [...figure.querySelectorAll(":scope > p:not(.saves)")].map((part) => part.textContent),
  tables: [...figure.querySelectorAll("table")].map((table) => ({
    caption: table.caption.textContent,
    columns: [...table.tHead.rows[0].cells].map((cell) => cell.textContent),
    rows: [...table.tBodies[0].rows].map((row) => [...row.cells].map((cell) =>
      (cell.dataset.value === undefined ? cell.textContent : { value: Number(cell.dataset.value), shown: cell.textContent }))),
  })),
}));

async function saved(place, form) {
  await page.evaluate((name) => { for (const part of document.querySelectorAll(`${name}, details:has(${name})`)) part.open = true; }, place);
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator(`${place} .saves button`, { hasText: form }).click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

for (const [demo, indicator, pair] of [["stop", "co2e", 0], ["county", "waste", 1]]) {
  test(`${demo}, ${indicator}: figures are those of the command line`, async () => {
    ({ page, complaints } = await openDemo(browser, demo));
    await page.locator("#f-pair").selectOption({ index: pair });
    await page.locator("#f-indicator").selectOption(indicator);
    await settled(page);
    await mapped(page);
    const order = await orderOf(page);
    const between = (await page.locator("#f-pair").evaluate((select) => select.selectedOptions[0].text)).replace(" and ", ",");
    for (const [place, command, ...options] of FIGURES) {
      const words = [...options, "--indicator", indicator, ...(["plan", "stages"].includes(command) ? [] : ["--between", between])];
      const { heading, sentences, tables } = JSON.parse(printed(order, command, ...words, "--json"));
      const wanted = tables.map(({ caption, columns, rows }) => ({ caption, columns, rows }));
      assert.deepEqual(await shown(place), { heading, sentences, tables: wanted }, command);
      const { name, bytes } = await saved(place, "CSV");
      assert.match(name, /^[a-z-]+\.csv$/);
      assert.equal(bytes.toString(), printed(order, command, ...words, "--csv"), `${command} as CSV`);
    }
  });
}

test("pictures are saved as SVG and PNG", async () => {
  ({ page, complaints } = await openDemo(browser, "stop"));
  await settled(page);
  const order = await orderOf(page);
  for (const place of ["#stages-found", "#flips-found", "#sure-found"]) {
    const svg = (await saved(place, "SVG")).bytes.toString();
    assert.match(svg, /^<svg[^]*<\/svg>\s*$/, place);
    const { name, bytes } = await saved(place, "PNG");
    assert.match(name, /\.png$/);
    assert.equal(bytes.subarray(1, 4).toString(), "PNG");
    const [wide] = /width="(\d+)/.exec(svg).slice(1).map(Number);
    assert.equal(bytes.readUInt32BE(16), 2 * wide, "two dots a pixel");
    assert.ok(bytes.length > 5_000, "with ink");
  }
  assert.ok(order.length > 0);
});

test("break-even over every thing that is offered has a figure, or says why not", async () => {
  ({ page, complaints } = await openDemo(browser, "stop"));
  await settled(page);
  const offered = await page.locator("#f-over option").evaluateAll((all) => all.map((one) => one.value));
  assert.equal(offered.length, 15);
  const seen = new Set();
  for (const over of offered) {
    await page.locator("#f-over").selectOption(over);
    await settled(page);
    const figure = await shown("#flips-found");
    assert.ok(figure.heading.endsWith(`over ${over}`), figure.heading);
    seen.add(JSON.stringify(figure));
  }
  assert.equal(seen.size, offered.length);
});
