//! `factors/datapackage.json` describes the tables as they are: every type and constraint that it states holds in
//! every cell, and it states none that is not checked here (Table Schema, version 2).

use std::collections::{BTreeMap, BTreeSet};

use faceload_core::factors::FILES;
use serde_json::{Map, Value};

use super::refused_tables::cells;
use super::{none, text_of, top};

/// A table with its description.
struct Described {
    name: String,
    path: String,
    schema: Value,
    columns: Vec<String>,
    /// Cells without the quotes around them.
    rows: Vec<Vec<String>>,
}

/// Every table that is described.
fn all() -> Vec<Described> {
    let package: Value = serde_json::from_str(&text_of(&top().join("factors/datapackage.json"))).expect("JSON");
    let resources = package["resources"].as_array().expect("a list of tables");
    let text = |value: &Value| value.as_str().expect("a text").to_owned();
    let read = |resource: &Value| {
        let path = text(&resource["path"]);
        let table = text_of(&top().join("factors").join(&path));
        let mut lines = table.lines().map(|line| cells(line).iter().map(|cell| cell.trim_matches('"').to_owned()).collect::<Vec<_>>());
        let columns = lines.next().expect("a first line");
        Described { name: text(&resource["name"]), path, schema: resource["schema"].clone(), columns, rows: lines.collect() }
    };
    resources.iter().map(read).collect()
}

impl Described {
    fn column(&self, name: &str) -> Vec<&str> {
        let place = self.columns.iter().position(|column| column == name).unwrap_or_else(|| panic!("{}: no column `{name}`", self.path));
        self.rows.iter().map(|row| row[place].as_str()).collect()
    }

    /// The cells of some columns, row by row.
    fn tuples(&self, names: &Value) -> Vec<Vec<&str>> {
        let names = names.as_array().expect("names of columns").iter().map(|name| name.as_str().expect("a name"));
        let columns: Vec<Vec<&str>> = names.map(|name| self.column(name)).collect();
        (0..self.rows.len()).map(|row| columns.iter().map(|column| column[row]).collect()).collect()
    }
}

/// Whether a cell is of a type.
fn is_of_type(cell: &str, kind: &str) -> bool {
    match kind {
        "string" => true,
        "number" => cell.parse::<f64>().is_ok_and(f64::is_finite),
        "integer" => cell.parse::<i64>().is_ok(),
        other => panic!("no check for the type `{other}`"),
    }
}

/// Whether a cell matches one of some patterns: a word, or characters of a set, such as `[0-9]{4}|undated`.
fn matches(cell: &str, pattern: &str) -> bool {
    pattern.split('|').any(|one| {
        let Some((set, times)) = one.strip_prefix('[').and_then(|rest| rest.split_once(']')) else { return cell == one };
        let set: Vec<char> = set.chars().collect();
        let fits = |c: char| set.contains(&c) || set.windows(3).any(|run| run[1] == '-' && (run[0]..=run[2]).contains(&c));
        let long_enough = match times {
            "+" => !cell.is_empty(),
            "{4}" => cell.chars().count() == 4,
            other => panic!("no check for `{other}`"),
        };
        long_enough && cell.chars().all(fits)
    })
}

/// What is wrong with a cell under one constraint.
fn broken(cell: &str, name: &str, wanted: &Value) -> bool {
    let number = || cell.parse::<f64>().expect("a number");
    let limit = || wanted.as_f64().expect("a limit");
    match name {
        "required" => wanted == true && cell.is_empty(),
        // An empty cell is a missing value: only `required` speaks of it.
        _ if cell.is_empty() => false,
        "enum" => !wanted.as_array().expect("a list").iter().any(|word| word == cell),
        "pattern" => !matches(cell, wanted.as_str().expect("a pattern")),
        "maxLength" => cell.chars().count() as f64 > limit(),
        "minimum" => number() < limit(),
        "maximum" => number() > limit(),
        "exclusiveMinimum" => number() <= limit(),
        "unique" => false, // Of the column, below.
        other => panic!("no check for the constraint `{other}`"),
    }
}

#[test]
fn every_cell_is_as_described() {
    let mut found = Vec::new();
    let mut checked: BTreeMap<&str, usize> = BTreeMap::new();
    let none_stated = Map::new();
    let tables = all();
    for table in &tables {
        assert_eq!(table.schema["missingValues"], serde_json::json!([""]), "{}", table.path);
        for field in table.schema["fields"].as_array().expect("fields") {
            let (name, kind) = (field["name"].as_str().expect("a name"), field["type"].as_str().expect("a type"));
            let constraints = field["constraints"].as_object().unwrap_or(&none_stated);
            let column = table.column(name);
            for (row, cell) in column.iter().enumerate() {
                let place = || format!("{}, line {}, `{name}`: `{cell}`", table.path, row + 2);
                if !cell.is_empty() && !is_of_type(cell, kind) {
                    found.push(format!("{} is no {kind}", place()));
                    continue;
                }
                for (constraint, wanted) in constraints {
                    *checked.entry(constraint).or_default() += 1;
                    if broken(cell, constraint, wanted) {
                        found.push(format!("{} breaks {constraint}: {wanted}", place()));
                    }
                }
            }
            if constraints.get("unique").is_some_and(|unique| unique == true) {
                let once: BTreeSet<&str> = column.iter().copied().collect();
                assert_eq!(once.len(), column.len(), "{}, `{name}`", table.path);
            }
            let typed = column.iter().filter(|cell| !cell.is_empty()).count();
            assert!(typed > 0, "{}, `{name}`: an empty column", table.path);
        }
    }
    none(found);
    for constraint in ["required", "enum", "pattern", "unique", "minimum", "maxLength"] {
        assert!(checked.get(constraint).is_some_and(|count| *count > 30), "{constraint}: {checked:?}");
    }
}

