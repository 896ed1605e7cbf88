//! Blank: flat aluminium of 0.080 in at 2,700 kg/m3 is 5.4864 kg/m2; cold-rolled sheet loads
//! 5.315 kg CO2e/kg (US life-cycle inventory, North America, 2010), so 29.16 kg CO2e/m2.

use crate::shop::{bought, compared_with_blank, factor, near, one};
use faceload_core::load::Indicator;

const SQUARE: &str = r#""shape":"square","size":"1 m","quantity":7,"colours":{"red":"50 %"},"blank":"aluminium 0.080 in""#;

/// Truck freight over 800 km adds 0.1 kg CO2e/kg: without it the factor is the sheet's alone.
const NO_FREIGHT: &str = r#""freight.inbound":"0.000001 km""#;

fn blank_of(with: &str) -> (f64, f64) {
    let comparison = compared_with_blank(&one(SQUARE, &format!(r#""route":"overlay-film","with":{{{with}}}"#)));
    let model = comparison.model("only").expect("the order has one alternative");
    (bought(model, "aluminium blank") / 7.0, factor(model, Indicator::Co2e, "aluminium blank"))
}

#[test]
fn a_square_metre_of_blank_is_5_4864_kg_and_29_16_kg_co2e() {
    let (kg, per_kg) = blank_of(NO_FREIGHT);
    near("kg/m2", kg, 5.4864, 1e-9);
    near("kg CO2e/m2", kg * per_kg, 29.16, 0.005);
}

#[test]
fn scrap_lightens_the_sheet_as_the_published_data_sets_of_ingot_and_sheet_imply() {
    // 1.095 kg metal per kg sheet: 8.903 kg CO2e/kg primary, 0.675 remelted, 0.906 for rolling.
    for (share, published, within) in [("0.5927", 5.315, 0.0005), ("0", 10.65, 0.006), ("1", 1.65, 0.006)] {
        let (_, per_kg) = blank_of(&format!(r#"{NO_FREIGHT},"aluminium.scrap-share":"{share}""#));
        near(&format!("kg CO2e/kg at a scrap share of {share}"), per_kg, published, within);
    }
}

#[test]
fn the_average_sheet_takes_84_5_mj_of_primary_energy() {
    let comparison = compared_with_blank(&one(SQUARE, &format!(r#""route":"screen-printing","with":{{{NO_FREIGHT}}}"#)));
    let model = comparison.model("only").expect("the order has one alternative");
    near("MJ/kg", factor(model, Indicator::Energy, "aluminium blank"), 84.5, 0.01);
}

#[test]
fn other_tables_of_aluminium_give_their_load_of_a_square_metre() {
    // Greenhouse gases of sheet by seven publications, in kg CO2e/kg, worked out per m2 of 0.080 in.
    for (per_kg, published, within) in [
        (9.18, 50.365, 0.0005),
        (12.8, 70.226, 0.0005),
        (1.79, 9.821, 0.0005),
        (15.1, 82.845, 0.0005),
        (8.2453, 45.24, 0.005),
        (5.57, 30.559, 0.0005),
        (9.116, 50.014, 0.0005),
    ] {
        let metal = per_kg - 0.906;
        let sheet = format!(r#""aluminium.scrap-share":"0","material.aluminium-primary.co2e":"{metal} kg/kg""#);
        let (kg, each) = blank_of(&format!("{NO_FREIGHT},{sheet}"));
        near(&format!("{per_kg} kg CO2e/kg, per m2"), kg * each, published, within);
    }
}

#[test]
fn an_alloy_of_2_680_kg_m3_makes_a_blank_of_28_95_kg_co2e() {
    // 0.080 in of 5052 is 5.446 kg/m2, at 5.315 kg CO2e/kg: worked out from these rounded numbers.
    let (kg, per_kg) = blank_of(&format!(r#"{NO_FREIGHT},"blank.density":"2680 kg/m3""#));
    near("kg/m2", kg, 5.446, 0.0005);
    near("kg CO2e/m2", kg * per_kg, 28.95, 0.01);
}
