// What nobody sees while a slider moves waits until it rests.
"use strict";
(() => {
  const { faceload } = window;
  /** How long it rests before, in milliseconds. */
  const RESTS = 120;
  /** By name: the timer of what waits. */
  const waiting = new Map();
  const seen = new Set();
  // A little beyond the window counts as seen, so that scrolling meets what is up to date.
  const watch = new IntersectionObserver((entries) => entries.forEach(({ target, isIntersecting }) => {
    if (isIntersecting) seen.add(target); else seen.delete(target);
  }), { rootMargin: "200px" });

  /** Runs it when nothing of that name was asked for a while; the newest counts. */
  faceload.later = (name, run) => {
    clearTimeout(waiting.get(name));
    waiting.set(name, setTimeout(run, RESTS));
  };
  /** What waits under that name is no longer wanted. */
  faceload.sooner = (name) => clearTimeout(waiting.get(name));
  faceload.seen = {
    watch: (element) => watch.observe(element),
    is: (element) => seen.has(element),
    /** Runs it now where the element is seen, later where not. */
    soon(name, element, run) {
      faceload.sooner(name);
      if (seen.has(element)) run(); else faceload.later(name, run);
    },
  };
})();
