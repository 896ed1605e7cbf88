//! Figures about the program itself: sizes, build time, opening time, evaluation, and the demo's loads.

use crate::{Chore, Outcome, page, place, program, start};
use std::time::Instant;

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "measure", help: "print sizes, times and the loads of the demo orders", run };

fn run() -> Outcome {
    start::build_command_line()?;
    page::build()?;
    println!("\nbuild time, from an empty target folder, packages already fetched");
    clean_build()?;
    println!("\nthe page in Chromium");
    program::run(&mut program::program("node", &["tests/page/opening_time.mjs"]))?;
    if place::root().join("crate/core/examples/measure.rs").exists() {
        println!("\nevaluation, and the inputs that move the answer");
        let words = ["run", "--quiet", "--release", "--package", "faceload-core", "--example", "measure"];
        program::run(&mut program::cargo(&words))?;
    }
    println!("\nloads of the demo orders, the face alone");
    program::run(&mut program::program("node", &["tests/page/demo_loads.mjs"]))
}

fn clean_build() -> Outcome {
    let folder = place::target().join("measure");
    if folder.exists() {
        std::fs::remove_dir_all(&folder).map_err(|error| format!("target/measure: {error}"))?;
    }
    let words = ["build", "--quiet", "--release", "--package", "faceload"];
    let start = Instant::now();
    program::run(program::cargo(&words).env("CARGO_TARGET_DIR", &folder))?;
    println!("command line   {:>9.1} s", start.elapsed().as_secs_f64());
    let start = Instant::now();
    page::build_wasm(&folder)?;
    println!("page           {:>9.1} s", start.elapsed().as_secs_f64());
    Ok(())
}
