// What draws find: asked of the worker after the single values stand, shown when it is of what is on the screen.
"use strict";
(() => {
  const { faceload } = window;
  const { part, element, fill } = faceload;
  /** The lanes whose figures fill a section each, in the order they are worked off. */
  const LANES = ["sure", "stages", "drivers", "flips", "choices"];
  /** The lanes that need no pair. */
  const ALONE = new Set(["sure", "stages"]);
  /** What is on the screen: its view, its order, what was asked of it. */
  let current = null;
  /** How sure the answer on the screen is, and of what: the order and all that was asked but the pair. */
  let sure = null;
  let sureOf = "";

  /** How often draws were asked for. */
  let turn = 0;
  /** The lanes that are under way. */
  const busy = new Set();

  const state = (name, value) => { document.documentElement.dataset[name] = value; };
  const count = () => state("figures", busy.size > 0 ? "under-way" : "here");
  const width = (name) => Math.max(280, Math.floor(part(name).clientWidth));
  const about = ({ order, question: { per, boundary, moved } }) => JSON.stringify([order, per, boundary, moved]);

  function asked(name, over = []) {
    const { per, boundary, pair, indicator, moved } = current.question;
    return { per, boundary, pair, indicator, moved, draws: 0, width: width(name), theme: faceload.theme(), over };
  }

  /** A section whose figure is not of what is on the screen shows none, and says so. */
  function wait(lane, words) {
    const place = part(`${lane}-found`);
    // While a slider moves it waits already.
    if (busy.has(lane) && part(`${lane}-note`).textContent === words) return;
    place.setAttribute("aria-busy", "true");
    place.classList.add("stale");
    part(`${lane}-note`).textContent = words;
    busy.add(lane);
    count();
  }

  function settle(lane) {
    const place = part(`${lane}-found`);
    place.removeAttribute("aria-busy");
    place.classList.remove("stale");
    busy.delete(lane);
    count();
    part(`${lane}-note`).textContent = lane === "sure" && faceload.work.refused() ? faceload.say("no-worker") : "";
  }

  function refuse(lane, { faults, failed }) {
    fill(part(`${lane}-found`), element("p", { class: "fault", text: faults ? faults.map((fault) => fault.words).join("; ") : faceload.say("work-failed", { reason: failed }) }));
    settle(lane);
  }

  /** Asks for a figure and shows it, unless something newer came. */
  async function find(lane, call, over, show, told) {
    const told_of = current;
    const result = await faceload.work.ask(lane, call, told_of.order, asked(`${lane}-found`, over), told);
    if (result.dropped || told_of !== current) return false;
    if (result.answer === undefined) { refuse(lane, result); return result; }
    show(JSON.parse(result.answer));
    settle(lane);
    return true;
  }

  /** @param {sure.Sure} found */
  function showSure(found) {
    sure = found;
    sureOf = about(current);
    faceload.answer(current.view, sure);
    faceload.loads.ranges(current.view, sure);
    if (found.spread) faceload.figure(part("sure-found"), found.spread, "how-sure");
    else fill(part("sure-found"), element("p", { text: faceload.say("no-shared-line") }));
    state("draws", "here");
  }

  function showChoices([choices, plan]) {
    faceload.figure(part("choices-found"), choices, "choices");
    faceload.figure(part("plan-found"), plan, "plan");
    settle("plan");
  }

  /** A stage's number opens the arithmetic there. */
  const stage = ([name], alternative) => (faceload.shown().alternatives.some((one) => one.id === alternative)
    ? { alternative, indicator: current.question.indicator, stage: name } : undefined);

  async function all() {
    const of = current;
    turn += 1;
    const mine = turn;
    const draws = find("sure", "sure_json", [], showSure).then((done) => {
      if (done && done !== true) { faceload.answer(of.view, null, faceload.say("draws-failed")); state("draws", "failed"); }
    });
    find("stages", "stages_json", [], (found) => faceload.figure(part("stages-found"), found, "stages", stage));
    if (of.view.pairs.length === 0) return;
    find("drivers", "drivers_json", [], (found) => faceload.figure(part("drivers-found"), found, "drivers"));
    // The answer comes first: longer work begins when its draws are there.
    await draws;
    if (mine !== turn) return;
    faceload.flips.find();
    const done = await find("choices", "choices_json", [], showChoices);
    if (done && done !== true) refuse("plan", done);
  }

  function stale(view, order, question) {
    current = { view, order, question };
    const alone = view.pairs.length === 0;
    for (const lane of [...LANES, "plan"]) {
      if (alone && !ALONE.has(lane)) { fill(part(`${lane}-found`)); settle(lane); part(`${lane}-note`).textContent = faceload.say("one-alternative"); } else wait(lane, faceload.say("under-way"));
    }
    faceload.flips.forget();
    faceload.report.forget();
    if (about(current) === sureOf) return sure;
    state("draws", "under-way");
    return null;
  }

  faceload.findings = {
    /** Something new is on the screen: what was found of the old is no longer shown. What is still true is returned. */
    stale,
    find, wait, settle,
    /** What the draws said last. */
    found: () => sure,
    /** What a report of the screen is asked with. */
    asking: () => current && { order: current.order, asked: { ...asked("report-found"), width: 720, theme: "paper" } },
    /** Draws of what is on the screen. */
    start: () => { if (current) all(); },
    stop: () => { turn += 1; for (const lane of [...LANES, "map"]) faceload.work.drop(lane); },
  };
})();
