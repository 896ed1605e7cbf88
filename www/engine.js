// The program: unpacked from the page itself, started once. It answers with JSON text.
/* global wasm_bindgen */
"use strict";
(() => {
  const { faceload } = window;

  /** Letters as bytes: two of 91 letters hold 13 bits; `!` stands for `<`. */
  function read(text, size) {
    const bytes = new Uint8Array(size);
    const value = (at) => { const code = text.charCodeAt(at); return code === 33 ? 25 : code - 35; };
    let place = 0;
    let held = 0;
    let bits = 0;
    for (let at = 0; at < text.length; at += 2) {
      held = (held << 13) | (value(at) * 91 + value(at + 1));
      bits += 13;
      // What is beyond the size is let go.
      for (; bits >= 8; bits -= 8) bytes[place++] = (held >> (bits - 8)) & 255;
      held &= (1 << bits) - 1;
    }
    return bytes;
  }

  async function bytes() {
    const packed = faceload.part("wasm");
    const stream = new Blob([read(packed.textContent, Number(packed.dataset.size))]).stream().pipeThrough(new DecompressionStream(packed.dataset.packed));
    return new Response(stream).arrayBuffer();
  }

  /** Faults come as a list; anything else is a fault of the program. */
  function asked(question) {
    try {
      return { answer: question() };
    } catch (thrown) {
      if (Array.isArray(thrown)) return { faults: thrown };
      throw thrown;
    }
  }

  let module = null;

  faceload.engine = {
    async start() {
      module = await WebAssembly.compile(await bytes());
      await wasm_bindgen({ module_or_path: module });
    },
    /** Workers wait until the first answer stands: they would take the processor from it. */
    startWork: () => faceload.work.start(module),
    view(order, question) {
      const { answer, faults } = asked(() => wasm_bindgen.view_json(order, question));
      return faults ? { faults } : { view: JSON.parse(answer) };
    },
    explain: (alternative, indicator) => JSON.parse(wasm_bindgen.explain_json(alternative, indicator)),
    takeIntervals: (intervals) => wasm_bindgen.take_intervals(intervals),
    drawLoads: (canvas, indicator, width, theme) => wasm_bindgen.draw_loads(canvas, indicator, width, theme),
    drawSwings: (canvas, width, theme) => wasm_bindgen.draw_swings(canvas, width, theme),
    loadsRows: (indicator, width) => JSON.parse(wasm_bindgen.loads_rows_json(indicator, width)),
    swingsRows: (width) => JSON.parse(wasm_bindgen.swings_rows_json(width)),
    catalogue: () => JSON.parse(wasm_bindgen.catalogue_json()),
    labels: () => JSON.parse(wasm_bindgen.labels_json()),
  };
  // For anybody who wants the data of the page: the same bytes as the command line.
  faceload.compareJson = (order, per, boundary) => wasm_bindgen.compare_json(order, per, boundary);
  faceload.demosJson = () => wasm_bindgen.demos_json();
})();
