//! What the answer rests on: how much of what is open is weak evidence, and which measurement would close most of it.

use faceload_core::factors::Grade;
use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, paragraph, table};
use crate::drivers::item;
use crate::figure::{Cell, Table};

/// What the pair's differences rest on.
pub fn section(found: &Found<'_>) -> Node {
    let percent = |share: f64| Cell::number(share, format!("{} %", (share * 100.0).round() + 0.0));
    let of = |(indicator, drivers): (Indicator, &Option<faceload_core::analysis::Drivers>)| {
        let drivers = drivers.as_ref().filter(|drivers| !drivers.rows.is_empty())?;
        let best = drivers.rows.iter().filter(|row| row.input.grade > Grade::Own).max_by(|x, y| x.first.total_cmp(&y.first))?;
        Some(vec![
            Cell::from(indicator.label()),
            percent(drivers.on_grade_d),
            Cell::from(format!("{} (grade {})", item(best, drivers), best.input.grade)),
            percent(best.first),
        ])
    };
    let rows: Vec<Vec<Cell>> = Indicator::ALL.into_iter().zip(&found.drivers).filter_map(of).collect();
    let said = paragraph(
        "Every number has a grade. D, the weakest, is memory, a stand-in or our judgement. The table says how much of what is open in the pair's difference comes from such numbers, \
         and which one thing, if the shop measured it, would settle most.",
    );
    if rows.is_empty() {
        return super::section("report-rests-on", vec![said, paragraph("No number moves the pair's difference.")]);
    }
    let all = Table {
        caption: "Open: the variance of the difference over the ranges of its inputs".to_owned(),
        columns: ["", "of it on grade D", "measure this first", "and so much is settled"].map(str::to_owned).to_vec(),
        rows,
        ..Table::default()
    };
    super::section("report-rests-on", vec![said, table(&all)])
}
