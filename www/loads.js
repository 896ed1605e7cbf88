// Loads: a panel per indicator, each on its own axis from zero, and every number as a button.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  function panels(view) {
    const place = part("loads");
    if (place.childElementCount === view.indicators.length) return;
    fill(place, ...view.indicators.map((indicator) => {
      const canvas = element("canvas", { role: "img", id: `panel-${indicator.id}`, on: { click: (event) => hit(event, indicator.id) } });
      faceload.seen.watch(canvas);
      return element("figure", {}, element("h3", { id: `title-${indicator.id}` }), canvas, element("p", { class: "quiet", text: indicator.counts }));
    }));
  }

  /** A click on a row of the picture opens that number. */
  function hit(event, indicator) {
    const box = event.target.getBoundingClientRect();
    const y = event.clientY - box.top;
    const rows = faceload.engine.loadsRows(indicator, Math.round(box.width));
    const row = rows.findIndex((one) => y >= one.y && y <= one.y + one.height);
    if (row >= 0) faceload.arithmetic(faceload.shown().alternatives[row].id, indicator);
  }

  /** Each panel's width as it was measured last. */
  const widths = new Map();

  function draw(view) {
    // All are measured before one is drawn: a measure after a change lays the page out anew.
    for (const { id } of view.indicators) widths.set(id, Math.max(280, Math.floor(part(`panel-${id}`).parentElement.clientWidth)));
    faceload.sooner("panels");
    paint(view, view.indicators);
  }

  /** While a slider moves no width changes, and what is out of sight waits. */
  function move(view) {
    const isSeen = (indicator) => faceload.seen.is(part(`panel-${indicator.id}`));
    paint(view, view.indicators.filter(isSeen));
    const unseen = view.indicators.filter((indicator) => !isSeen(indicator));
    faceload.later("panels", () => paint(view, unseen));
  }

  function paint(view, indicators) {
    for (const indicator of indicators) {
      const canvas = part(`panel-${indicator.id}`);
      const width = widths.get(indicator.id);
      const height = faceload.engine.drawLoads(canvas, indicator.id, width, faceload.theme());
      canvas.style.width = `${width}px`;
      canvas.style.height = `${height}px`;
      // A panel without ranges is lower; what stands below keeps its place until they come.
      const frame = canvas.parentElement;
      const form = `${width} px, ${view.alternatives.length} alternatives`;
      const least = frame.dataset.form === form ? Math.max(height, Number(frame.dataset.least)) : height;
      Object.assign(frame.dataset, { form, least });
      canvas.style.marginBottom = `${least - height}px`;
      part(`title-${indicator.id}`).textContent = indicator.label;
      const values = view.alternatives.map((one, index) => `${one.id} ${indicator.texts[index]}`).join(", ");
      canvas.setAttribute("aria-label", `${indicator.label} in ${indicator.unit}: ${values}. The table below holds the numbers.`);
    }
  }

  function numbers(view) {
    const head = element("tr", {}, element("th", { scope: "col", text: "load" }), element("th", { scope: "col", text: "unit" }),
      ...view.alternatives.map((one) => element("th", { scope: "col", class: "number", text: one.id })));
    const loads = view.indicators.map((indicator) => element("tr", {},
      element("th", { scope: "row", text: indicator.label }), element("td", { text: indicator.unit }),
      ...view.alternatives.map((one, index) => element("td", { class: "number" }, element("button", {
        type: "button", class: "number", "data-explain": `${one.id} ${indicator.id}`,
        "aria-label": `${one.id}, ${indicator.label}: ${indicator.texts[index]} ${indicator.unit}; how computed`,
        text: indicator.texts[index],
        on: { click: () => faceload.arithmetic(one.id, indicator.id) },
      }), element("span", { class: "range" })))));
    const beside = view.beside.map((row) => element("tr", {},
      element("th", { scope: "row", text: row.label }), element("td", { text: row.unit }),
      ...row.texts.map((text) => element("td", { class: "number", text }))));
    fill(part("numbers"), element("caption", {}, element("span")),
      element("thead", {}, head), element("tbody", {}, ...loads), element("tbody", { class: "beside" }, ...beside));
  }

  /** While a slider moves only the texts change, so that the buttons stay what they are. */
  function texts(view) {
    const rows = part("numbers").tBodies;
    view.indicators.forEach((indicator, row) => indicator.texts.forEach((text, column) => {
      const button = rows[0].rows[row].cells[column + 2].firstChild;
      button.textContent = text;
      button.setAttribute("aria-label", `${view.alternatives[column].id}, ${indicator.label}: ${text} ${indicator.unit}; how computed`);
    }));
    view.beside.forEach((one, row) => one.texts.forEach((text, column) => { rows[1].rows[row].cells[column + 2].textContent = text; }));
  }

  /** Under each load the middle 90 % of its draws; nothing where it has none, or none yet. */
  function ranges(view, sure) {
    part("numbers").caption.firstChild.textContent = `Loads ${view.per_words}${sure ? "; under each, the middle 90 % of its draws" : "; the middle 90 % of the draws follow"}`;
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
      part("loads-note").textContent = `${view.per_words}, ${view.boundary === "face" ? "face only" : "face with its blank"}.`;
      panels(view);
      draw(view);
      numbers(view);
      ranges(view, null);
      fill(part("alternatives"), ...view.alternatives.flatMap((one) => [
        element("dt", { text: one.id }), element("dd", { text: `${one.words}: ${one.story}. ${one.base}.` })]));
    },
    move(view) { move(view); texts(view); ranges(view, null); },
    /** The draws are there: bars and numbers get their ranges. */
    ranges(view, sure) {
      faceload.engine.takeIntervals(sure.intervals);
      draw(view);
      ranges(view, sure);
    },
    draw,
  };
})();
