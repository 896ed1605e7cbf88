//! A record inside a page: a data block that no script runs and no text of an order ends.

/// What the block begins with.
const BEGIN: &str = "<script type=\"application/json\" id=\"faceload-data\">";
/// What it ends with.
const END: &str = "</script>";

/// The block that carries a record; every `<` in it is written `\u003c`.
pub fn put_in(record: &str) -> String {
    format!("{BEGIN}\n{}{END}", record.replace('<', "\\u003c"))
}

/// The record that a page carries, as it is written there; none where it carries none, or more than one.
pub fn taken_from(page: &str) -> Option<&str> {
    let (_, rest) = page.split_once(BEGIN)?;
    let (record, after) = rest.split_once(END)?;
    (!after.contains(BEGIN)).then(|| record.strip_prefix('\n').unwrap_or(record))
}
