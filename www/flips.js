// Where it flips: the pair over one thing that varies, and over two at once.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;
  const NAMES = ["quantity", "batch", "colours", "designs", "life"];
  const SELECTS = { "f-over": "quantity", "f-across": "quantity", "f-down": "colours" };
  /** The words of what was offered: a chosen input stays offered when it is no longer among the widest. */
  const words = new Map();

  function offer(view) {
    for (const name of NAMES) words.set(name, faceload.labels[name]);
    for (const row of view.moves.rows) words.set(row.id, row.item);
    for (const [id, usual] of Object.entries(SELECTS)) {
      const select = part(id);
      const chosen = select.value || usual;
      const offered = [...new Set([...NAMES, ...view.moves.rows.map((row) => row.id), chosen])];
      fill(select, ...offered.map((value) => element("option", { value, text: words.get(value) })));
      select.value = chosen;
    }
  }

  const find = () => faceload.findings.find("flips", "break_even_json", [part("f-over").value],
    (found) => faceload.figure(part("flips-found"), found, "break-even"), (share) => { part("flips-note").textContent = faceload.say("under-way-share", { percent: Math.round(share * 100) }); });

  /** While the map is made: how far it is, and a way out. */
  function making(on) {
    part("make-map").hidden = on;
    part("map-way").hidden = !on;
    part("map-progress").value = 0;
  }

  function forget() {
    faceload.work.drop("map");
    fill(part("map-found"));
    making(false);
    faceload.findings.settle("map");
  }

  async function map() {
    making(true);
    fill(part("map-found"));
    part("stop-map").focus();
    part("map-found").setAttribute("aria-busy", "true");
    const done = await faceload.findings.find("map", "map_json", [part("f-across").value, part("f-down").value],
      (found) => faceload.figure(part("map-found"), found, "map"), (share) => { part("map-progress").value = share; part("map-percent").textContent = `${Math.round(share * 100)} %`; });
    if (!done) return;
    const held = document.activeElement === part("stop-map");
    making(false);
    if (held) part("make-map").focus();
  }

  faceload.flips = {
    start() {
      part("f-over").addEventListener("change", () => { faceload.findings.wait("flips", faceload.say("under-way")); find(); });
      for (const id of ["f-across", "f-down"]) part(id).addEventListener("change", forget);
      part("make-map").addEventListener("click", map);
      part("stop-map").addEventListener("click", () => { forget(); part("make-map").focus(); });
    },
    /** Another view: other inputs may be offered. */
    show: offer,
    find, forget,
  };
})();
