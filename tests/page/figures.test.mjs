// Every figure of the page has the numbers, sentences and CSV of the command line.
import assert from "node:assert/strict";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { downloaded, settled } from "./browser.mjs";
import { mapped, orderOf } from "./editing.mjs";
import { asWritten, printed } from "./place.mjs";
import { visits } from "./visit.mjs";

// The page makes fewer draws where a curve or a table asks for many.
const FIGURES = [
  ["#stages-found", "stages"],
  ["#drivers-found", "drivers", "--most", "20"],
  ["#flips-found", "break-even", "--draws", "500"],
  ["#map-found", "map", "--draws", "500"],
  ["#sure-found", "spread"],
  ["#choices-found", "switches", "--draws", "10000"],
  ["#plan-found", "plan", "--draws", "500"],
];

const visit = visits();
let page;

// A figure as it is shown.
const shown = async (place) => asWritten(await page.locator(`${place} figure`).evaluate((figure) => ({
  heading: figure.querySelector("h3").textContent,
  sentences: [...figure.querySelectorAll(":scope > p:not(.saves)")].map((part) => part.textContent),
  tables: [...figure.querySelectorAll("table")].map((table) => ({
    caption: table.caption.textContent,
    columns: [...table.tHead.rows[0].cells].map((cell) => cell.textContent),
    rows: [...table.tBodies[0].rows].map((row) => [...row.cells].map((cell) =>
      (cell.dataset.value === undefined ? cell.textContent : { value: Number(cell.dataset.value), shown: cell.textContent }))),
  })),
})));

async function saved(place, form) {
  await page.evaluate((name) => { for (const part of document.querySelectorAll(`${name}, details:has(${name})`)) part.open = true; }, place);
  return downloaded(page, () => page.locator(`${place} .saves button`, { hasText: form }).click());
}

for (const [demo, indicator, pair] of [["stop", "co2e", 0], ["county", "waste", 1]]) {
  test(`${demo}, ${indicator}: figures are those of the command line`, async () => {
    ({ page } = await visit(demo));
    await page.locator("#f-pair").selectOption({ index: pair });
    await page.locator("#f-indicator").selectOption(indicator);
    await settled(page);
    await mapped(page);
    const order = await orderOf(page);
    const between = (await page.locator("#f-pair").evaluate((select) => select.selectedOptions[0].text)).replace(" and ", ",");
    const names = new Set();
    for (const [place, command, ...options] of FIGURES) {
      const words = [...options, "--indicator", indicator, ...(["plan", "stages"].includes(command) ? [] : ["--between", between])];
      const { heading, sentences, tables } = JSON.parse(printed(order, command, ...words, "--json"));
      const wanted = tables.map(({ caption, columns, rows }) => ({ caption, columns, rows }));
      assert.deepEqual(await shown(place), { heading, sentences, tables: wanted }, command);
      const { name, bytes } = await saved(place, "CSV");
      assert.match(name, /^[a-z0-9-]+-tables-[0-9a-f]+\.csv$/, "it names the order, the figure and the tables");
      names.add(name);
      assert.equal(bytes.toString(), printed(order, command, ...words, "--csv"), `${command} as CSV`);
    }
    assert.equal(names.size, FIGURES.length, `each figure has a file of its own: ${[...names]}`);
  });
}

test("every picture is saved as SVG and PNG, the two canvases too", async () => {
  ({ page } = await visit("stop"));
  await settled(page);
  await mapped(page);
  const places = ["#stages-found", "#flips-found", "#map-found", "#sure-found", "#swings-saved"];
  const panels = await page.locator("#loads figure").count();
  for (let place = 1; place <= panels; place += 1) places.push(`#loads figure:nth-child(${place})`);
  const names = new Set();
  for (const place of places) {
    const svg = (await saved(place, "SVG")).bytes.toString();
    assert.match(svg, /^<svg[^]*<\/svg>\s*$/, place);
    const { name, bytes } = await saved(place, "PNG");
    assert.match(name, /^tern-harbour-county-[a-z0-9-]+\.png$/);
    assert.equal(bytes.subarray(1, 4).toString(), "PNG");
    const [wide] = /width="(\d+)/.exec(svg).slice(1).map(Number);
    assert.equal(wide, 720);
    assert.equal(bytes.readUInt32BE(16), 2 * wide, "two dots a pixel");
    assert.ok(bytes.length > 5_000, "with ink");
    names.add(name);
  }
  assert.equal(names.size, places.length);
});

// The lines of a CSV without quotes, as cells.
const cells = (text) => text.trimEnd().split("\r\n").map((line) => line.split(","));

test("the loads of an indicator as CSV are the loads of the command line, with the ranges of its draws", async () => {
  ({ page } = await visit("stop"));
  await settled(page);
  const { alternatives } = JSON.parse(printed(await orderOf(page), "compare", "--json"));
  const csv = (await saved("#loads figure:last-child", "CSV")).bytes.toString();
  assert.ok(csv.endsWith("\r\n") && !/[^\r]\n/.test(csv), "lines end as RFC 4180 has it");
  const [, , ...rows] = cells(csv);
  const wanted = alternatives.map(({ id, loads }) => [id, loads.co2e.value, ...["5%", "25%", "50%", "75%", "95%"].map((point) => loads.co2e.draws[point])].map(String));
  assert.deepEqual(rows, wanted);
});

test("the swings as CSV are those of the drivers; the drawing of the command line is that of the page", async () => {
  ({ page } = await visit("stop"));
  await settled(page);
  const order = await orderOf(page);
  const between = (await page.locator("#f-pair").evaluate((select) => select.selectedOptions[0].text)).replace(" and ", ",");
  const words = ["--between", between, "--indicator", "co2e"];
  const { tables: [drivers] } = JSON.parse(printed(order, "drivers", ...words, "--most", "99", "--json"));
  const [, , ...rows] = cells((await saved("#swings-saved", "CSV")).bytes.toString());
  assert.equal(rows.length, 10);
  for (const [id, , , , , , low, high] of rows) {
    const row = drivers.rows.find(([known]) => known === id);
    // Worked out another way: the last digit may differ.
    for (const [said, is] of [[low, row[5].value], [high, row[6].value]]) assert.ok(Math.abs(Number(said) - is) <= 1e-12 * Math.abs(is), `${id}: ${said}, ${is}`);
  }
  const file = join(mkdtempSync(join(tmpdir(), "swings-")), "swings.svg");
  printed(order, "drivers", ...words, "--most", "10", "--svg", file);
  assert.equal((await saved("#swings-saved", "SVG")).bytes.toString(), readFileSync(file, "utf8"));
});

test("each figure names the sources of its numbers", async () => {
  ({ page } = await visit("stop"));
  await settled(page);
  await mapped(page);
  const lists = page.locator(".behind:visible");
  const count = await lists.count();
  assert.ok(count >= 8, `${count} figures`);
  for (let place = 0; place < count; place += 1) {
    const list = lists.nth(place);
    await list.locator("summary").click();
    await list.locator("li").first().waitFor();
    const sources = await list.locator("li").allTextContents();
    assert.ok(sources.length >= 3, `${place}: ${sources}`);
    for (const one of sources) assert.match(one, /^.+: \d+ inputs?, grade (own|[A-D])(, (own|[A-D]))*$/);
  }
});

test("break-even over every thing that is offered has a figure, or says why not", async () => {
  ({ page } = await visit("stop"));
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
