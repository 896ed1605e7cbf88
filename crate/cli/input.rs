//! Where an order comes from: a demo by name, a file, or standard input.

use std::collections::BTreeMap;
use std::io::Read;

use faceload_core::comparison::{CompareFault, Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::Per;
use faceload_core::order::{Boundary, Document, Order, OrderFault, demo};
use faceload_report::words;
use serde_json::{Map, Number, Value};
use toml::de::{DeTable, DeValue};

use crate::Failure;

/// Named beside every help text.
pub const DEMOS_HELP: &str =
    "ORDER is a file (TOML or JSON), `-` for standard input, or a demo: stop, diamonds, diamonds-stock; without one, stop.";

/// The tables built in.
pub fn tables() -> Result<Tables, Failure> {
    Tables::embedded().map_err(|faults| Failure::Table(faults.iter().map(ToString::to_string).collect()))
}

/// Reads an order and compares its alternatives.
pub fn compared(tables: &Tables, order: Option<&str>, per: Per, boundary: Option<Boundary>) -> Result<Comparison, Failure> {
    let document = document(order.unwrap_or(demo::DEMOS[0].name))?;
    let order = Order::read(document, tables).map_err(|faults| Failure::Input(faults.iter().map(ToString::to_string).collect()))?;
    let boundary = boundary.unwrap_or(order.boundary);
    compare(tables, &order, per, boundary).map_err(|fault| {
        let words = words::fault(&fault);
        match fault {
            CompareFault::Table(_) | CompareFault::Mass(_) => Failure::Table(words),
            CompareFault::Order(_) | CompareFault::NothingMade(_) => Failure::Input(words),
        }
    })
}

fn document(name: &str) -> Result<Document, Failure> {
    let read = |fault: OrderFault| Failure::Input(vec![fault.to_string()]);
    if let Some(demo) = demo::find(name) {
        return Document::json(demo.name, demo.text).map_err(read);
    }
    let text = text_of(name)?;
    if text.len() > Document::LONGEST {
        return Err(read(Document::too_long(name, text.len())));
    }
    let is_json =
        name.ends_with(".json") || (!name.ends_with(".toml") && text.trim_start_matches('\u{feff}').trim_start().starts_with('{'));
    if is_json { Document::json(name, &text) } else { toml_document(name, &text) }.map_err(read)
}

fn text_of(name: &str) -> Result<String, Failure> {
    let mut bytes = Vec::new();
    let read =
        if name == "-" { std::io::stdin().read_to_end(&mut bytes).map(|_| ()) } else { std::fs::read(name).map(|read| bytes = read) };
    if let Err(error) = read {
        let demos: Vec<&str> = demo::DEMOS.iter().map(|demo| demo.name).collect();
        return Err(Failure::Input(vec![format!(
            "{name}: cannot be read ({}) where an order file was wanted; give a file, or a demo: {}",
            reason(&error),
            words::join(&demos)
        )]));
    }
    String::from_utf8(bytes).map_err(|error| {
        let line = error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|byte| **byte == b'\n').count() + 1;
        Failure::Input(vec![format!("{name}, line {line}: bytes that are not UTF-8 where text was wanted; save the file as UTF-8")])
    })
}

/// The reason without the system's own number.
fn reason(error: &std::io::Error) -> String {
    match error.kind() {
        std::io::ErrorKind::NotFound => "no such file".to_owned(),
        kind => kind.to_string(),
    }
}

/// A TOML text as the same tree as JSON, with the line of each field.
fn toml_document(name: &str, text: &str) -> Result<Document, OrderFault> {
    let text = text.trim_start_matches('\u{feff}');
    let line_at = |at: usize| text.as_bytes()[..at.min(text.len())].iter().filter(|byte| **byte == b'\n').count() + 1;
    let table = DeTable::parse(text).map_err(|error| OrderFault {
        file: name.to_owned(),
        line: error.span().map(|span| line_at(span.start)),
        field: String::new(),
        came: format!("text that is not TOML ({})", error.message()),
        wanted: "an order as TOML".to_owned(),
        help: "mend the text at that line".to_owned(),
    })?;
    let mut lines = BTreeMap::new();
    let value = table_value(table.get_ref(), "", &line_at, &mut lines);
    Ok(Document { name: name.to_owned(), value, lines })
}

fn table_value(table: &DeTable<'_>, path: &str, line_at: &dyn Fn(usize) -> usize, lines: &mut BTreeMap<String, usize>) -> Value {
    let mut map = Map::new();
    for (key, value) in table {
        let path = if path.is_empty() { key.get_ref().to_string() } else { format!("{path}.{}", key.get_ref()) };
        lines.insert(path.clone(), line_at(key.span().start));
        map.insert(key.get_ref().to_string(), value_of(value.get_ref(), &path, line_at, lines));
    }
    Value::Object(map)
}

fn value_of(value: &DeValue<'_>, path: &str, line_at: &dyn Fn(usize) -> usize, lines: &mut BTreeMap<String, usize>) -> Value {
    match value {
        DeValue::String(text) => Value::String(text.to_string()),
        // Numbers that JSON cannot hold, such as `nan`, stay as they are written and are refused by their field.
        DeValue::Integer(number) => number_of(&number.to_string()),
        DeValue::Float(number) => number_of(&number.to_string()),
        DeValue::Boolean(flag) => Value::Bool(*flag),
        DeValue::Datetime(date) => Value::String(date.to_string()),
        DeValue::Array(list) => {
            let each = list.iter().enumerate().map(|(index, item)| {
                let path = format!("{path}[{}]", index + 1);
                lines.insert(path.clone(), line_at(item.span().start));
                value_of(item.get_ref(), &path, line_at, lines)
            });
            Value::Array(each.collect())
        }
        DeValue::Table(table) => table_value(table, path, line_at, lines),
    }
}

fn number_of(text: &str) -> Value {
    serde_json::from_str::<Number>(text).map_or_else(|_| Value::String(text.to_owned()), Value::Number)
}
