// Every input of the comparison with its value, range, grade and source, searched by any word; the
// sources behind them with licence and credit.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  let inputs = [];

  const row = (input) => element("tr", { class: input.own ? "own" : undefined },
    element("th", { scope: "row" }, input.item, element("br"), element("code", { class: "quiet", text: input.id })),
    element("td", { class: "number" }, input.value, ...(input.own ? [element("br"), element("span", { class: "mark", text: faceload.say("of-the-order") })] : [])),
    element("td", { text: input.range ? `${input.range}, ${input.spread}` : input.spread }),
    element("td", {}, element("span", { class: input.grade === "D" ? "weak" : undefined, text: `${input.grade}: ${input.grade_words}` })),
    element("td", {}, [input.source, input.place, input.year].filter(Boolean).join(", "), input.note ? element("span", { class: "quiet", text: ` (${input.note})` }) : ""),
    element("td", { class: "editing" }, ...faceload.own.buttons(input, input.own && faceload.own.stated(input))));

  function find() {
    const words = part("f-search").value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = inputs.filter((input) => {
      const text = Object.values(input).join(" ").toLowerCase();
      return words.every((word) => text.includes(word));
    });
    fill(part("factors").tBodies[0], ...found.map(row));
    part("factors-count").textContent = faceload.say(words.length > 0 ? "inputs-found" : "inputs-all", { found: found.length, all: inputs.length });
    if (words.length > 0) part("factors-shown").open = true;
  }

  faceload.factors = {
    start() {
      const head = [...["input", "value", "range", "grade", "source"].map((id) => element("th", { scope: "col", text: faceload.say(id) })), element("td", { class: "editing" })];
      fill(part("factors"), element("thead", {}, element("tr", {}, ...head)), element("tbody"));
      part("f-search").addEventListener("input", find);
    },
    /** The input of that id as the tables have it, else as the order does. */
    find: (id) => inputs.find((input) => input.id === id && !input.own) ?? inputs.find((input) => input.id === id),
    show(view) {
      inputs = view.inputs;
      find();
      faceload.own.show(inputs);
      const credit = (source) => element("li", {}, faceload.say(source.inputs === 1 ? "credit-one" : "credit-many", { source: source.words, inputs: source.inputs }), element("br"),
        element("span", { class: "quiet", text: source.licence }));
      fill(part("credits"), ...view.sources.map(credit));
      part("tables").textContent = view.tables;
    },
  };
})();
