// Order files: opened by a button or by dropping, saved as JSON that the command line reads too.
"use strict";
(() => {
  const { faceload } = window;
  const { part } = faceload;
  /** The longest order file taken, in bytes. */
  const LONGEST = 5_000_000;

  const refuse = (name, list) => faceload.notice.show(faceload.say("not-opened", { name }), list);

  const isToml = (name, text) => /\.toml$/i.test(name) || (!/\.json$/i.test(name) && /^\s*(#|\[|[\w-]+\s*=)/.test(text));

  /** Opens a file's text, or says all that is wrong with it. */
  function take(name, text) {
    if (isToml(name, text)) {
      refuse(name, ["file-is-toml", "file-from-toml"].map((id) => faceload.say(id)));
      return;
    }
    const faults = faceload.engine.check(name, text);
    if (faults.length > 0) { refuse(name, faceload.opening.words(faults)); return; }
    faceload.notice.close();
    faceload.opening.open(text, {}, faceload.say("opening", { name }));
    faceload.notice.show(faceload.say("is-open", { name }));
  }

  async function open(file) {
    if (!file) return;
    if (file.size > LONGEST) { refuse(file.name, [faceload.say("file-too-long", { bytes: file.size })]); return; }
    try {
      take(file.name, new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer()));
    } catch (reason) {
      refuse(file.name, [reason instanceof TypeError ? faceload.say("file-not-text") : faceload.say("file-not-read", { reason: String(reason) })]);
    }
  }

  /** A file's name from the order's: letters, digits, nothing that a disk may refuse. */
  function fileName() {
    const { name } = faceload.order.typed();
    const plain = typeof name === "string" ? name.normalize("NFC").replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "").toLowerCase() : "";
    return [...plain].slice(0, 60).join("") || "order";
  }

  function save() {
    faceload.save.json(fileName(), faceload.order.text());
    const list = [];
    if (!part("not-updated").hidden) list.push(faceload.say("saved-with-fault"));
    if (faceload.moves.moved().length > 0) list.push(faceload.say("saved-without-sliders"));
    if (list.length > 0) faceload.notice.show(faceload.say("order-saved"), list, [], false);
  }

  faceload.files = {
    start() {
      part("open-file").addEventListener("click", () => part("f-file").click());
      part("f-file").addEventListener("change", async () => { await open(part("f-file").files[0]); part("f-file").value = ""; });
      part("save-order").addEventListener("click", save);
      const holds = (event) => [...event.dataTransfer.types].includes("Files");
      window.addEventListener("dragover", (event) => { if (holds(event)) event.preventDefault(); });
      window.addEventListener("drop", (event) => {
        if (!holds(event)) return;
        event.preventDefault();
        if (document.documentElement.dataset.view !== "read" && !document.querySelector("dialog[open]")) open(event.dataTransfer.files[0]);
      });
    },
    save,
  };
})();
