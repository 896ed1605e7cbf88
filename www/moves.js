// What moves it: each input's swing of the difference, with a slider beside it.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const STEPS = 200;
  /** The height of a slider without a bar, in css pixels. */
  const STILL = 48;
  /** What was moved by hand: input id to its value. */
  const moved = new Map();
  /** The rows on the screen stay in place while a slider moves. */
  let rows = [];

  const valueAt = (row, step) => {
    const share = step / STEPS;
    const value = row.by_ratio ? row.low * Math.pow(row.high / row.low, share) : row.low + (row.high - row.low) * share;
    return within(row, value);
  };
  /** Four digits, inside the range: what is rounded out of it goes a step back. */
  function within(row, value) {
    const short = Number(value.toPrecision(4));
    const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 3);
    const inside = short > row.high ? short - step : short < row.low ? short + step : short;
    return Math.min(row.high, Math.max(row.low, Number(inside.toPrecision(4))));
  }
  const stepOf = (row, value) => {
    const share = row.by_ratio ? Math.log(value / row.low) / Math.log(row.high / row.low) : (value - row.low) / (row.high - row.low);
    return Math.round(Math.min(1, Math.max(0, share)) * STEPS);
  };
  const words = (row, value) => `${value} ${row.unit}`.trim();

  /** @param {view.MoveOf} row */
  function slider(row) {
    const id = `slide-${row.id}`;
    const at = moved.get(row.id) ?? row.value;
    const input = element("input", { type: "range", id, min: 0, max: STEPS, step: 1, "data-input": row.id });
    const output = element("output", { for: id, text: words(row, at) });
    input.value = String(stepOf(row, at));
    input.setAttribute("aria-valuetext", words(row, at));
    const start = input.value;
    input.addEventListener("input", () => {
      const value = input.value === String(stepOf(row, row.value)) ? row.value : valueAt(row, Number(input.value));
      if (value === row.value) moved.delete(row.id); else moved.set(row.id, value);
      output.textContent = words(row, value);
      input.setAttribute("aria-valuetext", words(row, value));
      box.classList.toggle("moved", moved.has(row.id));
      keep.hidden = !moved.has(row.id);
      faceload.slid();
    });
    // A slider that was let go is a step to undo.
    input.addEventListener("change", () => faceload.history.note(faceload.say("slider-of", { item: row.item })));
    const keep = element("button", { type: "button", class: "keep editing", hidden: !moved.has(row.id), text: faceload.say("keep"), "aria-label": faceload.say("keep-in-order", { item: row.item }),
      on: { click: () => faceload.own.keep(row.id, moved.get(row.id)) } });
    const box = element("div", { class: moved.has(row.id) ? "slider moved" : "slider", "data-start": start, "data-row": row.id },
      element("label", { for: id, text: row.item }), input, element("span", { class: "value" }, output, element("span", { class: row.grade === "D" ? "grade weak" : "grade", text: faceload.say("of-grade", { grade: row.grade }) })), keep);
    return box;
  }

  const ends = (row) => faceload.say("from-to", { low: row.at_low, high: row.at_high });
  const wordsOf = (view) => faceload.say("swings-picture", { indicator: view.moves.indicator, rows: view.moves.rows.map((row) => `${row.item} ${ends(row)}`).join("; ") });
  const name = () => { const { indicator, alternatives } = faceload.behind.pair(); return ["swings", indicator, ...alternatives.map((place) => faceload.shown().alternatives[place].id)].join(" "); };

  /** What paper shows. */
  const paper = (view) => faceload.stills.paper(part("swing-picture").parentElement, wordsOf(view), () => faceload.engine.swingsSvg(faceload.paper.file, "paper"));

  /** How the picture was laid out last: its width, and whether the sliders stand beside it. */
  let laid = { wide: false, width: 0, height: 0, spots: [] };

  /** @param {view.View} view */
  function picture(view) {
    const wide = part("swings").clientWidth >= 720;
    part("swings").classList.toggle("beside", wide);
    laid = { ...laid, wide, width: Math.max(280, Math.floor(part("swing-picture").parentElement.parentElement.clientWidth)) };
    faceload.sooner("swings");
    paint(view);
    say(view);
  }

  function paint(view) {
    const canvas = part("swing-picture");
    const { wide, width } = laid;
    const height = faceload.engine.drawSwings(canvas, width, faceload.theme());
    canvas.style.width = `${width}px`;
    canvas.style.height = `${height}px`;
    const list = part("sliders");
    laid.height = height;
    laid.spots = faceload.engine.swingsSpots(width);
    const places = wide ? laid.spots : [];
    // An input that no longer moves the difference has no bar; its slider stays, below the others.
    const drawn = view.moves.rows.map((row) => row.id);
    let below = height;
    [...list.children].forEach((box) => {
      const place = places[drawn.indexOf(box.dataset.row)];
      box.classList.toggle("still", !place);
      box.style.top = wide ? `${place?.y ?? below}px` : "";
      box.style.height = wide ? `${place?.height ?? STILL}px` : "";
      if (!place) below += STILL;
    });
    list.style.height = wide ? `${below}px` : "";
  }

  /** What the picture says, in words and in buttons. */
  function say(view) {
    const canvas = part("swing-picture");
    const frame = canvas.parentElement;
    const { width, height, spots } = laid;
    canvas.setAttribute("aria-label", wordsOf(view));
    faceload.stills.forced(frame, wordsOf(view), () => faceload.engine.swingsSvg(width, faceload.theme()));
    faceload.layer(frame, { name: faceload.say("moves"), size: [width, height], spots });
  }

  /** @param {view.View} view */
  function table(view) {
    const head = ["input", "at-5", "at-95", "difference-there", "ranking", "grade"].map((id) => faceload.say(id));
    const body = view.moves.rows.map((row) => element("tr", {},
      element("th", { scope: "row", text: row.item }),
      element("td", { text: words(row, Number(row.low.toPrecision(3))) }), element("td", { text: words(row, Number(row.high.toPrecision(3))) }),
      element("td", { class: "number", text: ends(row) }), element("td", { text: row.turns ? faceload.say("turns") : "" }),
      element("td", { class: row.grade === "D" ? "weak" : undefined, text: row.grade })));
    fill(part("swing-numbers"), element("thead", {}, element("tr", {}, ...head.map((text) => element("th", { scope: "col", text })))), element("tbody", {}, ...body));
  }

  /** @param {view.View} view */
  function now(view) {
    const { moves } = view;
    part("moves-now").textContent = `${view.indicators.find((one) => one.id === moves.indicator).label}, ${view.per_words}: ${moves.now}.`;
    part("moves-rest").textContent = moves.rest > 0 ? faceload.say("moves-less", { rest: moves.rest }) : "";
    part("put-back").hidden = moved.size === 0;
  }

  faceload.moves = {
    moved: () => [...moved],
    rows: () => rows,
    putBack() { moved.clear(); },
    set(list) { moved.clear(); for (const [id, value] of list) moved.set(id, value); },
    /** New pair, indicator or order: the widest swings anew. */
    show(view) {
      rows = view.moves.rows.map((row) => row.id);
      fill(part("swings"), element("div", {}, element("div", { class: "picture" }, element("canvas", { id: "swing-picture", role: "img" }))), element("div", { id: "sliders", class: "sliders" }, ...view.moves.rows.map(slider)));
      fill(part("swings-saved"), faceload.behind(faceload.behind.pair), faceload.saves(faceload.say("moves"), name(), { csv: () => faceload.engine.swingsCsv(), svg: () => faceload.engine.swingsSvg(faceload.paper.file, "paper") }));
      picture(view);
      paper(view);
      table(view);
      now(view);
    },
    /** A slider moves: same rows, other numbers. */
    move(view) {
      paint(view);
      now(view);
      faceload.later("swings", () => { say(view); table(view); });
    },
    draw(view) { picture(view); paper(view); },
    forget() { rows = []; },
  };
})();
