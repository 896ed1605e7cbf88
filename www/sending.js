// What may leave the page: nothing of a result that is not of the order on the screen; the sentence only with its draws.
"use strict";
(() => {
  const { faceload } = window;
  const { part } = faceload;

  /** Why results stay here, or nothing. */
  function reason() {
    const note = part("not-updated");
    return note.hidden ? "" : faceload.say("results-stay", { fault: note.textContent });
  }

  /** The statement of what is looked at; one of another pair or indicator is none. */
  function statement() {
    const made = faceload.findings.found()?.statement;
    const ids = part("f-pair").value.split(" ").map((place) => faceload.shown().alternatives[Number(place)]?.id);
    return made && made.indicator === part("f-indicator").value && made.between.every((id, at) => id === ids[at]) ? made : null;
  }

  function whyNoSentence() {
    if (reason()) return reason();
    const { draws } = document.documentElement.dataset;
    if (draws === "failed") return faceload.say("draws-failed-no-sentence");
    const here = draws === "here";
    const made = here && statement();
    if (made) return made.why_none.join("; ");
    // What was found last may be of another pair or indicator: that of this one is on its way.
    const alone = here && !faceload.findings.found()?.statement;
    return faceload.say(alone ? "no-pair-no-sentence" : "draws-under-way");
  }

  /** A button that is off says why. */
  function set(button, why) {
    button.disabled = why !== "";
    button.title = why;
  }

  function gate() {
    const why = whyNoSentence();
    set(part("copy-message"), why);
    part("why-not").textContent = why;
    set(part("share"), reason());
    for (const button of document.querySelectorAll(".saves button")) set(button, reason());
  }

  faceload.sending = {
    start() {
      part("copy-message").addEventListener("click", () => faceload.copy(statement().text, part("message-said")));
      const watch = new MutationObserver(gate);
      watch.observe(document.documentElement, { attributes: true, attributeFilter: ["data-draws", "data-figures"] });
      watch.observe(part("not-updated"), { attributes: true, childList: true });
      watch.observe(part("answer"), { childList: true });
      watch.observe(part("f-pair"), { childList: true });
      // A figure that comes later has buttons that are on.
      document.addEventListener("click", (event) => {
        if (reason() && event.target instanceof Element && event.target.closest(".saves button")) { event.preventDefault(); event.stopImmediatePropagation(); gate(); }
      }, true);
      new MutationObserver(() => part("message-said").replaceChildren()).observe(part("answer"), { childList: true });
      gate();
    },
    reason,
  };
})();
