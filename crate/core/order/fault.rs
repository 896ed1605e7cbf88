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

impl fmt::Display for OrderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(line) = self.line {
            write!(f, ", line {line}")?;
        }
        if !self.field.is_empty() {
            write!(f, ", field `{}`", self.field)?;
        }
        write!(f, ": {} where {} was wanted; {}", self.came, self.wanted, self.help)
    }
}
