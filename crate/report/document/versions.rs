//! Versions and fingerprints: what must be the same for the same bytes to come out again.

use faceload_core::analysis::SCANNED;

use super::found::Found;
use super::node::{Node, paragraph, terms};
use crate::data::Manifest;
use crate::{result, sureness};

/// Versions and fingerprints.
pub fn section(found: &Found<'_>, manifest: &Manifest) -> Node {
    let settings = &found.draws.settings;
    let facts = [
        ("form of the result", result::SCHEMA_VERSION.to_string()),
        ("draws", sureness::drawn(&found.draws)),
        ("draws at each value of break-even", super::found::SCAN.min(settings.number).to_string()),
        ("draws under each choice of method", SCANNED.min(settings.number).to_string()),
    ];
    let marks = manifest.marks().into_iter().map(|(name, mark)| (name.to_owned(), mark));
    super::section(
        "report-versions",
        vec![
            terms(facts.map(|(name, text)| (name.to_owned(), text)).into_iter().chain(marks)),
            paragraph(
                "The same order, tables, version, draws and seed give this report again, byte for byte. The result as data lies inside the file, in the element `faceload-data`.",
            ),
        ],
    )
}
