//! Loads: single values with their intervals, what stands beside them, and the stages they come from.

use faceload_core::analysis::Interval;
use faceload_core::load::Indicator;
use faceload_picture::Theme;

use super::found::Found;
use super::node::{Node, figure, list, picture, table, words};
use crate::figure::{Cell, Table};
use crate::panel::WIDE;
use crate::{stages, sureness, view};

/// Loads and where they come from.
pub fn section(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    let rows = Indicator::ALL.into_iter().flat_map(|indicator| {
        found.models().iter().enumerate().map(move |(at, model)| {
            let interval = Interval::of(found.draws.load(comparison, at, indicator));
            let cell = |value: f64| Cell::number(value, sureness::by_interval(value, &interval));
            let points =
                [model.load(indicator, comparison.per).value, interval.p5, interval.p25, interval.median, interval.p75, interval.p95];
            let first = [indicator.label().to_owned(), found.unit(indicator), model.alternative.id.clone()].map(Cell::from);
            first.into_iter().chain(points.map(cell)).collect()
        })
    });
    let loads = Table {
        caption: "Every input at its median, and the points of the draws".to_owned(),
        columns: ["indicator", "unit", "alternative", "single value", "5 %", "25 %", "median", "75 %", "95 %"].map(str::to_owned).to_vec(),
        rows: rows.collect(),
        ..Table::default()
    };
    let beside = Table {
        caption: format!("Beside the loads, {}: parts of them, or what a meter would show", comparison.per.words()),
        columns: found.columns(&["what", "unit"]),
        rows: view::beside(comparison)
            .into_iter()
            .map(|row| {
                let numbers = row.values.into_iter().zip(row.texts).map(|(value, shown)| Cell::number(value, shown));
                [row.label, row.unit].map(Cell::from).into_iter().chain(numbers).collect()
            })
            .collect(),
        ..Table::default()
    };
    if comparison.common.is_empty() {
        let said = comparison.first_pairs().into_iter().flat_map(|(a, b)| {
            let each =
                Indicator::ALL.map(|one| format!("{}: {}", one.label(), sureness::difference_of(comparison, &found.draws, a, b, one)));
            [words("h3", found.ids((a, b)).join(" and "))].into_iter().chain(list(each)).collect::<Vec<_>>()
        });
        return super::section("report-loads", found.own_lines().into_iter().chain(said).collect());
    }
    let mut inside = vec![table(&loads), table(&beside)];
    for indicator in Indicator::ALL {
        let mut one = stages::figure(comparison, indicator);
        let looked_at = indicator == found.indicator;
        if !looked_at {
            // What follows the first sentence is of the picture.
            one.sentences.truncate(1);
        }
        let drawn = looked_at
            .then(|| picture(stages::picture(comparison, indicator, WIDE, Theme::Paper).map(|drawn| drawn.svg), &one.sentences.join(" ")));
        inside.extend(figure("h3", &one, drawn));
    }
    super::section("report-loads", inside)
}
