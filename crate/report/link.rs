//! A link: an order and what is looked at in it, in the fragment of an address, which no host is ever sent.
//!
//! `#1.` and base64url (RFC 4648, section 5, unpadded) of deflated (RFC 1951) JSON text. What comes in is capped
//! before it is opened and while it is: a short link could else unpack to more than a machine holds.

use std::fmt;

use base64::prelude::{BASE64_URL_SAFE_NO_PAD, Engine};
use miniz_oxide::{
    deflate::compress_to_vec,
    inflate::{TINFLStatus, decompress_to_vec_with_limit},
};
use serde::{Deserialize, Serialize};
use serde_json::Value;

/// How a link of this version begins.
pub const BEGINS: &str = "#1.";

/// The longest link that is read, in characters.
pub const LONGEST: usize = 16 * 1024;

/// The longest text that a link may unpack to, in bytes.
pub const UNPACKED: usize = 256 * 1024;

/// How many times as long as the packed bytes their text may be.
pub const TIMES: usize = 50;

/// The strongest level that miniz_oxide has.
const LEVEL: u8 = 10;

/// What a link holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Linked {
    /// The order as its file has it.
    pub order: Value,
    /// Per what loads are given.
    pub per: String,
    /// What is counted.
    pub boundary: String,
    /// The pair looked at, by id.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pair: Option<(String, String)>,
    /// The indicator looked at.
    pub indicator: String,
    /// Inputs moved by hand.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub moved: Vec<(String, f64)>,
    /// The short fingerprint of the tables it was made with.
    pub tables: String,
    /// How many values of the shop's own were left out; its numbers are generic where there are any.
    #[serde(default, skip_serializing_if = "is_none_left_out")]
    pub left_out: usize,
}

fn is_none_left_out(count: &usize) -> bool {
    *count == 0
}

/// Why a text is no link, or why an order makes none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LinkFault {
    /// It begins otherwise.
    Begins(String),
    /// Longer than is read.
    Long(usize),
    /// A character that no link has.
    Letter(String),
    /// The packed text is broken, or its end is missing.
    Broken,
    /// It unpacks to more than is taken.
    Large,
    /// The text in it is not what a link holds.
    Text(String),
}

impl fmt::Display for LinkFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let again = "copy the link once more, all of it, or ask for the order file";
        let file = "save the order as a file and send that";
        let (came, wanted, help) = match self {
            Self::Begins(came) => (
                format!("`{came}`"),
                format!("a link that has `{BEGINS}` in it"),
                "this program reads version 1; copy the link once more, all of it",
            ),
            Self::Long(length) => (format!("{length} characters"), format!("at most {LONGEST}"), file),
            Self::Letter(came) => (came.clone(), "letters, digits, `-` and `_`".to_owned(), again),
            Self::Broken => ("a packed text that breaks off".to_owned(), "a whole link".to_owned(), again),
            Self::Large => (
                "a text too large for a link".to_owned(),
                format!("at most {} KiB, and {TIMES} times its packed bytes", UNPACKED / 1024),
                file,
            ),
            Self::Text(reason) => {
                (format!("a text that holds no order ({reason})"), "an order and what is looked at in it".to_owned(), again)
            }
        };
        write!(f, "the link: {came} where {wanted} was wanted; {help}")
    }
}

/// Leaves the shop's own values out of an order: entries of `with` of the grade `own`, with their notes. How many.
pub fn without_own(order: &mut Value) -> usize {
    let mut left_out = 0;
    for alternative in order.get_mut("alternative").and_then(Value::as_array_mut).into_iter().flatten() {
        let Some(alternative) = alternative.as_object_mut() else { continue };
        let Some(with) = alternative.get_mut("with").and_then(Value::as_object_mut) else { continue };
        let before = with.len();
        with.retain(|_, entry| entry.get("grade").and_then(Value::as_str).map(str::trim) != Some("own"));
        left_out += before - with.len();
        if with.is_empty() && before > 0 {
            alternative.shift_remove("with");
        }
    }
    left_out
}

impl Linked {
    /// As a link writes it, from `#` on; what could not be read again is not made.
    pub fn write(&self) -> Result<String, LinkFault> {
        let text = serde_json::to_string(self).map_err(|error| LinkFault::Text(error.to_string()))?;
        let packed = compress_to_vec(text.as_bytes(), LEVEL);
        if text.len() > UNPACKED.min(packed.len() * TIMES) {
            return Err(LinkFault::Large);
        }
        let mut link = BEGINS.to_owned();
        BASE64_URL_SAFE_NO_PAD.encode_string(packed, &mut link);
        if link.len() > LONGEST { Err(LinkFault::Long(link.len())) } else { Ok(link) }
    }

    /// Reads an address, or its part from `#` on; what follows an `&` is not the link's.
    pub fn read(address: &str) -> Result<Self, LinkFault> {
        let address = address.trim();
        let Some((_, rest)) = address.split_once(BEGINS) else {
            let fragment = address.find('#').map_or(address, |at| &address[at..]);
            return Err(LinkFault::Begins(shortened(fragment)));
        };
        let text = rest.split('&').next().unwrap_or_default();
        if text.len() > LONGEST {
            return Err(LinkFault::Long(text.len()));
        }
        let packed = BASE64_URL_SAFE_NO_PAD.decode(text).map_err(|fault| match fault {
            base64::DecodeError::InvalidByte(at, _) => LinkFault::Letter(
                text.get(at..)
                    .and_then(|rest| rest.chars().next())
                    .map_or_else(|| "a character".to_owned(), |c| format!("`{}`", c.escape_debug())),
            ),
            _ => LinkFault::Broken,
        })?;
        let most = UNPACKED.min(packed.len() * TIMES);
        let bytes = decompress_to_vec_with_limit(&packed, most).map_err(|fault| match fault.status {
            TINFLStatus::HasMoreOutput => LinkFault::Large,
            _ => LinkFault::Broken,
        })?;
        let text = String::from_utf8(bytes).map_err(|_| LinkFault::Broken)?;
        serde_json::from_str(&text).map_err(|error| LinkFault::Text(shortened(&error.to_string())))
    }
}

impl Linked {
    /// What a reader of the link must know: what was left out, and tables that are not those of now.
    pub fn told(&self, now: &str) -> Vec<String> {
        let mut told = Vec::new();
        if self.left_out > 0 {
            let values = if self.left_out == 1 {
                "one value of the shop's own".to_owned()
            } else {
                format!("{} values of the shop's own", self.left_out)
            };
            told.push(format!("The link was made without {values}: its numbers are generic."));
        }
        if self.tables != now {
            let made = if self.tables.is_empty() {
                "tables it does not name".to_owned()
            } else {
                format!("the tables {}", shortened(&self.tables))
            };
            told.push(format!("The link was made with {made}; these are {now}, so numbers may differ from what its sender saw."));
        }
        told
    }
}

fn shortened(text: &str) -> String {
    let short: String = text.chars().take(60).map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect();
    if short.len() < text.len() { format!("{short}\u{2026}") } else { short }
}

#[cfg(test)]
#[path = "link_tests.rs"]
mod tests;
