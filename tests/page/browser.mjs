// A Chromium of the machine, and the page opened in it from the disk.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { pageAddress, pageFile } from "./place.mjs";

const flags = [
  "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync",
];

/** The page as a host would give it. */
export const hosted = "https://signs.example/faceload.html";
export const widths = [1440, 390];
export const themes = ["light", "dark"];

export function startBrowser() {
  const executablePath = process.env.FACELOAD_CHROMIUM ?? "/usr/bin/chromium";
  return chromium.launch({ executablePath, args: flags });
}

// The page, ready, with all it complained of and all it asked the network for.
export async function openPage(browser, options = {}) {
  const { width = 1440, theme = "light", address = pageAddress, state = "ready", forcedColors = "none", hasTouch = false, before, permissions = [], store } = options;
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    colorScheme: theme,
    reducedMotion: "reduce",
    forcedColors,
    hasTouch,
    offline: !address.startsWith(hosted),
    permissions,
    storageState: store,
  });
  // A host that is none: the page is put in its place.
  await context.route(`${hosted}**`, (route) => route.fulfill({ path: pageFile, contentType: "text/html; charset=utf-8" }));
  const page = await context.newPage();
  if (before) await page.addInitScript(before);
  const complaints = [];
  const requests = [];
  page.on("console", (line) => {
    if (["error", "warning"].includes(line.type())) complaints.push(line.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(address);
  await reach(page, state);
  return { page, complaints, requests };
}

async function reach(page, wanted) {
  const state = await until(page, () =>
    ["ready", "failed"].find((state) => state === document.documentElement.dataset.state),
  );
  const text = await page.evaluate(() => document.querySelector("#answer")?.textContent);
  assert.equal(state, wanted, `the page's state; #answer says: ${text}`);
}

// Asks again until the answer is true; waiting inside the page is not reliable under its policy.
export async function until(page, question, argument, what = String(question)) {
  const end = Date.now() + 15_000;
  while (Date.now() < end) {
    const answer = await page.evaluate(question, argument);
    if (answer) return answer;
    await new Promise((next) => setTimeout(next, 25));
  }
  throw new Error(`not reached in 15 s: ${what}`);
}

// The draws of what is on the screen are there.
export const drawn = (page) => until(page, () => document.documentElement.dataset.draws !== "under-way", undefined, "draws");

// All that is found of it is there, but what is made on demand.
export async function settled(page) {
  await drawn(page);
  await until(page, () => document.documentElement.dataset.figures !== "under-way", undefined, "figures");
}

// What is saved when something is pressed: the file's name and bytes. Chromium drops the eleventh file of one second without
// a word; nobody presses so fast, so neither does a test.
export async function downloaded(page, press) {
  await page.waitForTimeout(110);
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

// The words a reader sees in these parts of the page, once the draws are there.
export async function wordsOf(page, ...parts) {
  await drawn(page);
  return page.evaluate(
    (names) => names.map((name) => document.querySelector(name).innerText).join("\n"),
    parts,
  );
}
