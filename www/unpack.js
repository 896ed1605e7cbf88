// The one script that stands in the page as it is: it unpacks the program and the scripts that work with it, and runs them.
"use strict";
(() => {
  const packed = document.getElementById("packed");

  /** Letters as bytes: each holds seven bits, eight of them seven bytes. */
  function read(text, size) {
    const bytes = new Uint8Array(text.length / 8 * 7);
    const seven = (at) => text.charCodeAt(at) & 127;
    let place = 0;
    for (let at = 0; at < text.length; at += 8) {
      const front = seven(at) << 21 | seven(at + 1) << 14 | seven(at + 2) << 7 | seven(at + 3);
      const back = seven(at + 4) << 21 | seven(at + 5) << 14 | seven(at + 6) << 7 | seven(at + 7);
      // What is above eight bits is let go.
      bytes[place++] = front >> 20;
      bytes[place++] = front >> 12;
      bytes[place++] = front >> 4;
      bytes[place++] = front << 4 | back >> 24;
      bytes[place++] = back >> 16;
      bytes[place++] = back >> 8;
      bytes[place++] = back;
    }
    return bytes.subarray(0, size);
  }

  /** What was packed, by name. */
  async function parts() {
    const stream = new Blob([read(packed.textContent, Number(packed.dataset.size))]).stream().pipeThrough(new DecompressionStream(packed.dataset.packed));
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
    // The scripts add what they offer.
    window.faceload = /** @type {any} */ ({ wasm, worker: [glue, "\n", worker], failed });
    run(text(glue));
    run(text(scripts));
    if (!window.faceload.start) throw new Error("its scripts are damaged");
    await window.faceload.start();
  }

  start().catch(failed);
})();
