// What the page has to say about something that was opened, shared or kept: one place, closed by its reader.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  const close = () => { part("notice").hidden = true; fill(part("notice")); };

  /**
   * @param {string} title
   * @param {string[]} list
   * @param {{ text: string, run: () => void }[]} ways what may be done about it
   * @param {boolean} takesFocus after something that was opened, pasted or shared
   */
  function show(title, list = [], ways = [], takesFocus = true) {
    const place = part("notice");
    const button = ({ text, run }) => element("button", { type: "button", text, on: { click: () => { close(); run(); } } });
    fill(place, element("p", { id: "notice-title" }, element("strong", { text: title })),
      ...(list.length > 0 ? [element("ul", {}, ...list.map((text) => element("li", { text })))] : []),
      element("p", { class: "ways" }, ...ways.map(button), button({ text: faceload.say("close"), run: () => part("undo").closest("section").querySelector("button:enabled, select")?.focus() })));
    place.hidden = false;
    if (takesFocus) place.focus();
  }

  faceload.notice = { show, close };
})();
