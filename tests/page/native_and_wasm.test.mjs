// Native and wasm give the same bytes: the command line against the page's wasm under Node.
import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { folder, printed } from "./place.mjs";
import { sameBytes } from "./same_bytes.mjs";

test("native and wasm give the same bytes", async (t) => {
  const wasm = createRequire(import.meta.url)(join(folder, "node", "faceload_wasm.js"));
  await sameBytes(t, wasm.demos_json(), wasm.compare_json);
});

test("the statement that may be sent is the same from both", async (t) => {
  const wasm = createRequire(import.meta.url)(join(folder, "node", "faceload_wasm.js"));
  const [{ order }] = JSON.parse(wasm.demos_json());
  for (const indicator of ["energy", "solvent", "co2e"]) {
    await t.test(indicator, () => {
      const look = { per: "m2-year", boundary: "face", pair: [0, 2], indicator, moved: [], draws: 2000, width: 720, theme: "light", over: [] };
      const got = wasm.statement_json(order, look);
      assert.equal(got, printed(order, "statement", "--json", "--between", "screen,film", "--indicator", indicator, "--per", "m2-year", "--draws", "2000"));
      assert.ok(JSON.parse(got).text.includes("not a public comparative assertion"));
    });
  }
});
