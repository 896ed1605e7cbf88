//! Figures for the record: how long a demo takes, what it loads, which inputs move it most.

use std::time::Instant;

use faceload_core::analysis::swings;
use faceload_core::comparison::{Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, demo};
use faceload_core::quantity::write_number;

/// How often a demo is run for its time.
const RUNS: usize = 201;

fn comparison(tables: &Tables, demo: &demo::Demo) -> Option<Comparison> {
    let document = Document::json(demo.name, demo.text).ok()?;
    let order = Order::read(document, tables).ok()?;
    compare(tables, &order, Per::M2, Boundary::Face).ok()
}

/// The median time of a comparison from text to loads, in microseconds.
fn time(tables: &Tables, demo: &demo::Demo) -> f64 {
    let mut times: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            let loads = comparison(tables, demo)
                .map(|comparison| comparison.models.iter().map(|model| model.load(Indicator::Co2e, Per::M2).value).fold(0.0, f64::max));
            std::hint::black_box(loads);
            start.elapsed().as_secs_f64() * 1e6
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[RUNS / 2]
}

fn main() {
    let Ok(tables) = Tables::embedded() else {
        eprintln!("the tables are at fault: run `faceload check`");
        std::process::exit(4);
    };
    for demo in &demo::DEMOS {
        let Some(comparison) = comparison(&tables, demo) else { continue };
        println!("{} ({}): {} us from text to loads, median of {RUNS}", demo.name, demo.title, write_number(time(&tables, demo), 3));
        for model in &comparison.models {
            let loads =
                Indicator::ALL.map(|indicator| format!("{} {}", write_number(model.load(indicator, Per::M2).value, 3), indicator.unit()));
            println!("  {:<11} {}", model.alternative.id, loads.join(", "));
        }
        let pair = (0, comparison.models.iter().position(|model| model.alternative.id == "digital").unwrap_or(1));
        for indicator in Indicator::ALL {
            println!(
                "  {} - {}, {}, the ten widest swings:",
                comparison.models[pair.1].alternative.id,
                comparison.models[pair.0].alternative.id,
                indicator.label()
            );
            for swing in swings(&comparison, pair.0, pair.1, indicator).iter().take(10) {
                let row = comparison.models[pair.0].book.input(swing.input);
                let turns = if swing.turns() { ", turns it" } else { "" };
                println!("    {} ({}): {} to {}{turns}", row.id, row.grade, write_number(swing.at_low, 3), write_number(swing.at_high, 3));
            }
        }
    }
}
