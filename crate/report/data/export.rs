//! The files of a folder of data.

use serde_json::Value;

use super::package::{PACKAGE, package};
use super::record::{RECORD, Record};
use super::schema::{SCHEMA, schema};

/// A file: its name and its bytes.
pub type File = (String, Vec<u8>);

fn pretty(tree: &Value) -> Vec<u8> {
    let mut text = serde_json::to_string_pretty(tree).unwrap_or_default();
    text.push('\n');
    text.into_bytes()
}

/// The files of a record: the tables, the record, its schema, and what describes them.
pub fn files(record: &Record) -> Vec<File> {
    let mut files: Vec<File> = record.sheets.iter().map(|sheet| (sheet.path(), sheet.csv().into_bytes())).collect();
    files.push((RECORD.to_owned(), record.json().into_bytes()));
    files.push((SCHEMA.to_owned(), pretty(&schema(&record.sheets))));
    let described = pretty(&package(record, &files));
    files.push((PACKAGE.to_owned(), described));
    files
}
