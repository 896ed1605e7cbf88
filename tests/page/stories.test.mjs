// The three people at the screen, step by step: once by mouse, once by keyboard alone.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import { downloaded, hosted, settled, until, wordsOf } from "./browser.mjs";
import { fileOf, noticed } from "./editing.mjs";
import { keyboard, mouse } from "./hands.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
const demo = (name) => readFileSync(resolve(import.meta.dirname, `../../crate/core/order/demo/${name}.json`), "utf8");
const clipboard = { permissions: ["clipboard-read", "clipboard-write"] };
const text = (page, name) => page.locator(name).first().evaluate((part) => part.textContent);
const isOffline = (requests) => assert.deepEqual(requests.filter((address) => !/^(file|blob|data):/.test(address)), []);

async function copied(page, place) {
  await until(page, (name) => document.querySelector(name).textContent.includes("Copied"), place);
  return page.evaluate(() => navigator.clipboard.readText());
}

async function open(page, hand, name, content) {
  const choosing = page.waitForEvent("filechooser");
  await hand.press("#open-file");
  await (await choosing).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(content) });
  await until(page, () => !document.querySelector("#notice").hidden);
  assert.match(await noticed(page), new RegExp(`${name} is open`));
  await settled(page);
}

async function save(page, press) {
  const { name, bytes } = await downloaded(page, press);
  return { name, text: bytes.toString() };
}

/** A value of the shop's own for an input that the search finds. */
async function own(page, hand, id, value, note) {
  await hand.write("#f-search", id);
  await hand.press("#factors [id^=own-]");
  assert.equal(await page.evaluate(() => document.querySelector("#own").open), true);
  await hand.write("#own-value", value);
  await hand.write("#own-note", note);
  await hand.press("#own button[type=submit]");
  assert.equal(await page.evaluate(() => document.querySelector("#own").open), false);
  await settled(page);
  const words = await page.locator("#factors tbody tr").first().innerText();
  for (const said of ["of this order", note]) assert.ok(words.includes(said), `${said}: ${words}`);
}

const handOf = (name, page) => (name === "mouse" ? mouse(page) : keyboard(page));

