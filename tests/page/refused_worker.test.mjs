// Where a browser refuses a worker, or a worker fails, the same figures come from the page itself.
import assert from "node:assert/strict";
import { test } from "node:test";
import { settled, wordsOf } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();

const parts = ["#answer", "#numbers", "#flips-found", "#sure-found", "#choices-found", "#plan-found"];

async function all(before) {
  const { page } = await visit(undefined, { before });
  await settled(page);
  await mapped(page);
  const words = await wordsOf(page, ...parts, "#map-found");
  const refused = await page.evaluate(() => window.faceload.work.refused());
  const note = await wordsOf(page, "#sure-note");
  return { words, refused, note };
}

const ways = {
  "no worker at all": () => { delete window.Worker; },
  "a worker that is refused": () => { window.Worker = class { constructor() { throw new DOMException("refused", "SecurityError"); } }; },
  "a worker whose script does not load": () => {
    window.Worker = class extends EventTarget {
      constructor() { super(); setTimeout(() => this.onerror(new Event("error", { cancelable: true })), 50); }
      postMessage() {}
      terminate() {}
    };
  },
};

for (const [way, before] of Object.entries(ways)) {
  test(`${way}: the same words, and the page says so`, async () => {
    const usual = await all();
    const without = await all(before);
    assert.equal(usual.refused, false);
    assert.equal(usual.note.trim(), "");
    assert.equal(without.refused, true);
    assert.equal(without.words, usual.words);
    assert.match(without.note, /refuses a worker/);
  });
}

test("where a browser has no WebAssembly the page says so, and what gives the answer", async () => {
  const { page } = await visit(undefined, { before: () => { delete window.WebAssembly; }, state: "failed" });
  assert.match(await wordsOf(page, "#answer"), /did not start: .+Another browser, or the command line, gives the answer/s);
});
