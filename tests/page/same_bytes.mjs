// One check for every place the wasm runs in: its result is that of the command line, byte for byte.
import assert from "node:assert/strict";
import { asked, commandLine } from "./place.mjs";

// `compare(order, per, boundary)` and `demosText` come from the place under test.
export async function sameBytes(t, demosText, compare) {
  const orders = JSON.parse(demosText);
  assert.ok(orders.length > 0, "there are demo orders");
  const seen = new Set();
  for (const { name, order } of orders) {
    await t.test(name, async () => {
      for (const { per, boundary } of asked) {
        const wanted = commandLine(order, per, boundary);
        const got = await compare(order, per, boundary);
        assert.ok(got === wanted, `${name}, ${per}, ${boundary}: ${difference(got, wanted)}`);
        assert.equal(typeof JSON.parse(got), "object");
        seen.add(got);
      }
    });
  }
  // A result that ignored what it was asked for would pass above.
  assert.equal(seen.size, orders.length * asked.length, "each order and each way gives its own result");
}

function difference(got, wanted) {
  let at = 0;
  while (at < got.length && got[at] === wanted[at]) at += 1;
  const around = (text) => JSON.stringify(text.slice(Math.max(0, at - 60), at + 40));
  return `differs at ${at}: got ${around(got)}, the command line has ${around(wanted)}`;
}
