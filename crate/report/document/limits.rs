//! What the report does not say, and the cautions.

use super::found::Found;
use super::node::{Node, list, paragraph};
use crate::claims::{reviewers, standing_words};
use crate::labels::label;
use crate::{cautions, words};

/// What is said of single lines, in the reviewer's part.
pub fn of_lines(found: &Found<'_>) -> Vec<String> {
    [cautions::unusual(found.comparison), cautions::dropped(&found.comparison.makers.dropped)].concat()
}

/// Limits and cautions.
pub fn section(found: &Found<'_>) -> Node {
    let (comparison, order) = (found.comparison, &found.comparison.order);
    let of_lines = of_lines(found).len();
    let more = (of_lines > 0).then(|| {
        format!("{} on what single lines allow: see \u{201c}{}\u{201d}.", words::count(of_lines as u64, "remark"), label("report-lines"))
    });
    let said = [
        vec![format!("Left out: {}.", words::left_out(order, comparison.boundary).join("; "))],
        more.into_iter().collect(),
        reviewers(order).into_iter().collect(),
        words::orders(order),
        words::own_rows(order),
        words::moved(comparison),
        comparison.cautions.iter().map(cautions::caution).collect(),
    ]
    .concat();
    let mut inside = vec![paragraph(standing_words()).with("class", "lead"), paragraph(words::CAUTION), paragraph(words::NOT_COVERED)];
    inside.extend(list(said));
    super::section("report-limits", inside)
}
