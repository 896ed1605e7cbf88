// The same drawing as a canvas holds, as SVG: for paper, and for forced colours, which a canvas does not heed.
"use strict";
(() => {
  const { faceload } = window;
  const { element, picture } = faceload;
  const forced = matchMedia("(forced-colors: active)");

  function put(frame, on, words, svg) {
    const old = frame.querySelector(`.${on}`);
    const src = picture(svg());
    // One that is there is ready: a print that has begun does not wait for another.
    if (old?.src === src) { old.alt = words; return; }
    const made = element("img", { class: on, alt: words, src });
    if (old) old.replaceWith(made); else frame.append(made);
  }

  /** The width of a picture in a file, in css pixels; on paper three stand side by side. */
  faceload.paper = { file: 720, third: 280 };
  faceload.stills = {
    /** Where colours are forced the canvas is not seen. */
    forced(frame, words, svg) { if (forced.matches) put(frame, "forced-only", words, svg); },
    paper: (frame, words, svg) => put(frame, "paper-only", words, svg),
    /** Tells when the page is to be drawn anew. */
    start: () => forced.addEventListener("change", () => faceload.redraw()),
  };
})();
