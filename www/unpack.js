// The one script that stands in the page as it is: it unpacks the program and the scripts that work with it, and runs them.
"use strict";
(() => {
  const packed = document.getElementById("packed");

  /** Letters as bytes: two of 91 letters hold 13 bits; `!` stands for `<`. */
  function read(text, size) {
    const letters = new TextEncoder().encode(text);
    const bytes = new Uint8Array(size);
    let place = 0;
    let held = 0;
    let bits = 0;
    // Counted, and nothing called: nothing is quick yet that a script does the first time.
    for (let at = 0; at < letters.length; at += 2) {
      const high = letters[at];
      const low = letters[at + 1];
      // What is above is let go, and what is beyond the size.
      held = held << 13 | (high === 33 ? 25 : high - 35) * 91 + (low === 33 ? 25 : low - 35);
      bits += 13;
      while (bits >= 8) {
        bits -= 8;
        bytes[place++] = held >> bits;
      }
    }
    return bytes;
  }

  /** What was packed, by name. */
  async function parts() {
    const format = /** @type {CompressionFormat} */ (packed.dataset.packed);
    const stream = new Blob([read(packed.textContent, Number(packed.dataset.size))]).stream().pipeThrough(new DecompressionStream(format));
    const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
    const found = {};
    let from = 0;
    for (const part of packed.dataset.parts.split(" ")) {
      const [name, size] = part.split(":");
      found[name] = bytes.subarray(from, from += Number(size));
    }
    return found;
  }

  const policy = window.trustedTypes?.createPolicy("faceload-scripts", { createScript: (text) => text });

  /** Runs a script; one whose hash the page's policy does not name is refused by the browser. */
  function run(text) {
    const script = document.createElement("script");
    script.textContent = policy ? policy.createScript(text) : text;
    document.head.append(script);
    script.remove();
  }

  function failed(reason) {
    document.documentElement.dataset.state = "failed";
    const said = document.createElement("p");
    said.className = "fault";
    said.textContent = `The program inside this page did not start: ${reason instanceof Error ? reason.message : reason}. Another browser, or the command line, gives the answer.`;
    document.getElementById("answer").replaceChildren(said);
  }

  async function start() {
    const { glue, worker, scripts, wasm } = await parts();
    const text = (bytes) => new TextDecoder().decode(bytes);
    // The scripts add what they offer. The program is compiled while they start.
    window.faceload = /** @type {any} */ ({ module: WebAssembly.compile(wasm), worker: [glue, "\n", worker] });
    run(text(glue));
    run(text(scripts));
    if (!window.faceload.start) throw new Error("its scripts are damaged");
    await window.faceload.start();
  }

  start().catch(failed);
})();
