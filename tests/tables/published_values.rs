//! A default and its range are what the published values behind them say.

use std::collections::BTreeMap;

use faceload_core::factors::{Published, Role};

use super::{row, spread, values};
use crate::shop;

/// The published values by the row they back.
fn by_row() -> BTreeMap<String, Vec<Published>> {
    let mut by_row: BTreeMap<String, Vec<Published>> = BTreeMap::new();
    for one in values() {
        by_row.entry(one.backs.clone()).or_default().push(one);
    }
    by_row
}

fn counted(values: &[Published], role: Role) -> Vec<f64> {
    values.iter().filter(|one| one.is(role)).map(Published::counted).collect()
}

#[track_caller]
fn none(found: Vec<String>) {
    assert!(found.is_empty(), "{}", found.join("\n"));
}

/// As near as printed digits allow.
fn is_near(value: f64, other: f64, share: f64) -> bool {
    (value / other - 1.0).abs() <= share
}

#[test]
fn a_default_is_its_published_value_or_the_geometric_mean_of_several() {
    let mut found = Vec::new();
    let mut checked = 0;
    for (id, values) in by_row() {
        let (single, mean) = (counted(&values, Role::Default), counted(&values, Role::Mean));
        let expected = match (single.as_slice(), mean.as_slice()) {
            ([one], []) => *one,
            ([], several) if several.len() >= 2 => spread(several).0,
            // Judged between what is published: the range still holds it.
            ([], []) => continue,
            _ => panic!("{id}: one default, or several values of a mean"),
        };
        let within = if mean.is_empty() { 0.01 } else { 0.02 };
        if !is_near(row(&id).value, expected, within) {
            found.push(format!("{id}: {} where the published values say {expected}", row(&id).value));
        }
        checked += 1;
    }
    assert!(checked >= 30, "only {checked} rows");
    none(found);
}

#[test]
fn a_range_holds_every_published_value_that_counts() {
    let mut found = Vec::new();
    for one in values().iter().filter(|one| !one.is(Role::Beside)) {
        let row = row(&one.backs);
        if !(row.low * 0.995 <= one.counted() && one.counted() <= row.high * 1.005) {
            found.push(format!("{} ({}) outside {} to {} of {}", one.id, one.counted(), row.low, row.high, row.id));
        }
    }
    none(found);
}

#[test]
fn an_end_is_the_published_value_that_is_said_to_be_it() {
    let mut found = Vec::new();
    for one in values() {
        let row = row(&one.backs);
        for (role, end) in [(Role::Low, row.low), (Role::High, row.high)] {
            if one.is(role) && !is_near(end, one.counted(), 0.005) {
                found.push(format!("{}: {end} where {} has {}", row.id, one.id, one.counted()));
            }
        }
    }
    none(found);
}

#[test]
fn a_mean_of_few_values_has_a_range_no_narrower_than_a_gsd_of_1_15() {
    for (id, values) in by_row().iter().filter(|(_, values)| values.iter().any(|one| one.is(Role::Mean))) {
        // Low and high are the width of 90 %: 3.2897 standard deviations.
        let gsd = (row(id).high / row(id).low).powf(1.0 / 3.2897);
        assert!(gsd >= 1.145, "{id}: GSD {gsd} of {} values", values.len());
    }
}

#[test]
fn the_spread_over_independent_values_is_as_worked_out_once_before() {
    // Number, geometric mean and GSD over values of government and academic tables, worked out apart.
    for (id, count, mean, gsd) in [
        ("material.pvc.co2e", 6, 2.42, 1.22),
        ("material.pet-film.co2e", 3, 3.18, 1.27),
        ("material.polyurethane.co2e", 3, 4.62, 1.07),
        ("material.glass-beads.co2e", 4, 0.99, 1.38),
        ("material.kraft-paper.co2e", 4, 1.37, 1.19),
        ("material.solvent-ink.co2e", 2, 3.39, 1.16),
        ("material.water-ink.co2e", 2, 2.34, 1.12),
    ] {
        let members = |one: &&Published| one.is(Role::Default) || one.is(Role::Mean) || one.is(Role::Also);
        let values: Vec<f64> = by_row()[id].iter().filter(members).map(Published::counted).collect();
        let (found_mean, found_gsd) = spread(&values);
        assert_eq!(values.len(), count, "{id}");
        shop::near(&format!("{id}, mean"), found_mean, mean, 0.006);
        shop::near(&format!("{id}, GSD"), found_gsd, gsd, 0.011);
    }
}

#[test]
fn a_value_beside_says_why_it_stands_beside_or_is_another_thing() {
    // Another vintage, a closed loop, another boundary: told by note or boundary, never silently.
    none(
        values()
            .iter()
            .filter(|one| one.is(Role::Beside) && one.note.is_empty() && !one.boundary.ends_with("sheet"))
            .map(|one| one.id.clone())
            .collect(),
    );
    assert!(values().iter().all(|one| !one.is(Role::Beside) || one.roles.len() == 1));
}

#[test]
fn every_published_value_can_be_taken_by_an_order() {
    for one in values() {
        let with = format!(r#""{}":"{} {}""#, one.backs, one.counted(), row(&one.backs).unit.typed());
        let order = shop::order(&shop::one(
            r#""code":"R1-1","size":"30 in","quantity":10"#,
            &format!(r#""route":"screen-printing","with":{{{with}}}"#),
        ));
        let book = shop::book(&order);
        assert_eq!(book.row(&one.backs).map(|row| row.value), Some(one.counted()), "{with}");
    }
}

#[test]
fn tons_of_2000_pounds_are_made_kilograms() {
    // Printed t CO2e per short ton, and the sum of its parts where printed, x 1.1023113.
    for (id, printed) in [
        ("pvc.us-2023", 1.89),
        ("pet.us-2023", 2.22),
        ("glass.us-2023", 0.60),
        ("paper.us-2023", 0.93 + 0.02 + 0.03),
        ("aluminium.ingot.us-2023", 4.23 + 0.07 + 3.18),
        ("aluminium.sheet.us-2023", 7.17 + 0.09 + 3.72),
        ("waste.plastics-landfill.us-2026", 0.02),
    ] {
        shop::near(id, super::value(id).value, printed * 1.102_311_3, 0.004);
    }
}
