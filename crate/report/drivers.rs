//! What moves a difference, in words and as a table.

use faceload_core::analysis::{Driver, Drivers};
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;

use crate::figure::{Cell, Figure, Table};
use crate::words::{capital, number};

/// The input of a driver, with the route where each route has draws of its own.
pub fn item(driver: &Driver, all: &Drivers) -> String {
    let twin = all.rows.iter().filter(|row| row.drawn.id == driver.drawn.id).count() > 1;
    driver.drawn.route.filter(|_| twin).map_or_else(
        || driver.input.item.clone(),
        |route| format!("{} ({})", driver.input.item, faceload_core::route::route(route).label()),
    )
}

/// The figure of a pair's drivers, so many rows of it.
pub fn figure(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, drivers: &Drivers, most: usize) -> Figure {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let unit = format!("{}{}", indicator.unit(), comparison.per.suffix());
    let percent = |share: f64| Cell::number(share, format!("{} %", (share * 100.0).round() + 0.0));
    let plain = |value: f64| Cell::number(value, number(value));
    let rows = drivers.rows.iter().take(most).map(|row| {
        let unit = row.input.unit.words();
        let value = format!("{} {unit}", number(row.input.value));
        let ends = format!("{} to {} {unit}", number(row.ends.0), number(row.ends.1));
        vec![
            Cell::from(row.drawn.id.as_str()),
            Cell::from(item(row, drivers)),
            Cell::from(row.input.grade.to_string()),
            Cell::from(value.trim_end()),
            Cell::from(ends.trim_end()),
            plain(row.at_ends.0),
            plain(row.at_ends.1),
            plain(row.at_ten.0),
            plain(row.at_ten.1),
            row.elasticity.map_or_else(|| Cell::from(""), |elasticity| Cell::number(elasticity, number(elasticity))),
            percent(row.first),
            percent(row.total),
            Cell::from(if row.turns() { "turns" } else { "" }),
        ]
    });
    let rows: Vec<Vec<Cell>> = rows.collect();
    let left = drivers.rows.len() - rows.len();
    let mut tables = vec![Table {
        caption: format!(
            "{second} minus {first}, {unit}: {} with every input at its own value{}. Alone, with others: share of its variance",
            number(drivers.headline),
            if left > 0 { format!("; {left} more inputs matter less") } else { String::new() }
        ),
        columns: [
            "id",
            "input",
            "grade",
            "value",
            "5 % to 95 %",
            "at 5 %",
            "at 95 %",
            "at \u{2212}10 %",
            "at +10 %",
            "elasticity",
            "alone",
            "with others",
            "ranking",
        ]
        .map(str::to_owned)
        .to_vec(),
        rows,
        // The id says it; the rest would not fit a terminal.
        aside: vec![1, 3],
    }];
    tables.retain(|table| !table.rows.is_empty());
    Figure {
        heading: format!("What moves {second} minus {first} in {}, {}", indicator.label(), comparison.per.words()),
        sentences: sentences(drivers, ids, &unit),
        tables,
    }
}

fn sentences(drivers: &Drivers, [first, second]: [&str; 2], unit: &str) -> Vec<String> {
    if drivers.rows.is_empty() {
        return vec![format!("No input moves the difference of {first} and {second} here.")];
    }
    let turning: Vec<&Driver> = drivers.rows.iter().filter(|row| row.turns()).collect();
    let mut sentences = Vec::new();
    let named = |rows: &[&Driver]| {
        let items: Vec<String> = rows.iter().take(5).map(|row| format!("{} ({})", item(row, drivers), row.input.grade)).collect();
        crate::words::join(&items.iter().map(String::as_str).collect::<Vec<_>>())
    };
    let top: Vec<&Driver> = drivers.rows.iter().take(5).collect();
    sentences.push(format!("Most of the variance comes from {}; the letter is the grade of the evidence.", named(&top)));
    sentences.push(match turning.len() {
        0 => "No single input within its range turns who loads less.".to_owned(),
        1 => format!("One input alone can turn who loads less: {}.", named(&turning)),
        some => {
            format!("{some} inputs can each alone turn who loads less: {}{}.", named(&turning), if some > 5 { " and others" } else { "" })
        }
    });
    sentences.push(format!(
        "{} % of the variance rests on inputs of grade D (memory, stand-in, judgement), {} % on grades C and D.",
        (drivers.on_grade_d * 100.0).round(),
        (drivers.on_weak * 100.0).round()
    ));
    let weak = &drivers.weak;
    let (lower, higher) = if drivers.headline > 0.0 { (first, second) } else { (second, first) };
    sentences.push(capital(&match weak.turns_at {
        Some(share) => format!(
            "the order turns if all {} weak inputs (grades C and D) lie {} % of the way to the ends of their ranges that favour {higher}, all at once.",
            weak.inputs,
            (share * 100.0).round()
        ),
        None => format!(
            "even with all {} weak inputs (grades C and D) at the ends that favour {higher}, {lower} loads less: the difference is then {} {unit}.",
            weak.inputs,
            number(weak.at_ends)
        ),
    }));
    sentences
}
