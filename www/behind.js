// What stands behind a figure: the sources of the inputs in it, asked for when they are looked at.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill } = faceload;

  const source = (one) => element("li", { text: faceload.say(one.inputs === 1 ? "source-of-one" : "source-of-many", { source: one.words, inputs: one.inputs, grades: one.grades.join(", ") }) });

  /** The pair and the indicator that are looked at. */
  const pair = () => ({ indicator: faceload.part("f-indicator").value, alternatives: faceload.part("f-pair").value.split(" ").filter(Boolean).map(Number) });

  /**
   * @param {() => { indicator: string, alternatives: number[] }} of what the figure is about; no indicator and no
   * alternatives mean all of them
   */
  function behind(of) {
    const list = element("ul");
    const shown = element("details", { class: "behind", on: { toggle: () => {
      if (!shown.open) return;
      const { indicator, alternatives } = of();
      fill(list, ...faceload.engine.sources(indicator, alternatives).map(source));
    } } }, element("summary", { text: faceload.say("behind") }), list);
    return shown;
  }

  faceload.behind = Object.assign(behind, { pair });
})();
