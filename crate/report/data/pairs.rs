//! The pairs as rows: both loads, their difference draw by draw, and what is said of it.

use faceload_core::analysis::{Draws, PairSpread};
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use serde_json::json;

use super::results::{of_interval, points, unit};
use super::sheet::{Column, Kind, Sheet, number, text};

/// The sheet, of every pair that was drawn.
pub(super) fn sheet(comparison: &Comparison, draws: &Draws, looked: Option<(usize, usize)>) -> Sheet {
    let mut columns = vec![
        Column::of("first", Kind::Text, "Id of the first alternative."),
        Column::of("second", Kind::Text, "Id of the second alternative."),
        Column::of("indicator", Kind::Text, "Id of the indicator."),
        Column::of("unit", Kind::Text, "Unit of the loads and the difference."),
        Column::of("lines", Kind::Whole, "Lines that both can make."),
        Column::of("first_load", Kind::Number, "Load of the first, every input at its value."),
        Column::of("second_load", Kind::Number, "Load of the second, every input at its value."),
        Column::of("difference", Kind::Number, "Second less first, every input at its value."),
    ];
    columns.extend(points(" of the difference", ["difference_p5", "difference_p25", "difference_p50", "difference_p75", "difference_p95"]));
    columns.push(Column::of("first_less", Kind::Number, "Share of the draws in which the first loads less, a tie counted half."));
    columns.push(Column::of("finding", Kind::Text, "What the draws say: first-less, second-less, about-the-same or no-clear-difference."));
    let mut pairs = comparison.pairs();
    pairs.extend(looked.filter(|pair| !pairs.contains(pair)));
    let mut rows = Vec::new();
    for (a, b) in pairs {
        let id = |place: usize| text(&comparison.models[place].alternative.id);
        for indicator in Indicator::ALL {
            let spread = PairSpread::of(comparison, draws, a, b, indicator);
            let Some((spread, single)) = spread.zip(comparison.difference(a, b, indicator)) else { continue };
            let mut row = vec![
                id(a),
                id(b),
                text(indicator.id()),
                text(&unit(comparison, indicator)),
                json!(comparison.lines_of(&comparison.shared(a, b))),
                number(single.first),
                number(single.second),
                number(single.value()),
            ];
            row.extend(of_interval(&spread.difference));
            row.extend([number(spread.first_less), text(spread.finding.name())]);
            rows.push(row);
        }
    }
    Sheet {
        name: "pairs",
        says: "Pairs of alternatives on the lines that both can make.".to_owned(),
        columns,
        key: &["first", "second", "indicator"],
        rows,
    }
}
