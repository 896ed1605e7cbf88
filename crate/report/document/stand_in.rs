//! Stands in for the manifest and the standing words of a report until those of their own modules are there.

use super::found::Found;
use crate::{result, words};

/// Fingerprints of what a report rests on.
pub struct Manifest {
    /// The short mark of its tables.
    pub short: String,
    /// Each fingerprint with what it is of.
    pub marks: Vec<(&'static str, String)>,
    /// The result as data.
    pub data: String,
}

/// Stands in for `data::Manifest`.
pub fn manifest(found: &Found<'_>) -> Manifest {
    let order = &found.comparison.order;
    Manifest {
        short: format!("tables {}", order.tables.short()),
        marks: vec![("tables, SHA-256", order.tables.to_string())],
        data: result::json(found.comparison, &found.draws, None),
    }
}

/// Stands in for `claims::standing_words()`.
pub fn standing_words() -> &'static str {
    words::STANDING
}
