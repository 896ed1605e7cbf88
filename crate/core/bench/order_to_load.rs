//! From the text of a twenty-job order to the loads of all its alternatives; the tables are read.

mod envelope;
mod time;
mod twenty_jobs;

use faceload_core::comparison::compare;
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order};

/// Reads, compares, loads: one sum, so that nothing is left out.
#[inline(never)]
fn counted(tables: &Tables, text: &str) -> Result<f64, String> {
    let document = Document::json("twenty.json", text).map_err(|fault| fault.to_string())?;
    let order = Order::read(document, tables).map_err(|faults| faults[0].to_string())?;
    let comparison = compare(tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))?;
    let loads = comparison.models.iter().flat_map(|model| Indicator::ALL.map(|indicator| model.load(indicator, Per::M2).value));
    Ok(loads.sum())
}

fn main() -> Result<(), String> {
    let tables = Tables::embedded().map_err(|faults| faults[0].to_string())?;
    let text = twenty_jobs::twenty_jobs();
    counted(&tables, &text)?;
    time::print("20 jobs, from text to loads", 501, || counted(&tables, &text));
    if !time::once() {
        time::print("the tables, from text", 101, Tables::embedded);
    }
    Ok(())
}
