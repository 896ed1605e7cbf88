// The map is made on demand: it says how far it is, is stopped by a button, and falls with an edit.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until, wordsOf } from "./browser.mjs";
import { atOnce, mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
let page;
async function open(demo) {
  ({ page } = await visit(demo));
  await settled(page);
}

const focus = () => page.evaluate(() => document.activeElement.id);

test("it is made by the keyboard, and the focus stays", async () => {
  await open("stop");
  assert.equal(await page.locator("#map-found figure").count(), 0);
  await page.locator("#make-map").focus();
  await page.keyboard.press("Enter");
  await until(page, () => document.querySelector("#map-found figure") && document.querySelector("#map-way").hidden, undefined, "a map");
  assert.equal(await focus(), "make-map");
  assert.match(await wordsOf(page, "#map-found"), /Of \d+ places/);
});

test("while it is made it can be stopped, and then made after all", async () => {
  await open("county");
  await page.locator("#f-across").selectOption("designs");
  const during = await page.evaluate(() => {
    document.querySelector("#make-map").click();
    const seen = { way: !document.querySelector("#map-way").hidden, button: document.querySelector("#make-map").hidden, focus: document.activeElement.id };
    document.querySelector("#stop-map").click();
    return { ...seen, after: document.querySelector("#map-way").hidden, back: document.activeElement.id };
  });
  assert.deepEqual(during, { way: true, button: true, focus: "stop-map", after: true, back: "make-map" });
  await page.waitForTimeout(500);
  assert.equal(await page.locator("#map-found figure").count(), 0, "what was stopped does not come");
  await mapped(page);
});

test("an edit takes away a map that is there, and one that is being made", async () => {
  await open("stop");
  await mapped(page);
  const { seen } = await atOnce(page, "#f-demo", "county", ["#map-found"]);
  assert.equal(seen["#map-found"].trim(), "");
  await settled(page);
  await page.evaluate(() => document.querySelector("#make-map").click());
  await atOnce(page, "#f-demo", "stop", []);
  await settled(page);
  await page.waitForTimeout(500);
  assert.equal(await page.locator("#map-found figure").count(), 0);
  assert.ok(await page.locator("#map-way").isHidden());
  assert.ok(await page.locator("#make-map").isVisible());
});

test("it says how far it is", async () => {
  await open("county");
  const shares = await page.evaluate(async () => {
    const seen = new Set();
    const bar = document.querySelector("#map-progress");
    document.querySelector("#make-map").click();
    while (!document.querySelector("#map-way").hidden) { seen.add(bar.value); await new Promise((next) => setTimeout(next, 5)); }
    return [...seen];
  });
  assert.ok(shares.every((share) => share >= 0 && share <= 1), shares.join(" "));
  assert.deepEqual(shares, [...shares].sort((a, b) => a - b), "it only grows");
  assert.ok(shares.length > 1, "progress was heard");
});
