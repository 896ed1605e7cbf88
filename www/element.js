// Elements made from text: whatever an order, a table or a link says is text, never markup.
"use strict";
(() => {
  /** Text whose per cent signs stay beside their numbers. */
  const kept = (text) => (typeof text === "string" ? text.replaceAll(" %", "\u00a0%") : text);

  /**
   * @param {string} tag
   * @param {Record<string, any>} facts attributes; `text` and `on` (a map of listeners) are apart
   * @param {...(Node | string)} children
   */
  function element(tag, facts = {}, ...children) {
    const made = document.createElement(tag);
    for (const [name, value] of Object.entries(facts)) {
      if (value === undefined || value === false) continue;
      if (name === "text") made.textContent = kept(value);
      else if (name === "on") for (const [event, run] of Object.entries(value)) made.addEventListener(event, run);
      else made.setAttribute(name, value === true ? "" : String(value));
    }
    made.append(...children.map(kept));
    return made;
  }

  /** The element of that id, which the page is known to hold. */
  const part = (id) => document.getElementById(id);

  /** Puts new children in place of the old ones. */
  const fill = (place, ...children) => place.replaceChildren(...children);

  Object.assign(window.faceload, { element, part, fill });
})();
