//! The inputs as rows: value, range, grade, source and place of every number that the result rests on.

use std::collections::BTreeMap;

use faceload_core::comparison::Comparison;
use faceload_core::factors::{Input, Origin, Tables};
use serde_json::Value;

use super::sheet::{Column, Kind, Sheet, number, text};

/// Every input in use, by id and by the alternative whose own value it is; that of all stands under no name.
pub(super) fn used(comparison: &Comparison) -> BTreeMap<(&str, &str), &Input> {
    let plans = comparison.models.iter().flat_map(|model| model.parts.iter().map(|part| &part.plan));
    let mut used = BTreeMap::new();
    for plan in plans {
        used.extend(plan.book.used().into_iter().map(|id| {
            let row = plan.book.input(id);
            // A life of its own stands in an alternative too.
            let own = row.origin == Origin::Override || row.id == "order.life";
            ((row.id.as_str(), if own { plan.alternative.id.as_str() } else { "" }), row)
        }));
    }
    used
}

/// The sheet.
pub(super) fn sheet(tables: &Tables, comparison: &Comparison) -> Sheet {
    let columns = vec![
        Column::of("id", Kind::Text, "Id of the input."),
        Column::perhaps("alternative", Kind::Text, "The alternative whose own value it is; nothing: it is that of all."),
        Column::of("item", Kind::Text, "What it is."),
        Column::of("value", Kind::Number, "Its value in this result."),
        Column::of("unit", Kind::Text, "UCUM unit of value, low and high; braces say what is counted."),
        Column::of("low", Kind::Number, "Low end of its range."),
        Column::of("high", Kind::Number, "High end of its range."),
        Column::of("spread", Kind::Text, "Shape of its spread: lognormal, triangular, uniform or fixed."),
        Column::of("grade", Kind::Text, "How good its evidence is: own, A, B, C or D."),
        Column::of("given_by", Kind::Text, "Who gives it: tables, own tables, the order, or an alternative in place of the tables."),
        Column::perhaps("instead_of", Kind::Number, "Value of the tables that it stands in place of."),
        Column::perhaps("source", Kind::Text, "Key of its source in sources.csv; nothing where the order gives it."),
        Column::perhaps("place", Kind::Text, "Place in the source, or field of the order."),
        Column::perhaps("year", Kind::Text, "Year of the data."),
        Column::perhaps("note", Kind::Text, "Note."),
    ];
    let rows = used(comparison).into_iter().map(|((id, whose), row)| {
        let given_by = match row.origin {
            Origin::Override => "alternative",
            Origin::Order => "order",
            Origin::Practice | Origin::Factor if tables.own.contains(&row.id) => "own tables",
            Origin::Practice | Origin::Factor => "tables",
        };
        let of_table = tables.find(id).map(|place| tables.inputs[place].value);
        let instead = of_table.filter(|_| row.origin == Origin::Override || row.value != row.centre).map_or(Value::Null, number);
        let source = if matches!(row.origin, Origin::Practice | Origin::Factor) { row.source.as_str() } else { "" };
        vec![
            text(id),
            text(whose),
            text(&row.item),
            number(row.value),
            text(row.unit.text()),
            number(row.low),
            number(row.high),
            text(row.spread.word()),
            text(&row.grade.to_string()),
            text(given_by),
            instead,
            text(source),
            text(&row.place),
            text(&row.year),
            text(&row.note),
        ]
    });
    Sheet {
        name: "inputs",
        says: "Every input that a load was computed with.".to_owned(),
        columns,
        key: &["id", "alternative"],
        rows: rows.collect(),
    }
}
