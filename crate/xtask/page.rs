//! The page: one HTML file, `target/page/faceload.html`, that opens from a disk.
//!
//! `www/index.html` names its styles and scripts by plain tags, one a line:
//! `<link rel="stylesheet" href="x.css">` and `<script src="x.js"></script>`. A style is replaced by the file's text without its
//! comments (`page/shorter.rs`), and so is the first script, `www/unpack.js`. All other scripts are packed in their order with the
//! wasm, wasm-bindgen's glue and the worker's script, in front of the first:
//!
//! - `<script type="text/plain" id="packed" data-packed="deflate-raw" data-size="…" data-parts="glue:… …">`: their bytes one
//!   after another, packed, as letters (`page/letters.rs`). `new DecompressionStream(element.dataset.packed)` opens it; without
//!   it the page says so.
//! - The glue sets the global `wasm_bindgen`; `wasm_bindgen({ module_or_path: module })` starts it. A worker takes the same text.
//!
//! `<script type="text/plain" src="x.js"></script>` is the worker's.
//!
//! The policy follows `<meta charset="utf-8">`. All scripts are classic: from a disk a browser runs
//! no module.

mod letters;
mod one_file;
mod policy;
mod shorter;
pub mod sizes;
mod wasm;

use crate::{Chore, Outcome, place};
use std::fs;
use std::path::Path;

pub use wasm::build as build_wasm;

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "page", help: "build the page into one HTML file under target/page", run };

fn run() -> Outcome {
    build()?;
    println!("{}", place::shown(&place::page_file()));
    Ok(())
}

/// Builds the page and the glue for Node, and prints the sizes.
pub fn build() -> Outcome {
    let built = wasm::build(&place::target())?;
    wasm::for_node(&built.raw, &place::node_folder())?;
    let page = one_file::assemble(&place::root().join("www"), &built.glue, &built.wasm)?;
    write(&place::page_file(), page.as_bytes())?;
    write(&place::page_folder().join("faceload.wasm"), &built.wasm)?;
    sizes::show()
}

/// Writes a file, with the folders above it.
pub fn write(path: &Path, bytes: &[u8]) -> Outcome {
    let failed = |error: std::io::Error| format!("{}: {error}", place::shown(path));
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(failed)?;
    }
    fs::write(path, bytes).map_err(failed)
}

/// Reads a file; the reason names it.
pub fn read(path: &Path) -> Result<Vec<u8>, String> {
    fs::read(path).map_err(|error| format!("{}: {error}", place::shown(path)))
}
