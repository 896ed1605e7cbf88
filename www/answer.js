// The answer in sentences, and what it does not say.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  const differences = (view, pair) => element("ul", {}, ...view.indicators.map((indicator, index) =>
    element("li", {}, element("strong", { text: indicator.label }), element("span", { text: pair.differences[index] }))));

  /** The view with what the draws say in place of what single values say. */
  const found = (view, sure) => ({
    ...view, answer: sure.answer, how_sure: sure.how_sure,
    indicators: view.indicators.map((one, index) => ({ ...one, ranked: sure.ranked[index] })),
    pairs: view.pairs.map((pair) => ({ ...pair, ...sure.pairs.find((one) => one.a === pair.a && one.b === pair.b) })),
  });

  /** @param {view.View} view */
  function answer(view) {
    const parts = [];
    const lead = () => element("span", { class: "lead-in", text: `${faceload.say("for-order", { order: view.order_line, per: view.per_words })} ` });
    if (view.answer) {
      parts.push(element("p", { class: "sentence" }, lead(), view.answer),
        element("ul", {}, ...view.indicators.map((one) => element("li", {}, element("strong", { text: one.label }), element("span", { text: one.ranked })))));
    } else if (view.pairs.length > 0) {
      parts.push(element("p", { class: "sentence" }, lead(), faceload.say("no-common")));
    }
    parts.push(element("p", { class: "quiet", text: `${view.alternatives.map((one) => `${one.id}: ${one.words}`).join("; ")}.` }));
    parts.push(element("p", { class: "sure", text: `${view.boundary_words[0].toUpperCase()}${view.boundary_words.slice(1)}. ${view.how_sure[0].toUpperCase()}${view.how_sure.slice(1)}.` }));
    if (view.compared && view.comparable) parts.push(element("p", { class: "quiet", text: faceload.say("loads-part", { part: view.compared }) }));
    const notes = [...view.moved, ...view.cautions, ...view.dropped].map((text) => element("li", { text }));
    if (notes.length > 0) parts.push(element("ul", { class: "notes" }, ...notes));
    if (view.pairs.length > 0) {
      const pairs = view.pairs.map((pair) => element("p", {}, element("strong", { text: `${pair.words}: ` }), pair.sentence));
      parts.push(element("details", { open: part("answer").querySelector("details")?.open }, element("summary", { text: faceload.say("pair-by-pair") }), ...pairs));
    }
    fill(part("answer"), ...parts);
    closely(view);
  }

  /** The two that are looked at, closely. */
  function closely(view) {
    const pair = view.pairs.find((one) => `${one.a} ${one.b}` === part("f-pair").value);
    fill(part("closely"), ...(pair ? [element("p", {}, element("strong", { text: pair.lines }), ` ${pair.sentence}`), differences(view, pair)] : []));
  }

  /** The limits on the screen: they seldom change. */
  let said = "";

  /** @param {view.View} view */
  function limits(view) {
    const words = JSON.stringify([view.left_out, view.not_covered, view.caution, view.standing]);
    if (words === said) return;
    said = words;
    const left = element("ul", {}, ...view.left_out.map((text) => element("li", { text })));
    fill(part("limits"), element("p", { text: faceload.say("left-out") }), left, ...[view.not_covered, view.caution].map((text) => element("p", { text })));
    part("standing").textContent = view.standing;
  }

  let waiting = 0;
  /** One polite sentence of the final state, half a second after it rests. */
  function speak(view, final) {
    clearTimeout(waiting);
    const words = view.answer ?? view.pairs[0]?.sentence ?? "";
    // What was said is not said again.
    if (final && words !== part("spoken").textContent) waiting = setTimeout(() => { part("spoken").textContent = words; }, 500);
  }

  /**
   * @param {any} single what single values say
   * @param {any} sure what draws say, where it is of the same order
   * @param {string} failed why no draws will come
   */
  faceload.answer = (single, sure, failed) => {
    const final = Boolean(sure || failed);
    const view = sure ? found(single, sure) : failed ? { ...single, how_sure: failed } : single;
    const place = part("answer");
    // While draws are under way nothing below moves.
    if (final) place.style.minHeight = "";
    else if (place.style.minHeight === "") place.style.minHeight = `${place.offsetHeight}px`;
    place.setAttribute("aria-busy", String(!final));
    part("order-line").textContent = view.order_line;
    part("order-extent").textContent = [view.name, view.extent, view.conditions].filter(Boolean).join(" · ");
    answer(view);
    limits(view);
    speak(view, final);
  };
})();
