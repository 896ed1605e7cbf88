// Native and wasm give the same bytes: the command line against the page's wasm under Node.
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { folder } from "./place.mjs";
import { sameBytes } from "./same_bytes.mjs";

test("native and wasm give the same bytes", async (t) => {
  const wasm = createRequire(import.meta.url)(join(folder, "node", "faceload_wasm.js"));
  await sameBytes(t, wasm.demos_json(), wasm.compare_json);
});
