//! The sources behind the comparison, numbered, with licence and the credit it asks for.

use super::found::Found;
use super::node::{Node, element, paragraph, words};

/// The number of a source among those behind the comparison.
pub fn number_of(found: &Found<'_>, key: &str) -> Option<usize> {
    found.sources.iter().position(|source| source.key == key).map(|place| place + 1)
}

/// The references.
pub fn section(found: &Found<'_>) -> Node {
    let each = found.sources.iter().map(|source| words("li", format!("{}. {}.", source.words, source.licence)));
    let each: Vec<Node> = each.collect();
    let inside = if each.is_empty() { vec![paragraph("No publication stands behind this comparison.")] } else { vec![element("ol", each)] };
    super::section("report-references", inside)
}
