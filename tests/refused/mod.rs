//! Orders that are refused: every file of this folder, with the whole message.
//!
//! NAME.expected holds the exit code, then what `faceload compare tests/refused/NAME.toml` writes to
//! standard error. `FACELOAD_BLESS=1` writes the expected files anew; read the difference.

mod fields;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use crate::program::faceload;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/refused")
}

/// The orders of this folder, by file name.
fn orders() -> Vec<String> {
    let names = std::fs::read_dir(folder())
        .expect("the folder of refused orders")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned());
    let mut orders: Vec<String> = names.filter(|name| [".toml", ".json", ".csv"].iter().any(|ending| name.ends_with(ending))).collect();
    orders.sort();
    orders
}

/// Where the message of an order is kept: two files of one name must not share it.
fn expected(order: &str) -> PathBuf {
    folder().join(format!("{}.expected", order.trim_end_matches(".toml")))
}

#[test]
fn every_refused_order_is_refused_in_the_same_words() {
    let bless = std::env::var_os("FACELOAD_BLESS").is_some_and(|value| value == "1");
    let orders = orders();
    assert!(orders.len() >= 12, "only {} orders", orders.len());
    let mut differing = Vec::new();
    for order in &orders {
        let ran = faceload(&["compare", &format!("tests/refused/{order}")]);
        let message = format!("exit {}\n{}", ran.code, ran.words);
        // An order that is taken has no message to keep.
        if bless && ran.code != 0 {
            std::fs::write(expected(order), &message).expect("the folder can be written");
        }
        let kept = std::fs::read_to_string(expected(order)).unwrap_or_default();
        if message != kept {
            differing.push(format!("{order}\n--- kept\n{kept}--- now\n{message}"));
        }
    }
    assert!(
        differing.is_empty(),
        "{} of {}; if the new words are better, run `cargo xtask bless`\n{}",
        differing.len(),
        orders.len(),
        differing.join("\n")
    );
}

#[test]
fn every_refusal_is_exit_3_without_a_result_and_says_where_what_and_the_way_out() {
    let mut taken = Vec::new();
    for order in orders() {
        let ran = faceload(&["compare", &format!("tests/refused/{order}")]);
        if ran.code != 3 || ran.words.is_empty() || !ran.result.is_empty() {
            taken.push(format!("{order}: exit {}", ran.code));
        }
        for line in ran.words.lines() {
            let of_file = line.starts_with(&format!("tests/refused/{order}")) && line.contains(" where ") && line.contains(" wanted; ");
            let of_line = line.contains(" cannot make it: ") || line.starts_with("no alternative can make any line");
            assert!(of_file || of_line, "{order}: a message without place, want or way out: {line}");
        }
    }
    assert!(taken.is_empty(), "not refused as bad input: {}", taken.join(", "));
}

#[test]
fn every_message_kept_belongs_to_an_order() {
    let orders: BTreeSet<PathBuf> = orders().iter().map(|order| expected(order)).collect();
    let kept = std::fs::read_dir(folder())
        .expect("the folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "expected"));
    let kept: BTreeSet<PathBuf> = kept.collect();
    assert_eq!(kept.difference(&orders).collect::<Vec<_>>(), Vec::<&PathBuf>::new());
}
