// Rows of a spreadsheet: pasted or opened, shown as they are understood, and only then put into the order.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  /** Longer texts are taken without standing in the field, which would be slow. */
  const LONG = 20_000;
  /** One byte more than the program takes: it refuses the rest in its own words. */
  const MOST = 5_000_001;
  /** How many kinds of fault are shown. */
  const SHOWN = 60;
  /** What may hold where a row does not say it, with an example. */
  const MISSING = { shape: "rectangle", colours: "red 60 %; white 40 %", size: "24 x 30 in", sheeting: "prismatic", blank: "aluminium 0.080 in" };
  let bytes = null;
  /** @type {rows.Asked | null} */
  let asked = null;
  let leave = false;

  function take(taken, name) {
    bytes = taken;
    asked = { name, separator: null, header: null, columns: [], missing: [], unit: null, comma: false };
    leave = false;
    part("rows-done").textContent = "";
    show();
  }

  /** Reads anew once the focus has moved on, so that it is kept. */
  const again = () => setTimeout(show);

  function clear() {
    bytes = null;
    part("rows-text").value = "";
    part("rows-file").value = "";
    fill(part("rows-found"));
  }

  /** A choice of how rows are taken; another one reads them anew. */
  function choice(id, label, words, now, choose) {
    const made = element("select", { id, on: { change: () => { choose(made.value); again(); } } },
      ...words.map(([value, text]) => element("option", { value, text })));
    made.value = now;
    return element("span", { class: "field" }, element("label", { for: id, text: label }), made);
  }

  function choices(report) {
    const { say } = faceload;
    const yes = (flag) => (flag ? "yes" : "no");
    return element("div", { class: "fields" },
      choice("rows-separator", say("between-cells"), [["\t", say("tab")], [";", say("semicolon")], [",", say("comma")]], report.separator, (to) => { asked.separator = to; asked.columns = []; }),
      choice("rows-header", say("first-row"), [["yes", say("first-row-names")], ["no", say("first-row-sign")]], yes(report.header), (to) => { asked.header = to === "yes"; }),
      choice("rows-unit", say("bare-lengths"), [["", say("bare-lengths-refused")], ...["in", "ft", "mm", "cm", "m"].map((unit) => [unit, say("bare-lengths-in", { unit })])], asked.unit ?? "", (to) => { asked.unit = to || null; }),
      choice("rows-comma", say("decimal-mark"), [["no", say("point")], ["yes", say("comma")]], yes(asked.comma), (to) => { asked.comma = to === "yes"; }));
  }

  /** Takes a column as a field; the column that gave it before gives nothing then. */
  function taken(report, place, word) {
    const chosen = new Map(asked.columns);
    const before = report.columns.findIndex((column, index) => index !== place && word !== "" && column.field === word);
    if (before >= 0) chosen.set(before, "");
    chosen.set(place, word);
    asked.columns = [...chosen];
    again();
  }

  function columns(report) {
    const row = (column, place) => {
      const name = faceload.say(column.name ? "column-named" : "column-of", column);
      const select = element("select", { id: `rows-column-${place}`, "aria-label": faceload.say("column-taken-as", { column: name }), on: { change: () => taken(report, place, select.value) } },
        element("option", { value: "", text: faceload.say("taken-as-nothing") }), ...report.fields.map(({ value, text }) => element("option", { value, text })));
      select.value = column.field ?? "";
      return element("tr", {}, element("th", { scope: "row", text: `${column.column} ${column.name}` }), element("td", {}, select),
        element("td", { class: "quiet", text: [column.why, column.unit && faceload.say("in-unit", { unit: column.unit })].filter(Boolean).join(", ") }),
        element("td", { class: "first-cells", text: column.cells.join(" \u00b7 ") }));
    };
    return element("div", { class: "wide-table", tabindex: 0, role: "region", "aria-label": faceload.say("the-columns") },
      element("table", {}, element("caption", { text: faceload.say("the-columns") }),
        element("thead", {}, element("tr", {}, ...["column", "taken-as", "why", "first-cells"].map((id) => element("th", { scope: "col", text: faceload.say(id) })))),
        element("tbody", {}, ...report.columns.map(row))));
  }

  function missing() {
    const now = new Map(asked.missing);
    const field = ([word, example]) => {
      const id = `rows-missing-${word}`;
      const made = element("input", { id, type: "text", autocomplete: "off", placeholder: faceload.say("such-as", { example }), on: {
        change: () => {
          now.delete(word);
          if (made.value.trim()) now.set(word, made.value.trim());
          asked.missing = [...now];
          again();
        },
      } });
      made.value = now.get(word) ?? "";
      return element("span", { class: "field" }, element("label", { for: id, text: word }), made);
    };
    return element("fieldset", { id: "rows-missing" }, element("legend", { text: faceload.say("rows-missing") }),
      element("div", { class: "fields" }, ...Object.entries(MISSING).map(field)));
  }

  function faults(report) {
    if (report.faults.length === 0) return [];
    const more = report.faults.length - SHOWN;
    const found = {
      caption: faceload.say(more > 0 ? "rows-not-taken-more" : "rows-not-taken", { more }),
      columns: ["rows-at", "column", "what-came", "what-wanted", "way-out"].map((id) => faceload.say(id)),
      rows: report.faults.slice(0, SHOWN).map((one) => [one.where, one.place, one.came, one.wanted, one.help]),
    };
    const box = element("input", { id: "rows-leave", type: "checkbox", on: { change: () => { leave = box.checked; } } });
    box.checked = leave;
    return [faceload.table(found), element("p", {}, box, " ", element("label", { for: "rows-leave", text: faceload.say("leave-rows-out", { rows: report.listed_words }) })),
      element("p", {}, element("button", { id: "rows-save", type: "button", text: faceload.say("save-left-out"), on: {
        click: () => faceload.save.csv("rows-left-out", faceload.engine.rowsLeftOut(bytes, asked)),
      } }))];
  }

  /** Puts the lines into the order; while rows are listed, only where the user leaves them out. */
  function put(report, beside) {
    const stop = report.count === 0 ? faceload.say("no-row-taken")
      : report.listed > 0 && !leave ? faceload.say("rows-stop", { rows: report.listed_words }) : "";
    part("rows-stop").textContent = stop;
    if (stop) {
      (part("rows-leave") ?? part("rows-text")).focus();
      return;
    }
    const { order, faults: refused } = faceload.engine.rowsInOrder(bytes, asked, JSON.stringify(faceload.order.typed()), beside);
    if (refused) {
      part("rows-stop").textContent = refused.map((fault) => fault.words).join("; ");
      return;
    }
    clear();
    faceload.order.change((now) => { now.line = order.line; }, faceload.say("rows-step"));
    const lines = report.listed > 0 ? faceload.say("lines-and-left-out", { lines: report.lines_words, rows: report.listed_words }) : report.lines_words;
    part("rows-done").textContent = faceload.say(beside ? "rows-added" : "rows-replaced", { lines, heading: faceload.say("edit-lines") });
    part("from-rows").querySelector("summary").focus();
  }

  function show() {
    const focused = document.activeElement?.id;
    const { report, faults: refused } = faceload.engine.rows(bytes, asked);
    if (refused) {
      fill(part("rows-found"), ...refused.map((fault) => element("p", { class: "fault", role: "alert", text: fault.words })));
      return;
    }
    const button = (id, text, beside) => element("button", { id, type: "button", text, on: { click: () => put(report, beside) } });
    fill(part("rows-found"),
      element("p", { id: "rows-says", role: "status", text: report.says.slice(0, 2).join(" ") }),
      element("ul", { class: "quiet" }, ...report.says.slice(2).map((text) => element("li", { text }))),
      choices(report), columns(report), missing(), ...faults(report), faceload.table(report.first),
      element("p", { id: "rows-stop", class: "fault", role: "alert" }),
      element("p", { class: "fields" }, button("rows-add", faceload.say("add-rows"), true), button("rows-replace", faceload.say("replace-by-rows"), false)));
    if (focused) part(focused)?.focus();
  }

  faceload.paste = {
    start() {
      const text = part("rows-text");
      const written = (words) => (words.trim() === "" ? clear() : take(new TextEncoder().encode(words), faceload.say("the-cells")));
      // A text of many lines may come as an event for each: it is read once, when all of it is there.
      let due = 0;
      text.addEventListener("input", () => { clearTimeout(due); due = setTimeout(() => written(text.value)); });
      text.addEventListener("paste", (event) => {
        const words = event.clipboardData?.getData("text/plain") ?? "";
        if (words.length <= LONG) return;
        event.preventDefault();
        written(words);
      });
      part("rows-file").addEventListener("change", async () => {
        const [file] = part("rows-file").files;
        if (!file) return;
        text.value = "";
        take(new Uint8Array(await file.slice(0, MOST).arrayBuffer()), file.name);
      });
      part("rows-clear").addEventListener("click", () => { clear(); part("rows-done").textContent = ""; text.focus(); });
    },
  };
})();
