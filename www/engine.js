// The program: started once. It answers with JSON text.
/* global wasm_bindgen */
"use strict";
(() => {
  const { faceload } = window;

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
      module = await faceload.module;
      await wasm_bindgen({ module_or_path: module });
    },
    /** Workers wait until the first answer stands: they would take the processor from it. */
    startWork: () => faceload.work.start(module),
    view(order, question) {
      const { answer, faults } = asked(() => wasm_bindgen.view_json(order, question));
      return faults ? { faults } : { view: JSON.parse(answer) };
    },
    rows(bytes, question) {
      const { answer, faults } = asked(() => wasm_bindgen.rows_json(bytes, question));
      return faults ? { faults } : { report: JSON.parse(answer) };
    },
    rowsInOrder(bytes, question, order, beside) {
      const { answer, faults } = asked(() => wasm_bindgen.rows_in_order_json(bytes, question, order, beside));
      return faults ? { faults } : { order: JSON.parse(answer) };
    },
    rowsLeftOut: (bytes, question) => wasm_bindgen.rows_left_out(bytes, question),
    /** Every fault of an order file; none where it is good. */
    check: (name, text) => asked(() => wasm_bindgen.check_order(name, text)).faults ?? [],
    writeLink(order, shared) {
      const { answer, faults } = asked(() => wasm_bindgen.write_link(order, shared));
      return faults ? { faults } : JSON.parse(answer);
    },
    readLink(address) {
      const { answer, faults } = asked(() => wasm_bindgen.read_link(address));
      return faults ? { faults } : { linked: JSON.parse(answer) };
    },
    inUnits: (text, units) => wasm_bindgen.in_units(text, units),
    explain: (alternative, indicator, job) => JSON.parse(wasm_bindgen.explain_json(alternative, indicator, job)),
    takeIntervals: (intervals) => wasm_bindgen.take_intervals(intervals),
    drawLoads: (canvas, indicator, width, theme) => wasm_bindgen.draw_loads(canvas, indicator, width, theme),
    drawSwings: (canvas, width, theme) => wasm_bindgen.draw_swings(canvas, width, theme),
    loadsSpots: (indicator, width) => JSON.parse(wasm_bindgen.loads_spots_json(indicator, width)),
    swingsSpots: (width) => JSON.parse(wasm_bindgen.swings_spots_json(width)),
    loadsSvg: (indicator, width, theme) => wasm_bindgen.loads_svg(indicator, width, theme),
    swingsSvg: (width, theme) => wasm_bindgen.swings_svg(width, theme),
    loadsCsv: (indicator) => wasm_bindgen.loads_csv(indicator),
    swingsCsv: () => wasm_bindgen.swings_csv(),
    sources: (indicator, alternatives) => JSON.parse(wasm_bindgen.sources_json(indicator, new Uint32Array(alternatives))),
    catalogue: () => JSON.parse(wasm_bindgen.catalogue_json()),
    labels: () => JSON.parse(wasm_bindgen.labels_json()),
  };
  // For anybody who wants the data of the page: the same bytes as the command line.
  faceload.compareJson = (order, per, boundary) => wasm_bindgen.compare_json(order, per, boundary);
  faceload.demosJson = () => wasm_bindgen.demos_json();
})();
