// Over every picture lies a layer of real buttons: one stop of the Tab key, arrows inside, words for eye and ear.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, until } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
let page;
async function open(options) {
  ({ page } = await visit("stop", options));
  await settled(page);
}

const PICTURES = ["#loads figure:first-child", "#stages-found", "#swings", "#flips-found", "#map-found", "#sure-found"];
const focused = () => page.evaluate(() => document.activeElement.getAttribute("aria-label"));
const tip = (place) => page.locator(`${place} .tip`).evaluate((one) => (one.checkVisibility() ? one.textContent : ""));

test("each picture is one stop of the Tab key; arrows, Home and End go through all its parts", async () => {
  await open();
  await mapped(page);
  for (const place of PICTURES) {
    const spots = page.locator(`${place} .spot`);
    const count = await spots.count();
    const stops = await page.locator(`${place} .spots`).evaluate((layer) => [...layer.querySelectorAll("*")].filter((part) => part.tabIndex === 0).length);
    assert.ok(count >= 2, `${place}: ${count} parts`);
    assert.equal(stops, 1, place);
    await spots.first().focus();
    const heard = new Set([await focused()]);
    for (let step = 1; step < count; step += 1) { await page.keyboard.press("ArrowRight"); heard.add(await focused()); }
    assert.equal(heard.size, count, `${place}: each part has words of its own`);
    for (const words of heard) assert.match(words, /\w.*[\d:]/, `${place}: a name and a value`);
    await page.keyboard.press("Home");
    assert.equal(await focused(), await spots.first().getAttribute("aria-label"), place);
    await page.keyboard.press("End");
    assert.equal(await focused(), await spots.last().getAttribute("aria-label"), place);
  }
});

test("on the map up and down stay in their column", async () => {
  await open();
  await mapped(page);
  const spots = page.locator("#map-found .spot");
  await spots.first().focus();
  const first = await focused();
  await page.keyboard.press("ArrowUp");
  const above = await focused();
  assert.notEqual(above, first);
  const across = (words) => words.split(",")[0];
  assert.equal(across(above), across(first));
  await page.keyboard.press("ArrowDown");
  assert.equal(await focused(), first);
});

test("what a part says is seen by pointer and by keyboard, until Escape", async () => {
  await open();
  for (const place of ["#loads figure:first-child", "#swings", "#sure-found"]) {
    const spot = page.locator(`${place} .spot`).first();
    const words = await spot.getAttribute("aria-label");
    await spot.hover();
    assert.ok((await tip(place)).startsWith(words), place);
    await page.mouse.move(2, 2);
    assert.equal(await tip(place), "", `${place}: gone with the pointer`);
    await spot.focus();
    assert.ok((await tip(place)).startsWith(words), place);
    await page.keyboard.press("Escape");
    assert.equal(await tip(place), "", `${place}: gone by Escape`);
    assert.equal(await focused(), words, "the focus stays");
  }
});

test("a touch shows the words, the next one opens the arithmetic", async () => {
  await open({ width: 390, hasTouch: true });
  const spot = page.locator("#loads figure:first-child .spot").first();
  await spot.tap();
  assert.notEqual(await tip("#loads figure:first-child"), "");
  assert.equal(await page.locator("#explain").evaluate((dialog) => dialog.open), false);
  await spot.tap();
  assert.equal(await page.locator("#explain").evaluate((dialog) => dialog.open), true);
});

test("a part opens its arithmetic where it has one, at its stage or its input, and the focus comes back", async () => {
  await open();
  const opened = async (place, index) => {
    await page.locator(`${place} .spot`).nth(index).focus();
    await page.keyboard.press("Enter");
    await until(page, () => document.querySelector("#explain").open);
    const seen = await page.evaluate(() => ({ title: document.querySelector("#explain-title").textContent, at: document.activeElement.textContent, found: document.querySelector("#explain dt.found")?.textContent ?? "" }));
    await page.keyboard.press("Escape");
    await until(page, () => !document.querySelector("#explain").open);
    assert.equal(await focused(), await page.locator(`${place} .spot`).nth(index).getAttribute("aria-label"));
    return seen;
  };
  assert.match((await opened("#loads figure:last-child", 2)).title, /film, CO2e/);
  const stage = await opened("#stages-found", 0);
  assert.match(stage.title, /screen, CO2e/);
  assert.match(stage.at, /^materials \(/, "at its stage");
  const [item] = await page.locator("#swings label").allTextContents();
  assert.ok((await opened("#swings", 0)).found.startsWith(`${item}:`), "at its input");
});

test("parts lie where they are drawn: on the first bar there is its colour", async () => {
  await open();
  const inked = await page.evaluate(() => {
    const frame = document.querySelector("#loads .picture");
    const canvas = frame.querySelector("canvas");
    const box = canvas.getBoundingClientRect();
    const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
    const fine = canvas.height / box.height;
    return [...frame.querySelectorAll(".spot")].map((spot) => {
      const at = spot.getBoundingClientRect();
      const [from, to] = [at.top - box.top, at.bottom - box.top].map((y) => Math.round(y * fine) * canvas.width * 4);
      const colours = new Set();
      for (let dot = from; dot < to; dot += 4) colours.add(`${data[dot]} ${data[dot + 1]} ${data[dot + 2]}`);
      return ["0 114 178", "213 94 0", "204 121 167"].filter((colour) => colours.has(colour));
    });
  });
  // The direct-applied bar is grey, as the edges of letters are.
  assert.deepEqual(inked, [["0 114 178"], ["0 114 178"], ["213 94 0"], [], ["204 121 167"], ["204 121 167"]]);
});

test("while a slider moves the parts say what is drawn, and keep the focus", async () => {
  await open();
  const spot = page.locator("#loads figure:last-child .spot").first();
  await spot.focus();
  const old = await spot.getAttribute("aria-label");
  await page.locator("#swings input[type=range]").first().evaluate((input) => { input.value = input.max; input.dispatchEvent(new Event("input", { bubbles: true })); });
  await until(page, (words) => document.activeElement.getAttribute("aria-label") !== words, old);
  assert.match(await focused(), /^screen, CO2e: /);
});

test("numbers beside the loads, of a stage and of a job open the arithmetic that holds them", async () => {
  await open();
  await page.evaluate(() => { for (const part of document.querySelectorAll("#stages-found details, #by-line-shown")) part.open = true; });
  for (const place of ["#numbers .beside", "#stages-found table", "#by-line"]) {
    await page.locator(`${place} button.number`).first().click();
    await until(page, () => document.querySelector("#explain").open, undefined, place);
    assert.match(await page.locator("#explain-body").innerText(), /Source|Nothing in/);
    await page.keyboard.press("Escape");
  }
  const load = await page.locator("#by-line button.number").last().innerText();
  await page.locator("#by-line button.number").last().click();
  assert.ok((await page.locator("#explain-title").innerText()).includes(load), "of the job alone");
});
