//! What the tests need besides cargo: the wasm target, Node, two browsers, and the packages of
//! tests/page. What is missing is installed where that can be done without asking.

use crate::{Outcome, page, place, program};
use std::path::Path;

/// Debian's browsers: package, program, and the variable that names another program.
const BROWSERS: &[(&str, &str, &str)] =
    &[("chromium", "/usr/bin/chromium", "FACELOAD_CHROMIUM"), ("firefox-esr", "/usr/bin/firefox-esr", "FACELOAD_FIREFOX")];

/// Sees to all of it.
pub fn all() -> Outcome {
    wasm_target()?;
    if !program::is_there("node") || !program::is_there("npm") {
        return Err("Node 20 or later with npm is needed, for the tests of the page".into());
    }
    browsers()?;
    packages()
}

fn wasm_target() -> Outcome {
    if !program::is_there("rustup") {
        return Ok(()); // A Rust from elsewhere; cargo says so if it lacks the target.
    }
    program::run(&mut program::program("rustup", &["target", "add", "wasm32-unknown-unknown"]))
}

fn browsers() -> Outcome {
    let missing: Vec<&str> = BROWSERS
        .iter()
        .filter(|(_, path, variable)| std::env::var_os(variable).is_none() && !Path::new(path).exists())
        .map(|(package, _, _)| *package)
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    let packages = missing.join(" ");
    if !is_root() || !program::is_there("apt-get") {
        return Err(format!(
            "missing: {packages}. On Debian: `apt-get install {packages}`; elsewhere name your own \
             by FACELOAD_CHROMIUM and FACELOAD_FIREFOX"
        ));
    }
    apt_get(&["update", "-qq"])?;
    let mut words = vec!["install", "-qq", "-y", "--no-install-recommends"];
    words.extend(missing);
    apt_get(&words)
}

fn apt_get(words: &[&str]) -> Outcome {
    let mut command = program::program("apt-get", words);
    program::run(command.env("DEBIAN_FRONTEND", "noninteractive"))
}

fn is_root() -> bool {
    let id = program::read(&mut program::program("id", &["-u"]));
    id.is_ok_and(|text| text.trim_ascii() == b"0")
}

/// `npm ci`, unless these very versions were installed before.
fn packages() -> Outcome {
    let folder = place::root().join("tests").join("page");
    let wanted = page::read(&folder.join("package-lock.json"))?;
    let mark = folder.join("node_modules").join(".installed-from");
    if std::fs::read(&mark).is_ok_and(|installed| installed == wanted) {
        return Ok(());
    }
    let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
    program::run(program::program(npm, &["ci"]).current_dir(&folder))?;
    page::write(&mark, &wanted)
}
