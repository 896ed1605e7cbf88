//! Checks from outside: scripts of `tests/oracle/` compare the tables and the program with general-purpose Python
//! libraries. Each `.py` there is a script, but `faceload.py`, which all of them read the program by. A new one is
//! one file; it says at the end how many comparisons it made, and fails on having made too few.

use crate::{Chore, Outcome, page, place, program};
use std::path::{Path, PathBuf};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "oracles", help: "compare tables and program with Python libraries", run: run_alone };

/// What the scripts share.
const SHARED: &str = "faceload.py";

fn folder() -> PathBuf {
    place::root().join("tests").join("oracle")
}

/// The environment that the libraries are installed in.
fn environment() -> PathBuf {
    place::target().join("oracle").join("venv")
}

/// A program of that environment.
fn of_environment(name: &str) -> String {
    let (folder, ending) = if cfg!(windows) { ("Scripts", ".exe") } else { ("bin", "") };
    environment().join(folder).join(format!("{name}{ending}")).display().to_string()
}

/// Installs the libraries, unless these very versions were installed before.
pub fn install(python: &str) -> Outcome {
    let list = folder().join("requirements.txt");
    let wanted = page::read(&list)?;
    let mark = environment().join("installed-from");
    if std::fs::read(&mark).is_ok_and(|installed| installed == wanted) {
        return Ok(());
    }
    program::run(&mut program::program(python, &["-m", "venv", "--clear", &environment().display().to_string()]))?;
    let words = ["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--require-hashes", "--only-binary=:all:", "-r"];
    program::run(program::program(&of_environment("python"), &words).arg(&list))?;
    page::write(&mark, &wanted)
}

fn run_alone() -> Outcome {
    crate::test::install::oracles()?;
    run()
}

/// Runs every script, all of them even where one differs.
pub fn run() -> Outcome {
    program::run(&mut program::cargo(&["build", "--quiet", "--package", "faceload"]))?;
    program::run(&mut program::cargo(&["build", "--quiet", "--package", "faceload-core", "--examples"]))?;
    let built = |folder: &Path, name: &str| folder.join(format!("{name}{}", std::env::consts::EXE_SUFFIX));
    let debug = place::target().join("debug");
    let mut differ = Vec::new();
    for script in scripts()? {
        let mut python = program::program(&of_environment("python"), &["-B", &script.display().to_string()]);
        let example = |name: &str| built(&debug.join("examples"), name);
        python
            .env("FACELOAD", built(&debug, "faceload"))
            .env("FACELOAD_UNITS", example("units"))
            .env("FACELOAD_PAIR", example("pair_model"));
        if program::run(&mut python).is_err() {
            differ.push(place::shown(&script));
        }
    }
    if differ.is_empty() { Ok(()) } else { Err(format!("differs: {}", differ.join(", "))) }
}

/// The scripts, sorted.
fn scripts() -> Result<Vec<PathBuf>, String> {
    let entries = std::fs::read_dir(folder()).map_err(|error| format!("tests/oracle: {error}"))?;
    let paths = entries.filter_map(|entry| Some(entry.ok()?.path()));
    let is_script = |path: &PathBuf| path.extension().is_some_and(|ending| ending == "py") && !path.ends_with(SHARED);
    let mut scripts: Vec<PathBuf> = paths.filter(is_script).collect();
    scripts.sort();
    if scripts.is_empty() { Err("no script in tests/oracle".into()) } else { Ok(scripts) }
}
