// Long work in two workers: a quick one for draws, a patient one that is ended and started anew when its work is no longer wanted.
/* global wasm_bindgen */
"use strict";
(() => {
  const { faceload } = window;
  /** Lanes that are short: they run to their end, and never wait for long work. */
  const QUICK = new Set(["sure", "stages", "drivers"]);
  let module = null;
  let address = "";
  let refused = false;
  let number = 0;

  // The one policy of the page: for the address of its own workers, and no other.
  const policy = window.trustedTypes?.createPolicy("faceload-worker", {
    createScriptURL: (wanted) => {
      if (wanted !== address) throw new TypeError("only the page's own worker is started");
      return wanted;
    },
  });

  /** One worker and what waits for it. */
  function bench(patient) {
    const queue = [];
    let worker = null;
    let running = null;

    function spawn() {
      worker?.terminate();
      worker = null;
      if (refused) return;
      try {
        const made = new Worker(policy ? policy.createScriptURL(address) : address);
        made.onmessage = ({ data }) => { if (made === worker) heard(data); };
        made.onerror = (event) => { event.preventDefault(); if (made === worker) inThePage(); };
        made.postMessage({ module });
        worker = made;
      } catch { inThePage(); }
    }

    /** Without a worker the same work runs in the page, where it is idle. */
    function inThePage() {
      refused = true;
      worker?.terminate();
      worker = null;
      if (running) queue.unshift(running);
      running = null;
      next();
    }

    function heard(data) {
      if (data.refused) inThePage();
      else if (!running || data.id !== running.id) return;
      else if ("share" in data) running.told?.(data.share);
      else {
        // After a fault of the program nothing of it is trusted.
        if (data.failed) spawn();
        end(data);
      }
    }

    function end(result) {
      const job = running;
      running = null;
      job.done(result);
      next();
    }

    function here(job) {
      if (running !== job) return;
      try {
        end({ answer: wasm_bindgen[job.call](job.order, job.asked, () => true) });
      } catch (thrown) {
        end(Array.isArray(thrown) ? { faults: thrown } : { failed: String(thrown) });
      }
    }

    function next() {
      if (running || queue.length === 0 || !module) return;
      const job = queue.shift();
      const { id, call, order, asked } = job;
      running = job;
      if (worker) worker.postMessage({ id, call, order, asked });
      else if (window.requestIdleCallback) window.requestIdleCallback(() => here(job), { timeout: 500 });
      else setTimeout(() => here(job), 50);
    }

    return {
      start: () => { spawn(); next(); },
      add(job) { queue.push(job); next(); },
      drop(lane) {
        const place = queue.findIndex((job) => job.lane === lane);
        if (place >= 0) queue.splice(place, 1)[0].done({ dropped: true });
        if (running?.lane !== lane) return;
        running.done({ dropped: true });
        if (!patient || !worker) return;
        spawn();
        running = null;
        next();
      },
    };
  }

  const quick = bench(false);
  const patient = bench(true);
  const benchOf = (lane) => (QUICK.has(lane) ? quick : patient);

  faceload.work = {
    start(compiled) {
      module = compiled;
      address = URL.createObjectURL(new Blob(faceload.worker, { type: "text/javascript" }));
      quick.start();
      patient.start();
    },
    /** The newest question of a lane counts; an older one is answered by `dropped`. */
    ask(lane, call, order, asked, told) {
      const bench = benchOf(lane);
      bench.drop(lane);
      return new Promise((done) => {
        number += 1;
        bench.add({ id: number, lane, call, order, asked, told, done });
      });
    },
    drop: (lane) => benchOf(lane).drop(lane),
    refused: () => refused,
  };
})();
