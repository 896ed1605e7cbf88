// Loads: a panel per indicator, each on its own axis from zero, and every number as a button.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  /** @param {view.View} view */
  function panels(view) {
    const place = part("loads");
    if (place.childElementCount === view.indicators.length) return;
    fill(place, ...view.indicators.map((indicator) => {
      const canvas = element("canvas", { role: "img", id: `panel-${indicator.id}` });
      faceload.seen.watch(canvas);
      return element("figure", {},
        element("h3", { id: `title-${indicator.id}`, text: indicator.label }),
        element("div", { class: "picture" }, canvas),
        element("p", { class: "quiet", text: indicator.counts }),
        faceload.saves(indicator.label, `loads ${indicator.id}`, {
          csv: () => faceload.engine.loadsCsv(indicator.id), svg: () => faceload.engine.loadsSvg(indicator.id, faceload.paper.file, "paper") }));
    }));
    faceload.seen.watch(part("numbers"));
    part("loads-behind").replaceChildren(faceload.behind(() => ({ indicator: "", alternatives: [] })));
  }

  const wordsOf = (view, indicator) => faceload.say("loads-picture", { indicator: indicator.label, unit: indicator.unit, values: view.alternatives.map((one, index) => `${one.id} ${indicator.texts[index]}`).join(", ") });

  /** Each panel's width as it was measured last. */
  const widths = new Map();
  /** And the size it was painted in. */
  const sizes = new Map();

  /** @param {view.View} view */
  function draw(view) {
    // All are measured before one is drawn: a measure after a change lays the page out anew.
    for (const { id } of view.indicators) widths.set(id, Math.max(280, Math.floor(part(`panel-${id}`).closest("figure").clientWidth)));
    faceload.sooner("panels");
    paint(view, view.indicators);
    name(view);
  }

  /** While a slider moves no width changes, and what is out of sight waits. */
  function move(view) {
    const isSeen = (indicator) => faceload.seen.is(part(`panel-${indicator.id}`));
    paint(view, view.indicators.filter(isSeen));
    const unseen = view.indicators.filter((indicator) => !isSeen(indicator));
    faceload.later("panels", () => { paint(view, unseen); name(view); });
  }

  function paint(view, indicators) {
    for (const indicator of indicators) {
      const canvas = part(`panel-${indicator.id}`);
      const frame = canvas.parentElement;
      const width = widths.get(indicator.id);
      const height = faceload.engine.drawLoads(canvas, indicator.id, width, faceload.theme());
      canvas.style.width = `${width}px`;
      canvas.style.height = `${height}px`;
      // A panel without ranges is lower; what stands below keeps its place until they come.
      const form = `${width} px, ${view.alternatives.length} alternatives`;
      const least = frame.dataset.form === form ? Math.max(height, Number(frame.dataset.least)) : height;
      Object.assign(frame.dataset, { form, least });
      frame.style.marginBottom = `${least - height}px`;
      sizes.set(indicator.id, [width, height]);
    }
  }

  /** What each picture says, in words and in buttons. */
  function name(view) {
    for (const indicator of view.indicators) {
      const canvas = part(`panel-${indicator.id}`);
      const frame = canvas.parentElement;
      const size = sizes.get(indicator.id);
      const words = wordsOf(view, indicator);
      canvas.setAttribute("aria-label", words);
      faceload.stills.forced(frame, words, () => faceload.engine.loadsSvg(indicator.id, size[0], faceload.theme()));
      faceload.layer(frame, { name: indicator.label, size, spots: faceload.engine.loadsSpots(indicator.id, size[0]) });
    }
  }

  /** What paper shows. */
  const paper = (view) => view.indicators.forEach((indicator) => faceload.stills.paper(part(`panel-${indicator.id}`).parentElement, wordsOf(view, indicator),
    () => faceload.engine.loadsSvg(indicator.id, faceload.paper.third, "paper")));

  const how = (alternative, indicator, index) => faceload.say("how-computed", { what: `${alternative.id}, ${indicator.label}: ${indicator.texts[index]} ${indicator.unit}` });

  /** A row beside the loads: its numbers open the arithmetic that holds them. */
  const beside = (view, row) => element("tr", {},
    element("th", { scope: "row", text: row.label }), element("td", { text: row.unit }),
    ...row.texts.map((text, index) => element("td", { class: "number" }, row.within ? faceload.opens(text, { alternative: view.alternatives[index].id, indicator: row.within }) : text)));

  /** @param {view.View} view */
  function numbers(view) {
    const head = element("tr", {}, element("th", { scope: "col", text: faceload.say("load") }), element("th", { scope: "col", text: faceload.say("unit") }),
      ...view.alternatives.map((one) => element("th", { scope: "col", class: "number", text: one.id })));
    const loads = view.indicators.map((indicator) => element("tr", {},
      element("th", { scope: "row", text: indicator.label }), element("td", { text: indicator.unit }),
      ...view.alternatives.map((one, index) => element("td", { class: "number" }, element("button", {
        type: "button", class: "number", "data-explain": `${one.id} ${indicator.id}`,
        "aria-label": how(one, indicator, index),
        text: indicator.texts[index],
        on: { click: () => faceload.arithmetic(one.id, indicator.id) },
      }), element("span", { class: "range" })))));
    fill(part("numbers"), element("caption", {}, element("span")),
      element("thead", {}, head), element("tbody", {}, ...loads), element("tbody", { class: "beside" }, ...view.beside.map((row) => beside(view, row))));
  }

  /**
   * While a slider moves only the texts change, so that the buttons stay what they are.
   * @param {view.View} view
   */
  function texts(view) {
    const rows = part("numbers").tBodies;
    view.indicators.forEach((indicator, row) => indicator.texts.forEach((text, column) => {
      const button = rows[0].rows[row].cells[column + 2].firstChild;
      button.textContent = text;
      button.setAttribute("aria-label", how(view.alternatives[column], indicator, column));
    }));
    view.beside.forEach((one, row) => one.texts.forEach((text, column) => {
      const cell = rows[1].rows[row].cells[column + 2];
      (cell.querySelector("button") ?? cell).textContent = text;
    }));
  }

  /**
   * Under each load the middle 90 % of its draws; nothing where it has none, or none yet.
   * @param {view.View} view
   * @param {sure.Sure | null} sure
   */
  function ranges(view, sure) {
    part("numbers").caption.firstChild.textContent = faceload.say(sure ? "loads-with-ranges" : "loads-before-ranges", { per: view.per_words });
    const [body] = part("numbers").tBodies;
    view.indicators.forEach((_, row) => view.alternatives.forEach((__, column) => {
      const place = body.rows[row].cells[column + 2].lastChild;
      // Old words keep their room, unseen, until new ones come.
      place.classList.toggle("stale-text", !sure);
      if (sure) place.textContent = sure.ranges[row][column];
    }));
  }

  faceload.loads = {
    show(view) {
      part("loads-note").textContent = `${view.per_words}, ${faceload.say(view.boundary)}.`;
      panels(view);
      draw(view);
      faceload.sooner("numbers");
      numbers(view);
      ranges(view, null);
      const behind = part("loads-behind").querySelector("details");
      behind.open = false;
      fill(part("alternatives"), ...view.alternatives.flatMap((one) => [
        element("dt", { text: one.id }), element("dd", { text: `${one.words}: ${one.story}; ${one.base}.` })]));
    },
    move(view) {
      move(view);
      faceload.seen.soon("numbers", part("numbers"), () => { texts(view); ranges(view, null); });
    },
    /** The draws are there: bars and numbers get their ranges. */
    ranges(view, sure) {
      faceload.engine.takeIntervals(sure.intervals);
      draw(view);
      paper(view);
      ranges(view, sure);
    },
    draw(view) { draw(view); paper(view); },
  };
})();