for (const name of ["mouse", "keyboard"]) {
  test(`a salesperson, by ${name}`, async () => {
    // 1, 2: opened from a disk, no network: a worked order and its answer.
    const { page, requests } = await visit(undefined, clipboard);
    const hand = handOf(name, page);
    await settled(page);
    assert.match(await text(page, "#order-line"), /stop signs/);
    assert.match(await text(page, "#answer .sentence"), /loads least|loads clearly less/);
    // 3: the order of this customer.
    await hand.choose("#f-demo", "24 warning diamonds of 6 designs, made to order");
    await hand.choose("#f-demo", "100 stop signs");
    await hand.press("#edit > summary");
    await hand.write('[data-path="line[1].quantity"]', "12");
    await hand.write('[data-path="line[1].batch"]', "");
    await hand.choose('[data-path="line[1].stock"]', "to order");
    await hand.write('[data-path="line[1].colours"]', "red 76 %; white 24 %");
    await settled(page);
    assert.equal(JSON.parse(await fileOf(page)).line[0].colours, "red 76 %; white 24 %");
    assert.match(await text(page, "#order-line"), /^12 stop signs/);
    // 4: which loads less in CO2e, and what got worse.
    await hand.press("#answer details > summary");
    const of = async (pair) => (await page.locator("#answer details p").allInnerTexts()).find((one) => one.startsWith(`${pair}:`));
    assert.match(await of("screen and film"), /CO2e/);
    assert.match(await of("screen and film"), /but more in|no clear difference/);
    assert.match(await text(page, "#moves-now"), /^CO2e.*: screen [\d.]+ more than film/);
    // 5: the quantity where the order flips, and the other side of it.
    const [, before, after] = /from film to screen between (\d+) and (\d+)/.exec(await text(page, "#flips-found"));
    for (const [quantity, more] of [[before, "screen"], [after, "film"]]) {
      await hand.write('[data-path="line[1].quantity"]', quantity);
      await settled(page);
      assert.match(await text(page, "#moves-now"), new RegExp(`${more} [\\d.]+ more than `), quantity);
    }
    // 6: why? The step that makes most of it.
    await hand.press('#stages-found .spot[aria-label^="materials, film"]');
    assert.match(await text(page, "#explain-title"), /film.*CO2e/);
    assert.match(await page.evaluate(() => document.activeElement.textContent), /^materials/);
    await page.keyboard.press("Escape");
    // 7: the sentence that may be sent.
    await hand.press("#copy-message");
    const sentence = await copied(page, "#message-said");
    for (const said of [/^Per m2 of sign face kept in service 10 years/, /of 100 draws of our input ranges/, /solvent/, /not verified by a third party/]) assert.match(sentence, said);
    // 8: the order file; and where the page is hosted, a link without shop values, opened on a phone.
    const file = await save(page, () => hand.press("#save-order"));
    assert.match(file.name, /stop-signs\.json$/);
    isOffline(requests);
    const { page: there } = await visit(undefined, { ...clipboard, address: hosted });
    const other = handOf(name, there);
    await open(there, other, file.name, file.text);
    await other.press("#share");
    await other.press("#copy-link");
    const link = await copied(there, "#link-said");
    assert.ok(link.startsWith(`${hosted}#1.`) && link.length < 2000, link);
    const { page: phone } = await visit(undefined, { address: link, width: 390, hasTouch: true });
    await settled(phone);
    assert.equal(await wordsOf(phone, "#order-line"), await wordsOf(there, "#order-line"));
    assert.equal(await wordsOf(phone, "#answer"), await wordsOf(there, "#answer"));
  });

  test(`an officer, by ${name}`, async () => {
    const { page, requests } = await visit(undefined, { before: () => { window.print = () => { window.printed = (window.printed ?? 0) + 1; }; } });
    const hand = handOf(name, page);
    await settled(page);
    // 1: last year's order file.
    await open(page, hand, "last-year.json", demo("county"));
    // 2: area, heat, life.
    await hand.press("#edit-site > summary");
    const answers = [await wordsOf(page, "#numbers")];
    const areas = await page.locator('[data-path="site.electricity"]').evaluate((select) => [select.selectedOptions[0].text, select.options[select.selectedIndex - 1].text]);
    await hand.choose('[data-path="site.electricity"]', areas[1]);
    answers.push(await wordsOf(page, "#numbers"));
    const heats = await page.locator('[data-path="site.heat"]').evaluate((select) => [select.selectedOptions[0].text, select.options[select.selectedIndex - 1].text]);
    await hand.choose('[data-path="site.heat"]', heats[1]);
    answers.push(await wordsOf(page, "#numbers"));
    await hand.choose("#f-per", "per m2 and year in service");
    await hand.write("#f-life", "12");
    answers.push(await wordsOf(page, "#numbers"));
    assert.equal(new Set(answers).size, 4, "area, heat and life change the loads");
    assert.match(await text(page, "#order-extent"), /12 years/);
    // 3: which lines each route can make.
    await hand.press("#by-line-shown > summary");
    assert.match(await wordsOf(page, "#by-line"), /\S+, no: .{10,}/);
    // 4: the second pair, with UV ink.
    await hand.choose("#f-pair", "screen and screen-uv");
    await settled(page);
    assert.match(await text(page, "#moves-now"), /screen-uv/);
    await hand.choose("#f-pair", "screen and film");
    await settled(page);
    // 5: how much rests on weak data.
    await hand.press("#drivers > summary");
    assert.match(await page.locator("#drivers-found").innerText(), /\d+\s% of the variance rests on inputs of grade D/);
    // 6: two meter readings, seen marked.
    await own(page, hand, "printer.power.solvent", "1900 W", "meter, week 14");
    await own(page, hand, "oven.exhaust", "0.4 m3/s", "anemometer, week 15");
    assert.match(await text(page, "#own-count"), /^2 values are/);
    // 7: drivers and break-even anew.
    assert.doesNotMatch(await page.locator("#drivers-found table").first().innerText(), /oven\.exhaust.*turns/, "a stated value has no range");
    await hand.choose("#f-over", "life");
    await settled(page);
    assert.match(await page.locator("#flips-found").innerText(), /in service|life|years/);
    // 8: the report, printed alone.
    await hand.press("#print-report");
    await until(page, () => window.printed === 1);
    await page.emulateMedia({ media: "print" });
    const paper = await page.locator("body").innerText();
    for (const said of ["For a critical reviewer", "meter, week 14", "anemometer, week 15", "12 years"]) assert.ok(paper.includes(said), said);
    assert.deepEqual(await page.evaluate(() => [...document.body.children].filter((part) => part.checkVisibility()).map((part) => part.id)), ["report-read"]);
    isOffline(requests);
  });

  test(`a student, by ${name}`, async () => {
    // 1: no network.
    const { page, requests } = await visit();
    const hand = handOf(name, page);
    await settled(page);
    await hand.choose("#f-indicator", "CO2e");
    const first = [await fileOf(page), await wordsOf(page, "#numbers", "#moves-now")];
    // 2, 3: what moves it; a factor is dragged, and the difference moves.
    await hand.choose("#f-indicator", "energy");
    await hand.choose("#f-pair", "film and digital");
    await settled(page);
    const was = await text(page, "#moves-now");
    await hand.slide('[data-input="material.acrylic.energy"]');
    await until(page, (old) => document.querySelector("#moves-now").textContent !== old, was, "the difference moves");
    await settled(page);
    // 4: an input that turns the order.
    await hand.press("#put-back");
    await hand.choose("#f-indicator", "CO2e");
    await hand.choose("#f-pair", "screen and film");
    await settled(page);
    await hand.press("#moves-table > summary");
    const turning = page.locator("#swing-numbers tbody tr", { hasText: "turns it" }).first();
    const item = await turning.locator("th").innerText();
    assert.equal(item, "oven exhaust at 20 °C");
    // 5: its source and its grade.
    await hand.write("#f-search", item);
    assert.match(await page.locator("#factors tbody tr").first().innerText(), /D: .*memory/s);
    // 6: replaced, with the reason.
    await own(page, hand, "oven.exhaust", "1.2 m3/s", "measured at the hood");
    assert.match(await text(page, "#moves-now"), /film [\d.]+ less than screen|screen [\d.]+ more than film/);
    // 7: all of it is undone.
    for (let step = 0; step < 10 && await page.locator("#undo").isEnabled(); step += 1) await hand.press("#undo");
    assert.equal(await page.locator("#undo").isDisabled(), true);
    await settled(page);
    assert.deepEqual([await fileOf(page), await wordsOf(page, "#numbers", "#moves-now")], first);
    // 8: the numbers as a file.
    const file = await save(page, () => hand.press('#swings-saved .saves button[aria-label*="CSV"]'));
    assert.match(file.name, /\.csv$/);
    assert.match(file.text, /oven\.exhaust|oven exhaust/);
    isOffline(requests);
  });
}
