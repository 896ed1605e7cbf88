//! What is wrong with an order: where, what came, what was wanted, the way out.

use std::fmt;

/// One fault in one field.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OrderFault {
    /// The file, or the name of the demo.
    pub file: String,
    /// The line in it, where it is known.
    pub line: Option<usize>,
    /// The field, such as `line[2].quantity`.
    pub field: String,
    /// What came.
    pub came: String,
    /// What was wanted.
    pub wanted: String,
    /// The way out.
    pub help: String,
}

/// A text from outside without its control characters, which a terminal might obey.
pub(super) fn plain(text: &str) -> String {
    text.chars().map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect()
}

impl fmt::Display for OrderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut text = self.file.clone();
        if let Some(line) = self.line {
            text.push_str(&format!(", line {line}"));
        }
        if !self.field.is_empty() {
            text.push_str(&format!(", field `{}`", self.field));
        }
        text.push_str(&format!(": {} where {} was wanted; {}", self.came, self.wanted, self.help));
        f.write_str(&plain(&text))
    }
}
