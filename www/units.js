// Lengths and areas beside what was typed, in the other units. It covers sizes of lines, distances, and the order's area;
// the order itself is not touched.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part } = faceload;

  /** A place beside a length: of a text, or of the field with that path. */
  const beside = (facts) => element("span", { class: "other-unit quiet", ...facts });

  const lengthOf = (place) => (place.dataset.length ?? document.querySelector(`[data-path="${CSS.escape(place.dataset.beside)}"]`)?.value ?? "");

  /** Anew, after a toggle or another order. */
  function show() {
    const units = part("f-units").value;
    for (const place of document.querySelectorAll(".other-unit")) place.textContent = units === "typed" ? "" : faceload.engine.inUnits(lengthOf(place), units) ?? "";
    const view = faceload.shown();
    part("order-area").textContent = units === "customary" && view ? faceload.say("of-face", { area: view.square_feet }) : "";
  }

  faceload.units = {
    start: () => part("f-units").addEventListener("change", show),
    of: (text) => beside({ "data-length": text }),
    ofField: (path) => beside({ "data-beside": path }),
    show,
  };
})();
