// How computed: a load as written arithmetic, from stage and flow down to source, place and grade.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  let opener = null;

  /** A piece that names an input leads to its evidence further down. */
  function piece(one) {
    if (!one.input) return one.text;
    return element("span", {}, link(one), element("small", { text: ` ${one.item}` }));
  }

  function link(one) {
    return element("a", { href: "#", text: one.text, title: one.input, on: { click: (event) => { event.preventDefault(); lead(one.input); } } });
  }

  function lead(id) {
    const term = [...document.querySelectorAll("#explain-body dt")].find((one) => one.dataset.input === id);
    for (const one of document.querySelectorAll("#explain-body dt.found")) one.classList.remove("found");
    if (!term) return;
    term.classList.add("found");
    term.scrollIntoView({ block: "center" });
    term.focus();
  }

  const product = (term) => {
    const pieces = term.pieces.flatMap((one, index) => (index === 0 ? [piece(one)] : [" × ", piece(one)]));
    return element("li", {}, ...pieces, ` = ${term.value}`);
  };

  function sum(name, terms, common) {
    if (terms.length === 0) return [];
    const shared = common.length > 0 ? [element("li", {}, "each × ", ...common.flatMap((one, index) => (index === 0 ? [piece(one)] : [" × ", piece(one)])))] : [];
    return [element("p", { class: "quiet", text: `${name}, the sum of` }), element("ul", { class: "terms" }, ...terms.map(product), ...shared)];
  }

  const flow = (one, index) => element("details", { class: "flow", open: index === 0 },
    element("summary", {}, element("strong", { text: `${one.label}: ` }), one.product),
    ...sum("amount", one.amount, one.amount_common), ...sum("factor", one.factor, one.factor_common));

  const evidence = (input) => [
    element("dt", { "data-input": input.id, tabindex: -1, text: `${input.item}: ${input.value}${input.own ? " (of this order, not the tables')" : ""}` }),
    element("dd", {}, `${input.range ? `range ${input.range}, ${input.spread}` : input.spread}. `,
      element("span", { class: input.grade === "D" ? "weak" : undefined, text: `Grade ${input.grade}` }), `: ${input.grade_words}. `,
      `Source: ${[input.source, input.place, input.year].filter(Boolean).join(", ")}. ${input.note ? `${input.note}.` : ""}`),
  ];

  faceload.arithmetic = (alternative, indicator) => {
    const told = faceload.engine.explain(alternative, indicator);
    opener = document.activeElement;
    part("explain-title").textContent = `${faceload.labels["arithmetic"]}: ${told.alternative}, ${told.indicator}, ${told.total}`;
    const stages = told.stages.flatMap((stage) => [element("h3", { text: `${stage.name}: ${stage.total}` }), ...stage.flows.map((one, index) => flow(one, index))]);
    if (stages.length === 0) stages.push(element("p", { text: `Nothing in ${told.alternative} loads ${told.indicator}: no step of the route has such a flow, so the sum is 0. That is what the boundary holds, not a finding.` }));
    fill(part("explain-body"), element("p", { text: `${told.divided}. Units are converted where they differ; each product is given as it comes to.` }), ...stages,
      ...(told.inputs.length > 0 ? [element("h3", { text: "The inputs, with source and grade" }), element("dl", { class: "evidence" }, ...told.inputs.flatMap(evidence))] : []));
    part("explain").showModal();
    part("explain").scrollTop = 0;
    part("explain-title").focus();
  };

  part("explain").addEventListener("close", () => { if (opener instanceof HTMLElement) opener.focus(); });
})();
