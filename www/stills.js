// The same drawing as a canvas holds, as SVG: for paper, and for forced colours, which a canvas does not heed.
"use strict";
(() => {
  const { faceload } = window;
  const { element, picture } = faceload;
  const forced = matchMedia("(forced-colors: active)");

  function put(image, words, svg) {
    image.hidden = false;
    image.alt = words;
    image.src = picture(svg());
  }

  /** The width of a picture in a file, in css pixels; on paper three stand side by side. */
  faceload.paper = { file: 720, third: 280 };
  faceload.stills = {
    /** What stands beside a canvas; each has a picture once it is asked for. */
    made: () => ["forced-only", "paper-only"].map((on) => element("img", { class: on, alt: "", hidden: true })),
    /** Where colours are forced the canvas is not seen. */
    forced(frame, words, svg) { if (forced.matches) put(frame.querySelector(".forced-only"), words, svg); },
    paper: (frame, words, svg) => put(frame.querySelector(".paper-only"), words, svg),
    /** Tells when the page is to be drawn anew. */
    start: () => forced.addEventListener("change", () => faceload.redraw()),
  };
})();
