//! Values with a unit, as a person types them.

use crate::quantity::{UnitText, read_number};

/// Reads `0.20 L/m2` as a number of the row's unit; a bare number is taken only for a pure number.
pub(crate) fn read_with_unit(text: &str, row: &UnitText) -> Option<f64> {
    let text = text.trim();
    let unit_at = text
        .char_indices()
        .find(|(at, c)| ((c.is_ascii_alphabetic() || matches!(c, 'µ' | 'μ')) && !exponent(text, *at)) || matches!(c, '%' | '[' | '{' | '/'))
        .map_or(text.len(), |(at, _)| at);
    let (number, unit) = text.split_at(unit_at);
    let number = read_number(number).ok()?;
    let unit = unit.trim();
    if unit.is_empty() {
        return (row.text() == "1" || row.text() == "{piece}").then_some(number);
    }
    let unit = UnitText::read(&unit.replace('\u{b7}', ".")).ok()?;
    row.from_plain(&unit).map(|size| number * size)
}

/// Whether the letter at `at` is the `e` of `1e-3`.
fn exponent(text: &str, at: usize) -> bool {
    let bytes = text.as_bytes();
    matches!(bytes.get(at), Some(b'e' | b'E'))
        && at > 0
        && bytes[at - 1].is_ascii_digit()
        && bytes.get(at + 1).is_some_and(|next| next.is_ascii_digit() || matches!(next, b'-' | b'+'))
}
