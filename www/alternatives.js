// The alternatives: a route with its ink and drying, and who makes the lines it cannot.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const route = (name) => faceload.catalogue.routes.find((one) => one.name === name);

  /** The first ink and a drying that suits it. */
  function suit(alternative) {
    const { inks, dryings } = route(alternative.route);
    if (!inks.includes(alternative.ink)) { if (inks.length > 0) alternative.ink = inks[0]; else delete alternative.ink; }
    const fit = dryings.filter((one) => one.uv === (alternative.ink === "uv")).map((one) => one.word);
    if (fit.length === 0) delete alternative.drying;
    else if (!fit.includes(alternative.drying)) alternative.drying = fit.includes("oven") ? "oven" : fit[0];
    if (alternative.route !== "digital-printing") delete alternative.overlay;
  }

  /** A new name goes wherever the old one stood. */
  function rename(order, old, now) {
    for (const other of order.alternative) if (other.otherwise === old) other.otherwise = now;
  }

  function row(order, one, index) {
    const { field, change, named } = faceload.order;
    const path = (key) => `alternative[${index + 1}].${key}`;
    const again = { on: { change: (event) => change((order) => suit(order.alternative[index]), named(event.target.dataset.path)) } };
    const { inks, dryings } = route(one.route) ?? { inks: [], dryings: [] };
    const name = (id) => ({ "aria-label": faceload.say("of-alternative", { field: faceload.say(id), alternative: one.id }) });
    const fit = dryings.filter((drying) => drying.uv === (one.ink === "uv")).map((drying) => drying.word);
    const others = order.alternative.map((other) => other.id).filter((id) => id !== one.id);
    const cell = (id, ...children) => element("td", { "data-name": id && faceload.say(id) }, ...children);
    const none = faceload.say("none");
    return element("tr", {},
      cell("item-name", field(path("id"), { ...name("item-name"), on: { change: () => change((order) => rename(order, one.id, order.alternative[index].id), name("item-name")["aria-label"]) } }, one.id)),
      cell("route", field(path("route"), { ...name("route"), ...again }, one.route, faceload.catalogue.routes.map((each) => ({ value: each.name, text: each.label })))),
      cell("ink", inks.length > 0 ? field(path("ink"), { ...name("ink"), ...again }, one.ink ?? inks[0], inks) : none),
      cell("drying", fit.length > 0 ? field(path("drying"), name("drying"), one.drying ?? fit[0], fit) : none),
      cell("otherwise", field(path("otherwise"), { ...name("otherwise"), "data-optional": "" }, one.otherwise, [{ value: "", text: none }, ...others])),
      cell("", ...buttons(order, one, index)));
  }

  const wasOf = (one) => faceload.order.opened().find((other) => other.id === one.id);
  /** Whether there is nothing to put back. */
  const isAsOpened = (one) => { const was = wasOf(one); return !was || JSON.stringify(was) === JSON.stringify(one); };
  const areAsOpened = (list) => JSON.stringify(list) === JSON.stringify(faceload.order.opened());

  /** A field was changed: there may be something to put back, or no more. */
  function offer({ alternative = faceload.catalogue.alternatives }) {
    alternative.forEach((one, index) => { const button = part(`put-back-alternative-${index + 1}`); if (button) button.disabled = isAsOpened(one); });
    part("alternatives-back").disabled = areAsOpened(alternative);
  }

  /** Copied, put back to what it was when the order was opened, removed. */
  function buttons(order, one, index) {
    const { change } = faceload.order;
    const was = wasOf(one);
    const button = (id, label, off, edit) => {
      const text = faceload.say(label);
      const step = faceload.say("done-to", { what: text, name: one.id });
      return element("button", { type: "button", id: `${id}-alternative-${index + 1}`, "aria-label": step, text, disabled: off, on: { click: () => change(edit, step) } });
    };
    return [
      button("copy", "copy", false, (order) => order.alternative.splice(index + 1, 0, copied(order, order.alternative[index]))),
      button("put-back", "put-one-back", isAsOpened(one), (order) => { order.alternative[index] = structuredClone(was); }),
      button("remove", "remove", order.alternative.length < 2, (order) => { order.alternative.splice(index, 1); for (const other of order.alternative) if (other.otherwise === one.id) delete other.otherwise; }),
    ];
  }

  /** A copy under a name of its own. */
  function copied(order, one) {
    const copy = structuredClone(one);
    delete copy.otherwise;
    for (let count = 2; order.alternative.some((other) => other.id === copy.id); count += 1) copy.id = `${copy.id.replace(/-\d+$/, "")}-${count}`;
    return copy;
  }

  const add = () => faceload.order.change((order) => order.alternative.push(copied(order, order.alternative.at(-1))), faceload.say("adding-alternative"));
  const putAllBack = () => faceload.order.change((order) => { order.alternative = structuredClone(faceload.order.opened()); }, faceload.say("putting-alternatives-back"));

  function edit(order) {
    const head = ["item-name", "route", "ink", "drying", "otherwise", ""].map((id) => (id ? element("th", { scope: "col", text: faceload.say(id) }) : element("td")));
    fill(part("alternatives-edit"),
      element("p", { class: "quiet", text: faceload.say("otherwise-is") }),
      element("table", {}, element("thead", {}, element("tr", {}, ...head)), element("tbody", {}, ...order.alternative.map((one, index) => row(order, one, index)))),
      element("p", {}, element("button", { type: "button", id: "add-alternative", text: faceload.say("add-alternative"), on: { click: add } }), " ",
        element("button", { type: "button", id: "alternatives-back", text: faceload.say("alternatives-back"), disabled: areAsOpened(order.alternative), on: { click: putAllBack } })));
  }

  faceload.alternatives = { edit, offer };
})();
