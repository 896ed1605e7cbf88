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
    const shared = common.length > 0 ? [element("li", {}, `${faceload.say("each")} × `, ...common.flatMap((one, index) => (index === 0 ? [piece(one)] : [" × ", piece(one)])))] : [];
    return [element("p", { class: "quiet", text: faceload.say("sum-of", { name }) }), element("ul", { class: "terms" }, ...terms.map(product), ...shared)];
  }

  const flow = (one, index) => element("details", { class: "flow", open: index === 0 },
    element("summary", {}, element("strong", { text: `${one.label}: ` }), one.product),
    ...sum(faceload.say("amount"), one.amount, one.amount_common), ...sum(faceload.say("factor"), one.factor, one.factor_common));

  const evidence = (input) => [
    element("dt", { "data-input": input.id, tabindex: -1, text: `${input.item}: ${input.value}${input.own ? ` (${faceload.say("of-this-order")})` : ""}` }),
    element("dd", {}, `${input.range ? faceload.say("range-of", { range: input.range, spread: input.spread }) : input.spread}. `,
      element("span", { class: input.grade === "D" ? "weak" : undefined, text: faceload.say("grade-is", { grade: input.grade }) }), `: ${input.grade_words}. `,
      `${faceload.say("source-is", { source: [input.source, input.place, input.year].filter(Boolean).join(", ") })}. ${input.note ? `${input.note}.` : ""}`),
  ];

  /** To the stage or the input that the number led from. */
  function goTo(at) {
    const stage = at.stage && [...document.querySelectorAll("#explain-body h3")].find((one) => one.textContent.startsWith(`${at.stage} (`));
    if (stage) { stage.scrollIntoView({ block: "start" }); stage.focus(); }
    if (at.input) lead(at.input);
  }

  /**
   * Opens the arithmetic of a load.
   * @param {string} alternative
   * @param {string} indicator
   * @param {{ stage?: string, input?: string, job?: number, what?: string }} at where in it, and of which job alone
   */
  faceload.arithmetic = (alternative, indicator, at = {}) => {
    const told = faceload.engine.explain(alternative, indicator, at.job);
    opener = document.activeElement;
    const names = [told.alternative, at.what, told.indicator, told.total].filter(Boolean);
    part("explain-title").textContent = `${faceload.say("arithmetic")}: ${names.join(", ")}`;
    const stages = told.stages.flatMap((stage) => [element("h3", { tabindex: -1, text: `${stage.name}: ${stage.total}` }), ...stage.flows.map((one, index) => flow(one, index))]);
    if (stages.length === 0) stages.push(element("p", { text: faceload.say("no-flow", { alternative: told.alternative, indicator: told.indicator }) }));
    fill(part("explain-body"), element("p", { text: `${told.divided}. ${faceload.say("units-converted")}` }), ...stages,
      ...(told.inputs.length > 0 ? [element("h3", { text: faceload.say("inputs-with-source") }), element("dl", { class: "evidence" }, ...told.inputs.flatMap(evidence))] : []));
    part("explain").showModal();
    part("explain").scrollTop = 0;
    part("explain-title").focus();
    goTo(at);
  };

  /** A number that opens its arithmetic. */
  faceload.opens = (text, lead) => element("button", { type: "button", class: "number", text,
    "aria-label": faceload.say("how-computed", { what: [lead.alternative, lead.what, lead.stage, lead.indicator, text].filter(Boolean).join(", ") }),
    on: { click: () => faceload.arithmetic(lead.alternative, lead.indicator, lead) } });

  part("explain").addEventListener("close", () => { if (opener instanceof HTMLElement) opener.focus(); });
})();
