// The link that reopens an order: made and read by the program, in the part of the address that no host is sent.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  /** Longer addresses are cut by programs that pass them on. */
  const LONGEST = 2_000;
  const fromDisk = () => window.location.protocol === "file:";
  const here = () => window.location.href.split("#")[0];
  /** What of the address says how it is shown. */
  const manner = () => (document.documentElement.dataset.view === "read" ? "view=read" : "");

  /** The shop's own values in the order as it is typed. */
  const own = (order) => (order.alternative ?? []).reduce((sum, one) => sum + Object.values(one.with ?? {}).filter((entry) => entry.grade === "own").length, 0);

  /** The address after the order on the screen is no longer the one in it. */
  function leave() {
    if (!window.location.hash.startsWith("#1.")) return;
    try { window.history.replaceState(null, "", manner() ? `#${manner()}` : here()); } catch { /* The address stays; the order is no worse for it. */ }
  }

  /** Opens what the address holds; whether it held an order. */
  function open() {
    const { hash } = window.location;
    faceload.reading.read();
    if (hash.length < 2 || hash === "#view=read") return false;
    const { linked, faults } = faceload.engine.readLink(hash);
    if (faults) {
      faceload.notice.show(faceload.say("link-not-opened"), faceload.opening.words(faults));
      return false;
    }
    const { text, per, boundary, pair, indicator, moved } = linked;
    faceload.opening.open(text, { per, boundary, pair, indicator, moved }, faceload.say("opening-link"));
    faceload.notice.show(faceload.say("link-open"), linked.told, [], linked.told.length > 0);
    return true;
  }

  /** What the link would be, and what is to be said of it. */
  function made() {
    const withOwn = part("link-own").checked;
    const shared = { ...faceload.opening.looked(), own: withOwn };
    const { link, left_out: leftOut, faults } = faceload.engine.writeLink(JSON.stringify(faceload.order.typed()), shared);
    if (faults) return { words: faceload.opening.words(faults), file: true };
    const ending = part("link-read").checked ? `${link}&view=read` : link;
    const words = [];
    if (leftOut > 0) words.push(faceload.say(leftOut === 1 ? "link-without-one" : "link-without-many", { values: leftOut }));
    if (!withOwn && shared.moved.length > 0) words.push(faceload.say("link-without-sliders"));
    if (fromDisk()) {
      words.push(faceload.say("link-from-disk"));
      return { text: ending, words, file: true, what: faceload.say("copy-ending") };
    }
    const address = here() + ending;
    if (address.length > LONGEST) {
      words.push(faceload.say("link-too-long", { characters: address.length, longest: LONGEST }));
      return { words, file: true };
    }
    return { text: address, words, file: false, what: faceload.say("copy-link") };
  }

  function tell() {
    const { text = "", words, file, what } = made();
    part("link-text").value = text;
    part("link-text").hidden = text === "";
    part("copy-link").hidden = text === "";
    part("copy-link").textContent = what ?? "";
    part("link-file").hidden = !file;
    fill(part("link-words"), ...words.map((words) => element("li", { text: words })));
    fill(part("link-said"));
  }

  function share() {
    const order = faceload.order.typed();
    const values = own(order);
    part("link-own").checked = false;
    part("link-own-field").hidden = values === 0 && faceload.moves.moved().length === 0;
    part("link-own-words").textContent = faceload.say(values === 0 ? "link-with-sliders" : values === 1 ? "link-with-one" : "link-with-many", { values });
    tell();
    part("link").showModal();
    part("link-title").focus();
  }

  faceload.link = {
    start() {
      part("share").addEventListener("click", share);
      part("link-own").addEventListener("change", tell);
      part("link-read").addEventListener("change", tell);
      part("copy-link").addEventListener("click", () => faceload.copy(part("link-text").value, part("link-said")));
      part("link-file").addEventListener("click", () => faceload.files.save());
      window.addEventListener("hashchange", open);
    },
    open, leave,
  };
})();
