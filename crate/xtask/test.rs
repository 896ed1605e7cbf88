//! Everything that can be checked, in one go; the first step that fails ends it.

pub mod install;

use crate::{Chore, Outcome, budgets, oracles, page, place, program, start, types};
use std::time::Instant;

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "test", help: "check all: form, lints, tests, same bytes, browsers", run };

/// One step: what it is called when it fails, and what it does.
type Step = (&'static str, fn() -> Outcome);

const STEPS: &[Step] = &[
    ("what is needed", install::all),
    ("form", form),
    ("lints", lints),
    ("lints, wasm", lints_of_wasm),
    ("tests", tests),
    ("types of the scripts", types::check),
    ("oracles", oracles::run),
    ("command line", start::build_command_line),
    ("page", page::build),
    ("sizes", budgets::keep_sizes),
    ("native and wasm", native_and_wasm),
    ("browsers", browsers),
];

const TRIPLE: &str = "wasm32-unknown-unknown";

/// Runs all steps.
pub fn run() -> Outcome {
    for (place, (name, step)) in STEPS.iter().enumerate() {
        println!("\n--- {} of {}: {name}", place + 1, STEPS.len());
        let start = Instant::now();
        step().map_err(|reason| format!("step `{name}` failed: {reason}"))?;
        println!("--- {name}: {:.1} s", start.elapsed().as_secs_f64());
    }
    Ok(())
}

fn form() -> Outcome {
    program::run(&mut program::cargo(&["fmt", "--all", "--check"]))
}

fn lints() -> Outcome {
    let words = ["clippy", "--workspace", "--all-targets", "--", "-D", "warnings"];
    program::run(&mut program::cargo(&words))
}

fn lints_of_wasm() -> Outcome {
    let words = ["clippy", "--package", "faceload-wasm", "--target", TRIPLE, "--", "-D", "warnings"];
    program::run(&mut program::cargo(&words))
}

fn tests() -> Outcome {
    program::run(&mut program::cargo(&["test", "--workspace", "--no-fail-fast"]))
}

fn native_and_wasm() -> Outcome {
    node_tests(&["native_and_wasm"])
}

fn browsers() -> Outcome {
    let folder = place::root().join("tests").join("page");
    let entries = std::fs::read_dir(&folder).map_err(|error| format!("tests/page: {error}"))?;
    let mut subjects: Vec<String> = entries
        .filter_map(|entry| entry.ok()?.file_name().to_str()?.strip_suffix(".test.mjs").map(str::to_owned))
        .filter(|subject| subject != "native_and_wasm")
        .collect();
    subjects.sort();
    node_tests(&subjects.iter().map(String::as_str).collect::<Vec<_>>())
}

/// Runs these files of tests/page one after another, so that times and shots don't disturb each other.
fn node_tests(subjects: &[&str]) -> Outcome {
    if subjects.is_empty() {
        return Err("no tests in tests/page".into());
    }
    let words = ["--test", "--test-reporter=spec", "--test-concurrency=1", "--test-timeout=300000"];
    let mut node = program::program("node", &words);
    for subject in subjects {
        node.arg(format!("tests/page/{subject}.test.mjs"));
    }
    program::run(&mut node)
}
