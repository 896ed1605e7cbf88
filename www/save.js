// Saving a figure: its numbers as CSV, its picture as SVG or PNG.
"use strict";
(() => {
  const { faceload } = window;
  const { element } = faceload;
  /** Dots of a PNG for each css pixel. */
  const FINE = 2;
  /** Letters of a file's name that come from the order. */
  const OF_ORDER = 40;

  function save(name, blob) {
    const address = URL.createObjectURL(blob);
    element("a", { href: address, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
  }

  const picture = (svg) => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

  async function png(name, svg) {
    const image = element("img", { src: picture(svg), alt: "" });
    await image.decode();
    const canvas = element("canvas", { width: image.naturalWidth * FINE, height: image.naturalHeight * FINE });
    canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
    canvas.toBlob((blob) => { if (blob) save(name, blob); }, "image/png");
  }

  /** Small letters, digits and hyphens: a name that every disk takes. */
  const plain = (text) => text.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");

  /** The name of a figure's files, from the order on the screen, the figure and the tables behind its numbers. */
  function named(figure) {
    const view = faceload.shown();
    const order = plain(view.name || view.order_line).slice(0, OF_ORDER).replace(/-$/, "");
    return [order, plain(figure), `tables-${view.tables_mark}`].filter(Boolean).join("-");
  }

  /**
   * The buttons that save a figure.
   * @param {string} heading what it is, for those who listen
   * @param {string} figure its name
   * @param {{ csv: () => string, svg?: () => string }} texts made when they are asked for
   */
  faceload.saves = (heading, figure, { csv, svg }) => {
    const button = (form, run) => element("button", { type: "button", text: form, "aria-label": faceload.say("save-as", { form, heading }), on: { click: () => run(`${named(figure)}.${form.toLowerCase()}`) } });
    return element("p", { class: "saves" }, `${faceload.say("save")} `,
      button("CSV", (name) => save(name, new Blob([csv()], { type: "text/csv;charset=utf-8" }))),
      ...(svg ? [button("SVG", (name) => save(name, new Blob([svg()], { type: "image/svg+xml" }))), button("PNG", (name) => png(name, svg()))] : []));
  };
  faceload.save = {
    json: (name, text) => save(`${name}.json`, new Blob([text], { type: "application/json" })),
    html: (name, text) => save(`${name}.html`, new Blob([text], { type: "text/html;charset=utf-8" })),
    csv: (name, text) => save(`${name}.csv`, new Blob([text], { type: "text/csv;charset=utf-8" })),
  };
  faceload.picture = picture;
})();
