// Undo and redo: every state of the order and of the sliders, each with the name of what led to it.
"use strict";
(() => {
  const { faceload } = window;
  const { part } = faceload;
  /** The most states kept, and the most letters in all of them. */
  const STATES = 300;
  const LETTERS = 60_000_000;
  /** @type {{ name: string, order: string, source: string, moved: string, demo: string }[]} */
  let states = [];
  let at = -1;
  /** What the field that has the focus said when it got it, or when it was last taken. */
  let taken = "";

  /** What a field holds; nothing where it is none. */
  const held = (/** @type {any} */ field) => field.value ?? "";

  const take = (name) => ({
    name, order: JSON.stringify(faceload.order.typed()), source: faceload.order.source(), moved: JSON.stringify(faceload.moves.moved()), demo: part("f-demo").value,
  });
  const same = (a, b) => a.order === b.order && a.source === b.source && a.moved === b.moved;

  function offer() {
    const undo = part("undo");
    const redo = part("redo");
    const focus = document.activeElement;
    undo.disabled = at < 1;
    redo.disabled = at >= states.length - 1;
    undo.textContent = undo.disabled ? faceload.say("undo") : faceload.say("undo-step", { step: states[at].name });
    redo.textContent = redo.disabled ? faceload.say("redo") : faceload.say("redo-step", { step: states[at + 1].name });
    if (focus === undo && undo.disabled) redo.focus();
    if (focus === redo && redo.disabled) undo.focus();
  }

  /** Something was changed: what is on the screen now is a new state. */
  function note(name) {
    const state = take(name);
    if (at >= 0 && same(state, states[at])) return;
    states = [...states.slice(0, at + 1), state].slice(-STATES);
    let letters = states.reduce((sum, one) => sum + one.order.length, 0);
    while (letters > LETTERS && states.length > 2) letters -= states.shift().order.length;
    at = states.length - 1;
    offer();
    if (at > 0 && name !== faceload.say("opening-link")) faceload.link.leave();
    faceload.kept.write();
  }

  function go(to) {
    if (to < 0 || to >= states.length) return;
    at = to;
    const state = states[at];
    const { id } = document.activeElement ?? {};
    faceload.moves.set(JSON.parse(state.moved));
    faceload.order.show(JSON.parse(state.order), state.source);
    faceload.opening.startedFrom(state.demo);
    faceload.changed();
    offer();
    faceload.link.leave();
    if (id && document.activeElement?.id !== id) part(id)?.focus();
    faceload.kept.write();
  }

  /** A text that is being typed is undone by the browser, letter by letter. */
  const typing = () => {
    const field = /** @type {HTMLInputElement | null} */ (document.activeElement);
    return field?.matches("textarea, input:not([type=range], [type=radio], [type=checkbox], [type=file])") && field.value !== taken;
  };

  function key(event) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || document.querySelector("dialog[open]")) return;
    const letter = event.key.toLowerCase();
    const redo = letter === "y" || (letter === "z" && event.shiftKey);
    if ((letter !== "z" && !redo) || typing() || document.documentElement.dataset.view === "read") return;
    event.preventDefault();
    go(redo ? at + 1 : at - 1);
  }

  faceload.history = {
    start() {
      part("undo").addEventListener("click", () => go(at - 1));
      part("redo").addEventListener("click", () => go(at + 1));
      document.addEventListener("keydown", key);
      document.addEventListener("focusin", ({ target }) => { taken = held(target); });
      document.addEventListener("change", ({ target }) => { if (target === document.activeElement) taken = held(target); });
    },
    note,
    /** How many steps can be taken back. */
    steps: () => at,
  };
})();
