//! A figure: sentences and tables that stand behind a picture, as text, as CSV, and as data for the page.

use serde::Serialize;

/// Sentences and the tables that bear them out.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Figure {
    /// What it is about.
    pub heading: String,
    /// What it says.
    pub sentences: Vec<String>,
    /// The numbers.
    pub tables: Vec<Table>,
}

/// Named columns and rows of cells.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Table {
    /// What the rows are.
    pub caption: String,
    /// The names of the columns, with units.
    pub columns: Vec<String>,
    /// The rows.
    pub rows: Vec<Vec<Cell>>,
    /// Columns that text leaves out for want of room.
    #[serde(skip)]
    pub aside: Vec<usize>,
}

/// One cell: words, or a number as it is and as it is shown.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Cell {
    /// Words.
    Words(String),
    /// A number.
    Number {
        /// As it is.
        value: f64,
        /// As it is shown.
        shown: String,
    },
}

impl From<&str> for Cell {
    fn from(words: &str) -> Self {
        Self::Words(words.to_owned())
    }
}

impl From<String> for Cell {
    fn from(words: String) -> Self {
        Self::Words(words)
    }
}

/// Words as a field of CSV (RFC 4180); what a spreadsheet would take for a formula gets an apostrophe in front.
pub(crate) fn field_of(words: &str) -> String {
    let guarded = if words.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']) { format!("'{words}") } else { words.to_owned() };
    if guarded.contains([',', '"', '\n', '\r']) { format!("\"{}\"", guarded.replace('"', "\"\"")) } else { guarded }
}

impl Cell {
    /// A number with the digits it is shown with.
    pub fn number(value: f64, shown: String) -> Self {
        Self::Number { value, shown }
    }

    /// What a reader sees.
    pub fn shown(&self) -> &str {
        match self {
            Self::Words(words) => words,
            Self::Number { shown, .. } => shown,
        }
    }

    /// As a field of CSV (RFC 4180): numbers in full; words that a spreadsheet would take for a formula set apart.
    fn field(&self) -> String {
        match self {
            Self::Number { value, .. } => format!("{value}"),
            Self::Words(words) => field_of(words),
        }
    }
}

impl Figure {
    /// As CSV: the tables one after another, each with its caption, an empty line between two.
    pub fn csv(&self) -> String {
        let tables = self.tables.iter().map(|table| {
            let line = |cells: Vec<String>| format!("{}\r\n", cells.join(","));
            let head = [
                line(vec![Cell::from(table.caption.as_str()).field()]),
                line(table.columns.iter().map(|name| Cell::from(name.as_str()).field()).collect()),
            ];
            let rows = table.rows.iter().map(|row| line(row.iter().map(Cell::field).collect()));
            head.into_iter().chain(rows).collect::<String>()
        });
        tables.collect::<Vec<_>>().join("\r\n")
    }
}

impl Table {
    /// As text: words to the left, numbers to the right, two spaces between columns.
    pub fn text(&self) -> String {
        let kept: Vec<usize> = (0..self.columns.len()).filter(|column| !self.aside.contains(column)).collect();
        let shown = |row: &[Cell], column: usize| row.get(column).map(|cell| cell.shown().to_owned()).unwrap_or_default();
        let form: Vec<(usize, usize, bool)> = kept
            .into_iter()
            .map(|column| {
                let cells = self.rows.iter().map(|row| shown(row, column).chars().count());
                let wide = cells.chain([self.columns[column].chars().count()]).max().unwrap_or(0);
                let numbers = self.rows.iter().all(|row| shown(row, column).is_empty() || matches!(row[column], Cell::Number { .. }));
                (column, wide, numbers)
            })
            .collect();
        let line = |cell: &dyn Fn(usize) -> String| {
            let cells = form.iter().map(|(column, wide, right)| {
                let cell = cell(*column);
                if *right { format!("{cell:>wide$}") } else { format!("{cell:<wide$}") }
            });
            format!("  {}\n", cells.collect::<Vec<_>>().join("  ").trim_end())
        };
        let head = line(&|column| self.columns[column].clone());
        let rows: String = self.rows.iter().map(|row| line(&|column| shown(row, column))).collect();
        format!("  {}\n{head}{rows}", self.caption)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn csv_of(cells: Vec<Cell>) -> String {
        let columns = vec!["=caption".to_owned(); cells.len()];
        let table = Table { caption: "+what".to_owned(), columns, rows: vec![cells], ..Table::default() };
        Figure { heading: String::new(), sentences: Vec::new(), tables: vec![table] }.csv()
    }

    #[test]
    fn words_that_a_spreadsheet_would_work_out_are_set_apart_and_numbers_are_not() {
        for lead in ["=", "+", "-", "@", "\t", "\r", "\n"] {
            let csv = csv_of(vec![Cell::from(format!("{lead}1+1")), Cell::from(format!("{lead}a,\"b\""))]);
            let quoted = format!("\"'{lead}a,\"\"b\"\"\"");
            let plain = if matches!(lead, "\r" | "\n") { format!("\"'{lead}1+1\"") } else { format!("'{lead}1+1") };
            assert!(csv.ends_with(&format!("\r\n{plain},{quoted}\r\n")), "{csv:?}");
        }
        assert!(csv_of(vec![Cell::number(-0.25, "\u{2212}0.25".to_owned())]).ends_with("\r\n-0.25\r\n"));
        assert!(csv_of(vec![Cell::number(1e-7, "0".to_owned())]).ends_with("\r\n0.0000001\r\n"), "in full, without an exponent");
    }

    #[test]
    fn captions_and_names_of_columns_are_words_too() {
        assert!(csv_of(vec![Cell::from("a")]).starts_with("'+what\r\n'=caption\r\n"));
    }

    #[test]
    fn every_line_ends_as_rfc_4180_has_it() {
        let csv = csv_of(vec![Cell::from("a\nb"), Cell::from("")]);
        assert_eq!(csv, "'+what\r\n'=caption,'=caption\r\n\"a\nb\",\r\n");
    }
}
