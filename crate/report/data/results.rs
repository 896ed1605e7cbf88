//! The results as rows: every alternative's load in every indicator, with the points of its draws.

use faceload_core::analysis::{Draws, Interval};
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::quantity::Kind as _;
use serde_json::{Value, json};

use super::sheet::{Column, Kind, Sheet, number, text};

/// The columns of an interval's points.
pub(super) fn points(of: &str, names: [&'static str; 5]) -> Vec<Column> {
    let words = ["5 % point", "25 % point", "Median", "75 % point", "95 % point"];
    names.into_iter().zip(words).map(|(name, words)| Column::told(name, Kind::Number, format!("{words} of the draws{of}."))).collect()
}

/// The points of an interval.
pub(super) fn of_interval(one: &Interval) -> Vec<Value> {
    [one.p5, one.p25, one.median, one.p75, one.p95].map(number).to_vec()
}

/// The unit of an indicator, per what loads are given.
pub(super) fn unit(comparison: &Comparison, indicator: Indicator) -> String {
    format!("{}{}", indicator.unit(), comparison.per.suffix())
}

/// The sheet.
pub(super) fn sheet(comparison: &Comparison, draws: &Draws) -> Sheet {
    let mut columns = vec![
        Column::of("alternative", Kind::Text, "Id of the alternative."),
        Column::of("route", Kind::Text, "Its route."),
        Column::of("indicator", Kind::Text, "Id of the indicator."),
        Column::of("unit", Kind::Text, "Unit of the numbers in this row."),
        Column::of("lines", Kind::Whole, "Lines of the order that it is about."),
        Column::of("m2", Kind::Number, "Square metres of face on them."),
        Column::of("value", Kind::Number, "Load with every input at its value."),
    ];
    columns.extend(points("", ["p5", "p25", "p50", "p75", "p95"]));
    let rows = comparison.models.iter().enumerate().flat_map(|(at, model)| {
        Indicator::ALL.into_iter().map(move |indicator| {
            let lines = comparison.lines_of(&comparison.table_jobs(comparison.places[at]));
            let mut row = vec![
                text(&model.alternative.id),
                text(model.alternative.route.name()),
                text(indicator.id()),
                text(&unit(comparison, indicator)),
                json!(lines),
                number(model.m2.base()),
                number(model.load(indicator, comparison.per).value),
            ];
            row.extend(of_interval(&Interval::of(draws.load(comparison, at, indicator))));
            row
        })
    });
    Sheet {
        name: "results",
        says: "Loads of every alternative on the lines that all can make; where they share none, each on the lines it makes.".to_owned(),
        columns,
        key: &["alternative", "indicator"],
        rows: rows.collect(),
    }
}
