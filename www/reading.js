// The view for reading: what edits is hidden, what is read stays.
"use strict";
(() => {
  const { faceload } = window;
  const { part } = faceload;

  function set(on) {
    if (on) document.documentElement.dataset.view = "read"; else delete document.documentElement.dataset.view;
    part("to-editing").hidden = !on;
  }

  /** Whether the address asks for it. */
  const asked = () => window.location.hash.slice(1).split("&").includes("view=read");

  faceload.reading = {
    start() {
      set(asked());
      part("to-editing").addEventListener("click", () => {
        const { hash, href } = window.location;
        const rest = hash.slice(1).split("&").filter((one) => one !== "view=read" && one !== "").join("&");
        try { window.history.replaceState(null, "", rest === "" ? href.split("#")[0] : `#${rest}`); } catch { /* The view changes all the same. */ }
        set(false);
        faceload.changed();
        part("f-demo").focus();
      });
    },
    read: () => set(asked()),
  };
})();
