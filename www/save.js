// Saving a figure: its numbers as CSV, its picture as SVG or PNG.
"use strict";
(() => {
  const { faceload } = window;
  const { element } = faceload;
  /** Dots of a PNG for each css pixel. */
  const FINE = 2;

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

  faceload.picture = picture;
  faceload.save = {
    csv: (name, text) => save(`${name}.csv`, new Blob([text], { type: "text/csv;charset=utf-8" })),
    html: (name, text) => save(`${name}.html`, new Blob([text], { type: "text/html;charset=utf-8" })),
    svg: (name, text) => save(`${name}.svg`, new Blob([text], { type: "image/svg+xml" })),
    png: (name, svg) => png(`${name}.png`, svg),
  };
})();
