//! Evidence: every number has a source with a place in it, a year, and a grade that it can bear.

use faceload_core::factors::{Grade, Origin, Scope, Spread};

use super::values;
use crate::shop::tables;

/// The rows of a table as cells by column name.
fn cells(file: &str) -> Vec<std::collections::BTreeMap<String, String>> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("factors").join(file);
    let mut reader = csv::Reader::from_path(&path).unwrap_or_else(|error| panic!("{file}: {error}"));
    reader.deserialize().map(|row| row.unwrap_or_else(|error| panic!("{file}: {error}"))).collect()
}

#[track_caller]
fn none(found: Vec<String>) {
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn every_factor_has_a_source_a_place_a_year_a_region_and_a_boundary() {
    let mut found = Vec::new();
    for row in cells("factors.csv") {
        for column in ["source", "place", "year", "region", "boundary", "grade"] {
            if row[column].trim().is_empty() {
                found.push(format!("{}: no {column}", row["id"]));
            }
        }
        if row["year"].parse::<u32>().is_ok_and(|year| !(1990..=2026).contains(&year)) {
            found.push(format!("{}: the year {}", row["id"], row["year"]));
        }
    }
    none(found);
}

#[test]
fn a_kind_of_boundary_is_written_in_one_way() {
    let mut kinds: Vec<String> =
        cells("factors.csv").into_iter().filter(|row| row["id"].starts_with("material.")).map(|row| row["boundary"].clone()).collect();
    kinds.sort();
    kinds.dedup();
    assert_eq!(kinds, ["cradle to gate", "cradle to gate, feedstock included", "scrap enters free of burden, to gate"]);
    none(
        cells("factors.csv")
            .into_iter()
            .filter(|row| row["id"].starts_with("material.") && row["basis"] != "life-cycle")
            .map(|row| row["id"].clone())
            .collect(),
    );
}

#[test]
fn what_rests_on_memory_or_judgement_is_graded_d_and_common_practice_no_better_than_c() {
    let mut found = Vec::new();
    for row in &tables().inputs {
        let best = match row.source.as_str() {
            "memory" | "judgement" => Grade::D,
            "common-practice" => Grade::C,
            _ => continue,
        };
        if row.grade < best {
            found.push(format!("{}: {} from {}", row.id, row.grade, row.source));
        }
    }
    none(found);
}

#[test]
fn a_stand_in_is_graded_d() {
    none(
        tables()
            .inputs
            .iter()
            .filter(|row| row.note.contains("stand-in") || row.place.contains("stand-in"))
            .filter(|row| row.grade != Grade::D)
            .map(|row| format!("{}: {}", row.id, row.grade))
            .collect(),
    );
}

#[test]
fn a_stand_in_has_a_range_unless_it_is_a_choice_or_a_share_that_must_sum() {
    let sums = ["sheeting.prismatic.", "sheeting.beaded.", "overlay.", "film."];
    none(
        tables()
            .inputs
            .iter()
            .filter(|row| row.origin == Origin::Factor && row.grade == Grade::D && row.spread == Spread::Fixed)
            .filter(|row| row.scope != Scope::Choice && !sums.iter().any(|stem| row.id.starts_with(stem)))
            .map(|row| row.id.clone())
            .collect(),
    );
}

#[test]
fn every_published_value_names_its_place_and_how_it_was_bounded() {
    assert!(values().len() >= 140);
    none(values().iter().filter(|one| one.year != "not printed" && one.year.parse::<u32>().is_err()).map(|one| one.id.clone()).collect());
    none(values().iter().filter(|one| one.grade == Grade::A).map(|one| format!("{}: A, though only copies were seen", one.id)).collect());
}
