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
