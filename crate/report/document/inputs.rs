//! Every input with value, range, grade, source and place; what the order states in place of a table is marked.

use super::found::Found;
use super::node::{Node, aside, table};
use super::references::number_of;
use crate::figure::{Cell, Table};
use crate::input_list::inputs_of;

/// The inputs.
pub fn section(found: &Found<'_>) -> Node {
    let rows = inputs_of(found.tables, &found.comparison.models).into_iter().map(|input| {
        let number = number_of(found, &input.source_key).map(|number| format!(" [{number}]")).unwrap_or_default();
        let range = if input.range.is_empty() { input.spread.to_owned() } else { format!("{}, {}", input.range, input.spread) };
        let place = [input.place, input.year, input.note].into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join("; ");
        let source = if number.is_empty() { input.source } else { number.trim_start().to_owned() };
        vec![
            Cell::from(format!("{}{} [{}]", input.item, if input.own { " (own)" } else { "" }, input.id)),
            Cell::from(input.value),
            Cell::from(range),
            Cell::from(input.grade),
            Cell::from(source),
            Cell::from(place),
        ]
    });
    let all = Table {
        caption:
            "Own: stated in the order, or in tables of the user, in place of a built-in row. A number in brackets is a reference at the end"
                .to_owned(),
        columns: ["input [id]", "value", "range and shape", "grade", "source", "place, year, note"].map(str::to_owned).to_vec(),
        rows: rows.collect(),
        ..Table::default()
    };
    super::section(
        "report-inputs",
        vec![
            aside(
                "Grades. own: this shop's own reading. A: published, document read. B: published, seen through an excerpt or transcription. C: trade source or common practice. D: memory, stand-in or judgement. Ranges. lognormal: low and high set the width that holds the middle 90 %. triangular, uniform: the ends. fixed: a choice or a constant, not drawn.",
            ),
            table(&all),
        ],
    )
}
