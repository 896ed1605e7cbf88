// The mark-up is valid HTML, as written and as the scripts make it.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { test } from "node:test";
import { HtmlValidate } from "html-validate";
import { settled } from "./browser.mjs";
import { mapped } from "./editing.mjs";
import { visits } from "./visit.mjs";

const visit = visits();
const validator = new HtmlValidate({
  root: true,
  extends: ["html-validate:recommended"],
  rules: {
    // Places of parts of pictures are set by script, through the object model that the policy allows.
    "no-inline-style": "off",
    // A browser writes mark-up its own way.
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    "no-trailing-whitespace": "off",
    "no-raw-characters": "off",
    "long-title": "off",
    "doctype-style": ["error", { style: "lowercase" }],
    // Ids hold those of the tables, with their dots.
    "valid-id": ["error", { relaxed: true }],
    // A table that scrolls is a region, of which a page has many; a section would be one of its parts.
    "prefer-native-element": ["error", { exclude: ["region", "group"] }],
    // The policy names scripts and styles by their hashes; all of them stand in the page.
    "require-sri": "off",
  },
});

async function faults(html) {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) => messages.map(({ ruleId, message, line, selector }) => `line ${line}: ${ruleId}: ${message} ${selector}`));
}

test("as written", async () => {
  assert.deepEqual(await faults(readFileSync(resolve(import.meta.dirname, "../../www/index.html"), "utf8")), []);
});

test("as the scripts make it, with everything unfolded and the arithmetic open", async () => {
  const { page } = await visit("county");
  await settled(page);
  await mapped(page);
  await page.locator("[data-explain]").first().click();
  const html = await page.evaluate(() => {
    for (const part of document.querySelectorAll("details")) part.open = true;
    const copy = document.documentElement.cloneNode(true);
    for (const part of copy.querySelectorAll("script, style")) part.remove();
    return `<!doctype html>\n${copy.outerHTML}\n`;
  });
  assert.ok(html.length > 50_000);
  assert.deepEqual(await faults(html), []);
});

test("a mistake would be found", async () => {
  const found = await faults("<!DOCTYPE html>\n<html lang=\"en\"><head><title>a</title></head><body><p><div></div></p><img src=\"a\"></body></html>\n");
  assert.ok(found.length >= 2, found.join("\n"));
});
