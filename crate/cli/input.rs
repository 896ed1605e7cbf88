//! Where an order comes from: a demo by name, a file, or standard input.

use std::collections::BTreeMap;
use std::io::Read;

use faceload_core::comparison::{CompareFault, Comparison, compare};
use faceload_core::factors::{FILES, Published, TableFault, Tables, Texts, published};
use faceload_core::load::Per;
use faceload_core::order::{Boundary, Document, Order, OrderFault, demo};
use faceload_report::link::{self, Linked};
use faceload_report::{cautions, words};
use serde_json::{Map, Number, Value};
use toml::de::{DeTable, DeValue};

use crate::{BoundaryArgument, Failure, PerArgument};

/// Named beside every help text.
pub const DEMOS_HELP: &str = "ORDER is a file (TOML, JSON, or rows as CSV), `-` for standard input, a link of the page, or a demo: stop, diamonds, diamonds-stock, blades, guide, custom, speed, county, metric; without one, stop.";

/// What every command about orders takes.
#[derive(clap::Args)]
pub struct OrderArguments {
    /// The order; several are added up.
    orders: Vec<String>,
    /// A folder of own tables: rows in place of or beside the built-in ones.
    #[arg(long, value_name = "DIR")]
    factors: Option<String>,
    /// Per what loads are given.
    #[arg(long, value_enum, default_value = "m2")]
    per: PerArgument,
    /// What is counted; without it, as the order says, else the face.
    #[arg(long, value_enum)]
    boundary: Option<BoundaryArgument>,
}

/// The tables built in, or with a folder's own rows.
pub fn tables(folder: Option<&str>) -> Result<Tables, Failure> {
    let failed = |faults: Vec<TableFault>| table_failure(&faults);
    let built_in = Tables::embedded().map_err(failed)?;
    published_values(&built_in)?;
    match folder {
        None => Ok(built_in),
        Some(folder) => built_in.with_own(folder, &own_texts(folder)?).map_err(failed),
    }
}

/// The published values behind the built-in tables.
pub fn published_values(tables: &Tables) -> Result<Vec<Published>, Failure> {
    published(tables).map_err(|faults| table_failure(&faults))
}

fn table_failure(faults: &[TableFault]) -> Failure {
    Failure::Table(faults.iter().map(ToString::to_string).collect())
}

/// The texts of a folder of own tables; a file that is not there has no rows.
fn own_texts(folder: &str) -> Result<Texts, Failure> {
    let mut texts = Texts::default();
    let mut found = 0;
    for name in FILES {
        let path = std::path::Path::new(folder).join(name);
        if !path.exists() {
            continue;
        }
        found += 1;
        let text = std::fs::read_to_string(&path).map_err(|error| {
            Failure::Table(vec![format!(
                "{folder}/{name}: cannot be read ({}) where a table was wanted; save it as UTF-8 text",
                reason(&error)
            )])
        })?;
        if let Some(place) = texts.of(name) {
            *place = text;
        }
    }
    if found == 0 {
        return Err(Failure::Table(vec![format!(
            "{folder}: no table in it where one of {} was wanted; give the folder that holds them",
            words::join(&FILES)
        )]));
    }
    Ok(texts)
}

/// Reads the orders, adds them up and compares their alternatives.
pub fn compared(arguments: &OrderArguments) -> Result<(Tables, Comparison), Failure> {
    let tables = tables(arguments.factors.as_deref())?;
    let comparison = compared_with(&tables, &arguments.orders, arguments.per.per(), arguments.boundary.map(BoundaryArgument::boundary))?;
    Ok((tables, comparison))
}

/// The same on given tables.
pub fn compared_with(tables: &Tables, names: &[String], per: Per, boundary: Option<Boundary>) -> Result<Comparison, Failure> {
    let first = vec![demo::DEMOS[0].name.to_owned()];
    let names = if names.is_empty() { &first } else { names };
    let mut sum: Option<Order> = None;
    for name in names {
        let order = order(tables, name)?;
        sum = Some(match sum {
            None => order,
            Some(before) => before.joined_by(order).map_err(|fault| Failure::Input(vec![fault.to_string()]))?,
        });
    }
    let Some(order) = sum else { return Err(Failure::Input(Vec::new())) };
    let boundary = boundary.unwrap_or(order.boundary);
    compare(tables, &order, per, boundary).map_err(|fault| {
        let words = cautions::fault(&fault);
        match fault {
            CompareFault::Table(_) | CompareFault::Mass(_) => Failure::Table(words),
            CompareFault::Order(_) | CompareFault::NothingMade(_) => Failure::Input(words),
        }
    })
}

