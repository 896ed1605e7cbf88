// The lines: what is made, as fields; and line by line, who can make it and at what load.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  /** More jobs than this are very many. */
  const MANY = 100;
  /** So many lines are shown as fields at once; a long order is shown in such parts. */
  const PART = 50;
  /** The parts that are shown, by the place of their first line. */
  const shown = new Set([0]);
  const partOf = (index) => index - (index % PART);

  function row(order, line, index) {
    const { say } = faceload;
    const { field, change } = faceload.order;
    const path = (key) => `line[${index + 1}].${key}`;
    const numbered = say("line-number", { line: index + 1 });
    const label = line.label ?? numbered;
    const name = (key) => ({ "aria-label": say("field-of-line", { field: say(key), line: label }), "data-field": key });
    const number = { inputmode: "numeric" };
    const cell = (key, ...children) => element("td", { "data-name": key && say(key) }, ...children);
    const made = [{ value: "yes", text: say("for-stock") }, { value: "no", text: say("to-order") }];
    const button = (id, what, off, run) => element("button", { type: "button", id, "aria-label": say("done-to", { what: say(what), name: label }), text: say(what), disabled: off, on: { click: run } });
    return element("tr", {},
      cell("line", field(path("label"), { ...name("line"), "data-optional": "", placeholder: numbered }, line.label)), cell("sign-colours", line.code ?? line.shape,
        field(path("colours"), { ...name("colours"), "data-optional": "", placeholder: line.code ? say("colours-of-code") : "red 76 %; white 24 %" }, colours(line.colours))), cell("size", ...size(line, path, name)),
      cell("quantity", field(path("quantity"), { ...name("quantity"), ...number }, line.quantity)),
      cell("batch", field(path("batch"), { ...name("batch"), ...number, "data-optional": "", placeholder: say("batch-all") }, line.batch)),
      cell("designs", field(path("designs"), { ...name("designs"), ...number }, line.designs ?? "1")),
      cell("sides", field(path("sides"), { ...name("sides"), class: "short" }, String(line.sides ?? 1), ["1", "2"])),
      cell("made", field(path("stock"), { ...name("made"), "data-kind": "flag" }, (line.stock ?? line.code !== undefined) ? "yes" : "no", made)),
      cell("sheeting", field(path("sheeting"), name("sheeting"), line.sheeting ?? "prismatic", faceload.catalogue.sheetings)),
      cell("base", field(path("base"), name("base"), line.base ?? "any", faceload.catalogue.bases)),
      cell("",
        button(`copy-line-${index + 1}`, "copy", false, () => { shown.add(partOf(index + 1)); change((order) => order.line.splice(index + 1, 0, structuredClone(order.line[index])), say("copying", { name: label })); }),
        button(`remove-line-${index + 1}`, "remove", order.line.length < 2, () => change((order) => order.line.splice(index, 1), say("removing", { name: label })))));
  }

  /** Colours with their shares, as they are typed. */
  const colours = (table) => (typeof table === "string" ? table : Object.entries(table ?? {}).map(([colour, share]) => `${colour} ${typeof share === "number" ? `${100 * share} %` : share}`).join("; "));

  /** A size as it was typed, and beside it the other units. */
  function size(line, path, name) {
    if (line.size === undefined) return [`${line.width} x ${line.height ?? line.width}`, faceload.units.of(`${line.width} x ${line.height ?? line.width}`)];
    return [faceload.order.field(path("size"), name("size"), line.size), faceload.units.ofField(path("size"))];
  }

  const HEAD = ["line", "sign-colours", "size", "quantity", "batch", "designs", "sides", "made", "sheeting", "base", ""];

  /** Lines from one place to before another: as fields, or what shows them. */
  function lay(order, from, to) {
    const made = [];
    for (let at = from; at < to;) {
      let end = at + PART;
      if (shown.has(at)) made.push(element("tbody", {}, ...order.line.slice(at, end).map((line, index) => row(order, line, at + index))));
      else {
        while (end < to && !shown.has(end)) end += PART;
        made.push(rest(order, at, Math.min(end, order.line.length)));
      }
      at = end;
    }
    return made;
  }

  /** Lines that are not shown yet. */
  function rest(order, from, to) {
    const next = Math.min(from + PART, to);
    const made = element("tbody", { class: "rest", "data-from": from, "data-to": to });
    const button = (text, end) => element("button", { type: "button", text, on: { click: () => {
      for (let at = from; at < end; at += PART) shown.add(at);
      replace(order, made);
      document.querySelector(`#lines [data-path="line[${from + 1}].label"]`).focus();
    } } });
    made.append(element("tr", {}, element("td", { colspan: HEAD.length },
      element("span", { class: "quiet", text: faceload.say("lines-rest", { from: from + 1, to, count: order.line.length }) }), " ",
      button(faceload.say("lines-show", { from: from + 1, to: next }), next), next < to ? button(faceload.say("lines-show-all", { from: from + 1, to }), to) : "")));
    return made;
  }

  function replace(order, body) {
    body.replaceWith(...lay(order, Number(body.dataset.from), Number(body.dataset.to)));
    faceload.units.show();
  }

  /** Shows the part that the field of a path is in, where it is not yet: only a field that is shown can be changed. */
  function reach(order, path) {
    const index = Number(/^line\[(\d+)\]/.exec(path)?.[1] ?? 0) - 1;
    const body = [...document.querySelectorAll("#lines .rest")].find(({ dataset }) => Number(dataset.from) <= index && index < Number(dataset.to));
    if (!body) return;
    shown.add(partOf(index));
    replace(order, body);
  }

  function edit(order) {
    fill(part("lines"), element("table", {},
      element("thead", {}, element("tr", {}, ...HEAD.map((id) => (id ? element("th", { scope: "col", text: faceload.say(id) }) : element("td"))))),
      ...lay(order, 0, order.line.length)));
  }

  /** Line by line: a block for each job, a row for each alternative. */
  function show(view) {
    // Of very many jobs the numbers are texts: so many buttons would make the page slow.
    const number = (text, alternative, indicator, job, what) => (text === undefined ? "" : view.jobs.length > MANY ? text : faceload.opens(text, { alternative, indicator, job, what }));
    const head = [faceload.say("alternative"), ...view.indicators.map((one) => `${one.label}, ${one.unit}`)];
    const block = (job, place) => [
      element("tr", {}, element("th", { scope: "rowgroup", colspan: head.length, text: faceload.say(job.lines > 1 ? "job-of-many" : "job-of-one", { job: job.label, what: job.what, lines: job.lines }) })),
      ...job.alternatives.flatMap((one) => [
        ...(one.texts ? [element("tr", {}, element("td", { class: "name", text: one.id }),
          ...view.indicators.map((_, index) => element("td", { class: "number" }, number(one.texts[index], one.id, view.indicators[index].id, place, job.label))))] : []),
        ...(one.why_not ? [element("tr", { class: "why-not" }, element("td", { class: "quiet", colspan: head.length },
          element("span", { text: faceload.say("job-why-not", { alternative: one.id, reason: one.why_not }) })))] : []),
      ]),
    ];
    const fold = part("by-line-shown");
    const late = view.jobs.length > MANY && !fold.open;
    fold.ontoggle = late ? () => { if (fold.open) show(view); } : null;
    // Of very many jobs the table is made when it is opened.
    fill(part("by-line"), ...(late ? [] : [
      element("thead", {}, element("tr", {}, ...head.map((text, index) => element("th", { scope: "col", class: index > 0 ? "number" : undefined, text })))),
      ...view.jobs.map((job, place) => element("tbody", {}, ...block(job, place)))]));
    part("by-line-count").textContent = faceload.say(view.jobs.length === 1 ? "by-line-one" : "by-line-many", { jobs: view.jobs.length, per: view.per_words });
  }

  faceload.lines = { edit, show, reach };
})();
