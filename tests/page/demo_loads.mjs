// The loads of the demo orders, per m2 of face, one line an alternative.
import { createRequire } from "node:module";
import { join } from "node:path";
import { commandLine, folder } from "./place.mjs";

const wasm = createRequire(import.meta.url)(join(folder, "node", "faceload_wasm.js"));
for (const { name, title, order } of JSON.parse(wasm.demos_json())) {
  console.log(`${name}: ${title}`);
  for (const { id, loads } of JSON.parse(commandLine(order, "m2", "face")).alternatives) {
    const each = Object.entries(loads).map(([what, load]) => `${what} ${load.value.toPrecision(4)} ${load.unit}`);
    console.log(`  ${id}: ${each.join(", ")}`);
  }
}
