//! The description of a folder of data: an open table package (Data Package, version 2).

use serde_json::{Value, json};

use super::canonical::sha_256;
use super::export::File;
use super::manifest::Manifest;
use super::record::{RECORD, Record};
use super::schema::SCHEMA;
use super::sheet::Sheet;

/// The name of its file.
pub(super) const PACKAGE: &str = "datapackage.json";

/// How a text cell is kept from being taken for a formula, for whoever reads the CSV.
const GUARD: &str = "A text cell that begins with = + - @, a tab, a carriage return or a line feed has one apostrophe in front of it in the CSV, \
so that a spreadsheet does not take it for a formula; data.json has the text as it is. Numbers are never changed.";

fn schema(sheet: &Sheet) -> Value {
    let field = |column: &super::sheet::Column| {
        let mut field = json!({ "name": column.name, "type": column.kind.name(), "description": column.says });
        if column.required {
            field["constraints"] = json!({ "required": true });
        }
        field
    };
    let fields: Vec<Value> = sheet.columns.iter().map(field).collect();
    let mut schema = json!({
        "$schema": "https://datapackage.org/profiles/2.0/tableschema.json",
        "fields": fields,
        "primaryKey": sheet.key,
        "missingValues": [""],
    });
    if sheet.name == "inputs" {
        schema["foreignKeys"] = json!([{ "fields": ["source"], "reference": { "resource": "sources", "fields": ["key"] } }]);
    }
    schema
}

fn table(sheet: &Sheet, bytes: &[u8]) -> Value {
    json!({
        "name": sheet.name,
        "type": "table",
        "path": sheet.path(),
        "description": sheet.says,
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "bytes": bytes.len(),
        "hash": format!("sha256:{}", sha_256(bytes)),
        "dialect": { "delimiter": ",", "lineTerminator": "\r\n", "quoteChar": "\"", "doubleQuote": true, "header": true },
        "schema": schema(sheet),
    })
}

/// The description of these files.
pub(super) fn package(record: &Record, files: &[File]) -> Value {
    let resources: Vec<Value> = files
        .iter()
        .filter_map(|(name, bytes)| {
            if let Some(sheet) = record.sheets.iter().find(|sheet| sheet.path() == *name) {
                return Some(table(sheet, bytes));
            }
            let (resource, says) = match name.as_str() {
                RECORD => {
                    ("data", "Everything in one text: what the result was made from, the result, the rows of every table, and hashes.")
                }
                SCHEMA => ("data-form", "JSON Schema of data.json."),
                _ => return None,
            };
            Some(json!({
                "name": resource,
                "path": name,
                "description": says,
                "format": "json",
                "mediatype": "application/json",
                "encoding": "utf-8",
                "bytes": bytes.len(),
                "hash": format!("sha256:{}", sha_256(bytes)),
            }))
        })
        .collect();
    let name = record.tree["result"]["order"].as_str().filter(|name| !name.is_empty()).unwrap_or("an order of sign faces");
    json!({
        "$schema": "https://datapackage.org/profiles/2.0/datapackage.json",
        "name": "faceload-comparison",
        "title": format!("Comparison of sign faces: {name}"),
        "description": format!("{} {GUARD}", crate::claims::standing_words()),
        "version": Manifest::VERSION,
        "licenses": [{ "name": "MIT", "title": "MIT License, for the compilation; each source keeps the licence named in sources.csv" }],
        "resources": resources,
    })
}
