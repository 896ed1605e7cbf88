// The report: read here, printed, or saved as a file; the same bytes as the command line writes.
"use strict";
(() => {
  const { faceload } = window;
  const { part, element, fill } = faceload;
  /** What was made last, and of what. @type {report.Whole | null} */
  let made = null;
  let madeOf = "";

  /** What stands at the head of every sheet. */
  const heads = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, heads];

  /** The parts of the report as elements; words stay words. @param {node.Node} node */
  function built(node) {
    if (typeof node === "string") return node;
    if (!Array.isArray(node)) return element("img", { src: faceload.picture(node.svg), alt: node.words });
    const [name, facts, inside] = node;
    // The page has a main part of its own.
    return element(name === "main" ? "div" : name, Object.fromEntries(facts), ...inside.map(built));
  }

  /** The report of what is on the screen; nothing where it cannot be had. */
  async function report() {
    const asking = faceload.findings.asking();
    if (!asking || !part("not-updated").hidden) {
      part("report-note").textContent = faceload.say("report-at-fault");
      return null;
    }
    const of = JSON.stringify(asking);
    if (of === madeOf) return made;
    const told = (share) => { part("report-note").textContent = faceload.say("under-way-share", { percent: Math.round(100 * share) }); };
    told(0);
    const result = await faceload.work.ask("report", "report_json", asking.order, asking.asked, told);
    // Meanwhile something else may have come on the screen.
    if (result.dropped || JSON.stringify(faceload.findings.asking()) !== of) { part("report-note").textContent = ""; return null; }
    if (result.answer === undefined) {
      part("report-note").textContent = result.faults ? result.faults.map((fault) => fault.words).join("; ") : faceload.say("work-failed", { reason: result.failed });
      return null;
    }
    made = JSON.parse(result.answer);
    madeOf = of;
    part("report-note").textContent = "";
    fill(part("report-found"), built(made.body));
    return made;
  }

  async function read() {
    if (!(await report())) return;
    part("report-read").hidden = false;
    part("report-close").focus();
  }

  async function print() {
    const one = await report();
    if (!one) return;
    const root = document.documentElement;
    const { title } = document;
    root.dataset.paper = "report";
    heads.replaceSync(one.sheets);
    const place = part("report-read");
    const { hidden } = place;
    place.hidden = false;
    document.title = one.title;
    window.addEventListener("afterprint", () => { delete root.dataset.paper; document.title = title; place.hidden = hidden; }, { once: true });
    window.print();
  }

  async function save() {
    const one = await report();
    if (one) faceload.save.html("report", one.html);
  }

  faceload.report = {
    start() {
      part("read-report").addEventListener("click", read);
      part("print-report").addEventListener("click", print);
      part("save-report").addEventListener("click", save);
      part("report-close").addEventListener("click", () => { part("report-read").hidden = true; part("read-report").focus(); });
    },
    /** What was made is of an order that is no longer on the screen. */
    forget: () => { part("report-read").hidden = true; },
  };
})();
