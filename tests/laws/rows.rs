//! Rows of a spreadsheet: whatever comes, nothing panics, and no row is lost: it is in a line, or listed, or empty.

use std::collections::BTreeSet;

use faceload_core::order::rows::{Field, Rows, Wanted, left_out, order};
use proptest::prelude::*;
use proptest::strategy::ValueTree;

use super::cases;
use crate::shop::{self, tables};

/// Columns by name, with cells that fit under it.
const COLUMNS: [(&str, &[&str]); 12] = [
    ("code", &["R1-1", "R6-1L", "D3-1", "W11-2", "R7-1", "r2-1", "TH-9", "N/A", "R1-1/R1-2"]),
    ("Sign size", &["12\" X 18\"", "30\"", "24 x 30 in", "6\" X 30\"/ 6\" X 30\"", "750 mm", "8\" X 36'", "24x30", "18 by 12 inches"]),
    ("qty", &["1", "3", "12", "", "0", "1,200"]),
    ("designs", &["", "1", "2"]),
    ("Sign Text", &["", "Heron St", "Tern Ave", "30"]),
    ("colours", &["", "red 60 %; white 40 %", "white", "red, white"]),
    ("shape", &["", "rectangle", "round", "Octagon", "hexagon"]),
    ("label", &["", "by the quay", "=1+1", "<b>", "two\nlines", "'-3", "say \"so\""]),
    ("sheeting", &["", "Prismatic", "beaded"]),
    ("blank", &["", "aluminum 0.080 in", "none", "steel"]),
    ("stock", &["", "yes", "no"]),
    ("X", &["", "-12.5", "a, b"]),
];

/// What nobody expects in a cell.
fn odd() -> impl Strategy<Value = String> {
    prop_oneof![
        ".{0,12}",
        "[0-9/x .,'\"-]{0,10}",
        prop::sample::select(vec![" ", "1e999", "NaN", "\u{feff}", "\""]).prop_map(str::to_owned)
    ]
}

/// Columns by name and rows of cells; most have a code and a size.
fn grid() -> impl Strategy<Value = Vec<Vec<String>>> {
    let more = prop::collection::vec(0..COLUMNS.len(), 0..5);
    (prop::bool::weighted(0.9), more).prop_flat_map(|(usual, more)| {
        let columns: Vec<usize> = if usual { [0, 1].into_iter().chain(more).collect() } else { [7].into_iter().chain(more).collect() };
        let names: Vec<String> = columns.iter().map(|column| COLUMNS[*column].0.to_owned()).collect();
        let cells: Vec<_> = columns
            .iter()
            .map(|column| prop_oneof![20 => prop::sample::select(COLUMNS[*column].1.to_vec()).prop_map(str::to_owned), 1 => odd()])
            .collect();
        prop::collection::vec(cells, 1..12).prop_map(move |rows| std::iter::once(names.clone()).chain(rows).collect())
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

#[test]
fn the_inventories_made_up_hold_rows_that_are_taken_and_rows_that_are_not() {
    let mut runner = proptest::test_runner::TestRunner::new(cases());
    let (mut taken, mut listed) = (0, 0);
    for _ in 0..200 {
        let grid = grid().new_tree(&mut runner).expect("a grid").current();
        if let Ok(rows) = Rows::read("f.csv", text_of(&grid).as_bytes(), &Wanted::default(), tables()) {
            taken += rows.rows - rows.listed.len();
            listed += rows.listed.len();
        }
    }
    assert!(taken > 20 && listed > 20, "{taken} taken, {listed} listed");
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
