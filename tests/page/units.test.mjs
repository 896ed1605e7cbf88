// Other units are shown beside what was typed; the order is not touched, not by a thousand toggles.
import assert from "node:assert/strict";
import { test } from "node:test";
import { wordsOf } from "./browser.mjs";
import { fileOf, write } from "./editing.mjs";
import { visits } from "./visit.mjs";

let page;
const visit = visits();
async function open(demo, editor) { ({ page } = await visit(demo, { editor })); }
const beside = () => page.locator(".other-unit").allTextContents();

test("sizes in inches are shown in millimetres too, and the other way round", async () => {
  await open("stop", "edit");
  assert.deepEqual((await beside()).filter(Boolean), []);
  await page.locator("#f-units").selectOption("metric");
  assert.deepEqual((await beside()).filter(Boolean), ["762 mm"]);
  await write(page, "line[1].size", "36 in");
  assert.deepEqual((await beside()).filter(Boolean), ["914.4 mm"]);
  await page.locator("#f-units").selectOption("customary");
  assert.deepEqual((await beside()).filter(Boolean), []);
  assert.match(await page.locator("#order-area").textContent(), /^\d+ ft2 of face$/);
  await page.locator("#f-demo").selectOption("metric");
  assert.ok((await beside()).filter((text) => / in$/.test(text)).length > 1);
  await page.locator("#f-units").selectOption("typed");
  assert.deepEqual((await beside()).filter(Boolean), []);
});

test("distances too", async () => {
  await open("stop", "edit-site");
  await page.locator("#f-units").selectOption("customary");
  await write(page, "site.delivery", "60 km");
  assert.ok((await beside()).includes("37.3 mi"), String(await beside()));
});

test("a thousand toggles leave the order byte for byte, and the answer", async () => {
  await open("county", "edit");
  const old = [await fileOf(page), await wordsOf(page, "#answer"), await page.locator("#undo").textContent()];
  await page.evaluate(() => {
    const select = document.querySelector("#f-units");
    for (let turn = 0; turn < 1000; turn += 1) {
      select.value = ["metric", "customary", "typed"][turn % 3];
      select.dispatchEvent(new Event("change", { bubbles: true }));
    }
  });
  assert.deepEqual([await fileOf(page), await wordsOf(page, "#answer"), await page.locator("#undo").textContent()], old);
});
