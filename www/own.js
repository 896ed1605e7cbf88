// A value of the shop's own in place of the tables' for some alternatives, with a note that says where it comes from.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const GRADES = [["own", "own: this shop's meter, bill or scale"], ["A", "A: published by a government, a standard or reviewed, and read"], ["B", "B: the same, through an excerpt"], ["C", "C: trade source or common practice"], ["D", "D: from memory, judgement"]];
  let input = null;

  /** The entry that an order has for an input, by alternative. */
  const entry = (alternative, id) => (alternative.with && Object.hasOwn(alternative.with, id) ? alternative.with[id] : undefined);

  /** Writes a value, or takes it out, in the alternatives of these ids. */
  function write(order, ids, id, made) {
    order.alternative ??= structuredClone(faceload.catalogue.alternatives);
    for (const one of order.alternative.filter((alternative) => ids.includes(alternative.id))) {
      if (made) one.with = { ...one.with, [id]: made };
      else if (one.with) { delete one.with[id]; if (Object.keys(one.with).length === 0) delete one.with; }
    }
  }

  const typedWith = (ids, id, made) => { const order = faceload.order.typed(); write(order, ids, id, made); return order; };

  function fault(field, words) {
    const place = part(`own-${field}-fault`);
    place.textContent = words;
    if (words) { part(`own-${field}`).setAttribute("aria-invalid", "true"); part(`own-${field}`).setAttribute("aria-describedby", place.id); }
    else { part(`own-${field}`).removeAttribute("aria-invalid"); part(`own-${field}`).removeAttribute("aria-describedby"); }
  }

  const chosen = () => [...part("own-whose").querySelectorAll("input:checked")].map((box) => box.value);

  /** What is wrong, each at its field; whether nothing is. */
  function checked(made, ids) {
    fault("value", made.value === "" ? `Wanted: a value with its unit, such as ${input.typed}.` : "");
    fault("note", made.note === "" ? "Wanted: where the value comes from, such as: meter, week 14." : "");
    part("own-whose-fault").textContent = ids.length === 0 ? "Wanted: at least one alternative." : "";
    if (made.value === "" || ids.length === 0) return false;
    const before = faceload.engine.check("the order", JSON.stringify(faceload.order.typed())).map((one) => one.words);
    const faults = faceload.engine.check("the order", JSON.stringify(typedWith(ids, input.id, made))).filter((one) => !before.includes(one.words));
    const of = (field) => (faults.find((one) => one.field.endsWith(field)));
    const note = of(`.with.${input.id}.note`);
    const value = of(`.with.${input.id}`) ?? of(`.with.${input.id}.value`) ?? (note ? undefined : faults[0]);
    if (note) fault("note", `Wanted: ${note.wanted}; ${note.help}.`);
    fault("value", value ? (value.wanted ? `Wanted: ${value.wanted}; ${value.help}.` : value.words) : "");
    return faults.length === 0 && made.note !== "";
  }

  function done(event) {
    event.preventDefault();
    const made = { value: part("own-value").value.trim(), note: part("own-note").value.trim(), grade: part("own-grade").value };
    const ids = chosen();
    if (!checked(made, ids)) { part("own").querySelector("[aria-invalid], #own-whose input")?.focus(); return; }
    part("own").close();
    faceload.order.change((order) => write(order, ids, input.id, made), `own value of ${input.item}`);
  }

  /** Asks for a value; `at` is one to begin with. */
  function ask(row) {
    input = row;
    const order = faceload.order.typed();
    const known = (order.alternative ?? []).map((one) => entry(one, row.id)).find((one) => one !== undefined);
    part("own-title").textContent = `Own value: ${row.item}`;
    part("own-table").textContent = `${row.own ? "The order has" : "The tables have"} ${row.value}${row.range ? `, range ${row.range}` : ""}; grade ${row.grade}: ${row.grade_words}. An own value stands without a range.`;
    part("own-value").value = typeof known === "string" ? known : known?.value ?? row.typed;
    part("own-note").value = known?.note ?? "";
    fill(part("own-grade"), ...GRADES.map(([value, text]) => element("option", { value, text })));
    part("own-grade").value = known?.grade ?? "own";
    const box = (id) => element("label", {}, element("input", { type: "checkbox", value: id, checked: row.whose.includes(id) }), ` ${id}`);
    fill(part("own-whose"), element("legend", { text: "for" }), ...faceload.shown().alternatives.map((one) => box(one.id)), element("p", { id: "own-whose-fault", class: "fault" }));
    part("own-caution").textContent = faceload.shown().caution;
    for (const field of ["value", "note"]) fault(field, "");
    part("own").showModal();
    part("own-value").focus();
    part("own-value").select();
  }

  /** A slider's value, kept in the order. */
  function keep(id, value) {
    const row = faceload.factors.find(id);
    if (!row?.typed) return;
    const unit = row.typed.slice(String(row.typed).split(" ")[0].length);
    const made = { value: `${value}${unit}`, note: "moved by hand in what moves it", grade: "D" };
    faceload.moves.set(faceload.moves.moved().filter(([moved]) => moved !== id));
    faceload.order.change((order) => write(order, row.whose, id, made), `keeping ${row.item} at ${made.value}`);
  }

  /** Whether the order states it for one of these alternatives. */
  const stated = (row) => (faceload.order.typed().alternative ?? []).some((one) => row.whose.includes(one.id) && entry(one, row.id) !== undefined);

  const putBack = (row) => faceload.order.change((order) => write(order, row.whose, row.id), `putting back ${row.item}`);
  const putAllBack = () => faceload.order.change((order) => { for (const one of order.alternative) delete one.with; }, "putting all own values back");

  /** The buttons of an input. */
  function buttons(row, found) {
    const made = [];
    const id = (what) => `${what}-${row.id}-${row.whose.join("-")}`.replace(/[^a-z0-9]+/gi, "-");
    if (row.typed) made.push(element("button", { type: "button", id: id("own"), text: row.own ? "change" : "own value", "aria-label": `own value of ${row.item}`, on: { click: () => ask(row) } }));
    if (found) made.push(element("button", { type: "button", id: id("back"), text: "put back", "aria-label": `put back ${row.item}`, on: { click: () => putBack(row) } }));
    return made;
  }

  faceload.own = {
    start() {
      part("own-form").addEventListener("submit", done);
      part("own-cancel").addEventListener("click", () => part("own").close());
      part("own-back").addEventListener("click", putAllBack);
    },
    buttons, keep, stated,
    show(inputs) {
      const count = inputs.filter((row) => row.own && stated(row)).length;
      part("own-back").hidden = count === 0;
      part("own-count").textContent = count === 0 ? "" : `${count} ${count === 1 ? "value is" : "values are"} this order's own.`;
    },
  };
})();
