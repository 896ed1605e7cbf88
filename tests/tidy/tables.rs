//! The tables of `factors/`: sorted, and read without a fault.

use faceload_core::factors::{FILES, Tables, published};

use super::{none, text_of, top};

/// The first cells of a table's rows.
fn keys(file: &str) -> Vec<String> {
    text_of(&top().join("factors").join(file)).lines().skip(1).map(|line| line.split(',').next().unwrap_or_default().to_owned()).collect()
}

#[test]
fn the_built_in_tables_hold_together() {
    let tables =
        Tables::embedded().unwrap_or_else(|faults| panic!("{}", faults.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")));
    let gases: usize = tables.carriers.values().map(|carrier| if carrier.by_gas { 3 } else { 1 }).sum();
    assert_eq!(tables.carriers.len(), keys("carriers.csv").len());
    assert_eq!(tables.inputs.len(), keys("practice.csv").len() + keys("factors.csv").len() + gases);
    assert_eq!(tables.signs.len(), keys("sign-codes.csv").len());
    assert_eq!(tables.sources.len(), keys("sources.csv").len());
    assert_eq!(tables.solvents.len(), keys("solvents.csv").len());
    let published = published(&tables).unwrap_or_else(|faults| panic!("{}", faults[0]));
    assert_eq!(published.len(), keys("published.csv").len());
}

#[test]
fn rows_are_sorted_by_their_keys() {
    for file in FILES.into_iter().chain(["published.csv"]) {
        let keys = keys(file);
        none(keys.windows(2).filter(|pair| pair[0] >= pair[1]).map(|pair| format!("{file}: `{}` before `{}`", pair[0], pair[1])).collect());
        assert!(keys.len() > 3);
    }
}

#[test]
fn a_changed_table_is_named_in_its_changes() {
    assert!(text_of(&top().join("factors/CHANGES.md")).starts_with("# "));
}
