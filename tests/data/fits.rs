//! The data fit their descriptions: the record its JSON Schema, the tables theirs, the files their hashes and lengths.
//!
//! Only the keywords that the schema uses are known here; another one stops the test.

use std::collections::BTreeSet;

use faceload_core::order::demo;
use faceload_report::data::{File, files, sha_256};
use serde_json::Value;

use super::{ODD, record};

fn file<'a>(all: &'a [File], name: &str) -> &'a [u8] {
    &all.iter().find(|(known, _)| known == name).unwrap_or_else(|| panic!("no {name}")).1
}

fn tree(all: &[File], name: &str) -> Value {
    serde_json::from_slice(file(all, name)).expect("JSON")
}

fn is_of(kind: &str, value: &Value) -> bool {
    match kind {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "number" => value.is_number(),
        "integer" => value.is_u64() || value.is_i64(),
        "boolean" => value.is_boolean(),
        "null" => value.is_null(),
        other => panic!("no check for the type `{other}`"),
    }
}

/// What is wrong with a value under a schema.
fn wrong(schema: &Value, value: &Value, path: &str, found: &mut Vec<String>) {
    let mut say = |what: &str| found.push(format!("{path}: {what}"));
    let length = || value.as_array().map_or(0, Vec::len) as u64;
    for (keyword, wanted) in schema.as_object().expect("a schema") {
        let fits = match keyword.as_str() {
            "$schema" | "title" | "description" | "properties" | "additionalProperties" | "items" | "anyOf" => true,
            "type" => match wanted {
                Value::String(kind) => is_of(kind, value),
                kinds => kinds.as_array().expect("kinds").iter().any(|kind| is_of(kind.as_str().expect("a kind"), value)),
            },
            "required" => wanted.as_array().expect("names").iter().all(|name| value.get(name.as_str().expect("a name")).is_some()),
            "enum" => wanted.as_array().expect("words").contains(value),
            "const" => wanted == value,
            "pattern" => {
                assert_eq!(wanted, "^[0-9a-f]{64}$");
                value.as_str().is_some_and(|text| text.len() == 64 && text.bytes().all(|byte| b"0123456789abcdef".contains(&byte)))
            }
            "minimum" => value.as_f64() >= wanted.as_f64(),
            "maximum" => value.as_f64() <= wanted.as_f64(),
            "minItems" => value.is_null() || length() >= wanted.as_u64().expect("a length"),
            "maxItems" => value.is_null() || length() <= wanted.as_u64().expect("a length"),
            other => panic!("no check for the keyword `{other}`"),
        };
        if !fits {
            say(&format!("breaks {keyword}: {wanted}"));
        }
    }
    for (name, member) in value.as_object().into_iter().flatten() {
        match (&schema["properties"][name], &schema["additionalProperties"]) {
            (Value::Null, Value::Bool(false)) => found.push(format!("{path}.{name}: is not described")),
            (Value::Null, Value::Null) => {}
            (Value::Null, other) => wrong(other, member, &format!("{path}.{name}"), found),
            (known, _) => wrong(known, member, &format!("{path}.{name}"), found),
        }
    }
    if let (Some(items), Some(list)) = (schema.get("items"), value.as_array()) {
        list.iter().enumerate().for_each(|(at, item)| wrong(items, item, &format!("{path}[{at}]"), found));
    }
    if let Some(ways) = schema.get("anyOf").and_then(Value::as_array) {
        let fits = |way: &Value| {
            let mut against = Vec::new();
            wrong(way, value, path, &mut against);
            against.is_empty()
        };
        if !ways.iter().any(fits) {
            found.push(format!("{path}: fits none of anyOf"));
        }
    }
}

fn against(schema: &Value, record: &Value) -> Vec<String> {
    let mut found = Vec::new();
    wrong(schema, record, "", &mut found);
    found
}

#[test]
fn every_record_fits_its_schema() {
    for text in demo::DEMOS.iter().map(|demo| demo.text).chain([ODD]) {
        let all = files(&record(text));
        assert_eq!(against(&tree(&all, "data-form.json"), &tree(&all, "data.json")), Vec::<String>::new());
    }
}

