// A visit to the page: one browser for a file of tests, and after each test what it opened is closed and had no complaint.
import assert from "node:assert/strict";
import { after, afterEach, before } from "node:test";
import { openPage, startBrowser } from "./browser.mjs";
import { openDemo } from "./editing.mjs";

// What opens the page; with a demo order by its name, and an editor of it unfolded: the one of the file, or of the options.
export function visits(usual) {
  const open = [];
  let browser;
  before(async () => { browser = await startBrowser(); });
  after(() => browser?.close());
  afterEach(async () => {
    for (const { page, complaints } of open.splice(0)) {
      await page.context().close();
      assert.deepEqual(complaints, []);
    }
  });
  return async (demo, { editor = usual, ...options } = {}) => {
    const opened = demo ? await openDemo(browser, demo, editor, options) : await openPage(browser, options);
    open.push(opened);
    return opened;
  };
}
