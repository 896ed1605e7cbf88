//! The question: which order, which ways of making it, what is looked at.

use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, aside, paragraph, terms};
use crate::words;

/// The question.
pub fn section(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    let alternatives = found.models().iter().map(|model| (model.alternative.id.clone(), words::alternative(&model.alternative)));
    let indicators =
        Indicator::ALL.map(|indicator| (format!("{}, {}", indicator.label(), indicator.unit()), indicator.counts().to_owned()));
    super::section(
        "report-question",
        vec![
            paragraph(
                "Which way of making the faces of these signs loads the environment least, by how much, how sure is that, and what would change it?",
            ),
            paragraph(words::order_line(comparison)).with("class", "lead"),
            aside(format!("{}. Counted: {}.", words::extent(comparison), words::boundary(comparison.boundary))),
            terms(alternatives).with("class", "ways"),
            paragraph("Five things are looked at, each on its own; they are never added up:"),
            terms(indicators).with("class", "ways"),
        ],
    )
}
