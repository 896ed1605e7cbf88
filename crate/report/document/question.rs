//! The question: which order, which ways of making it, what is looked at.

use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, aside, element, paragraph, terms};
use crate::words;

/// The question.
pub fn section(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    let alternatives = found.models().iter().map(|model| (model.alternative.id.clone(), words::alternative_on(model)));
    let indicators = Indicator::ALL.map(|indicator| (indicator.label().to_owned(), indicator.counts().to_owned()));
    super::section(
        "report-question",
        vec![
            paragraph("Which way of making these sign faces loads the environment least, by how much, how sure, and what would change it?"),
            paragraph(words::order_line(comparison)).with("class", "lead"),
            aside(format!("{}. Counted: {}.", words::extent(comparison), words::boundary(comparison.boundary))),
            element(
                "div",
                vec![
                    element("div", vec![paragraph("Ways of making them:"), terms(alternatives)]),
                    element("div", vec![paragraph("Looked at, each on its own, never added up:"), terms(indicators)]),
                ],
            )
            .with("class", "two"),
        ],
    )
}
