//! A cell as people leave it: space around it, marks for nothing, numbers.

use crate::quantity::{NumberFault, read_number};

/// A cell without the space around it, and without the apostrophe that spreadsheets put before a text that looks like a formula.
pub(super) fn plain(cell: &str) -> &str {
    let cell = cell.trim();
    match cell.strip_prefix('\'') {
        Some(rest) if rest.starts_with(['=', '+', '-', '@']) => rest,
        _ => cell,
    }
}

/// Whether a cell says that it says nothing.
pub(super) fn says_nothing(cell: &str) -> bool {
    let word = cell.to_lowercase();
    matches!(word.as_str(), "" | "-" | "--" | "\u{2013}" | "\u{2014}" | "?" | "n/a" | "na" | "n.a." | "#n/a" | "null" | "unknown" | "tbd")
}

/// A number; a comma is a decimal mark only where that was chosen, and then a point is ambiguous.
pub(super) fn number(text: &str, decimal_comma: bool) -> Result<f64, NumberFault> {
    if decimal_comma {
        if text.contains('.') {
            return Err(NumberFault::Comma);
        }
        return read_number(&text.replacen(',', ".", 1));
    }
    read_number(text)
}

/// The way out of a mark that may mean a thousand or a decimal.
pub(super) fn mark_help(decimal_comma: bool) -> &'static str {
    if decimal_comma {
        "where a comma is the decimal mark, a point may mean a thousand: write `1200` and `0,5`"
    } else {
        "a comma may mean a thousand or a decimal: write `1200` and `0.5`, or choose the decimal comma"
    }
}
