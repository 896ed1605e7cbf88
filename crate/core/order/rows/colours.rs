//! Colours of a face in one cell, or in one text of an order: `red 76 %; white 24 %`, or one colour.

use serde_json::{Map, Value};

use crate::in_order;

use super::super::Colour;
use super::super::fields::{list, nearest, quoted};
use super::cell;

/// What was wrong, what was wanted, the way out.
pub(in crate::order) type Unread = (String, String, String);

const WRITE: &str = "write `red 76 %; white 24 %`";

/// The colours as an order writes them.
pub(in crate::order) fn read(text: &str, decimal_comma: bool) -> Result<Map<String, Value>, Unread> {
    let mut shares: Vec<(Colour, Option<f64>)> = Vec::new();
    let separators: &[char] = if decimal_comma { &[';', '/', '\n', '&', '+'] } else { &[';', ',', '/', '\n', '&', '+'] };
    for part in text.split(separators).map(str::trim).filter(|part| !part.is_empty()) {
        let (colour, share) = one(part, decimal_comma)?;
        if shares.iter().any(|(known, _)| *known == colour) {
            return Err((quoted(text), "each colour once".to_owned(), WRITE.to_owned()));
        }
        shares.push((colour, share));
    }
    in_order(&mut shares, |a, b| a.0.cmp(&b.0));
    let known: f64 = shares.iter().filter_map(|(_, share)| *share).sum();
    let unknown = shares.iter().filter(|(_, share)| share.is_none()).count();
    // What one colour leaves is arithmetic; how two share it is not known.
    if unknown > 1 || (unknown == 1 && known >= 100.0) {
        return Err((quoted(text), "each colour with its share of the face".to_owned(), WRITE.to_owned()));
    }
    if shares.is_empty() || (unknown == 0 && !(99.0..=101.0).contains(&known)) {
        return Err((quoted(text), "colours whose shares sum to 100 %".to_owned(), WRITE.to_owned()));
    }
    let rest = 100.0 - known;
    Ok(shares
        .into_iter()
        .map(|(colour, share)| (colour.name().to_owned(), Value::String(format!("{} %", share.unwrap_or(rest)))))
        .collect())
}

fn one(part: &str, decimal_comma: bool) -> Result<(Colour, Option<f64>), Unread> {
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '%' | ':' | '=') || c.is_whitespace();
    let name = part.trim_matches(is_number);
    let share: String = part.replacen(name, "", 1).chars().filter(|c| c.is_ascii_digit() || matches!(c, '.' | ',')).collect();
    let word = name.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ").replace("yellow green", "yellow-green");
    let names: Vec<&str> = Colour::ALL.iter().map(|(name, _)| *name).collect();
    let Some(colour) = Colour::read(&word) else {
        let help = match nearest(&word, &names).first() {
            Some(name) => format!("did you mean `{name}`?"),
            None => format!("use {}", list(&names)),
        };
        return Err((quoted(name), "a colour of sign faces".to_owned(), help));
    };
    if share.is_empty() {
        return Ok((colour, None));
    }
    match cell::number(&share, decimal_comma) {
        Ok(share) if share > 0.0 && share <= 100.0 => Ok((colour, Some(share))),
        _ => Err((quoted(part), "a share above 0 % and at most 100 %".to_owned(), WRITE.to_owned())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read_as(text: &str) -> String {
        read(text, false).map_or_else(|(came, wanted, help)| format!("{came}: {wanted}; {help}"), |map| Value::Object(map).to_string())
    }

    #[test]
    fn colours_are_read_with_their_shares() {
        for text in ["red 76 %; white 24 %", "76% red, 24% white", "Red: 76 / White", "white=24\nred=76"] {
            assert_eq!(read_as(text), r#"{"white":"24 %","red":"76 %"}"#, "{text}");
        }
        assert_eq!(read_as("Fluorescent Yellow Green 70 %; black 30 %"), r#"{"fluorescent yellow-green":"70 %","black":"30 %"}"#);
        assert_eq!(read_as("white"), r#"{"white":"100 %"}"#);
        assert_eq!(read("red 62,5 %; white 37,5 %", true).unwrap()["red"], "62.5 %");
    }

    #[test]
    fn shares_are_not_made_up() {
        assert_eq!(read_as("red, white"), "`red, white`: each colour with its share of the face; write `red 76 %; white 24 %`");
        assert_eq!(read_as("red 60; white 20"), "`red 60; white 20`: colours whose shares sum to 100 %; write `red 76 %; white 24 %`");
        assert!(read_as("rad 60; white 40").contains("did you mean `red`?"));
        assert!(read_as("red 60; red 40").contains("each colour once"));
        assert!(read_as("red 0; white 100").contains("above 0 %"));
        assert!(read_as("; ;").contains("sum to 100"));
    }
}
