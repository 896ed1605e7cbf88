// The order as it is typed: fields hold texts, the program says what is wrong with them.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const COLUMNS = ["quantity", "batch", "designs"];
  let good = {};
  let labels = {};

  /** A field in a line, with the place of its message. */
  function cell(line, index, key) {
    const id = `f-${key}-${index + 1}`;
    const input = element("input", {
      id, type: "text", inputmode: "numeric", autocomplete: "off",
      "data-field": key, "data-path": `line[${index + 1}].${key}`,
      "aria-label": `${labels[key]}, ${line.label ?? `line ${index + 1}`}`,
      placeholder: key === "batch" ? "all at once" : undefined,
      on: { change: faceload.changed },
    });
    input.value = line[key] ?? (key === "designs" ? "1" : "");
    return element("td", { "data-name": labels[key] }, input);
  }

  function show(order) {
    good = order;
    part("f-life").value = String(order.life ?? "10 years").replace(/\s*years?$/, "");
    const head = element("tr", {}, ...["line", "sign", "size"].map((text) => element("th", { scope: "col", text })), ...COLUMNS.map((key) => element("th", { scope: "col", text: labels[key] })));
    const rows = order.line.map((line, index) =>
      element("tr", {},
        element("td", { "data-name": "line", text: line.label ?? `line ${index + 1}` }),
        element("td", { "data-name": "sign", text: line.code ?? line.shape }),
        element("td", { "data-name": "size", text: line.size ?? `${line.width} x ${line.height}` }),
        ...COLUMNS.map((key) => cell(line, index, key))));
    fill(part("lines"), element("table", {}, element("thead", {}, head), element("tbody", {}, ...rows)));
  }

  /** The order with what the fields say now. */
  function typed() {
    const order = structuredClone(good);
    const life = part("f-life").value.trim();
    order.life = /^[-\d.\s]+$/.test(life) ? `${life} years` : life;
    for (const input of document.querySelectorAll("#lines input")) {
      const line = order.line[Number(input.id.split("-").pop()) - 1];
      if (input.value.trim() === "" && input.dataset.field === "batch") delete line.batch;
      else line[input.dataset.field] = input.value.trim();
    }
    return order;
  }

  /** Ties each fault to its field; what has no field is returned. */
  function mark(faults) {
    for (const input of document.querySelectorAll("[aria-invalid]")) {
      input.removeAttribute("aria-invalid");
      input.removeAttribute("aria-describedby");
      part(`${input.id}-fault`)?.remove();
    }
    const rest = [];
    for (const fault of faults) {
      const input = fault.field === "life" ? part("f-life") : document.querySelector(`[data-path="${CSS.escape(fault.field)}"]`);
      if (!input || input.hasAttribute("aria-invalid")) { rest.push(fault); continue; }
      const id = `${input.id}-fault`;
      input.setAttribute("aria-invalid", "true");
      input.setAttribute("aria-describedby", id);
      input.after(element("p", { id, class: "fault", text: `Wanted: ${fault.wanted}; ${fault.help}.` }));
      part("edit").open ||= fault.field !== "life";
    }
    return rest;
  }

  faceload.order = {
    start(words) { labels = words; part("f-life").addEventListener("change", faceload.changed); },
    show, typed, mark,
    keep(order) { good = order; },
  };
})();
