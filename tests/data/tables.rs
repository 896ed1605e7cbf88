//! The tables of the data: RFC 4180, numbers in full precision, texts that are no formulas, the same bytes on every run.

use faceload_core::order::demo;
use faceload_report::data::files;
use serde_json::Value;

use super::{ODD, record};

/// The cells of a file, its first line too.
fn cells(bytes: &[u8]) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(bytes);
    reader.records().map(|row| row.expect("a row of the same length").iter().map(str::to_owned).collect()).collect()
}

#[test]
fn every_cell_of_the_csv_is_that_of_the_json() {
    for text in demo::DEMOS.iter().map(|demo| demo.text).chain([ODD]) {
        let record = record(text);
        let mut numbers = 0;
        for (name, bytes) in files(&record).into_iter().filter(|(name, _)| name.ends_with(".csv")) {
            let rows = cells(&bytes);
            let stem = name.trim_end_matches(".csv");
            let json = record.tree["rows"][stem].as_array().unwrap_or_else(|| panic!("{name}: no rows"));
            assert_eq!(rows.len(), json.len() + 1, "{name}");
            for (row, json) in rows[1..].iter().zip(json) {
                for (column, cell) in rows[0].iter().zip(row) {
                    match &json[column] {
                        Value::Null => assert_eq!(cell, "", "{name}, {column}"),
                        Value::Number(number) => {
                            numbers += 1;
                            let (written, kept) = (cell.parse::<f64>().expect("a number"), number.as_f64().expect("a number"));
                            assert_eq!(written.to_bits(), kept.to_bits(), "{name}, {column}");
                        }
                        Value::String(words) => {
                            let formula = words.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']);
                            assert_eq!(*cell, if formula { format!("'{words}") } else { words.clone() }, "{name}, {column}");
                        }
                        other => assert_eq!(*cell, other.to_string(), "{name}, {column}"),
                    }
                }
            }
        }
        assert!(numbers > 100, "{numbers}");
    }
}

#[test]
fn lines_end_as_rfc_4180_has_it_and_no_text_begins_a_formula() {
    let mut guarded = 0;
    for (name, bytes) in files(&record(ODD)).into_iter().filter(|(name, _)| name.ends_with(".csv")) {
        let text = String::from_utf8(bytes).expect("UTF-8");
        assert!(text.ends_with("\r\n") && text.matches('\n').count() == text.matches("\r\n").count(), "{name}");
        for (at, row) in cells(text.as_bytes()).iter().enumerate() {
            for cell in row {
                let number = cell.parse::<f64>().is_ok();
                assert!(number || !cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']), "{name}, line {}: {cell}", at + 1);
                guarded += usize::from(cell.starts_with('\''));
            }
        }
    }
    assert!(guarded >= 8, "{guarded} cells begin like a formula in this order");
}

#[test]
fn the_same_order_gives_the_same_bytes_on_every_run() {
    for demo in [demo::DEMOS[0], demo::DEMOS[3]] {
        assert!(files(&record(demo.text)) == files(&record(demo.text)), "{}", demo.name);
    }
}

#[test]
fn no_file_says_where_on_a_machine_the_order_lay() {
    let order = super::shop::order(ODD);
    let mut document = order.document.as_ref().clone();
    document.name = "/some/folder/of/a/person/spring.json".to_owned();
    // An order that names itself is the same order in whatever file it lies.
    document.value.as_object_mut().expect("an order").shift_remove("name");
    let order = faceload_core::order::Order::read(document, super::tables()).expect("the same order");
    let comparison =
        faceload_core::comparison::compare(super::tables(), &order, super::Per::M2, super::Boundary::Face).expect("a comparison");
    let draws = super::drawn(&comparison, super::LOOKED, super::Settings { number: 100, ..super::Settings::default() }, |_| true);
    let record = super::Record::of(super::tables(), &comparison, &draws, super::LOOKED);
    for (name, bytes) in files(&record) {
        assert!(!String::from_utf8_lossy(&bytes).contains("/some/folder"), "{name}");
    }
    assert_eq!(record.tree["made_from"]["orders"][0]["name"], "spring.json");
}
