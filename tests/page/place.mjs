// Where the built things lie, and the answers of the command line.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

export const target = process.env.CARGO_TARGET_DIR ?? resolve(import.meta.dirname, "../../target");

export const folder = join(target, "page");
export const pageFile = join(folder, "faceload.html");
export const pageAddress = pathToFileURL(pageFile).href;
export const shots = join(folder, "shots");

// The ways a result is asked for: per what, and with or without the blank.
export const asked = ["m2", "order", "m2-year"].flatMap((per) =>
  ["face", "face-with-blank"].map((boundary) => ({ per, boundary })),
);

// What `faceload compare --json` prints for this order.
export const commandLine = (order, per, boundary) => printed(order, "compare", "--json", "--per", per, "--boundary", boundary);

// What a command of faceload prints for this order.
export function printed(order, command, ...options) {
  const scratch = mkdtempSync(join(tmpdir(), "order-"));
  try {
    const file = join(scratch, "order.json");
    writeFileSync(file, order);
    const faceload = join(target, "release", "faceload");
    return execFileSync(faceload, [command, file, ...options], { maxBuffer: 1 << 28 }).toString();
  } finally {
    rmSync(scratch, { recursive: true });
  }
}

// The page's text with what is packed taken out; the policy still holds, as data is not part of it.
export function withoutPacked(html) {
  const cut = html.replace(/(<script type="text\/plain" id="packed"[^>]*>)[^<]*/, "$1");
  if (cut.length > html.length - 1000) throw new Error("nothing packed was found in the page");
  return cut;
}

/** What the page shows as the command line writes it: there a per cent sign stays on the line of its number. */
export const asWritten = (shown) => JSON.parse(JSON.stringify(shown).replaceAll("\u00a0%", " %"));
