//! Timing: a function run often, the least, middle and longest of its times.

use std::hint::black_box;
use std::time::Instant;

/// Whether the bench is to run once only, for a count of instructions.
pub fn once() -> bool {
    std::env::args().any(|word| word == "--once")
}

/// Runs it so often, or once, and prints its times in microseconds; hands back the middle one.
pub fn print<T>(what: &str, runs: usize, mut run: impl FnMut() -> T) -> f64 {
    let runs = if once() { 1 } else { runs };
    let mut times: Vec<f64> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            let made = black_box(run());
            let time = start.elapsed().as_secs_f64() * 1e6;
            drop(made);
            time
        })
        .collect();
    times.sort_by(f64::total_cmp);
    let (least, middle, most) = (times[0], times[runs / 2], times[runs - 1]);
    println!("{what:<44} {least:>11.1} {middle:>11.1} {most:>11.1} us, least, middle and longest of {runs}");
    middle
}
