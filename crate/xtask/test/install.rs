//! What the tests need besides cargo: the wasm target, Node, two browsers, the packages of tests/page, and
//! Python with the libraries of tests/oracle. What is missing is installed where that can be done without asking.

use crate::{Outcome, oracles as scripts, page, place, program};
use std::path::Path;
use std::process::Stdio;

/// Debian's browsers: package, program, and the variable that names another program.
const BROWSERS: &[(&str, &str, &str)] =
    &[("chromium", "/usr/bin/chromium", "FACELOAD_CHROMIUM"), ("firefox-esr", "/usr/bin/firefox-esr", "FACELOAD_FIREFOX")];

/// Sees to all of it.
pub fn all() -> Outcome {
    all_of_the_page()?;
    oracles()
}

/// What the page needs to be built and looked at.
pub fn all_of_the_page() -> Outcome {
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
    from_debian(&missing)
}

/// Python 3.11 to 3.13 with its libraries; FACELOAD_PYTHON names another than Debian's.
pub fn oracles() -> Outcome {
    let python = std::env::var("FACELOAD_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    // Debian keeps what a new environment needs in a package of its own.
    let can_make = || {
        let mut command = program::program(&python, &["-c", "import venv, ensurepip"]);
        command.stdout(Stdio::null()).stderr(Stdio::null()).status().is_ok_and(|status| status.success())
    };
    if !can_make() {
        if !is_root() || !program::is_there("apt-get") {
            return Err(
                "missing: Python 3 with venv. On Debian: `apt-get install python3-venv`; elsewhere name yours by FACELOAD_PYTHON".into()
            );
        }
        from_debian(&["python3-venv"])?;
    }
    scripts::install(&python)
}

/// Installs packages of Debian.
fn from_debian(packages: &[&str]) -> Outcome {
    apt_get(&["update", "-qq"])?;
    apt_get(&[&["install", "-qq", "-y", "--no-install-recommends"], packages].concat())
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
