// The page as a whole: starts the program, asks it, and shows what it says.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const MOST = 10;
  let demos = [];
  let current = null;
  /** The order on the screen and what was asked of it. */
  let asked = null;
  let printing = false;
  let frame = 0;
  let rest = 0;
  /** How long a slider rests before draws are made, in milliseconds. */
  const RESTS = 300;
  let again = 0;
  let opening = true;

  faceload.shown = () => current;
  faceload.wide = () => window.innerWidth >= 700;
  faceload.theme = () => (printing ? "paper" : matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");

  /** What the page asks of an order: while it opens, the answer alone. */
  function question(rows) {
    const pair = (part("f-pair").value || "0 1").split(" ").map(Number);
    return { per: part("f-per").value, boundary: part("f-boundary").value, pair, indicator: part("f-indicator").value || "co2e", most: opening ? 0 : MOST, rows, moved: faceload.moves.moved() };
  }

  function ask(rows) {
    const order = faceload.order.typed();
    const text = JSON.stringify(order);
    const asking = question(rows);
    const { view, faults } = faceload.engine.view(text, asking);
    const rest = faceload.order.mark(faults ?? []);
    const note = part("not-updated");
    note.hidden = !faults;
    if (faults) {
      const words = rest.length > 0 ? rest.map((fault) => fault.words) : faults.map((fault) => fault.field);
      note.textContent = faceload.say("not-updated", { faults: words.join("; ") });
      return null;
    }
    current = view;
    asked = { order: text, question: asking };
    return view;
  }

  function choices(view) {
    const select = part("f-pair");
    const chosen = select.selectedOptions[0]?.text;
    fill(select, ...view.pairs.map((pair) => element("option", { value: `${pair.a} ${pair.b}`, text: pair.words })));
    // By its words: after a removal the same places are other alternatives.
    const same = [...select.options].find((option) => option.text === chosen);
    if (same) select.value = same.value;
    if (part("f-indicator").childElementCount === 0) {
      fill(part("f-indicator"), ...view.indicators.map((one) => element("option", { value: one.id, text: one.label })));
      part("f-indicator").value = "co2e";
    }
  }

  /** What the answer is now; nothing where the order is at fault. */
  function look() {
    let view = ask([]);
    if (!view) return null;
    choices(view);
    // What is chosen is what is shown.
    const chosen = part("f-pair").value;
    if (chosen && chosen !== view.moves.pair.join(" ")) view = ask([]) ?? view;
    clearTimeout(rest);
    const sure = faceload.findings.stale(view, asked.order, asked.question);
    faceload.sooner("answer");
    faceload.answer(view, sure);
    return { view, sure };
  }

  /** All that stands below the answer. */
  function below({ view, sure }) {
    faceload.loads.show(view);
    if (sure) faceload.loads.ranges(view, sure);
    faceload.moves.show(view);
    faceload.flips.show(view);
    faceload.lines.show(view);
    faceload.factors.show(view);
    faceload.units.show();
    faceload.findings.start();
  }

  /** Everything anew; while the page opens the answer alone, and the rest once it is painted. */
  function show() {
    const found = look();
    if (found && !opening) below(found);
  }
  faceload.changed = show;

  /** A slider moved: once a frame, only what changes. */
  faceload.slid = () => {
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(() => {
      const view = ask(faceload.moves.rows());
      if (!view) return;
      faceload.findings.stop();
      faceload.findings.stale(view, asked.order, asked.question);
      faceload.seen.soon("answer", part("answer"), () => faceload.answer(view));
      faceload.loads.move(view);
      faceload.moves.move(view);
      clearTimeout(rest);
      rest = setTimeout(faceload.findings.start, RESTS);
    });
  };

  function redraw() {
    if (!current) return;
    faceload.loads.draw(current);
    faceload.moves.draw(current);
  }

  faceload.redraw = redraw;

  /** Pictures that came as text are asked for anew, in the width and theme there are now. */
  function repicture() {
    redraw();
    clearTimeout(again);
    again = setTimeout(faceload.findings.start, RESTS);
  }

  function take(name) {
    const demo = demos.find((one) => one.name === name);
    faceload.opening.open(demo.order, { demo: name }, faceload.say("starting-from", { title: demo.title }));
  }

  /** Once what is there now has been painted; a page in the background paints nothing. */
  const painted = () => new Promise((done) => {
    if (document.hidden) setTimeout(done);
    else requestAnimationFrame(() => setTimeout(done));
  });

  function label(labels) {
    for (const place of document.querySelectorAll("[data-label]")) place.textContent = labels[place.dataset.label];
    for (const place of document.querySelectorAll("[data-name-label]")) place.setAttribute("aria-label", labels[place.dataset.nameLabel]);
  }

  async function start() {
    await faceload.engine.start();
    const labels = faceload.engine.labels();
    faceload.labels = labels;
    label(labels);
    for (const name of ["order", "factors", "flips", "stills", "paste", "history", "files", "kept", "link", "own", "reading", "report", "sending", "units"]) faceload[name].start();
    demos = JSON.parse(faceload.demosJson());
    fill(part("f-demo"), ...demos.map((demo) => element("option", { value: demo.name, text: demo.title })));
    part("f-demo").addEventListener("change", () => { if (part("f-demo").value !== "") take(part("f-demo").value); });
    for (const id of ["f-per", "f-boundary", "f-pair", "f-indicator"]) part(id).addEventListener("change", show);
    part("put-back").addEventListener("click", () => { faceload.moves.putBack(); faceload.history.note(faceload.say("putting-sliders-back")); show(); part("f-pair").focus(); });
    faceload.seen.watch(part("answer"));
    take(demos[0].name);
    faceload.kept.offer(faceload.link.open());
    await painted();
    performance.mark("answer");
    opening = false;
    faceload.catalogue = faceload.engine.catalogue();
    faceload.order.edit();
    if (current) show();
    let width = window.innerWidth;
    window.addEventListener("resize", () => { if (window.innerWidth !== width) { width = window.innerWidth; repicture(); } });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", repicture);
    // On paper the credits that licences ask for stand open.
    let credits = false;
    window.addEventListener("beforeprint", () => { printing = true; credits = part("credits-shown").open; part("credits-shown").open = true; redraw(); });
    window.addEventListener("afterprint", () => { printing = false; part("credits-shown").open = credits; redraw(); });
  }

  faceload.start = async () => {
    await start();
    document.documentElement.dataset.state = "ready";
    painted().then(faceload.engine.startWork);
  };
})();
