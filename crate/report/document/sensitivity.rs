//! Uncertainty and sensitivity of one pair: intervals, drivers, break-even, choices of method.

use faceload_core::analysis::swings;
use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, figure, list, paragraph, picture, words};
use crate::swings::Swings;
use crate::{drivers, flip_panels, flips, sureness};

/// How many inputs are listed.
const MOST: usize = 20;
/// How many are drawn.
const DRAWN: usize = 12;

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
    spread.tables.extend(sureness::ranks(comparison, &found.draws, indicator));
    inside.extend(figure("h3", &spread, None));
    if let Some(driving) = &found.drivers[indicator as usize] {
        let mut list = swings(comparison, pair.0, pair.1, indicator);
        list.truncate(DRAWN);
        let one = drivers::figure(comparison, pair, indicator, driving, MOST);
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
        let drawn = looked_at.then(|| picture(flip_panels::crossing_file(comparison, pair, other, found_at), &one.sentences.join(" ")));
        inside.extend(figure("h3", &one, drawn));
    }
    for (other, list) in Indicator::ALL.into_iter().zip(&found.switches).filter(|(_, list)| !list.is_empty()) {
        let mut one = flips::switches(comparison, pair, other, list);
        // Where no choice moves a load, the table would say one thing many times.
        if list.iter().all(|row| (row.first, row.second) == (list[0].first, list[0].second)) {
            one.tables.clear();
            one.sentences = vec!["No choice of method moves either load.".to_owned()];
        }
        inside.extend(figure("h3", &one, None));
    }
    super::section("report-sensitivity", inside)
}
