// A figure: heading, sentences, picture, and the numbers behind it as real tables.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill, picture } = faceload;
  /** Longer tables are folded. */
  const SHORT = 12;
  /** Longer words want room. */
  const LONG = 16;
  /** The longest range that is kept on one line. */
  const WIDE = 24;
  /** Figures of all alternatives, and those of all indicators; the others are of what is looked at. */
  const OF_ALL = new Set(["stages", "plan"]);
  const OF_EVERY = new Set(["how-sure"]);

  const shownOf = (cell) => (typeof cell === "string" ? cell : cell.shown);

  function cell(one, column, kinds, lead) {
    const text = shownOf(one);
    const facts = typeof one === "string" ? { class: kinds[column] } : { class: kinds[column], title: String(one.value), "data-value": one.value };
    const inside = lead ? faceload.opens(text, lead) : text;
    return column === 0 && text !== "" ? element("th", { scope: "row", ...facts }, inside) : element("td", facts, inside);
  }

  /** From a number to another. */
  const RANGE = /^[\d\u2212].* to [\d\u2212]/;

  /** A column of numbers, or of ranges, stands to the right, each on one line. */
  function kind(cells) {
    const words = cells.filter((one) => typeof one === "string" && one !== "");
    if (words.every((one) => RANGE.test(one) && one.length <= WIDE)) return "number";
    return words.some((one) => one.length > LONG) ? "words" : undefined;
  }

  function table(one, lead) {
    const kinds = one.columns.map((_, column) => kind(one.rows.map((row) => row[column] ?? "")));
    const head = one.columns.map((text, column) => (text ? element("th", { scope: "col", class: kinds[column], text }) : element("td")));
    const leadOf = (each, row, column) => (lead && typeof each !== "string" ? lead(row, one.columns[column]) : undefined);
    return element("div", { class: "wide-table", tabindex: 0, role: "region", "aria-label": one.caption },
      element("table", { class: "found" }, element("caption", {}, element("span", { text: one.caption })), element("thead", {}, element("tr", {}, ...head)),
        element("tbody", {}, ...one.rows.map((row) => element("tr", {}, ...row.map((each, column) => cell(each, column, kinds, leadOf(each, row, column))))))));
  }

  function pictures(shown, words) {
    if (!shown.svg) return [];
    const one = (svg, on) => element("img", { src: picture(svg), alt: words, class: on });
    const frame = element("div", { class: "picture" }, one(shown.svg, "screen-only"), ...(shown.paper ? [one(shown.paper, "paper-only")] : []));
    if (shown.spots.length > 0) faceload.layer(frame, { name: shown.figure.heading, size: shown.size, spots: shown.spots });
    return [frame];
  }

  /** What a figure of that name is about. */
  function about(name) {
    const { indicator, alternatives } = faceload.behind.pair();
    return { indicator: OF_EVERY.has(name) ? "" : indicator, alternatives: OF_ALL.has(name) ? [] : alternatives };
  }

  /** The name of a figure's files: what it is, of which indicator and alternatives. */
  function named(name) {
    const { indicator, alternatives } = about(name);
    return [name, indicator, ...alternatives.map((place) => faceload.shown().alternatives[place].id)].filter(Boolean).join(" ");
  }

  faceload.table = table;

  /**
   * @param {Element} place what the figure is put into
   * @param {sure.Shown} shown
   * @param {string} name of the figure
   * @param {(row: any[], column: string) => any} [lead] the arithmetic that a number of its tables opens
   */
  faceload.figure = (place, shown, name, lead) => {
    const { heading, sentences, tables } = shown.figure;
    const rows = tables.reduce((sum, one) => sum + one.rows.length, 0);
    const open = [...place.querySelectorAll("details")].map((part) => part.open);
    const folded = (shown.svg || rows > SHORT) && !place.closest("details");
    const many = tables.map((one) => table(one, lead));
    const svg = shown.paper ?? shown.svg;
    const summary = shown.svg ? faceload.say("numbers-of-picture") : faceload.say("table-rows", { rows });
    fill(place, element("figure", {},
      ...(heading ? [element("h3", { text: heading })] : []), ...sentences.map((text) => element("p", { text })), ...pictures(shown, [heading, ...sentences].join(" ")),
      ...(many.length === 0 ? [] : folded ? [element("details", {}, element("summary", { text: summary }), ...many)] : many),
      ...(many.length > 0 ? [faceload.behind(() => about(name)), faceload.saves(heading, named(name), { csv: () => shown.csv, svg: svg ? () => svg : undefined })] : [])));
    [...place.querySelectorAll("details")].forEach((part, index) => { part.open = open[index] ?? false; });
  };
})();