#[test]
fn the_schema_refuses_what_is_missing_added_or_of_another_type() {
    let all = files(&record(ODD));
    let (schema, whole) = (tree(&all, "data-form.json"), tree(&all, "data.json"));
    for pointer in ["/sha_256/order", "/result/standing", "/result/alternatives/0/m2", "/rows/inputs/0/value", "/made_from/per"] {
        let mut other = whole.clone();
        *other.pointer_mut(pointer).unwrap_or_else(|| panic!("no {pointer}")) = Value::Array(Vec::new());
        assert!(!against(&schema, &other).is_empty(), "{pointer} as a list");
        let (parent, name) = pointer.rsplit_once('/').expect("a parent");
        let mut other = whole.clone();
        let members = other.pointer_mut(parent).and_then(Value::as_object_mut).expect("an object");
        members.remove(name);
        assert!(!against(&schema, &other).is_empty(), "without {pointer}");
        let mut other = whole.clone();
        other.pointer_mut(parent).and_then(Value::as_object_mut).expect("an object").insert("more".to_owned(), Value::Null);
        assert!(!against(&schema, &other).is_empty(), "more beside {pointer}");
    }
}

#[test]
fn every_file_is_described_with_its_hash_and_length() {
    let all = files(&record(ODD));
    let package = tree(&all, "datapackage.json");
    let resources = package["resources"].as_array().expect("resources");
    assert_eq!(resources.len() + 1, all.len());
    for resource in resources {
        let bytes = file(&all, resource["path"].as_str().expect("a path"));
        assert_eq!(resource["bytes"], bytes.len());
        assert_eq!(resource["hash"], format!("sha256:{}", sha_256(bytes)));
        assert!(resource["description"].as_str().is_some_and(|words| words.ends_with('.')));
    }
    assert!(
        package["description"].as_str().is_some_and(|words| words.contains("one apostrophe in front of it")),
        "how texts are guarded is said"
    );
}

#[test]
fn every_cell_is_of_its_type_and_every_key_holds() {
    for text in demo::DEMOS.iter().map(|demo| demo.text).chain([ODD]) {
        let all = files(&record(text));
        let package = tree(&all, "datapackage.json");
        let data = tree(&all, "data.json");
        for resource in package["resources"].as_array().expect("resources").iter().filter(|one| one["type"] == "table") {
            let schema = &resource["schema"];
            let rows = data["rows"][resource["name"].as_str().expect("a name")].as_array().expect("rows");
            let mut keys = BTreeSet::new();
            for row in rows {
                for field in schema["fields"].as_array().expect("fields") {
                    let (name, value) = (field["name"].as_str().expect("a name"), &row[field["name"].as_str().expect("a name")]);
                    assert!(value.is_null() || is_of(field["type"].as_str().expect("a type"), value), "{}: {name}", resource["path"]);
                    assert!(!value.is_null() || field["constraints"]["required"] != true, "{}: {name} is missing", resource["path"]);
                }
                let key: Vec<String> = schema["primaryKey"]
                    .as_array()
                    .expect("a key")
                    .iter()
                    .map(|name| row[name.as_str().expect("a name")].to_string())
                    .collect();
                assert!(keys.insert(key.clone()), "{}: {key:?} stands twice", resource["path"]);
            }
        }
        let known: BTreeSet<&str> =
            data["rows"]["sources"].as_array().expect("rows").iter().filter_map(|row| row["key"].as_str()).collect();
        for row in data["rows"]["inputs"].as_array().expect("rows") {
            assert!(row["source"].as_str().is_none_or(|key| known.contains(key)), "{row}");
        }
    }
}

#[test]
fn an_own_value_says_what_it_stands_in_place_of() {
    let record = record(ODD);
    let rows = record.tree["rows"]["inputs"].as_array().expect("rows");
    let row = rows.iter().find(|row| row["id"] == "printer.power.uv" && row["alternative"] == "digital").expect("the own value");
    let table = super::tables().find("printer.power.uv").map(|place| super::tables().inputs[place].value);
    assert_eq!((row["value"].as_f64(), row["instead_of"].as_f64()), (Some(1.9), table));
    assert_eq!((&row["given_by"], &row["grade"], &row["note"]), (&"alternative".into(), &"own".into(), &"-meter, week 14".into()));
}
