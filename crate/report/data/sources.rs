//! The sources as rows: those that the inputs and the sign codes of a result cite.

use std::collections::BTreeSet;

use faceload_core::comparison::Comparison;
use faceload_core::factors::{Origin, Tables};

use super::inputs::used;
use super::sheet::{Column, Kind, Sheet, text};

/// The sheet.
pub(super) fn sheet(tables: &Tables, comparison: &Comparison) -> Sheet {
    let columns = vec![
        Column::of("key", Kind::Text, "Key of the source."),
        Column::of("title", Kind::Text, "Its title, or that there is none."),
        Column::perhaps("publisher", Kind::Text, "Who published it."),
        Column::perhaps("year", Kind::Text, "When."),
        Column::of("kind", Kind::Text, "What sort of source it is."),
        Column::of("seen", Kind::Text, "How it was seen: document, excerpt, transcription or memory."),
        Column::perhaps("licence", Kind::Text, "Under which licence."),
        Column::perhaps("credit", Kind::Text, "The credit that the licence asks for."),
        Column::perhaps("locator", Kind::Text, "Where it can be found."),
    ];
    let rows = used(comparison).into_values().filter(|row| matches!(row.origin, Origin::Practice | Origin::Factor));
    let signs = comparison.order.lines.iter().filter_map(|line| tables.signs.get(line.code.as_ref()?));
    let mut keys = BTreeSet::new();
    keys.extend(rows.map(|row| row.source.as_str()).chain(signs.map(|sign| sign.source.as_str())));
    let rows = keys.into_iter().filter_map(|key| tables.sources.get(key)).map(|source| {
        let words = [&source.key, &source.title, &source.publisher, &source.year, &source.kind].map(|words| text(words)).into_iter();
        let rights = [&source.licence, &source.attribution, &source.locator].map(|words| text(words));
        words.chain([text(source.seen.word())]).chain(rights).collect()
    });
    Sheet {
        name: "sources",
        says: "The publications behind the inputs and the sign codes, and the admitted lack of one.".to_owned(),
        columns,
        key: &["key"],
        rows: rows.collect(),
    }
}
