//! Rows of a spreadsheet: whatever comes, nothing panics, and no row is lost: it is in a line, or listed, or empty.

use std::collections::BTreeSet;

use faceload_core::order::rows::{Field, Rows, Wanted, left_out, order};
use proptest::prelude::*;

use super::cases;
use crate::shop::{self, tables};

/// A cell as an inventory may hold it, or none that makes sense.
fn cell() -> impl Strategy<Value = String> {
    let written = [
        "R1-1",
        "R6-1L",
        "D3-1",
        "W11-2",
        "TH-9",
        "N/A",
        "",
        " ",
        "12\" X 18\"",
        "30\"",
        "6\" X 30\"/ 6\" X 30\"",
        "8\" X 36'",
        "24x30",
        "750 mm",
        "1,200",
        "3",
        "0",
        "rectangle",
        "octagon",
        "red 60 %; white 40 %",
        "white",
        "prismatic",
        "aluminium 0.080 in",
        "yes",
        "Heron St",
        "=1+1",
        "<b>",
        "'-3",
        "two\nlines",
        "a, b",
        "say \"so\"",
    ];
    prop_oneof![8 => prop::sample::select(written.to_vec()).prop_map(str::to_owned), 1 => ".{0,12}", 1 => "[0-9/x .,'\"-]{0,10}"]
}

fn header() -> impl Strategy<Value = String> {
    let names = [
        "code",
        "MUTCD",
        "size",
        "width (in)",
        "height",
        "qty",
        "designs",
        "Sign Text",
        "colours",
        "shape",
        "label",
        "sheeting",
        "blank",
        "X",
        "",
    ];
    prop::sample::select(names.to_vec()).prop_map(str::to_owned)
}

/// Columns by name and rows of cells.
fn grid() -> impl Strategy<Value = Vec<Vec<String>>> {
    (1..7_usize).prop_flat_map(|width| {
        (prop::collection::vec(header(), width), prop::collection::vec(prop::collection::vec(cell(), width), 1..12))
            .prop_map(|(header, rows)| std::iter::once(header).chain(rows).collect())
    })
}

fn text_of(grid: &[Vec<String>]) -> String {
    let line = |cells: &Vec<String>| cells.iter().map(|cell| format!("\"{}\"", cell.replace('"', "\"\""))).collect::<Vec<_>>().join(",");
    grid.iter().map(line).collect::<Vec<_>>().join("\r\n")
}

fn wanted() -> impl Strategy<Value = Wanted> {
    let field = prop::sample::select(Field::all().collect::<Vec<_>>());
    let columns = prop::collection::btree_map(0..8_usize, prop::option::of(field), 0..3);
    (columns, prop::option::of(any::<bool>()), any::<bool>(), any::<bool>()).prop_map(|(columns, header, comma, defaults)| Wanted {
        columns,
        header,
        decimal_comma: comma,
        where_missing: if defaults {
            [(Field::Shape, "rectangle".to_owned()), (Field::Colours, "red 60 %; white 40 %".to_owned())].into()
        } else {
            [].into()
        },
        ..Wanted::default()
    })
}

/// Every row is in a line or listed, never both; what is in lines is an order.
fn nothing_is_lost(rows: &Rows) -> Result<(), TestCaseError> {
    let taken: BTreeSet<usize> = rows.from.iter().flatten().copied().collect();
    let listed: BTreeSet<usize> = rows.listed.iter().map(|(number, ..)| *number).collect();
    prop_assert!(taken.is_disjoint(&listed), "{taken:?} {listed:?}");
    prop_assert_eq!(taken.len() + listed.len(), rows.rows);
    prop_assert_eq!(listed.len(), rows.listed.len());
    for (number, _, faults) in &rows.listed {
        prop_assert!(!faults.is_empty(), "row {} is listed without a reason", number);
        prop_assert!(faults.iter().all(|place| rows.faults[*place].rows.contains(number)));
    }
    if !rows.lines.is_empty() {
        let read = shop::read(&order("rows", &rows.lines, None).to_string());
        prop_assert!(read.is_ok(), "{:?}", read.err());
        let signs: u64 = read.map(|order| order.lines.iter().map(|line| u64::from(line.quantity)).sum()).unwrap_or(0);
        prop_assert_eq!(signs, rows.signs);
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn any_bytes_are_rows_or_one_fault(bytes in prop::collection::vec(any::<u8>(), 0..300), wanted in wanted()) {
        if let Ok(rows) = Rows::read("f.csv", &bytes, &wanted, tables()) {
            nothing_is_lost(&rows)?;
        }
    }

    #[test]
    fn no_row_of_an_inventory_is_lost(grid in grid(), wanted in wanted()) {
        if let Ok(rows) = Rows::read("f.csv", text_of(&grid).as_bytes(), &wanted, tables()) {
            nothing_is_lost(&rows)?;
            prop_assert_eq!(rows.rows + rows.empty, grid.len() - usize::from(rows.header));
        }
    }

    #[test]
    fn rows_left_out_are_left_out_again_by_the_same_reading(grid in grid()) {
        let wanted = Wanted { header: Some(true), separator: Some(','), ..Wanted::default() };
        let Ok(rows) = Rows::read("f.csv", text_of(&grid).as_bytes(), &wanted, tables()) else { return Ok(()) };
        if rows.listed.is_empty() { return Ok(()) }
        let mut same = wanted.clone();
        same.columns = rows.columns.iter().enumerate().map(|(place, column)| (place, column.field)).collect();
        let again = Rows::read("rest.csv", left_out(&rows).as_bytes(), &same, tables()).map_err(|fault| TestCaseError::fail(fault.to_string()))?;
        prop_assert_eq!(again.listed.len(), rows.listed.len(), "{}", left_out(&rows));
    }

    #[test]
    fn the_order_of_rows_does_not_change_what_is_made(grid in grid(), turn in 0..12_usize) {
        let mut turned = grid.clone();
        let rows = turned.len() - 1;
        turned[1..].rotate_left(turn % rows);
        let wanted = Wanted { header: Some(true), ..Wanted::default() };
        let columns = |text: &str| Rows::read("f.csv", text.as_bytes(), &wanted, tables());
        let Ok(first) = columns(&text_of(&grid)) else { return Ok(()) };
        // Columns are taken by their first cells where no name says it: take them alike.
        let alike = Wanted {
            columns: first.columns.iter().enumerate().map(|(place, column)| (place, column.field)).collect(),
            separator: Some(first.separator),
            ..wanted.clone()
        };
        let both = [&grid, &turned].map(|grid| Rows::read("f.csv", text_of(grid).as_bytes(), &alike, tables()));
        let lines = |rows: &Rows| { let mut lines: Vec<String> = rows.lines.iter().map(ToString::to_string).collect(); lines.sort(); lines };
        if let [Ok(a), Ok(b)] = &both {
            prop_assert_eq!(a.signs, b.signs);
            prop_assert_eq!(lines(a), lines(b));
        }
    }
}
