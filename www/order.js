// The order as it is typed: fields hold texts, the program says what is wrong with them.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part } = faceload;
  /** The order as it was shown, and the text it came as. Only a field that was changed since writes into it. */
  let base = {};
  let source = "";
  /** The same, read: its alternatives, and all of it in one form. */
  let opened = { alternative: undefined, form: "" };
  /** Whether it can be edited yet: its fields are made when the first answer stands. */
  let editable = false;
  /** What each field said when it was shown. */
  const shown = new WeakMap();

  const usual = () => structuredClone(faceload.catalogue.alternatives);
  const written = (order) => `${JSON.stringify(order, null, 2)}\n`;
  const parsed = (text) => JSON.parse(text.replace(/^\ufeff/, ""));

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
    const order = structuredClone(base);
    for (const input of document.querySelectorAll("[data-path]")) {
      if (input.value === shown.get(input)) continue;
      if (input.dataset.path.startsWith("alternative[")) order.alternative ??= usual();
      const [table, key] = place(order, input.dataset.path);
      const said = value(input);
      if (said === undefined) delete table[key]; else table[key] = said;
    }
    return order;
  }

  /** As its file has it: the very text that was opened while nothing of it is changed. */
  function text() {
    const order = typed();
    return source !== "" && JSON.stringify(order) === opened.form ? source : written(order);
  }

  /** Ties each fault to its field; what has no field is returned. */
  function mark(faults) {
    for (const input of document.querySelectorAll("[data-path][aria-invalid]")) {
      input.removeAttribute("aria-invalid");
      input.removeAttribute("aria-describedby");
      part(`${input.id}-fault`)?.remove();
    }
    const rest = [];
    for (const fault of faults) {
      faceload.lines.reach(base, fault.field);
      const input = document.querySelector(`[data-path="${CSS.escape(fault.field)}"]`);
      if (!input || input.hasAttribute("aria-invalid")) { rest.push(fault); continue; }
      const id = `${input.id}-fault`;
      input.setAttribute("aria-invalid", "true");
      input.setAttribute("aria-describedby", id);
      input.after(element("p", { id, class: "fault", text: faceload.say("wanted", { ...fault }) }));
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

  /** What a field changes, as undo names it: `quantity in line 2`. */
  function named(path) {
    const [, list, index, key] = /^(?:(line|alternative)\[(\d+)\]\.|site\.)?(.+)$/.exec(path);
    const what = key.replaceAll("_", "-");
    if (list === "line") return faceload.say("field-in-line", { field: what, line: index });
    return list ? faceload.say("field-in-alternative", { field: what, alternative: index }) : what;
  }

  /** A field was changed. */
  function edited({ target }) {
    faceload.alternatives.offer(typed());
    faceload.history.note(named(target.dataset.path));
    faceload.changed();
  }

  /** A field for a path: a text, or a choice where words are given. */
  function field(path, facts, current, words) {
    const id = `f-${path.replace(/[^a-z0-9]+/gi, "-")}`.replace(/-$/, "");
    const common = { id, "data-path": path, on: { change: edited }, ...facts };
    const made = words
      ? element("select", common, ...options(words))
      : element("input", { type: "text", autocomplete: "off", ...common });
    made.value = current ?? "";
    shown.set(made, made.value);
    return made;
  }

  /** @param {any} order @param {string} from the text it came as, where it came as one */
  function show(order, from = source) {
    base = structuredClone(order);
    if (from !== source) {
      source = from;
      const read = parsed(from);
      opened = { alternative: read.alternative, form: JSON.stringify(read) };
    }
    const life = part("f-life");
    life.value = String(order.life ?? "10 years").replace(/\s*years?$/, "");
    shown.set(life, life.value);
    if (editable) edit();
  }

  /** Makes the fields of all that can be edited. */
  function edit() {
    editable = true;
    const all = { ...base, alternative: base.alternative ?? usual() };
    faceload.lines.edit(all);
    faceload.alternatives.edit(all);
    faceload.site.edit(all);
  }

  faceload.order = {
    start() { part("f-life").addEventListener("change", edited); },
    show, edit, typed, text, mark, field, named, parsed,
    source: () => source,
    /** The alternatives as they were when the order was opened. */
    opened: () => opened.alternative ?? faceload.catalogue.alternatives,
    /** Changes the order itself (rows added, removed, of another kind) and shows it anew; the focus stays by its field. */
    change(make, name) {
      const { id, parentElement } = document.activeElement ?? {};
      const home = parentElement?.closest("details")?.querySelector("summary");
      const order = typed();
      order.alternative ??= usual();
      make(order);
      // An order that states none goes on stating none while they are the usual ones.
      if (opened.alternative === undefined && JSON.stringify(order.alternative) === JSON.stringify(faceload.catalogue.alternatives)) delete order.alternative;
      show(order);
      faceload.history.note(name);
      faceload.changed();
      ((id && part(id)) || home)?.focus();
    },
  };
})();
