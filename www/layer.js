// The layer over a picture: a real button for each of its parts. It is one stop of the Tab key; arrows, Home and
// End go from part to part, and what a part says is seen by pointer, by touch and by keyboard, until Escape.
"use strict";
(() => {
  const { faceload } = window;
  const { element, fill } = faceload;
  /** What lies on each layer. */
  const laid = new WeakMap();

  const buttonsOf = (layer) => [...layer.querySelectorAll("button")];
  const percent = (share) => `${(100 * share).toFixed(3)}%`;

  /** The words beside their part, towards the middle of the picture. */
  function show(layer, index) {
    const { size: [width, height], spots } = laid.get(layer);
    const spot = spots[index];
    const tip = layer.querySelector(".tip");
    tip.textContent = spot.lead ? `${spot.words}. ${faceload.say("opens-arithmetic")}` : spot.words;
    const right = spot.x + spot.width / 2 > width / 2 && spot.width < width / 2;
    const above = spot.y + spot.height / 2 > height / 2 && spot.height < height / 2;
    const place = { left: spot.x, right: width - spot.x - spot.width, top: Math.min(spot.y + spot.height, height * 0.6), bottom: height - spot.y };
    tip.style.left = right ? "auto" : percent(Math.max(0, place.left) / width);
    tip.style.right = right ? percent(Math.max(0, place.right) / width) : "auto";
    tip.style.top = above ? "auto" : percent(place.top / height);
    tip.style.bottom = above ? percent(place.bottom / height) : "auto";
    tip.hidden = false;
    layer.dataset.shown = String(index);
  }

  function hide(layer) {
    layer.querySelector(".tip").hidden = true;
    delete layer.dataset.shown;
  }

  /** Where a key leads; on a grid up and down stay in their column. */
  function next(layer, index, key) {
    const { spots } = laid.get(layer);
    const last = spots.length - 1;
    const { x, y } = spots[index];
    const column = spots.map((spot, at) => ({ ...spot, at })).filter((spot) => spot.x === x).sort((a, b) => a.y - b.y);
    const grid = column.length > 1 && spots.some((spot) => spot.y === y && spot.x !== x);
    const along = (step) => (grid ? column[column.findIndex((spot) => spot.at === index) + step]?.at ?? index : Math.min(last, Math.max(0, index + step)));
    return { ArrowRight: Math.min(last, index + 1), ArrowLeft: Math.max(0, index - 1), ArrowDown: along(1), ArrowUp: along(-1), Home: 0, End: last }[key];
  }

  function keys(event, layer) {
    const buttons = buttonsOf(layer);
    const index = buttons.indexOf(document.activeElement);
    if (event.key === "Escape" && layer.dataset.shown !== undefined) { hide(layer); event.preventDefault(); return; }
    const to = index < 0 ? undefined : next(layer, index, event.key);
    if (to === undefined) return;
    event.preventDefault();
    buttons.forEach((button, at) => { button.tabIndex = at === to ? 0 : -1; });
    buttons[to].focus();
    show(layer, to);
  }

  function button(layer, index) {
    let fresh = false;
    const open = () => {
      const { lead } = laid.get(layer).spots[index];
      show(layer, index);
      // The first touch shows the words, as a pointer does; the second opens.
      if (lead && !fresh) faceload.arithmetic(lead.alternative, lead.indicator, lead);
      fresh = false;
    };
    return element("button", { type: "button", class: "spot", tabindex: index === 0 ? 0 : -1, on: {
      click: open,
      focus: () => show(layer, index),
      pointerdown: (event) => { fresh = event.pointerType === "touch" && layer.dataset.shown !== String(index); },
      pointerenter: (event) => { if (event.pointerType !== "touch") show(layer, index); },
    } });
  }

  function made(frame) {
    const layer = element("div", { class: "spots", role: "group" }, element("p", { class: "tip", "aria-hidden": "true", hidden: true }));
    layer.addEventListener("keydown", (event) => keys(event, layer));
    layer.addEventListener("pointerleave", () => hide(layer));
    layer.addEventListener("focusout", (event) => { if (!layer.contains(event.relatedTarget)) hide(layer); });
    frame.append(layer);
    return layer;
  }

  /**
   * Lays spots over the picture that a frame holds; as many as before keep their buttons, and so the focus.
   * @param {Element} frame
   * @param {{ name: string, size: [number, number], spots: any[] }} over
   */
  faceload.layer = (frame, over) => {
    const layer = frame.querySelector(".spots") ?? made(frame);
    const { name, size: [width, height], spots } = over;
    laid.set(layer, over);
    layer.setAttribute("aria-label", faceload.say("layer", { name }));
    if (buttonsOf(layer).length !== spots.length) fill(layer, ...spots.map((_, index) => button(layer, index)), layer.querySelector(".tip"));
    buttonsOf(layer).forEach((one, index) => {
      const spot = spots[index];
      one.setAttribute("aria-label", spot.words);
      if (spot.lead) one.setAttribute("aria-haspopup", "dialog"); else one.removeAttribute("aria-haspopup");
      one.style.left = percent(spot.x / width);
      one.style.top = percent(spot.y / height);
      one.style.width = percent(spot.width / width);
      one.style.height = percent(spot.height / height);
    });
    if (layer.dataset.shown !== undefined) show(layer, Math.min(Number(layer.dataset.shown), spots.length - 1));
  };
})();
