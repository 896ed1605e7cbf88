//! A result as data: CSV, its description, its schema; and verifying, which must find every change.

mod edits;
mod fits;
mod tables;
mod verified;

use faceload_core::analysis::Settings;
use faceload_core::comparison::{Comparison, compare};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::Boundary;
use faceload_report::data::{Looked, Record, drawn};

use crate::shop::{self, tables};

/// What is looked at where nothing is asked.
const LOOKED: Looked = Looked { pair: None, indicator: Indicator::Co2e };

fn compared(text: &str) -> Comparison {
    compare(tables(), &shop::order(text), Per::M2, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"))
}

/// The record of an order with a few draws.
fn record(text: &str) -> Record {
    let comparison = compared(text);
    let draws = drawn(&comparison, LOOKED, Settings { number: 100, ..Settings::default() }, |_| true);
    Record::of(tables(), &comparison, &draws, LOOKED)
}

/// An order with texts that a spreadsheet could take for formulas, and a value of the shop's own.
const ODD: &str = r#"{"schema_version":1,"name":"=1+1, Tern Harbour","site":{"delivery":"60 km"},"line":[
{"label":"=HYPERLINK(\"x\")","code":"R1-1","size":"30 in","quantity":100},
{"label":"+2","shape":"rectangle","size":"24 x 30 in","quantity":12,"designs":2,"colours":{"blue":"60 %","white":"40 %"}},
{"label":"-3","code":"R1-1","size":"36 in","quantity":7},{"label":"@4, \"quoted\"","code":"R1-1","size":"24 in","quantity":5}],
"alternative":[{"id":"=film","route":"overlay-film","otherwise":"digital"},
{"id":"digital","route":"digital-printing","ink":"uv","with":{"printer.power.uv":{"value":"1.9 kW","note":"-meter, week 14","grade":"own"}}}]}"#;
