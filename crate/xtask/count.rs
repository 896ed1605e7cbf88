//! Counting: how long the core takes, how many instructions, and in which functions.

use crate::{Chore, Outcome, place, program, start};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "count", help: "time the benches of the core and count their instructions", run };

/// Every bench, and whether the functions are listed that take most.
const BENCHES: [(&str, bool); 3] = [("order_to_load", false), ("activity_to_load", true), ("many_lines", true)];

/// How many functions are listed.
const LISTED: usize = 10;

/// The lines of the large order, and how often the command line reads it.
const LINES: &str = "15000";
const RUNS: usize = 15;

fn run() -> Outcome {
    let benches = build()?;
    println!("times, in this process");
    for bench in &benches {
        program::run(&mut command(bench, &[]))?;
    }
    start::build_command_line()?;
    println!("\nthe command line on an order of {LINES} lines, start included");
    let many = benches.last().ok_or("no bench was built")?;
    time_command_line(&program::read(&mut command(many, &["--order", LINES]))?)?;
    if !program::is_there("valgrind") {
        println!("\nno instructions counted: valgrind is not installed");
        return Ok(());
    }
    println!("\ninstructions, of the function `counted` and all it calls");
    for (bench, (name, listed)) in benches.iter().zip(BENCHES) {
        count(bench, name, listed)?;
    }
    Ok(())
}

fn folder() -> PathBuf {
    place::target().join("count")
}

fn command(bench: &Path, words: &[&str]) -> Command {
    program::program(&bench.display().to_string(), words)
}

/// Builds the benches as the release is built, with the names of functions; where each lies.
fn build() -> Result<Vec<PathBuf>, String> {
    let mut words = vec!["bench", "--package", "faceload-core", "--no-run", "--quiet", "--message-format", "json"];
    for (name, _) in BENCHES {
        words.extend(["--bench", name]);
    }
    let told = program::read(program::cargo(&words).env("CARGO_PROFILE_BENCH_DEBUG", "line-tables-only"))?;
    let told = String::from_utf8_lossy(&told).into_owned();
    let paths: Vec<&str> = told.lines().filter_map(|line| line.split_once("\"executable\":\"")?.1.split('"').next()).collect();
    let of = |name: &str| {
        let is_it = |path: &&&str| Path::new(path).file_name().is_some_and(|file| file.to_string_lossy().starts_with(name));
        paths.iter().find(is_it).map(PathBuf::from).ok_or_else(|| format!("cargo did not say where the bench `{name}` lies"))
    };
    BENCHES.iter().map(|(name, _)| of(name)).collect()
}

/// Reads the order so often and prints the least, middle and longest time.
fn time_command_line(order: &[u8]) -> Outcome {
    let file = folder().join("many.json");
    std::fs::create_dir_all(folder()).and_then(|()| std::fs::write(&file, order)).map_err(|error| format!("target/count: {error}"))?;
    let (faceload, file) = (place::command_line().display().to_string(), file.display().to_string());
    let mut times = Vec::new();
    for _ in 0..RUNS {
        let start = Instant::now();
        program::run(program::program(&faceload, &["compare", &file, "--json"]).stdout(Stdio::null()))?;
        times.push(start.elapsed().as_secs_f64() * 1e3);
    }
    times.sort_by(f64::total_cmp);
    println!("{:.1} {:.1} {:.1} ms, least, middle and longest of {RUNS}", times[0], times[RUNS / 2], times[RUNS - 1]);
    Ok(())
}

/// Runs a bench once under callgrind.
fn count(bench: &Path, name: &str, listed: bool) -> Outcome {
    let counts = folder().join(format!("{name}.counts")).display().to_string();
    let mut valgrind = program::program("valgrind", &["--tool=callgrind", "--quiet", "--toggle-collect=*counted*", "--collect-atstart=no"]);
    valgrind.arg(format!("--callgrind-out-file={counts}")).arg(bench).arg("--once").stdout(Stdio::null());
    program::run(&mut valgrind)?;
    let told = program::read(&mut program::program("callgrind_annotate", &["--inclusive=yes", "--auto=no", "--threshold=100", &counts]))?;
    let told = String::from_utf8_lossy(&told).into_owned();
    let total = told.lines().find(|line| line.contains("PROGRAM TOTALS")).ok_or("callgrind_annotate gave no total")?;
    println!("{name}: {}", total.trim().split(' ').next().unwrap_or_default());
    if listed {
        for (share, function) in functions(&told).iter().take(LISTED) {
            println!("  {share:>7}  {function}");
        }
    }
    Ok(())
}

/// The functions of an annotation, with their shares, as it lists them: each once, without those
/// that call `counted` and without the way to it.
fn functions(told: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for line in told.lines() {
        let Some((count, rest)) = line.trim_start().split_once(" (") else { continue };
        let Some((share, rest)) = rest.split_once(')') else { continue };
        // `path:function [program]`; a path has no colon, a function has two together.
        let rest = rest.trim().rsplit_once(" [").map_or(rest.trim(), |(front, _)| front);
        let name = rest.split_once(':').map_or(rest, |(_, name)| name);
        let of_ours = ["faceload_core", "serde_json", "free", "malloc", "realloc", "memcmp"].iter().any(|part| name.contains(part));
        let is_count = count.starts_with(|c: char| c.is_ascii_digit());
        if is_count && of_ours && found.iter().all(|(_, known)| known != name) {
            found.push((share.trim().to_owned(), name.to_owned()));
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::functions;

    #[test]
    fn an_annotation_is_read() {
        let told = "1,200 (100.0%)  PROGRAM TOTALS\nIr  file:function\n1,200 (100.0%)  ???:(below main) [ld]\n\
                    1,100 (91.70%)  crate/core/bench/many_lines.rs:many_lines::counted [bench]\n\
                    900 (75.00%)  crate/core/load/model.rs:faceload_core::load::model::Model::load [bench]\n\
                    300 (25.00%)  core/slice.rs:faceload_core::load::model::Model::load [bench]\n-- line\n\
                    100 ( 8.33%)  ./malloc/./malloc/malloc.c:free [libc.so.6]\n";
        let model = ("75.00%".to_owned(), "faceload_core::load::model::Model::load".to_owned());
        assert_eq!(functions(told), [model, ("8.33%".to_owned(), "free".to_owned())]);
    }
}
