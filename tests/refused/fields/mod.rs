//! Every field of an order with every fault its reader may find: fields and readers are taken from
//! the source of `crate/core/order`, so that a new field is tried without a new file.
//!
//! `messages.expected` holds what is said to each; `FACELOAD_BLESS=1` writes it anew.

mod faults;
mod source;

use std::collections::BTreeMap;
use std::path::Path;

use serde_json::{Value, json};

use crate::shop;
use faceload_core::comparison::{CompareFault, compare};
use faceload_core::load::Per;
use faceload_core::order::Boundary;
use faults::{Fault, faults};
use source::{Field, Table, fields};

/// Pairs of field and fault that are no fault, each with its reason.
const TAKEN: [(&str, &str, &str); 1] = [("line.characters", "zero", "a face may show no characters")];

/// An order in which a field can stand, with the field at fault.
fn with(field: &Field, value: &Value) -> String {
    let mut order = json!({
        "schema_version": 1,
        "line": [{"shape": "square", "size": "20 in", "quantity": 6, "colours": {"red": "50 %"}}],
        "alternative": [{"id": "ours", "route": "screen-printing"}],
    });
    let sides = json!({"opening": "73 um", "thread": "40 um", "fabric": "59 um"});
    let own = json!({"layout.leader": {"value": "0.5 m", "note": "by the roll", "grade": "own"}});
    if ["width", "height"].contains(&field.key.as_str()) {
        let line = order["line"][0].as_object_mut().expect("a line");
        line.remove("size");
        line.insert("width".to_owned(), json!("20 in"));
        line.insert("height".to_owned(), json!("20 in"));
        line.insert("shape".to_owned(), json!("rectangle"));
    }
    if field.key == "drying" || field.key == "mesh" {
        order["alternative"][0]["ink"] = json!("solvent");
    }
    if field.key == "overlay" {
        order["alternative"][0]["route"] = json!("digital-printing");
    }
    let table = match field.table {
        Table::Top => &mut order,
        Table::Site => {
            order["site"] = json!({});
            &mut order["site"]
        }
        Table::Line => &mut order["line"][0],
        Table::Not => {
            order["line"][0]["not"] = json!({});
            &mut order["line"][0]["not"]
        }
        Table::Alternative => &mut order["alternative"][0],
        Table::Mesh => {
            order["alternative"][0]["mesh"] = sides;
            &mut order["alternative"][0]["mesh"]
        }
        Table::With => {
            order["alternative"][0]["with"] = own;
            &mut order["alternative"][0]["with"]["layout.leader"]
        }
    };
    table[field.key.as_str()] = value.clone();
    order.to_string()
}

/// What is said to a field at fault, or nothing where the order is taken.
fn said(field: &Field, fault: &Fault) -> Vec<String> {
    let faults = match shop::read(&with(field, &fault.value)) {
        Err(faults) => faults,
        // A value in place of a row is read with the row, once the alternatives are compared.
        Ok(order) => match compare(shop::tables(), &order, Per::Order, Boundary::Face) {
            Err(CompareFault::Order(faults)) => faults,
            _ => Vec::new(),
        },
    };
    faults.iter().map(|fault| fault.to_string().replace("order.json, line 1, ", "")).collect()
}

/// What is said to every pair.
fn all() -> BTreeMap<(String, &'static str), (String, Vec<String>)> {
    let pairs = fields().into_iter().flat_map(|field| faults(&field).into_iter().map(move |fault| (field.clone(), fault)));
    pairs.map(|(field, fault)| ((field.name(), fault.kind), (fault.value.to_string(), said(&field, &fault)))).collect()
}

#[test]
fn fields_and_their_readers_are_found_in_the_source() {
    let fields = fields();
    let names: Vec<String> = fields.iter().map(Field::name).collect();
    for name in [
        "schema_version",
        "end_of_life",
        "site.degree_days",
        "site.electricity",
        "line.cut_length",
        "line.shared_colours",
        "line.not.overlay-film",
        "alternative.otherwise",
        "alternative.film_liner",
        "alternative.mesh.fabric",
        "alternative.with.grade",
    ] {
        assert!(names.iter().any(|known| known == name), "`{name}` is not among {names:?}");
    }
    assert!(fields.len() >= 50, "only {} fields", fields.len());
}

#[test]
fn every_field_refuses_every_fault() {
    let all = all();
    let taken = |name: &str, kind: &str| TAKEN.iter().any(|(field, fault, _)| *field == name && *fault == kind);
    let mut found = Vec::new();
    for ((name, kind), (value, said)) in &all {
        let key = name.rsplit('.').next().unwrap_or_default();
        if said.is_empty() != taken(name, kind) {
            found.push(format!("{name}, {kind}: {value} {}", if said.is_empty() { "was taken" } else { "is refused by now" }));
        } else if !said.is_empty() && !said.iter().any(|line| line.contains(key)) {
            found.push(format!("{name}, {kind}: {value} is refused, but of other fields: {said:?}"));
        }
    }
    assert!(found.is_empty(), "{} of {}:\n{}", found.len(), all.len(), found.join("\n"));
    for (name, kind, _) in TAKEN {
        assert!(all.contains_key(&(name.to_owned(), kind)), "{name}, {kind} is tried no longer");
    }
}

#[test]
fn every_fault_is_refused_in_the_same_words() {
    let now: String = all()
        .into_iter()
        .filter(|(_, (_, said))| !said.is_empty())
        .map(|((name, kind), (value, said))| {
            format!("{name}, {kind}: {}\n{}\n", shortened(&value), said.iter().map(|line| format!("  {line}\n")).collect::<String>())
        })
        .collect();
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/refused/fields/messages.expected");
    if std::env::var_os("FACELOAD_BLESS").is_some_and(|value| value == "1") {
        std::fs::write(&path, &now).expect("the folder can be written");
        return;
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    let differing: Vec<String> = now
        .split("\n\n")
        .filter(|block| !kept.contains(*block))
        .map(|block| format!("now   {block}"))
        .chain(kept.split("\n\n").filter(|block| !now.contains(*block)).map(|block| format!("kept  {block}")))
        .collect();
    assert!(now == kept, "if the new words are better, run `cargo xtask bless`\n{}", differing.join("\n"));
}

fn shortened(value: &str) -> String {
    let short: String = value.chars().take(60).collect();
    if short == value { short } else { short + "..." }
}
