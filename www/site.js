// Where the faces are made: what the shop runs on, and how cold it is.
"use strict";
(() => {
  const { faceload } = window;
  const { element, part, fill } = faceload;

  function edit(order) {
    const { field } = faceload.order;
    const site = order.site ?? {};
    const row = (label, made) => element("p", { class: "field" }, element("label", { for: made.id, text: label }), made);
    const stem = "site";
    const usual = { value: "", text: "as usual there" };
    fill(part("site"),
      row("electricity", field(`${stem}.electricity`, {}, site.electricity ?? "us.rfcw", faceload.catalogue.electricity)),
      row("heat", field(`${stem}.heat`, {}, site.heat ?? "us.natural-gas", faceload.catalogue.heat)),
      row("degree-days (K·d)", field(`${stem}.degree_days`, { "data-optional": "" }, site.degree_days ?? "2800 K.d")),
      row("freight by", field(`${stem}.freight`, { "data-optional": "" }, site.freight, [usual, ...faceload.catalogue.freight])),
      row("delivery (km)", field(`${stem}.delivery`, { "data-optional": "", placeholder: "left out" }, site.delivery)),
      row("visit, round trip (km)", field(`${stem}.visit`, { "data-optional": "", placeholder: "left out" }, site.visit)),
      row("visit by", field(`${stem}.vehicle`, { "data-optional": "" }, site.vehicle, [usual, ...faceload.catalogue.vehicle])));
  }

  faceload.site = { edit };
})();
