// A figure: heading, sentences, picture, and the numbers behind it as real tables.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill, picture, save } = faceload;
  /** Longer tables are folded. */
  const SHORT = 12;
  /** Longer words want room. */
  const LONG = 16;

  const shownOf = (cell) => (typeof cell === "string" ? cell : cell.shown);

  function cell(one, column, kinds) {
    const text = shownOf(one);
    const facts = typeof one === "string" ? { class: kinds[column], text } : { class: kinds[column], text, title: String(one.value), "data-value": one.value };
    return column === 0 && text !== "" ? element("th", { scope: "row", ...facts }) : element("td", facts);
  }

  /** A column of numbers stands to the right. */
  function kind(cells) {
    const words = cells.filter((one) => typeof one === "string" && one !== "");
    if (words.length === 0) return "number";
    return words.some((one) => one.length > LONG) ? "words" : undefined;
  }

  function table(one) {
    const kinds = one.columns.map((_, column) => kind(one.rows.map((row) => row[column] ?? "")));
    const head = one.columns.map((text, column) => (text ? element("th", { scope: "col", class: kinds[column], text }) : element("td")));
    return element("div", { class: "wide-table", tabindex: 0, role: "region", "aria-label": one.caption },
      element("table", { class: "found" }, element("caption", {}, element("span", { text: one.caption })), element("thead", {}, element("tr", {}, ...head)),
        element("tbody", {}, ...one.rows.map((row) => element("tr", {}, ...row.map((each, column) => cell(each, column, kinds)))))));
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

  faceload.table = table;

  /**
   * @param {Element} place what the figure is put into
   * @param {{ figure: any, csv: string, svg?: string, paper?: string }} shown
   * @param {string} name of the files it is saved as
   */
  faceload.figure = (place, shown, name) => {
    const { heading, sentences, tables } = shown.figure;
    const rows = tables.reduce((sum, one) => sum + one.rows.length, 0);
    const open = place.querySelector("details")?.open;
    const folded = (shown.svg || rows > SHORT) && !place.closest("details");
    const many = tables.map(table);
    fill(place, element("figure", {},
      ...(heading ? [element("h3", { text: heading })] : []), ...sentences.map((text) => element("p", { text })), ...pictures(shown, [heading, ...sentences].join(" ")),
      ...(many.length === 0 ? [] : folded ? [element("details", { open }, element("summary", { text: shown.svg ? "The numbers of this picture" : `The table, ${rows} rows` }), ...many)] : many),
      ...(many.length > 0 ? [saves(shown, name)] : [])));
  };
})();
