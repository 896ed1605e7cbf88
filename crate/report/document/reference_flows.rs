//! Reference flows: what each alternative buys and does for the functional unit of the whole order.

use faceload_core::inventory::What;
use faceload_core::quantity::Kind;

use super::found::Found;
use super::node::{Node, aside, table};
use super::rows::Rows;
use crate::figure::Table;

/// Reference flows.
pub fn section(found: &Found<'_>) -> Node {
    let models = found.models();
    let mut bought = Rows::new(models.len());
    let mut done = Rows::new(models.len());
    for (at, model) in models.iter().enumerate() {
        bought.add(&["sign face in service", "m2"], at, model.m2.base());
        for part in &model.parts {
            let mut asked = Vec::new();
            for (_, flow) in found.flows(part) {
                asked.extend(flow.what.terms().0.iter().filter_map(|term| term.measure));
                if let What::Bought(..) = flow.what {
                    bought.add(&[&flow.label, "kg"], at, part.value(flow.what.terms()));
                }
            }
            // What nothing in the boundary asks for is not listed, such as the blank's.
            for (symbol, count) in part.activity.counts().iter().filter(|(symbol, _)| asked.contains(symbol)) {
                done.add(&[symbol.name, symbol.unit], at, *count);
            }
        }
    }
    let bought = Table {
        caption: "Bought for the whole order".to_owned(),
        columns: found.columns(&["what", "unit"]),
        rows: bought.table_rows(false),
        ..Table::default()
    };
    let done = Table {
        caption: "Counted from the order: facts and layout, nothing uncertain".to_owned(),
        columns: found.columns(&["what", "unit"]),
        rows: done.table_rows(true),
        ..Table::default()
    };
    super::section(
        "report-flows",
        found
            .own_lines()
            .into_iter()
            .chain([
                aside("What one order asks of each alternative. Lines that not all can make are left out here where all are compared."),
                table(&bought),
                table(&done),
            ])
            .collect(),
    )
}
