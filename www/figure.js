// A figure: heading, sentences, picture, and the numbers behind it as real tables.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill, picture, save } = faceload;
  /** Longer tables are folded. */
  const SHORT = 12;

  const shownOf = (cell) => (typeof cell === "string" ? cell : cell.shown);

  function cell(one, column, numbers) {
    const text = shownOf(one);
    const number = numbers[column] ? "number" : undefined;
    const facts = typeof one === "string" ? { class: number, text } : { class: number, text, title: String(one.value), "data-value": one.value };
    return column === 0 && text !== "" ? element("th", { scope: "row", ...facts }) : element("td", facts);
  }

  function table(one) {
    // A column of numbers stands to the right.
    const numbers = one.columns.map((_, column) => one.rows.every((row) => typeof row[column] !== "string" || row[column] === "") && one.rows.some((row) => typeof row[column] !== "string"));
    const head = one.columns.map((text, column) => (text ? element("th", { scope: "col", class: numbers[column] ? "number" : undefined, text }) : element("td")));
    return element("div", { class: "wide-table", tabindex: 0, role: "region", "aria-label": one.caption },
      element("table", { class: "found" }, element("caption", { text: one.caption }), element("thead", {}, element("tr", {}, ...head)),
        element("tbody", {}, ...one.rows.map((row) => element("tr", {}, ...row.map((each, column) => cell(each, column, numbers)))))));
  }

  function pictures(shown, words) {
    if (!shown.svg) return [];
    const one = (svg, on) => element("img", { src: picture(svg), alt: words, class: on });
    return [one(shown.svg, "screen-only"), ...(shown.paper ? [one(shown.paper, "paper-only")] : [])];
  }

  function saves(shown, name) {
    const { heading } = shown.figure;
    const svg = shown.paper ?? shown.svg;
    const button = (form, run) => element("button", { type: "button", text: form, "aria-label": `save as ${form}: ${heading}`, on: { click: run } });
    return element("p", { class: "saves" }, "save ", button("CSV", () => save.csv(name, shown.csv)),
      ...(svg ? [button("SVG", () => save.svg(name, svg)), button("PNG", () => save.png(name, svg))] : []));
  }

  /**
   * @param {Element} place what the figure is put into
   * @param {{ figure: any, csv: string, svg?: string, paper?: string }} shown
   * @param {string} name of the files it is saved as
   */
  faceload.figure = (place, shown, name) => {
    const { heading, sentences, tables } = shown.figure;
    const rows = tables.reduce((sum, one) => sum + one.rows.length, 0);
    const open = place.querySelector("details")?.open;
    const folded = shown.svg || rows > SHORT;
    const many = tables.map(table);
    fill(place, element("figure", {},
      ...(heading ? [element("h3", { text: heading })] : []), ...sentences.map((text) => element("p", { text })), ...pictures(shown, [heading, ...sentences].join(" ")),
      ...(many.length === 0 ? [] : folded ? [element("details", { open }, element("summary", { text: shown.svg ? "The numbers of this picture" : `The table, ${rows} rows` }), ...many)] : many),
      ...(many.length > 0 ? [saves(shown, name)] : [])));
  };
})();
