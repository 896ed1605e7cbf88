//! Sign codes in a cell: as the table has them, with a letter for left or right, or the shop's own.

use std::collections::BTreeMap;

use crate::factors::{SignRow, Tables};

/// One code of a cell.
#[derive(Debug, Clone, Copy)]
pub(super) struct Code<'t> {
    /// The row of the table, where it has one.
    pub row: Option<&'t SignRow>,
    /// Whether it is the left or right variant of that row.
    pub variant: bool,
}

/// The codes of the tables, however they are written.
pub(super) struct Codes<'t>(BTreeMap<String, &'t SignRow>);

impl<'t> Codes<'t> {
    pub fn of(tables: &'t Tables) -> Self {
        let mut codes = BTreeMap::new();
        codes.extend(tables.signs.iter().map(|(code, row)| (plain(code), row)));
        Self(codes)
    }

    /// The code meant: as written, or without the letter of its left or right variant.
    pub fn find(&self, written: &str) -> Code<'t> {
        let code = plain(written);
        if let Some(row) = self.0.get(&code) {
            return Code { row: Some(row), variant: false };
        }
        // `W1-2L`, `W1-2R`: the same sign the other way round.
        let base = code.strip_suffix(['L', 'R']).filter(|base| base.ends_with(|c: char| c.is_ascii_digit()));
        let row = base.and_then(|base| self.0.get(base)).copied();
        Code { row, variant: row.is_some() }
    }
}

/// In capitals, without space.
fn plain(code: &str) -> String {
    code.chars().filter(|c| !c.is_whitespace()).flat_map(char::to_uppercase).map(|c| if c == '\u{2013}' { '-' } else { c }).collect()
}

/// The codes of a cell, as they are written.
pub(super) fn parts(cell: &str) -> Vec<&str> {
    cell.split(['/', ';', ',', '\n', '&', '+']).map(str::trim).filter(|part| !part.is_empty()).collect()
}

/// Whether a text looks like a standard code, such as `W11-2` or `R6-1L`.
pub(super) fn looks_like_one(text: &str) -> bool {
    let Some((first, second)) = text.split_once('-') else { return false };
    let letters = first.bytes().take_while(u8::is_ascii_uppercase).count();
    (1..=3).contains(&letters)
        && (1..=2).contains(&(first.len() - letters))
        && first[letters..].bytes().all(|byte| byte.is_ascii_digit())
        && second.starts_with(|c: char| c.is_ascii_digit())
        && second.len() <= 6
        && second.bytes().all(|byte| byte.is_ascii_alphanumeric())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_met_as_written_or_as_a_left_or_right_variant() {
        let tables = Tables::embedded().unwrap();
        let codes = Codes::of(&tables);
        let found = |code: &str| codes.find(code).row.map(|row| row.code.as_str());
        assert_eq!(found(" r1-1 "), Some("R1-1"));
        assert_eq!(found("R6-1L"), Some("R6-1"));
        assert_eq!(found("W1-2R"), Some("W1-2"));
        assert!(codes.find("R6-1R").variant && !codes.find("R6-1").variant);
        // Another letter is another sign.
        assert_eq!(found("R5-1a"), None);
        assert_eq!(found("R5-1b"), None);
        assert_eq!(found("W1-1aL"), None);
    }

    #[test]
    fn the_look_of_a_code_is_told_from_other_texts() {
        assert!(["R1-1", "W11-12P", "R6-1L", "OM3-L1", "D3-1"].iter().filter(|code| looks_like_one(code)).count() == 4);
        assert!(!["12 x 18", "stop", "2-1", "R1", "R-1", "A-1-2", ""].iter().any(|text| looks_like_one(text)));
    }
}
