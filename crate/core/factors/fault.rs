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
        // What came from outside must not steer the terminal it is printed on.
        let plain = |c: char| if c.is_control() { c.escape_default().to_string() } else { c.to_string() };
        let came: String = self.came.chars().map(plain).collect();
        write!(f, ", column `{}`: `{came}` where {} was wanted; {}", self.column, self.wanted, self.help)
    }
}