#[test]
fn every_table_and_column_is_described_in_words_and_in_order() {
    let mut paths: Vec<String> = all().iter().map(|table| table.path.clone()).collect();
    paths.sort();
    let mut files: Vec<String> = FILES.into_iter().chain(["published.csv"]).map(str::to_owned).collect();
    files.sort();
    assert_eq!(paths, files);
    for table in all() {
        let fields = table.schema["fields"].as_array().expect("fields");
        let described: Vec<&str> = fields.iter().filter_map(|field| field["name"].as_str()).collect();
        assert_eq!(described, table.columns, "{}", table.path);
        let in_words = |field: &Value| field["description"].as_str().is_some_and(|words| words.ends_with('.'));
        assert!(fields.iter().all(in_words), "{}: a column without words", table.path);
    }
}

#[test]
fn every_word_of_a_list_is_used() {
    let mut unused = Vec::new();
    for table in all() {
        for field in table.schema["fields"].as_array().expect("fields") {
            let name = field["name"].as_str().expect("a name");
            // Kinds of source and shapes of spread are what the reader takes; some wait for a row.
            if ["kind", "seen", "spread", "grade", "density_grade", "shape"].contains(&name) {
                continue;
            }
            let column = table.column(name);
            let words = field["constraints"]["enum"].as_array().into_iter().flatten().filter_map(Value::as_str);
            unused.extend(words.filter(|word| !column.contains(word)).map(|word| format!("{}, `{name}`: `{word}`", table.path)));
        }
    }
    none(unused);
}

#[test]
fn keys_point_where_the_description_says() {
    let tables = all();
    let (mut keys, mut pointing) = (0, 0);
    for table in &tables {
        let primary = table.tuples(&table.schema["primaryKey"]);
        let once: BTreeSet<&Vec<&str>> = primary.iter().collect();
        assert_eq!(once.len(), primary.len(), "{}", table.path);
        keys += primary.len();
        for foreign in table.schema["foreignKeys"].as_array().into_iter().flatten() {
            let there = foreign["reference"]["resource"].as_str().expect("a table");
            let there = tables.iter().find(|other| other.name == there).unwrap_or_else(|| panic!("no table `{there}`"));
            let known: BTreeSet<Vec<&str>> = there.tuples(&foreign["reference"]["fields"]).into_iter().collect();
            // Where a cell is empty it points nowhere; `required` says where it must not be.
            let given = table.tuples(&foreign["fields"]).into_iter().filter(|key| key.iter().all(|cell| !cell.is_empty()));
            let dangling = given.filter(|key| !known.contains(key));
            none(dangling.map(|key| format!("{}: {key:?} is not in {}", table.path, there.path)).collect());
            pointing += 1;
        }
    }
    assert!(keys > 100 && pointing == 11, "{keys} keys, {pointing} columns that point at another table");
}

#[test]
fn a_cell_that_is_not_as_described_is_found() {
    let yes = serde_json::json!(true);
    for (cell, name, wanted, is_broken) in [
        ("", "required", yes.clone(), true),
        ("a", "required", yes, false),
        ("E", "enum", serde_json::json!(["A", "B"]), true),
        ("B", "enum", serde_json::json!(["A", "B"]), false),
        ("air.Density", "pattern", serde_json::json!("[a-z0-9.-]+"), true),
        ("air.density-2", "pattern", serde_json::json!("[a-z0-9.-]+"), false),
        ("20x3", "pattern", serde_json::json!("[0-9]{4}|undated"), true),
        ("2023", "pattern", serde_json::json!("[0-9]{4}|undated"), false),
        ("undated", "pattern", serde_json::json!("[0-9]{4}|undated"), false),
        ("abcd", "maxLength", serde_json::json!(3), true),
        ("-1", "minimum", serde_json::json!(0), true),
        ("0", "exclusiveMinimum", serde_json::json!(0), true),
        ("2027", "maximum", serde_json::json!(2026), true),
    ] {
        assert_eq!(broken(cell, name, &wanted), is_broken, "{cell}, {name}");
    }
    assert!(!is_of_type("nan", "number") && !is_of_type("2.5", "integer") && is_of_type("2.5", "number"));
}
