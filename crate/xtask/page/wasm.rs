//! From crate/wasm to wasm bytes and the JavaScript glue around them. The glue is made by the
//! library of wasm-bindgen's own version, so the two can't drift apart.

use super::read;
use crate::{Outcome, place, program};
use std::path::{Path, PathBuf};
use wasm_bindgen_cli_support::Bindgen;

const TRIPLE: &str = "wasm32-unknown-unknown";

/// What the page needs.
pub struct Built {
    /// As cargo left it; the glue for Node starts from it again.
    pub raw: PathBuf,
    /// As the browser runs it.
    pub wasm: Vec<u8>,
    /// The classic script that sets `wasm_bindgen`.
    pub glue: String,
}

/// Builds crate/wasm into this target folder and makes the page's glue.
pub fn build(target: &Path) -> Result<Built, String> {
    let flags = format!("target.{TRIPLE}.rustflags=[{}]", without_own_paths());
    let mut cargo = program::cargo(&["build", "--package", "faceload-wasm", "--profile", "page"]);
    cargo.args(["--target", TRIPLE, "--config", &flags]).env("CARGO_TARGET_DIR", target);
    program::run(&mut cargo)?;
    let raw = target.join(TRIPLE).join("page").join("faceload_wasm.wasm");

    let mut bindgen = bindgen(&raw);
    bindgen.no_modules(true).map_err(reason)?;
    let mut output = bindgen.generate_output().map_err(reason)?;
    let snippets = output.snippets().values().any(|list| !list.is_empty());
    if snippets || !output.local_modules().is_empty() {
        return Err("the glue asks for a second JavaScript file; the page has room for one".into());
    }
    let wasm = output.wasm_mut().emit_wasm();
    // The glue declares by `let`, which is no property of the window.
    let glue = format!("{}\nglobalThis.wasm_bindgen = wasm_bindgen;\n", output.js().trim_end());
    Ok(Built { raw, wasm, glue })
}

/// The same wasm with glue that Node can `require`.
pub fn for_node(raw: &Path, folder: &Path) -> Outcome {
    let mut bindgen = bindgen(raw);
    let mut output = bindgen.nodejs(true).map_err(reason)?.generate_output().map_err(reason)?;
    output.emit(folder).map_err(reason)?;
    // A package.json above could say "module"; this glue is CommonJS.
    super::write(&folder.join("package.json"), b"{\"type\":\"commonjs\"}\n")?;
    read(&folder.join("faceload_wasm_bg.wasm")).map(|_| ())
}

fn bindgen(raw: &Path) -> Bindgen {
    let mut bindgen = Bindgen::new();
    bindgen.input_path(raw).typescript(false);
    bindgen.remove_name_section(true).remove_producers_section(true);
    bindgen
}

/// Panic messages carry the paths of source files; with these flags they are the same on every
/// machine, whichever registry its packages came from, and so are the page's bytes.
fn without_own_paths() -> String {
    let home = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = home.or_else(|| std::env::home_dir().map(|home| home.join(".cargo")));
    let registries = home.and_then(|home| home.join("registry").join("src").read_dir().ok());
    let mut folders: Vec<PathBuf> = registries.into_iter().flatten().filter_map(|entry| Some(entry.ok()?.path())).collect();
    folders.sort();
    let mut flags = vec![remap(&place::root(), "faceload")];
    flags.extend(folders.iter().map(|folder| remap(folder, "packages")));
    flags.join(",")
}

fn remap(folder: &Path, name: &str) -> String {
    format!("{:?}", format!("--remap-path-prefix={}={name}", folder.display()))
}

fn reason(error: impl std::fmt::Display) -> String {
    format!("wasm-bindgen: {error:#}")
}
