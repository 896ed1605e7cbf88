// Where the faces are made: what the shop runs on, and how cold it is.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  function edit(order) {
    const { field } = faceload.order;
    const site = order.site ?? {};
    const row = (id, made) => element("p", { class: "field" }, element("label", { for: made.id, text: faceload.say(id) }), made);
    const far = (key) => { const made = row(key, field(`${stem}.${key}`, { "data-optional": "", placeholder: faceload.say("distance-left-out") }, site[key])); made.append(faceload.units.ofField(`${stem}.${key}`)); return made; };
    // A climate by its word stands in for degree-days.
    const cold = site.climate === undefined ? "2800 K.d" : "";
    const stem = "site";
    const usual = { value: "", text: faceload.say("as-usual") };
    fill(part("site"),
      row("electricity", field(`${stem}.electricity`, {}, site.electricity ?? "us.rfcw", faceload.catalogue.electricity)),
      row("heat", field(`${stem}.heat`, {}, site.heat ?? "us.natural-gas", faceload.catalogue.heat)),
      row("degree-days", field(`${stem}.degree_days`, { "data-optional": "", placeholder: site.climate }, site.degree_days ?? cold)),
      row("freight", field(`${stem}.freight`, { "data-optional": "" }, site.freight, [usual, ...faceload.catalogue.freight])),
      far("delivery"), far("visit"),
      row("vehicle", field(`${stem}.vehicle`, { "data-optional": "" }, site.vehicle, [usual, ...faceload.catalogue.vehicle])));
  }

  faceload.site = { edit };
})();
