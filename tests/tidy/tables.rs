//! The tables of `factors/`: sorted, described as they are, and read without a fault.

use faceload_core::factors::{Tables, published};
use serde_json::Value;

use super::{none, text_of, top};

/// The first cells of a table's rows.
fn keys(file: &str) -> Vec<String> {
    text_of(&top().join("factors").join(file)).lines().skip(1).map(|line| line.split(',').next().unwrap_or_default().to_owned()).collect()
}

#[test]
fn the_built_in_tables_hold_together() {
    let tables =
        Tables::embedded().unwrap_or_else(|faults| panic!("{}", faults.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")));
    assert_eq!(tables.inputs.len(), keys("practice.csv").len() + keys("factors.csv").len());
    assert_eq!(tables.signs.len(), keys("sign-codes.csv").len());
    assert_eq!(tables.sources.len(), keys("sources.csv").len());
    assert_eq!(tables.solvents.len(), keys("solvents.csv").len());
    let published = published(&tables).unwrap_or_else(|faults| panic!("{}", faults[0]));
    assert_eq!(published.len(), keys("published.csv").len());
}

#[test]
fn rows_are_sorted_by_their_keys() {
    for file in ["practice.csv", "factors.csv", "sources.csv", "sign-codes.csv", "solvents.csv", "published.csv"] {
        let keys = keys(file);
        none(keys.windows(2).filter(|pair| pair[0] >= pair[1]).map(|pair| format!("{file}: `{}` before `{}`", pair[0], pair[1])).collect());
        assert!(keys.len() > 3);
    }
}

#[test]
fn the_description_of_the_tables_names_their_columns() {
    let package: Value = serde_json::from_str(&text_of(&top().join("factors/datapackage.json"))).expect("JSON");
    let resources = package["resources"].as_array().expect("a list of tables");
    assert_eq!(resources.len(), 6);
    for resource in resources {
        let path = resource["path"].as_str().expect("a path");
        let fields = resource["schema"]["fields"].as_array().expect("fields");
        let described: Vec<&str> = fields.iter().filter_map(|field| field["name"].as_str()).collect();
        let text = text_of(&top().join("factors").join(path));
        assert_eq!(described, text.lines().next().unwrap_or_default().split(',').collect::<Vec<_>>(), "{path}");
        assert!(
            fields.iter().all(|field| field["description"].as_str().is_some_and(|words| !words.is_empty())),
            "{path}: a field without words"
        );
    }
}

#[test]
fn a_changed_table_is_named_in_its_changes() {
    assert!(text_of(&top().join("factors/CHANGES.md")).starts_with("# "));
}
