//! Draws of the combined demo, all alternatives and indicators, with the quantiles of every load: from nothing, and
//! after an edit of the order with the drawn values kept. `--listing` prints the program instead, for draws_numpy.py,
//! which times NumPy and this in turn.

mod time;

use std::hint::black_box;

use faceload_core::analysis::{Columns, Design, Draws, Interval, Kept, Program, Settings, Shape};
use faceload_core::comparison::{Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, demo};

fn compared(tables: &Tables, name: &str) -> Result<Comparison, String> {
    let demo = demo::find(name).ok_or("no such demo")?;
    let document = Document::json(demo.name, demo.text).map_err(|fault| fault.to_string())?;
    let order = Order::read(document, tables).map_err(|faults| faults[0].to_string())?;
    compare(tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))
}

/// Draws and the five quantiles of every load.
fn drawn(comparison: &Comparison, settings: Settings, kept: &mut Kept) -> f64 {
    let draws = Draws::make(comparison, &[], settings, kept, |_| true);
    let loads = (0..comparison.models.len()).flat_map(|at| Indicator::ALL.map(|indicator| (at, indicator)));
    loads.fold(0.0, |sum, (at, indicator)| sum + Interval::of(draws.load(comparison, at, indicator)).p95)
}

fn listing(comparison: &Comparison) {
    let mut columns = Columns::default();
    let mut program = Program::default();
    for model in &comparison.models {
        program.push(model, &Indicator::ALL, comparison.per, &mut columns);
    }
    for (drawn, shape) in columns.list() {
        match shape {
            Shape::Lognormal { median, sigma } => println!("column lognormal {median} {sigma} {}", drawn.id),
            Shape::Triangular { low, median, high } => println!("column triangular {low} {median} {high} {}", drawn.id),
            Shape::Uniform { low, high } => println!("column uniform {low} {high} {}", drawn.id),
        }
    }
    println!("{}", program.listing().join("\n"));
}

fn main() -> Result<(), String> {
    let tables = Tables::embedded().map_err(|faults| faults[0].to_string())?;
    let words: Vec<String> = std::env::args().collect();
    let county = compared(&tables, "county")?;
    if words.iter().any(|word| word == "--listing") {
        listing(&county);
        return Ok(());
    }
    if let Some(at) = words.iter().position(|word| word == "--copies") {
        // For a count of instructions: so many equal lines, so many draws.
        let number =
            |at: usize| words.get(at).and_then(|word| word.parse().ok()).ok_or("`--copies` wants a number of lines and one of draws");
        let (copies, draws): (usize, usize) = (number(at + 1)?, number(at + 2)?);
        let text =
            format!(r#"{{"schema_version":1,"line":[{}]}}"#, vec![r#"{"code":"R1-1","size":"30 in","quantity":1}"#; copies].join(","));
        let document = Document::json("copies.json", &text).map_err(|fault| fault.to_string())?;
        let order = Order::read(document, &tables).map_err(|faults| faults[0].to_string())?;
        let comparison = compare(&tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))?;
        black_box(drawn(&comparison, Settings { number: draws, ..Settings::default() }, &mut Kept::default()));
        return Ok(());
    }
    let plain = Settings { design: Design::Plain, ..Settings::default() };
    if words.iter().any(|word| word == "--in-turn") {
        // One timing for each line that comes in, for a run in turn with another program.
        for _ in std::io::stdin().lines() {
            let start = std::time::Instant::now();
            let mut kept = Kept::default();
            black_box(drawn(&county, plain, &mut kept));
            let nothing = start.elapsed().as_secs_f64() * 1e3;
            let start = std::time::Instant::now();
            black_box(drawn(&county, plain, &mut kept));
            println!("{nothing} {}", start.elapsed().as_secs_f64() * 1e3);
        }
        return Ok(());
    }
    let stop = compared(&tables, "stop")?;
    for (name, comparison) in [("stop", &stop), ("county", &county)] {
        for design in [Design::Plain, Design::LatinHypercube] {
            let settings = Settings { design, ..plain };
            time::print(&format!("{name}, {}, from nothing", design.name()), 15, || drawn(comparison, settings, &mut Kept::default()));
            let mut kept = Kept::default();
            drawn(comparison, settings, &mut kept);
            time::print(&format!("{name}, {}, after an edit", design.name()), 31, || drawn(comparison, settings, &mut kept));
        }
    }
    Ok(())
}
