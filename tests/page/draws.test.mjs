// Draws come behind the single values: the answer becomes findings, and nothing of an older order is shown as current.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until, wordsOf } from "./browser.mjs";
import { atOnce, orderOf } from "./editing.mjs";
import { printed } from "./place.mjs";
import { visits } from "./visit.mjs";

const FIGURES = ["#stages-found", "#drivers-found", "#flips-found", "#sure-found", "#choices-found", "#plan-found"];

const visit = visits();
let page;
let requests = [];
async function open(demo) {
  ({ page, requests } = await visit(demo));
  await settled(page);
}

test("single values stand at once, findings take their place", async () => {
  await open("stop");
  const { seen: first } = await atOnce(page, "#f-demo", "blades", ["#answer", "#numbers"]);
  assert.match(first["#answer"], /single values/i);
  assert.doesNotMatch(first["#answer"], /clearly|of 100/);
  const found = await wordsOf(page, "#answer");
  assert.match(found, /clearly|no clear difference|about the same/);
  assert.match(found, /10\s000 draws of \d+ inputs/);
  assert.doesNotMatch(found, /single values/i);
});

test("the answer says what the command line says", async () => {
  await open("county");
  const said = printed(await orderOf(page), "compare").replace(/\s+/g, " ");
  const sentences = await page.locator("#answer > p, #answer li > span, #answer details p").evaluateAll((all) => all.map((part) => part.textContent));
  const core = sentences.map((text) => text.replace(/^For .*?: /, "").replace(/^[\w-]+ and [\w-]+: /, ""));
  assert.ok(core.filter((text) => said.includes(text.replace(/\s+/g, " "))).length >= 2, `${core.join("\n")}\n\n${said}`);
});

test("under each load stands the middle 90 % of its draws, as the command line has it", async () => {
  await open("stop");
  const result = JSON.parse(printed(await orderOf(page), "compare", "--json"));
  const shown = await page.locator("#numbers tbody").first().locator("tr").evaluateAll((rows) =>
    rows.map((row) => [...row.querySelectorAll(".range")].map((part) => part.textContent)));
  result.alternatives.forEach(({ id, loads }, column) => Object.values(loads).forEach((load, row) => {
    const text = shown[row][column];
    const { "5%": p5, "95%": p95 } = load.draws;
    if (p5 === p95) { assert.equal(text, "", id); return; }
    const [low, high] = text.split(" to ").map(Number);
    // Two digits of half its width.
    for (const [said, is] of [[low, p5], [high, p95]]) assert.ok(Math.abs(said - is) <= 0.026 * (p95 - p5), `${id}: ${said} for ${is}`);
  }));
});

test("right after an edit no figure of the old order is seen", async () => {
  await open("stop");
  for (const place of FIGURES.filter((name) => name !== "#drivers-found")) assert.match((await wordsOf(page, place)), /\w{3}/, `${place} is filled`);
  const { seen, busy } = await atOnce(page, "#f-demo", "county", FIGURES);
  for (const [place, words] of Object.entries(seen)) assert.equal(words.trim(), "", `${place} still shows: ${words}`);
  assert.equal(busy, "true");
  await settled(page);
  assert.equal(await page.locator("[aria-busy=true]").count(), 0);
  for (const place of FIGURES) assert.ok(await page.locator(`${place} figure`).count() > 0, place);
});

test("of many edits the last one counts", async () => {
  await open("stop");
  await page.evaluate(() => {
    const field = document.querySelector("#f-demo");
    for (const name of ["county", "blades", "county", "guide"]) {
      field.value = name;
      field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  });
  await settled(page);
  const last = await wordsOf(page, "#answer", "#flips-found", "#sure-found");
  await open("guide");
  assert.equal(await wordsOf(page, "#answer", "#flips-found", "#sure-found"), last);
});

test("another pair keeps the answer, which is of all alternatives", async () => {
  await open("stop");
  const answer = await wordsOf(page, "#answer");
  const pair = await page.locator("#f-pair option").nth(1).getAttribute("value");
  const { seen } = await atOnce(page, "#f-pair", pair, ["#answer", "#sure-found"]);
  assert.equal(seen["#answer"], answer);
  assert.equal(seen["#sure-found"].trim(), "");
  await settled(page);
  assert.equal(await wordsOf(page, "#answer"), answer);
});

test("while a slider moves single values move; draws follow when it rests", async () => {
  await open("stop");
  const moved = await page.locator("#swings input[type=range]").first().evaluate(async (input) => {
    const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const seen = [];
    for (let step = 0; step < 12; step += 1) {
      input.value = String(110 + 5 * step);
      input.dispatchEvent(new Event("input", { bubbles: true }));
      await frame();
      seen.push([document.documentElement.dataset.draws, document.querySelector("#answer").innerText, document.querySelector("#flips-found").innerText]);
    }
    return seen;
  });
  assert.ok(new Set(moved.map(([, answer]) => answer)).size > 3, "the answer moves");
  for (const [draws, answer, flips] of moved) {
    assert.equal(draws, "under-way");
    assert.match(answer, /single values/i);
    assert.equal(flips.trim(), "");
  }
  assert.match(await wordsOf(page, "#answer"), /10\s000 draws/);
});

test("one polite sentence is spoken, of the final state", async () => {
  await open("stop");
  await page.evaluate(() => {
    window.spoken = [];
    new MutationObserver(() => window.spoken.push(document.querySelector("#spoken").textContent)).observe(document.querySelector("#spoken"), { childList: true, characterData: true, subtree: true });
  });
  await page.locator("#f-demo").selectOption("blades");
  await until(page, () => window.spoken.length > 0, undefined, "something is spoken");
  await page.waitForTimeout(1200);
  const spoken = await page.evaluate(() => window.spoken);
  assert.equal(spoken.length, 1, spoken.join("; "));
  assert.ok((await wordsOf(page, "#answer")).includes(spoken[0]), spoken[0]);
});

test("all of it asks for nothing outside the page", async () => {
  await open("county");
  assert.deepEqual(requests.filter((address) => !/^(blob|data):/.test(address) && !address.endsWith(".html")), []);
  assert.equal(await page.evaluate(() => window.faceload.work.refused()), false, "the worker runs from a disk");
});
