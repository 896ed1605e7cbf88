//! The rows that are listed, as CSV with the reason behind each: mended, they can be taken again.

use super::Rows;

/// The rows as CSV (RFC 4180).
pub fn left_out(rows: &Rows) -> String {
    let width = rows.columns.len();
    let record = |cells: &mut dyn Iterator<Item = String>| cells.collect::<Vec<_>>().join(",") + "\r\n";
    let mut text = String::new();
    if rows.header {
        let names = rows.columns.iter().map(|column| column.name.as_str()).chain(["reason"]);
        text.push_str(&record(&mut names.map(field)));
    }
    for (number, cells, faults) in &rows.listed {
        let reasons: Vec<String> =
            faults.iter().map(|place| &rows.faults[*place]).map(|fault| format!("{}: {}", fault.place(), fault.words())).collect();
        let reason = format!("row {number}: {}", reasons.join(" | "));
        let padded = (0..width).map(|place| cells.get(place).map_or("", String::as_str)).chain([reason.as_str()]);
        text.push_str(&record(&mut padded.map(field)));
    }
    text
}

/// A cell in quotes; one that a spreadsheet would take for a formula gets an apostrophe, which reading takes off again.
fn field(cell: &str) -> String {
    let is_number = cell.trim().parse::<f64>().is_ok();
    let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']) && !is_number;
    format!("\"{}{}\"", if formula { "'" } else { "" }, cell.replace('"', "\"\""))
}
