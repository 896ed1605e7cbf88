//! Independent tables of two regions, Swiss and North American, agree within the ranges stated.

use super::{row, value};
use crate::shop::{compared_with_blank, factor, near, one};
use faceload_core::load::Indicator;

#[test]
fn swiss_and_north_american_materials_lie_within_one_range() {
    for (swiss, american) in [
        ("pvc.swiss-2022", "pvc.us-2015"),
        ("pvc-energy.swiss-2022", "pvc-energy.us-2015"),
        ("aluminium.profile.swiss-2022", "aluminium.profile.na-2010"),
        ("aluminium.profile-energy.swiss-2022", "aluminium.profile-energy.na-2010"),
    ] {
        let (one, other) = (value(swiss), value(american));
        assert_eq!(one.backs, other.backs);
        let row = row(&one.backs);
        for value in [&one, &other] {
            assert!(row.low <= value.counted() && value.counted() <= row.high, "{} outside {}", value.id, row.id);
        }
        let apart = (one.counted() / other.counted()).ln().abs();
        assert!(apart <= (row.high / row.low).ln(), "{swiss} and {american} are {apart} apart");
    }
}

/// kg CO2e of a kilogram of sheet at a scrap share, freight left out.
fn sheet(share: &str) -> f64 {
    let with = format!(r#""freight.inbound":"0.000001 km","aluminium.scrap-share":"{share}""#);
    let line = r#""shape":"square","size":"1 m","quantity":7,"colours":{"red":"50 %"}"#;
    let comparison = compared_with_blank(&one(line, &format!(r#""route":"overlay-film","with":{{{with}}}"#)));
    factor(comparison.model("only").expect("the order has one alternative"), Indicator::Co2e, "aluminium blank")
}

#[test]
fn the_sheets_of_both_regions_are_computed_at_a_scrap_share_within_its_range() {
    let share = row("aluminium.scrap-share");
    let (most, least) = (sheet(&share.low.to_string()), sheet(&share.high.to_string()));
    for id in ["aluminium.sheet.swiss-2022", "aluminium.sheet.na-2010", "aluminium.sheet.uk-2025", "aluminium.sheet.bath-2011"] {
        let published = value(id).value;
        assert!(least <= published && published <= most, "{id}: {published} outside {least} to {most}");
    }
    near("North America", sheet("0.5927"), value("aluminium.sheet.na-2010").value, 0.0005);
}

#[test]
fn sheet_of_scrap_only_and_of_no_scrap_comes_near_an_older_table() {
    // Another lineage, older and of Europe: within a fifth.
    for (share, id) in [("1", "aluminium.sheet.bath-2011-scrap"), ("0", "aluminium.sheet.bath-2011-virgin")] {
        let ratio = sheet(share) / value(id).value;
        assert!((0.8..1.25).contains(&ratio), "{id}: {ratio}");
    }
}
