// In a worker: a program of its own that makes draws, break-even and map while the page stays free.
/* global wasm_bindgen */
"use strict";
(() => {
  /** How often the page hears how far the work is, in milliseconds. */
  const EVERY = 60;
  let started;

  async function start(module) {
    try {
      await wasm_bindgen({ module_or_path: module });
      self.postMessage({ ready: true });
    } catch (reason) {
      self.postMessage({ refused: String(reason) });
    }
  }

  async function run({ id, call, order, asked }) {
    await started;
    let last = performance.now();
    const told = (share) => {
      const now = performance.now();
      if (now - last >= EVERY) { last = now; self.postMessage({ id, share }); }
      return true;
    };
    try {
      self.postMessage({ id, answer: wasm_bindgen[call](order, asked, told) });
    } catch (thrown) {
      self.postMessage(Array.isArray(thrown) ? { id, faults: thrown } : { id, failed: String(thrown) });
    }
  }

  self.onmessage = ({ data }) => { if (data.module) started = start(data.module); else run(data); };
  self.onmessageerror = () => self.postMessage({ refused: "the program cannot be handed to a worker" });
})();
