//! The faults that a reader may find in a field.

use serde_json::{Value, json};

use super::source::{Field, Reader};

/// A fault: what is wrong, and a value that is so.
pub struct Fault {
    pub kind: &'static str,
    pub value: Value,
}

/// Fields read as a text that take only some.
const CLOSED: [&str; 9] = ["schema_version", "code", "base", "blank", "electricity", "heat", "freight", "vehicle", "value"];

/// The faults of a field, by its reader.
pub fn faults(field: &Field) -> Vec<Fault> {
    let mut all = vec![("a list", json!(["a", "b"])), ("a table", json!({"a": 1}))];
    match &field.reader {
        Reader::Word => all.extend([("an unknown word", json!("furlong")), ("a number", json!(7))]),
        Reader::Text => {
            if CLOSED.contains(&field.key.as_str()) {
                all.push(("an unknown word", json!("furlong")));
            }
        }
        Reader::Label => all.extend([("a text too long", json!("long ".repeat(41))), ("a line break", json!("one\ntwo"))]),
        Reader::Length => all.extend([
            ("no unit", json!("20")),
            ("a number", json!(20)),
            ("another unit", json!("20 kg")),
            ("a comma", json!("1,5 in")),
            ("too large", json!("99 km")),
            ("below nothing", json!("-1 in")),
            ("a text", json!("wide")),
            ("no number", json!("nan in")),
        ]),
        Reader::Whole => all.extend([
            ("zero", json!(0)),
            ("below nothing", json!(-3)),
            ("a fraction", json!(1.5)),
            ("a comma", json!("1,000")),
            ("a text", json!("many")),
            ("too large", json!(4_000_000_000_u64)),
        ]),
        Reader::Flag => all.extend([("a text", json!("yes")), ("a number", json!(1))]),
        Reader::Measured(unit) => all.extend([
            ("no unit", json!("12")),
            ("a number", json!(12)),
            ("another unit", json!("12 kg")),
            ("a comma", json!(format!("1,5 {unit}"))),
            ("too large", json!(format!("999999 {unit}"))),
            ("below nothing", json!(format!("-1 {unit}"))),
            ("a text", json!("far")),
        ]),
        // A list of tables: one that holds none, and what is no list.
        Reader::List => {
            all = vec![
                ("an empty list", json!([])),
                ("a table", json!({"a": 1})),
                ("a text", json!("none")),
                ("a list of texts", json!(["a"])),
            ]
        }
        // A table of fields, read by itself.
        Reader::Inside => {
            all = vec![("a text", json!("none")), ("a number", json!(7)), ("a list", json!(["a"])), ("a table", json!({"furlong": 1}))]
        }
    }
    all.into_iter().map(|(kind, value)| Fault { kind, value }).collect()
}
