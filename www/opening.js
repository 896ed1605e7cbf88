// An order comes onto the screen as a whole: a demo, a file, a link, one that was kept. It is checked before, and undone as one step.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  /** Words of faults, each once. */
  const words = (faults) => [...new Set(faults.map((fault) => fault.words))];

  /** Shows what the order was started from; an order of one's own is none of the demos. */
  function start(demo) {
    const select = part("f-demo");
    const own = select.querySelector('[value=""]');
    if (demo === "" && !own) select.prepend(element("option", { value: "", text: faceload.say("own-order") }));
    if (demo !== "") own?.remove();
    select.value = demo;
  }

  /**
   * @param {string} text the order's text, known to be good
   * @param {{ demo?: string, moved?: [string, number][], per?: string, boundary?: string, pair?: [string, string], indicator?: string }} looked
   * @param {string} name of the step
   */
  function open(text, looked, name) {
    const order = faceload.order.parsed(text);
    faceload.moves.set(looked.moved ?? []);
    // By its words: the list of pairs is made from the order.
    fill(part("f-pair"), ...(looked.pair ? [element("option", { value: "0 1", text: looked.pair.join(" and ") })] : []));
    if (looked.per) part("f-per").value = looked.per;
    const boundary = looked.boundary ?? order.boundary?.replaceAll(" ", "-");
    if (boundary) part("f-boundary").value = boundary;
    if (looked.indicator) part("f-indicator").value = looked.indicator;
    faceload.order.show(order, text);
    start(looked.demo ?? "");
    faceload.history.note(name);
    faceload.changed();
  }

  /** What is looked at, with what was moved by hand; the pair by the ids of its two. */
  function looked() {
    const [a, b] = part("f-pair").value.split(" ").map(Number);
    const { alternatives } = faceload.shown();
    const pair = alternatives[a] && alternatives[b] ? [alternatives[a].id, alternatives[b].id] : undefined;
    return { per: part("f-per").value, boundary: part("f-boundary").value, pair, indicator: part("f-indicator").value, moved: faceload.moves.moved() };
  }

  faceload.opening = { open, looked, words, startedFrom: start };
})();
