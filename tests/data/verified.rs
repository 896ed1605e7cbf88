//! `faceload report --data` and `faceload verify` as a person runs them.

use std::path::PathBuf;

use serde_json::Value;

use super::ODD;
use crate::program::{Ran, faceload, faceload_with};

/// A folder of this test run, by name.
fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!("data-{name}"));
    let _ = std::fs::remove_dir_all(&folder);
    folder
}

fn written(name: &str, words: &[&str], order: &str) -> PathBuf {
    let folder = folder(name);
    let place = folder.to_str().expect("UTF-8");
    let ran = faceload_with(&[&["report"], words, &["--draws", "100", "--data", place]].concat(), order.as_bytes(), &[]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{name}");
    assert_eq!(ran.result.lines().count(), 8, "{}", ran.result);
    folder
}

fn verified(path: &std::path::Path) -> Ran {
    faceload(&["verify", path.to_str().expect("UTF-8")])
}

#[test]
fn what_was_written_is_verified_whatever_was_asked() {
    for (name, words, order) in [
        ("stop", &["stop"][..], ""),
        ("several", &["stop", "diamonds-stock", "--per", "m2-year", "--boundary", "face-with-blank"], ""),
        ("pair", &["county", "--between", "digital,screen", "--indicator", "solvent", "--seed", "7", "--design", "plain"], ""),
        ("odd", &["-"], ODD),
    ] {
        let folder = written(name, words, order);
        for path in [folder.clone(), folder.join("data.json")] {
            let ran = verified(&path);
            assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{name}");
            assert!(ran.result.contains(": the same. Made again, ") && ran.result.contains("tables "), "{}", ran.result);
        }
    }
}

#[test]
fn a_record_made_with_own_tables_carries_them() {
    let own = folder("own");
    std::fs::create_dir_all(&own).expect("a folder");
    let table = std::fs::read_to_string(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("factors/practice.csv")).expect("the table");
    let head = table.lines().next().expect("a first line");
    let row = table.lines().find(|line| line.starts_with("oven.exhaust,")).expect("a row");
    let cells: Vec<&str> = row.split(',').collect();
    let other = row.replacen(&format!(",{},", cells[3]), &format!(",{},", cells[4]), 1);
    assert_ne!(row, other);
    std::fs::write(own.join("practice.csv"), format!("{head}\n{other}\n")).expect("written");
    let folder = written("with-own", &["stop", "--factors", own.to_str().expect("UTF-8")], "");
    let ran = verified(&folder);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    let rows = std::fs::read_to_string(folder.join("inputs.csv")).expect("inputs");
    assert!(rows.lines().any(|line| line.starts_with("oven.exhaust,") && line.contains("own tables")), "{rows}");
}

#[test]
fn what_was_changed_is_told_and_the_exit_is_3() {
    let folder = written("changed", &["stop"], "");
    let record = folder.join("data.json");
    let text = std::fs::read_to_string(&record).expect("the record");
    let changed = |text: &str| {
        std::fs::write(&record, text).expect("written");
        let ran = verified(&record);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""));
        ran.words
    };
    let words = changed(&text.replacen("\"quantity\": 100", "\"quantity\": 101", 1));
    assert!(words.contains("sha_256.order: ") && words.contains("what it was made from does not have the hash that it states"), "{words}");
    assert!(words.contains("and ") && words.contains(" more"), "{words}");
    let words = changed(&text.replacen("\"version\": \"0.1.0\"", "\"version\": \"0.0.9\"", 1));
    assert!(words.contains("made by `faceload` `0.0.9`, this is faceload 0.1.0"), "{words}");
    let tables: Value = serde_json::from_str(&text).expect("JSON");
    let tables = tables["sha_256"]["tables"].as_str().expect("a hash").to_owned();
    let words = changed(&text.replace(&tables, &"0".repeat(64)));
    assert!(
        words.contains(&format!("made with tables `{}`, this program has {tables}: it rests on other rows", "0".repeat(64))),
        "{words}"
    );
    let words = changed(&text.replacen("\"R1-1\"", "\"R1-1x\"", 1));
    assert!(words.contains("cannot be made again from what it carries") && words.contains("`R1-1x`"), "{words}");
    std::fs::write(&record, &text).expect("written");
    let csv = folder.join("results.csv");
    let rows = std::fs::read_to_string(&csv).expect("results");
    std::fs::write(&csv, rows.replacen("screen-printing", "screen printing", 1)).expect("written");
    let ran = verified(&folder);
    assert_eq!(ran.code, 3);
    assert!(ran.words.contains("results.csv, line 2: "), "{}", ran.words);
    std::fs::remove_file(&csv).expect("removed");
    assert!(verified(&folder).words.contains("results.csv: not there where a file of the data was wanted"));
}

#[test]
fn what_carries_no_record_is_refused_in_words() {
    let folder = folder("other");
    std::fs::create_dir_all(&folder).expect("a folder");
    let refused = |name: &str, text: &str| {
        std::fs::write(folder.join(name), text).expect("written");
        let ran = verified(&folder.join(name));
        assert_eq!((ran.code, ran.result.as_str()), (3, ""));
        ran.words
    };
    let result = faceload(&["compare", "stop", "--draws", "100", "--json"]).result;
    assert!(
        refused("result.json", &result).contains("a result without its order where a record that carries what it was made from was wanted")
    );
    assert!(refused("other.json", "{}").contains("another JSON text where the record of a result was wanted"));
    assert!(refused("later.json", r#"{"schema_version":2,"made_from":{}}"#).contains("schema_version 2 where schema_version 1 was wanted"));
    assert!(
        refused("page.html", "<p>nothing</p>").contains("no data, or more than one block of it, where one record of a result was wanted")
    );
    assert!(verified(&folder).words.contains("where one record of a result was wanted"));
    assert!(verified(&folder.join("nowhere")).words.contains("cannot be read (no such file)"));
    let ran = faceload(&["report", "stop", "--draws", "100", "--data", "README.md"]);
    assert_eq!(ran.code, 3);
    assert!(ran.words.contains("README.md: cannot be written"), "{}", ran.words);
}
