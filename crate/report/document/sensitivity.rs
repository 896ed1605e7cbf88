//! Uncertainty and sensitivity of one pair: intervals, drivers, break-even, choices of method.

use faceload_core::analysis::swings;
use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, figure, list, paragraph, picture, words};
use crate::figure::{Cell, Table};
use crate::swings::Swings;
use crate::words::join;
use crate::{drivers, flip_panels, flips, shares, sureness};

/// How many inputs are listed.
const MOST: usize = 20;
/// How many are drawn.
const DRAWN: usize = 12;

/// A table of inputs with each id behind its input, as in the list of inputs: there is no room for both columns on paper.
fn with_ids_behind(mut table: Table) -> Table {
    table.columns.remove(0);
    table.columns[0].push_str(" [id]");
    for row in &mut table.rows {
        let id = row.remove(0);
        row[0] = Cell::from(format!("{} [{}]", row[0].shown(), id.shown()));
    }
    table
}

/// From row to row, a point of a scan lies at least so much further, unless the difference turns there.
const FURTHER: f64 = 1.05;

/// A scan without the many points close to a crossing that only served to find it.
fn thin(scan: &mut Table) {
    let number = |row: &[Cell], column: usize| match row.get(column) {
        Some(Cell::Number { value, .. }) => *value,
        _ => 0.0,
    };
    let (mut kept, mut last) = (Vec::new(), f64::NEG_INFINITY);
    for (at, row) in scan.rows.iter().enumerate() {
        let turns = |other: usize| scan.rows.get(other).is_some_and(|next| (number(next, 3) > 0.0) != (number(row, 3) > 0.0));
        if turns(at.wrapping_sub(1)) || turns(at + 1) || number(row, 0) >= FURTHER * last || at + 1 == scan.rows.len() {
            last = number(row, 0);
            kept.push(row.clone());
        }
    }
    scan.rows = kept;
}

/// Uncertainty and sensitivity.
pub fn section(found: &Found<'_>) -> Node {
    let Some(pair) = found.pair else {
        return super::section("report-sensitivity", vec![paragraph("No two alternatives share a line.")]);
    };
    let (comparison, indicator) = (found.comparison, found.indicator);
    let mut inside = vec![paragraph(
        "Every uncertain input is drawn from its own range; the shape of the range stands in the list of inputs. A share of variance says how much of the spread of the difference would go if the input were known (alone) \
         or would stay if it alone were unknown (with others). An elasticity is by how many per cent the difference changes for one per cent of the input. Choices of method and of layout are set, never drawn.",
    )];
    let mut spread = sureness::figure(comparison, &found.draws, pair.0, pair.1);
    spread.tables.extend(shares::ranks(comparison, &found.draws, indicator));
    inside.extend(figure("h3", &spread, None));
    if let Some(driving) = &found.drivers[indicator as usize] {
        let mut list = swings(comparison, pair.0, pair.1, indicator);
        list.truncate(DRAWN);
        let mut one = drivers::figure(comparison, pair, indicator, driving, MOST);
        one.tables = one.tables.into_iter().map(with_ids_behind).collect();
        let drawn = picture(Swings { comparison, pair, indicator, list: &list }.file(), &one.sentences.join(" "));
        inside.extend(figure("h3", &one, Some(drawn)));
    }
    for (other, driving) in Indicator::ALL.into_iter().zip(&found.drivers).filter(|(other, _)| *other != indicator) {
        if let Some(driving) = driving {
            let one = drivers::figure(comparison, pair, other, driving, 0);
            inside.push(words("h3", one.heading));
            inside.extend(list(one.sentences));
        }
    }
    for (other, found_at) in Indicator::ALL.into_iter().zip(&found.break_even) {
        let Some(found_at) = found_at else { continue };
        let mut one = flips::break_even(comparison, pair, other, found_at);
        let looked_at = other == indicator;
        if !looked_at {
            // How lines are made there is said once.
            one.sentences = flips::break_even_sentences(found_at, found.ids(pair), other);
            one.tables.clear();
        }
        one.tables.iter_mut().for_each(thin);
        let drawn = looked_at.then(|| picture(flip_panels::crossing_file(comparison, pair, other, found_at), &one.sentences.join(" ")));
        inside.extend(figure("h3", &one, drawn));
    }
    let mut unmoved = Vec::new();
    for (other, list) in Indicator::ALL.into_iter().zip(&found.switches).filter(|(_, list)| !list.is_empty()) {
        // Where no choice moves a load, the table would say one thing many times.
        if flips::moves(list) {
            inside.extend(figure("h3", &flips::switches(comparison, pair, other, list), None));
        } else {
            unmoved.push(other.label());
        }
    }
    if !unmoved.is_empty() {
        inside.push(paragraph(format!("In {} no choice of method moves either load.", join(&unmoved))));
    }
    super::section("report-sensitivity", inside)
}
