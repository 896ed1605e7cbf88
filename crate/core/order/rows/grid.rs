//! Text as cells: RFC 4180, with the separator that fits its lines best.

use csv::{ReaderBuilder, StringRecord};

use super::super::OrderFault;
use super::field::Field;
use crate::quantity::group;

/// What may stand between cells, with its name.
pub const SEPARATORS: [(char, &str); 3] = [('\t', "tab"), (';', "semicolon"), (',', "comma")];

/// The most rows taken.
const MOST_ROWS: usize = 50_000;

/// The most columns taken.
const MOST_COLUMNS: usize = 200;

/// The longest cell taken, in bytes.
const LONGEST_CELL: usize = 5_000;

/// One row of cells.
pub(super) struct Row {
    /// Its number, as a spreadsheet counts it.
    pub number: usize,
    /// Its cells.
    pub cells: Vec<String>,
}

impl Row {
    /// A cell without the space around it; what is not there is empty.
    pub fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| super::cell::plain(cell))
    }

    /// Whether nothing stands in it.
    pub fn is_empty(&self) -> bool {
        (0..self.cells.len()).all(|column| self.cell(column).is_empty())
    }
}

/// All rows, and what stands between their cells.
pub(super) fn read(file: &str, text: &str, separator: Option<char>) -> Result<(Vec<Row>, char), OrderFault> {
    let separator = separator.unwrap_or_else(|| sniff(text));
    let refuse = |row: usize, came: String, wanted: String, help: &str| {
        Err(OrderFault {
            file: if row > 0 { format!("{file}, row {row}") } else { file.to_owned() },
            line: None,
            field: String::new(),
            came,
            wanted,
            help: help.to_owned(),
        })
    };
    let rows = rows(text, separator, usize::MAX);
    if rows.iter().all(Row::is_empty) {
        return refuse(0, "nothing".to_owned(), "rows of cells".to_owned(), "copy the cells with their column names and paste them");
    }
    if rows.len() > MOST_ROWS {
        let wanted = format!("at most {} rows", group(&MOST_ROWS.to_string()));
        return refuse(0, format!("{} rows", group(&rows.len().to_string())), wanted, "split them into several files");
    }
    for row in &rows {
        if row.cells.len() > MOST_COLUMNS {
            let wanted = format!("at most {MOST_COLUMNS} columns");
            return refuse(row.number, format!("{} columns", row.cells.len()), wanted, "keep the columns that say what the signs are");
        }
        if let Some(cell) = row.cells.iter().find(|cell| cell.len() > LONGEST_CELL) {
            let wanted = format!("cells of at most {} bytes", group(&LONGEST_CELL.to_string()));
            return refuse(
                row.number,
                format!("a cell of {} bytes", group(&cell.len().to_string())),
                wanted,
                "a quotation mark that opens a cell may be left without its end: close it, or shorten the cell",
            );
        }
    }
    Ok((rows, separator))
}

/// The first rows, numbered as a spreadsheet does: empty lines count, line breaks inside a cell don't.
fn rows(text: &str, separator: char, most: usize) -> Vec<Row> {
    let mut reader = ReaderBuilder::new().delimiter(separator as u8).has_headers(false).flexible(true).from_reader(text.as_bytes());
    let mut record = StringRecord::new();
    let mut rows = Vec::new();
    let mut number = 0;
    while rows.len() < most {
        let before = reader.position().line();
        // The text is UTF-8 and rows may be of any length, so no record is at fault.
        if !reader.read_record(&mut record).unwrap_or(false) {
            break;
        }
        let breaks = record.iter().map(|cell| cell.bytes().filter(|byte| *byte == b'\n').count()).sum::<usize>();
        let lines = (reader.position().line() - before) as usize;
        number += lines.saturating_sub(breaks).max(1);
        rows.push(Row { number, cells: record.iter().map(str::to_owned).collect() });
    }
    rows
}

/// The separator that gives the most named columns, then the most rows of one length, then the most columns.
fn sniff(text: &str) -> char {
    let fit = |separator: char| {
        let rows = rows(text, separator, 50);
        let columns = rows.first().map_or(0, |row| row.cells.len());
        let named = rows.first().map_or(0, |row| row.cells.iter().filter(|cell| Field::named(cell).is_some()).count());
        let alike = rows.iter().filter(|row| row.cells.len() == columns).count();
        let decimal = separator == ',' && every_comma_is_between_digits(text);
        if columns < 2 || decimal { (0, 0, 0) } else { (named, 100 * alike / rows.len().max(1), columns) }
    };
    // Of equal ones the last wins, which is the first of the list: the rarest inside a cell.
    let fitting = SEPARATORS.iter().rev().map(|(separator, _)| (fit(*separator), *separator)).filter(|(fit, _)| fit.2 > 0);
    fitting.max_by_key(|(fit, _)| *fit).map_or(',', |(_, separator)| separator)
}

/// Whether commas look like decimal marks alone, beside another separator.
fn every_comma_is_between_digits(text: &str) -> bool {
    let bytes = text.as_bytes();
    let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
    text.contains([';', '\t']) && bytes.iter().enumerate().all(|(at, byte)| *byte != b',' || (at > 0 && digit(at - 1) && digit(at + 1)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(text: &str) -> (char, Vec<(usize, Vec<String>)>) {
        let (rows, separator) = read("f", text, None).unwrap();
        (separator, rows.into_iter().map(|row| (row.number, row.cells)).collect())
    }

    #[test]
    fn the_separator_is_told_from_the_rows() {
        assert_eq!(cells("code,size\nR1-1,30 in").0, ',');
        assert_eq!(cells("code;size\nR1-1;30,5 cm").0, ';');
        assert_eq!(cells("code\tsize\nR1-1\t30, 36 in").0, '\t');
        assert_eq!(cells("1,1;2,2\n1,5;3,2").0, ';');
        assert_eq!(cells("R1-1\nR1-2").0, ',');
    }

    #[test]
    fn rows_are_numbered_as_a_spreadsheet_does() {
        let (_, rows) = cells("code,note\r\nR1-1,\"two\nlines\"\r\n\r\nR1-2,\"say \"\"so\"\"\"\r\n,,");
        let numbers: Vec<usize> = rows.iter().map(|(number, _)| *number).collect();
        assert_eq!(numbers, [1, 2, 4, 5]);
        assert_eq!(rows[1].1[1], "two\nlines");
        assert_eq!(rows[2].1[1], "say \"so\"");
    }

    #[test]
    fn an_inch_mark_inside_a_cell_opens_nothing() {
        let (_, rows) = cells("code\tsize\nR7-1\t12\" X 18\"\nR1-1\t30\"");
        assert_eq!(rows[1].1, ["R7-1", "12\" X 18\""]);
        assert_eq!(rows.len(), 3);
    }
}
