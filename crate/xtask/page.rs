//! The page: one HTML file, `target/page/faceload.html`, that opens from a disk.
//!
//! `www/index.html` names its styles and scripts by plain tags, one a line:
//! `<link rel="stylesheet" href="x.css">` and `<script src="x.js"></script>`. Each is replaced by the
//! file's text without its comments (`page/shorter.rs`), in that order. In front of the first script stand two more that the page relies on:
//!
//! - `<script type="text/plain" id="wasm" data-packed="deflate-raw" data-size="…">`: the wasm, packed, as letters
//!   (`page/letters.rs`). `new DecompressionStream(element.dataset.packed)` opens it; without it the page says so.
//! - `<script id="glue">`: sets the global `wasm_bindgen`; `wasm_bindgen({ module_or_path: bytes })`
//!   starts it. A worker takes the same text by `textContent`.
//!
//! `<script type="text/plain" id="worker" src="x.js"></script>` stays data: the page starts its worker
//! from the glue and this text.
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
