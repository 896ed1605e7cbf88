//! What the report does not say, and the cautions.

use super::found::Found;
use super::node::{Node, list, paragraph};
use super::stand_in::standing_words;
use crate::{cautions, sureness, words};

/// Limits and cautions.
pub fn section(found: &Found<'_>) -> Node {
    let (comparison, draws) = (found.comparison, &found.draws);
    let order = &comparison.order;
    let pairs = comparison.first_pairs();
    let left_out = format!("Left out: {}.", words::left_out(order, comparison.boundary).join("; "));
    let said = [
        vec![left_out],
        sureness::off_headlines(comparison, draws, &pairs).into_iter().collect(),
        words::orders(order),
        words::own_rows(order),
        words::moved(comparison),
        cautions::unusual(comparison),
        cautions::dropped(&comparison.makers.dropped),
        comparison.cautions.iter().map(cautions::caution).collect(),
    ]
    .concat();
    let mut inside = vec![paragraph(standing_words()).with("class", "lead"), paragraph(words::CAUTION), paragraph(words::NOT_COVERED)];
    inside.extend(list(said));
    super::section("report-limits", inside)
}