/// The place of an alternative among the models, by its id.
pub fn alternative(comparison: &Comparison, id: &str) -> Result<usize, Failure> {
    comparison.models.iter().position(|model| model.alternative.id == id).ok_or_else(|| {
        let ids: Vec<String> = comparison.models.iter().map(|model| format!("`{}`", model.alternative.id)).collect();
        let ids: Vec<&str> = ids.iter().map(String::as_str).collect();
        Failure::Input(vec![format!("`{id}` where the id of an alternative was wanted; this order has {}", words::join(&ids))])
    })
}

/// An order by its name, understood; of a link also what was moved by hand.
pub fn order(tables: &Tables, name: &str) -> Result<Order, Failure> {
    let refused = |faults: Vec<OrderFault>| Failure::Input(cautions::faults(&faults));
    let is_link = name.contains(link::BEGINS) && !std::path::Path::new(name).exists();
    let (document, moved) = if is_link { linked(tables, name)? } else { (document(name, tables)?, Vec::new()) };
    Order::read(document, tables).and_then(|order| order.moved_by_hand(moved, tables)).map_err(refused)
}

/// The order in a link; what it leaves out, and other tables, are said on standard error.
fn linked(tables: &Tables, address: &str) -> Result<(Document, Vec<(String, f64)>), Failure> {
    let mut linked = Linked::read(address).map_err(|fault| Failure::Input(vec![fault.to_string()]))?;
    for words in linked.told(tables.fingerprint.short()) {
        eprintln!("{words}");
    }
    // What the link counts is what the order counts, unless the order says so itself.
    if let Some(fields) = linked.order.as_object_mut() {
        fields.entry("boundary").or_insert(Value::String(linked.boundary));
    }
    let text = serde_json::to_string_pretty(&linked.order).unwrap_or_default();
    let document = Document::json("the order in the link", &text).map_err(|fault| Failure::Input(vec![fault.to_string()]))?;
    Ok((document, linked.moved))
}

fn document(name: &str, tables: &Tables) -> Result<Document, Failure> {
    let read = |fault: OrderFault| Failure::Input(vec![fault.to_string()]);
    if let Some(demo) = demo::find(name) {
        return Document::json(demo.name, demo.text).map_err(read);
    }
    if [".csv", ".tsv", ".tab"].iter().any(|ending| name.to_lowercase().ends_with(ending)) {
        return crate::rows::document(name, tables);
    }
    let text = text_of(name)?;
    if text.len() > Document::LONGEST {
        return Err(read(Document::too_long(name, text.len())));
    }
    let is_json =
        name.ends_with(".json") || (!name.ends_with(".toml") && text.trim_start_matches('\u{feff}').trim_start().starts_with('{'));
    if is_json { Document::json(name, &text) } else { toml_document(name, &text) }.map_err(read)
}

/// The bytes of a file, or of standard input.
pub fn bytes_of(name: &str) -> Result<Vec<u8>, Failure> {
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
    Ok(bytes)
}

/// Writes a result to a file.
pub fn write(file: &str, text: &str) -> Result<(), Failure> {
    std::fs::write(file, text).map_err(|error| {
        Failure::Input(vec![format!(
            "{file}: cannot be written ({}) where a file for the result was wanted; give another place",
            reason(&error)
        )])
    })
}

fn text_of(name: &str) -> Result<String, Failure> {
    let bytes = bytes_of(name)?;
    String::from_utf8(bytes).map_err(|error| {
        let line = error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|byte| **byte == b'\n').count() + 1;
        Failure::Input(vec![format!("{name}, line {line}: bytes that are not UTF-8 where text was wanted; save the file as UTF-8")])
    })
}

/// The reason without the system's own number.
pub fn reason(error: &std::io::Error) -> String {
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
    Ok(Document::with_lines(name, value, lines))
}

fn table_value(table: &DeTable<'_>, path: &str, line_at: &dyn Fn(usize) -> usize, lines: &mut BTreeMap<String, usize>) -> Value {
    let mut map = Map::new();
    // As they are written.
    let mut entries: Vec<_> = table.iter().collect();
    entries.sort_by_key(|(key, _)| key.span().start);
    for (key, value) in entries {
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
