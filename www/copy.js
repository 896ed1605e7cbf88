// Copying a text; where the browser refuses, it is shown selected.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill } = faceload;

  /** @param {string} text @param {Element} place where it is said what became of it */
  faceload.copy = async (text, place) => {
    const said = (words, ...more) => fill(place, element("span", { role: "status", text: words }), ...more);
    try {
      await navigator.clipboard.writeText(text);
      said(faceload.say("copied"));
    } catch {
      const area = element("textarea", { readonly: true, rows: 5, "aria-label": faceload.say("text-to-copy") });
      area.value = text;
      said(faceload.say("clipboard-refused"), area);
      area.focus();
      area.select();
      area.scrollTop = 0;
    }
  };
})();
