//! Order files of 150, 1,500 and 15,000 lines: read, put together to jobs, counted. The time for one
//! line must not grow with the lines. With `--order LINES` it prints such a file instead.

mod envelope;
mod inventory;
mod time;

use faceload_core::comparison::compare;
use faceload_core::factors::Tables;
use faceload_core::load::Per;
use faceload_core::order::{Boundary, Document, Order, jobs};

fn read(tables: &Tables, text: &str) -> Result<Order, String> {
    let document = Document::json("many.json", text).map_err(|fault| fault.to_string())?;
    Order::read(document, tables).map_err(|faults| faults[0].to_string())
}

/// From text to counted jobs of every alternative.
#[inline(never)]
fn counted(tables: &Tables, text: &str) -> Result<usize, String> {
    let order = read(tables, text)?;
    let comparison = compare(tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))?;
    Ok(comparison.jobs.len())
}

fn main() -> Result<(), String> {
    let words: Vec<String> = std::env::args().collect();
    if let Some(at) = words.iter().position(|word| word == "--order") {
        let lines = words.get(at + 1).and_then(|word| word.parse().ok()).ok_or("`--order` wants a number of lines")?;
        print!("{}", inventory::inventory(lines));
        return Ok(());
    }
    let tables = Tables::embedded().map_err(|faults| faults[0].to_string())?;
    if time::once() {
        counted(&tables, &inventory::inventory(15_000))?;
        return Ok(());
    }
    for (lines, runs) in [(150, 101), (1_500, 51), (15_000, 21)] {
        let text = inventory::inventory(lines);
        let order = read(&tables, &text)?;
        let middle = time::print(&format!("{lines} lines, {} jobs", counted(&tables, &text)?), runs, || counted(&tables, &text));
        println!("  {:.3} us a line, {} bytes", middle / lines as f64, text.len());
        time::print("  of it, JSON to a tree with its lines", runs, || Document::json("many.json", &text));
        time::print("  of it, tree to order, with the former", runs, || read(&tables, &text));
        time::print("  of it, lines to jobs", runs, || jobs(&order.lines).len());
        time::print("  of it, compared", runs, || compare(&tables, &order, Per::M2, Boundary::Face).is_ok());
    }
    Ok(())
}
