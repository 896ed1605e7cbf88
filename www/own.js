// A value of the shop's own in place of the tables' for some alternatives, with a note that says where it comes from.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  /** The grades, and the label of each. */
  const GRADES = { own: "grade-own", A: "grade-a", B: "grade-b", C: "grade-c", D: "grade-d" };
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
    fault("value", made.value === "" ? faceload.say("wanted-value", { example: input.typed }) : "");
    fault("note", made.note === "" ? faceload.say("wanted-note") : "");
    part("own-whose-fault").textContent = ids.length === 0 ? faceload.say("wanted-whose") : "";
    if (made.value === "" || ids.length === 0) return false;
    const faultsOf = (order) => faceload.engine.check(faceload.say("the-order"), JSON.stringify(order));
    const before = faultsOf(faceload.order.typed()).map((one) => one.words);
    const faults = faultsOf(typedWith(ids, input.id, made)).filter((one) => !before.includes(one.words));
    const of = (field) => (faults.find((one) => one.field.endsWith(field)));
    const note = of(`.with.${input.id}.note`);
    const value = of(`.with.${input.id}`) ?? of(`.with.${input.id}.value`) ?? (note ? undefined : faults[0]);
    if (note) fault("note", faceload.say("wanted", { ...note }));
    fault("value", value ? (value.wanted ? faceload.say("wanted", { ...value }) : value.words) : "");
    return faults.length === 0 && made.note !== "";
  }

  function done(event) {
    event.preventDefault();
    const made = { value: part("own-value").value.trim(), note: part("own-note").value.trim(), grade: part("own-grade").value };
    const ids = chosen();
    if (!checked(made, ids)) { part("own").querySelector("[aria-invalid], #own-whose input")?.focus(); return; }
    part("own").close();
    faceload.order.change((order) => write(order, ids, input.id, made), faceload.say("own-value-of", { item: input.item }));
  }

  /** Asks for a value; `at` is one to begin with. */
  function ask(row) {
    input = row;
    const order = faceload.order.typed();
    const known = (order.alternative ?? []).map((one) => entry(one, row.id)).find((one) => one !== undefined);
    part("own-title").textContent = faceload.say("own-value-title", { item: row.item });
    const value = row.range ? faceload.say("value-in-range", { value: row.value, range: row.range }) : row.value;
    part("own-table").textContent = faceload.say(row.own ? "order-has" : "tables-have", { value, grade: row.grade, meaning: row.grade_words });
    part("own-value").value = typeof known === "string" ? known : known?.value ?? row.typed;
    part("own-note").value = known?.note ?? "";
    fill(part("own-grade"), ...Object.entries(GRADES).map(([value, id]) => element("option", { value, text: faceload.say(id) })));
    part("own-grade").value = known?.grade ?? "own";
    const box = (id) => element("label", {}, element("input", { type: "checkbox", value: id, checked: row.whose.includes(id) }), ` ${id}`);
    for (const old of part("own-whose").querySelectorAll("label")) old.remove();
    part("own-whose-fault").before(...faceload.shown().alternatives.map((one) => box(one.id)));
    part("own-whose-fault").textContent = "";
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
    const made = { value: `${value}${unit}`, note: faceload.say("moved-by-hand"), grade: "D" };
    faceload.moves.set(faceload.moves.moved().filter(([moved]) => moved !== id));
    faceload.order.change((order) => write(order, row.whose, id, made), faceload.say("keeping", { item: row.item, value: made.value }));
  }

  /** Whether the order states it for one of these alternatives. */
  const stated = (row) => (faceload.order.typed().alternative ?? []).some((one) => row.whose.includes(one.id) && entry(one, row.id) !== undefined);

  const putBack = (row) => faceload.order.change((order) => write(order, row.whose, row.id), faceload.say("putting-back", { item: row.item }));
  const putAllBack = () => faceload.order.change((order) => { for (const one of order.alternative) delete one.with; }, faceload.say("putting-own-back"));

  /** The buttons of an input. */
  function buttons(row, found) {
    const made = [];
    const id = (what) => `${what}-${row.id}-${row.whose.join("-")}`.replace(/[^a-z0-9]+/gi, "-");
    if (row.typed) made.push(element("button", { type: "button", id: id("own"), text: faceload.say(row.own ? "own-change" : "own-value"), "aria-label": faceload.say("own-value-of", { item: row.item }), on: { click: () => ask(row) } }));
    if (found) made.push(element("button", { type: "button", id: id("back"), text: faceload.say("put-one-back"), "aria-label": faceload.say("put-back-of", { item: row.item }), on: { click: () => putBack(row) } }));
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
      part("own-count").textContent = count === 0 ? "" : faceload.say(count === 1 ? "own-count-one" : "own-count-many", { values: count });
    },
  };
})();
