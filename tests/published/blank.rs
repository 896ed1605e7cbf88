//! Blank: flat aluminium of 0.080 in at 2,700 kg/m3 is 5.4864 kg/m2; cold-rolled sheet loads
//! 5.315 kg CO2e/kg (US life-cycle inventory, North America, 2010), so 29.16 kg CO2e/m2.

use crate::shop::{bought, compared_with_blank, factor, input, near, one};
use faceload_core::load::Indicator;

const SQUARE: &str = r#""shape":"square","size":"1 m","quantity":7,"colours":{"red":"50 %"},"blank":"aluminium 0.080 in""#;

#[test]
fn a_square_metre_of_blank_is_5_4864_kg_and_29_16_kg_co2e() {
    let comparison = compared_with_blank(&one(SQUARE, r#""route":"screen-printing""#));
    let model = comparison.model("only").expect("the order has one alternative");
    let kg = bought(model, "aluminium blank") / 7.0;
    near("kg/m2", kg, 5.4864, 1e-9);
    near("kg CO2e/m2", kg * input(model, "material.aluminium-sheet.co2e"), 29.16, 0.005);
}

#[test]
fn what_the_order_counts_is_the_sheet_and_its_freight() {
    // Truck freight over 800 km adds 0.1 kg CO2e/kg: nothing else may be in the factor.
    let comparison = compared_with_blank(&one(SQUARE, r#""route":"screen-printing","with":{"freight.inbound":"0.000001 km"}"#));
    let model = comparison.model("only").expect("the order has one alternative");
    near("kg CO2e/kg", factor(model, Indicator::Co2e, "aluminium blank"), 5.315, 1e-6);
}

#[test]
fn other_tables_of_aluminium_give_their_load_of_a_square_metre() {
    // Greenhouse gases of sheet by five publications, in kg CO2e/kg, worked out per m2 of 0.080 in.
    for (per_kg, published, within) in
        [("9.18", 50.365, 0.0005), ("12.8", 70.226, 0.0005), ("1.79", 9.821, 0.0005), ("15.1", 82.845, 0.0005), ("8.2453", 45.24, 0.005)]
    {
        let with = format!(r#""freight.inbound":"0.000001 km","material.aluminium-sheet.co2e":"{per_kg} kg/kg""#);
        let comparison = compared_with_blank(&one(SQUARE, &format!(r#""route":"overlay-film","with":{{{with}}}"#)));
        let model = comparison.model("only").expect("the order has one alternative");
        let per_m2 = bought(model, "aluminium blank") / 7.0 * factor(model, Indicator::Co2e, "aluminium blank");
        near(&format!("{per_kg} kg CO2e/kg, per m2"), per_m2, published, within);
    }
}
