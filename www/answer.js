// The answer in sentences, and what it does not say.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  const differences = (view, pair) => element("ul", {}, ...view.indicators.map((indicator, index) =>
    element("li", {}, element("strong", { text: indicator.label }), element("span", { text: pair.differences[index] }))));

  function answer(view) {
    const [first, ...others] = view.pairs;
    const parts = [];
    if (first) {
      parts.push(element("p", { class: "sentence", text: `For ${view.order_line}, ${view.per_words}: ${first.sentence}` }), differences(view, first));
    }
    parts.push(element("p", { class: "sure", text: `${view.boundary_words[0].toUpperCase()}${view.boundary_words.slice(1)}. ${view.how_sure[0].toUpperCase()}${view.how_sure.slice(1)}.` }));
    for (const line of [...view.moved, ...view.cautions, ...view.dropped]) parts.push(element("p", { class: "fault", text: line }));
    if (others.length > 0) {
      const more = others.map((pair) => element("p", {}, element("strong", { text: `${pair.words}: ` }), pair.sentence));
      parts.push(element("details", { open: faceload.wide() }, element("summary", { text: `The other ${others.length} pairs` }), ...more));
    }
    const shown = part("answer").querySelector("details");
    const was = shown?.open;
    fill(part("answer"), ...parts);
    if (was !== undefined && others.length > 0) part("answer").querySelector("details").open = was;
  }

  function limits(view) {
    const left = element("ul", {}, ...view.left_out.map((text) => element("li", { text })));
    fill(part("limits"), element("p", { text: "Left out:" }), left, ...[view.not_covered, view.caution].map((text) => element("p", { text })));
    part("standing").textContent = view.standing;
  }

  let waiting = 0;
  /** One polite sentence, half a second after the numbers rest. */
  function speak(view) {
    clearTimeout(waiting);
    waiting = setTimeout(() => { part("spoken").textContent = view.pairs[0]?.sentence ?? ""; }, 500);
  }

  faceload.answer = (view) => {
    part("order-line").textContent = view.order_line;
    part("order-extent").textContent = [view.name, view.extent, view.conditions].filter(Boolean).join(" · ");
    answer(view);
    limits(view);
    speak(view);
  };
})();
