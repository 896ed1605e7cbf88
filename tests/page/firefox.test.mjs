// The page opens from a disk in Firefox too, and gives the same answer.
import assert from "node:assert/strict";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { startFirefox } from "./firefox.mjs";
import { asWritten, asked, commandLine, folder, pageAddress, pageFile, printed, shots, withoutPacked } from "./place.mjs";

let firefox;
before(async () => {
  mkdirSync(shots, { recursive: true });
  firefox = await startFirefox();
  await firefox.size(1440, 1000);
});
after(() => firefox?.close());

const answer = () => firefox.evaluate("return document.querySelector('#answer').innerText");

test("firefox opens the page from a disk and gets ready", async () => {
  assert.equal(await firefox.open(pageAddress), "ready", await answer());
  assert.ok((await answer()).trim().length > 40, "the answer has sentences");
  writeFileSync(join(shots, "firefox-1440.png"), await firefox.picture());
});

test("firefox gives the bytes of the command line", async () => {
  assert.equal(await firefox.open(pageAddress), "ready");
  const orders = JSON.parse(await firefox.evaluate("return window.faceload.demosJson()"));
  assert.ok(orders.length > 0);
  const script = "return window.faceload.compareJson(...arguments)";
  for (const { name, order } of orders) {
    for (const { per, boundary } of asked) {
      const got = await firefox.evaluate(script, [order, per, boundary]);
      assert.ok(got === commandLine(order, per, boundary), `${name}, ${per}, ${boundary}`);
    }
  }
});

test("firefox makes the draws in a worker from a disk, and finds what the command line finds", async () => {
  assert.equal(await firefox.open(pageAddress), "ready");
  const end = Date.now() + 30_000;
  const done = () => firefox.evaluate("return document.documentElement.dataset.figures === 'here' && document.documentElement.dataset.draws === 'here'");
  while (!(await done()) && Date.now() < end) await new Promise((next) => setTimeout(next, 50));
  assert.ok(await done(), "figures are there");
  assert.equal(await firefox.evaluate("return window.faceload.work.refused()"), false);
  const order = await firefox.evaluate("return JSON.stringify(window.faceload.order.typed())");
  for (const [place, ...words] of [["#flips-found", "break-even", "--draws", "500"], ["#sure-found", "spread"]]) {
    const { heading, sentences } = JSON.parse(printed(order, ...words, "--json"));
    const seen = await firefox.evaluate("return [...document.querySelectorAll(`${arguments[0]} h3, ${arguments[0]} figure > p:not(.saves)`)].map((part) => part.textContent)", [place]);
    assert.deepEqual(asWritten(seen), [heading, ...sentences]);
    assert.ok(await firefox.evaluate("return document.querySelector(`${arguments[0]} img`).naturalWidth > 200", [place]), "with its picture");
  }
  writeFileSync(join(shots, "firefox-1440-draws.png"), await firefox.picture());
});

test("firefox shows another picture without the wasm", async () => {
  await firefox.open(pageAddress);
  const whole = await firefox.picture();
  const cut = join(folder, "without-wasm.html");
  writeFileSync(cut, withoutPacked(readFileSync(pageFile, "utf8")));
  assert.equal(await firefox.open(pathToFileURL(cut).href), "failed");
  assert.ok(!whole.equals(await firefox.picture()));
});
