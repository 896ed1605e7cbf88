//! Allocation and the rule for the end of life, with its extremes side by side.

use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, list, paragraph, table};
use crate::figure::{Cell, Table};
use crate::flips;
use crate::words::join;

/// The choice that is looked at here.
const END: &str = "end_of_life";

/// Allocation and end of life.
pub fn section(found: &Found<'_>) -> Node {
    let rules = [
        "Set-ups, make-ready, screens and wash-up are charged to the job that causes them; for lines made for stock pro rata to the batch, and a share of the stock is never used.",
        "Screens that are kept for a standard sign carry a small share of their making each time they are set up.",
        "Room air is charged by the hours a job holds the room. No load is shared out by price.",
        "Recycling: cut-off. Scrap and blanks that are melted again leave without credit and without the load of melting; a material carries the published factor of what is bought.",
    ];
    let mut rows = Vec::new();
    let mut untouched = Vec::new();
    for (indicator, list) in Indicator::ALL.into_iter().zip(&found.switches) {
        let Some(pair) = found.pair else { continue };
        if !flips::moves(list.iter().filter(|one| one.switch == END)) {
            untouched.push(indicator.label());
            continue;
        }
        let all = flips::switches(found.comparison, pair, indicator, list).tables;
        let kept = all.into_iter().flat_map(|table| table.rows).zip(list).filter(|(_, one)| one.switch == END);
        let head = format!("{}, {}", indicator.label(), found.unit(indicator));
        rows.extend(kept.map(|(row, _)| std::iter::once(Cell::from(head.as_str())).chain(row.into_iter().skip(1)).collect::<Vec<_>>()));
    }
    let mut inside = list(rules.map(str::to_owned));
    if let Some(pair) = found.pair.filter(|_| !rows.is_empty()) {
        let [first, second] = found.ids(pair);
        inside.push(paragraph("The rule for the end of life set each way; what it does to the pair:"));
        inside.push(table(&Table {
            caption: "Cut-off: the face is burnt when its blank is melted; reused and landfilled: the face is landfilled".to_owned(),
            columns: ["", "set to", first, second, &format!("{second} minus {first}"), "middle 90 %", "finding"]
                .map(str::to_owned)
                .to_vec(),
            rows,
            ..Table::default()
        }));
        if !untouched.is_empty() {
            inside.push(paragraph(format!("In {} the rule moves neither load.", join(&untouched))));
        }
        inside.push(paragraph("The other extreme, credit for what recycling saves elsewhere, belongs to module D and is not computed."));
    }
    super::section("report-allocation", inside)
}
