// What the page says in words of its own: from the table of labels, which the program holds.
"use strict";
(() => {
  const { faceload } = window;

  /**
   * The text of a label, with facts in the place of their names in braces.
   * @param {string} id
   * @param {Record<string, string | number>} facts
   */
  faceload.say = (id, facts = {}) => {
    const text = faceload.labels[id];
    if (text === undefined) throw new Error(`no label ${id}`);
    return text.replace(/\{(\w+)\}/g, (_, name) => String(facts[name]));
  };
})();
