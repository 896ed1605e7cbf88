// The order kept in this browser as a convenience: after every change, never over another that is kept there.
"use strict";
(() => {
  const { faceload } = window;
  const { part } = faceload;
  const KEY = "faceload.order";
  /** What this page wrote or opened last; anything else that stands there is not ours to overwrite. */
  let ours = null;
  let refused = false;
  /** Nothing is written before the order that was kept is opened or forgotten. */
  let waits = false;
  let soon = 0;

  /** Says how it stands; `forget` where there is something to forget. */
  function tell(words, forget) {
    part("kept").textContent = words;
    part("forget").hidden = !forget;
  }

  function read() {
    try { return window.localStorage.getItem(KEY); } catch { refused = true; return null; }
  }

  const away = () => tell(faceload.say("kept-refused"), false);
  const other = () => tell(faceload.say("kept-other"), true);

  /** Keeps what is on the screen. */
  function keep() {
    if (waits || document.documentElement.dataset.view === "read") return;
    const there = read();
    if (refused) { away(); return; }
    if (there !== null && there !== ours) { other(); return; }
    // The order that the page opens with is nobody's work.
    if (there === null && faceload.history.steps() < 1) return;
    const text = JSON.stringify({ version: 1, order: faceload.order.text(), looked: faceload.opening.looked() });
    try {
      window.localStorage.setItem(KEY, text);
      ours = text;
      tell(faceload.say("kept"), true);
    } catch { away(); }
  }

  function forget() {
    try { window.localStorage.removeItem(KEY); } catch { refused = true; }
    ours = null;
    waits = false;
    tell(faceload.say("kept-nothing"), false);
    part("save-order").focus();
  }

  /** What was kept, where it still reads as an order. */
  function readable(text) {
    try {
      const { version, order, looked } = JSON.parse(text);
      if (version !== 1 || typeof order !== "string") return null;
      if (faceload.engine.check(faceload.say("kept-order"), order).length > 0) return null;
      const known = (id, word) => (typeof word === "string" && [...part(id).options].some((one) => one.value === word) ? word : undefined);
      const pair = Array.isArray(looked?.pair) && looked.pair.length === 2 ? looked.pair.map(String) : undefined;
      const moved = Array.isArray(looked?.moved) ? looked.moved.filter((one) => Array.isArray(one) && typeof one[0] === "string" && Number.isFinite(one[1])) : [];
      return { order, looked: { per: known("f-per", looked?.per), boundary: known("f-boundary", looked?.boundary), indicator: known("f-indicator", looked?.indicator), pair, moved } };
    } catch { return null; }
  }

  function open(text, kept) {
    ours = text;
    waits = false;
    faceload.opening.open(kept.order, kept.looked, faceload.say("opening", { name: faceload.say("kept-order") }));
  }

  /** At the start: offers what was kept. A link in the address comes first; what is kept stays kept. */
  function offer(linked) {
    const text = read();
    if (refused) { away(); return; }
    if (text === null) return;
    waits = true;
    const kept = readable(text);
    tell(faceload.say("kept-before"), true);
    if (!kept) {
      tell(faceload.say("kept-unreadable"), true);
      return;
    }
    const name = faceload.order.parsed(kept.order).name ?? faceload.say("order-without-name");
    const ways = [{ text: faceload.say("open-it"), run: () => open(text, kept) }, { text: faceload.say("forget-it"), run: forget }];
    if (!linked) faceload.notice.show(faceload.say("kept-before-named", { name }), [], ways, false);
    else tell(faceload.say("kept-another-named", { name }), true);
  }

  faceload.kept = {
    start() {
      part("forget").addEventListener("click", forget);
      window.addEventListener("storage", ({ key, newValue }) => { if (key === KEY && newValue !== null && newValue !== ours) other(); });
    },
    /** When what was changed is on the screen. */
    write() { clearTimeout(soon); soon = setTimeout(keep, 0); },
    offer,
  };
})();
