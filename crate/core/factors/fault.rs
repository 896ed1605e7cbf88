//! What is wrong with a table: file, line, column, what came, what was wanted, the way out.

use std::fmt;

/// One fault in one cell, or in one row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TableFault {
    /// The folder of the table.
    pub folder: String,
    /// The table.
    pub file: &'static str,
    /// The line in it, from 1; 0 where the fault is not in one line.
    pub line: u64,
    /// The column.
    pub column: String,
    /// What stands there.
    pub came: String,
    /// What was wanted.
    pub wanted: String,
    /// The way out.
    pub help: String,
}

impl fmt::Display for TableFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.folder, self.file)?;
        if self.line > 0 {
            write!(f, ", line {}", self.line)?;
        }
        write!(f, ", column `{}`: `{}` where {} was wanted; {}", self.column, self.came, self.wanted, self.help)
    }
}
