// The order as it is typed: fields hold texts, the program says what is wrong with them.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part } = faceload;
  /** The last order that was good, and what may be chosen. */
  let good = {};

  /** Where a path such as `line[2].quantity` leads: the table that holds the last key, and that key. */
  function place(order, path) {
    const keys = path.split(".").flatMap((step) => {
      const [, key, index] = /^([^[]+)(?:\[(\d+)\])?$/.exec(step);
      return index ? [key, Number(index) - 1] : [key];
    });
    const last = keys.pop();
    return [keys.reduce((at, key) => (at[key] ??= {}), order), last];
  }

  /** What a field says, as the order writes it; nothing leaves the key out. */
  function value(input) {
    const text = input.value.trim();
    if (input.dataset.kind === "flag") return text === "" ? undefined : text === "yes";
    if (input.dataset.kind === "years") return /^[-\d.\s]+$/.test(text) ? `${text} years` : text;
    return text === "" && input.dataset.optional !== undefined ? undefined : text;
  }

  /** The order with what the fields say now. */
  function typed() {
    const order = structuredClone(good);
    for (const input of document.querySelectorAll("[data-path]")) {
      const [table, key] = place(order, input.dataset.path);
      const said = value(input);
      if (said === undefined) delete table[key]; else table[key] = said;
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
      const input = document.querySelector(`[data-path="${CSS.escape(fault.field)}"]`);
      if (!input || input.hasAttribute("aria-invalid")) { rest.push(fault); continue; }
      const id = `${input.id}-fault`;
      input.setAttribute("aria-invalid", "true");
      input.setAttribute("aria-describedby", id);
      input.after(element("p", { id, class: "fault", text: `Wanted: ${fault.wanted}; ${fault.help}.` }));
      const closed = input.closest("details:not([open])");
      if (closed) closed.open = true;
    }
    return rest;
  }

  /** The options of a choice; those of one `group` stand together under its name. */
  function options(words) {
    const groups = new Map();
    for (const word of words) {
      const option = element("option", { value: word.value ?? word, text: word.text ?? word });
      groups.set(word.group ?? "", [...(groups.get(word.group ?? "") ?? []), option]);
    }
    return [...groups].flatMap(([group, list]) => (group === "" ? list : [element("optgroup", { label: group }, ...list)]));
  }

  /** A field for a path: a text, or a choice where words are given. */
  function field(path, facts, current, words) {
    const id = `f-${path.replace(/[^a-z0-9]+/gi, "-")}`.replace(/-$/, "");
    const common = { id, "data-path": path, on: { change: faceload.changed }, ...facts };
    const made = words
      ? element("select", common, ...options(words))
      : element("input", { type: "text", autocomplete: "off", ...common });
    made.value = current ?? "";
    return made;
  }

  function show(order) {
    good = structuredClone(order);
    good.alternative ??= structuredClone(faceload.catalogue.alternatives);
    part("f-life").value = String(order.life ?? "10 years").replace(/\s*years?$/, "");
    faceload.lines.edit(good);
    faceload.alternatives.edit(good);
    faceload.site.edit(good);
  }

  faceload.order = {
    start() { part("f-life").addEventListener("change", faceload.changed); },
    show, typed, mark, field,
    keep(order) { good = order; },
    /** Changes the order itself (rows added, removed, of another kind) and shows it anew; the focus stays by its field. */
    change(edit) {
      const { id, parentElement } = document.activeElement ?? {};
      const home = parentElement?.closest("details")?.querySelector("summary");
      const order = typed();
      edit(order);
      show(order);
      faceload.changed();
      ((id && part(id)) || home)?.focus();
    },
  };
})();
