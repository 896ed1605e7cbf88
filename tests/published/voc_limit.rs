//! D.C. Municipal Regulations 20-762, Table I: 3.3 lb per US gallon, printed as 396 g/L, is the most
//! VOC a screen ink may hold as applied.
//!
//! A mesh of 73, 40 and 59 um lays down 24.62 cm3/m2, so 9.75 g/m2; cyclohexanone makes that 26.2 g
//! of CO2 per m2.

use crate::shop::{compared, flow, near, one_at, part};
use faceload_core::comparison::Comparison;
use faceload_core::inventory::What;
use faceload_core::load::{Indicator, Model};

/// A square metre printed all over, all of the volume transferred, nothing spoilt.
fn square_metre(voc_rule: bool) -> Comparison {
    let line = r#""shape":"square","size":"1 m","quantity":1,"stock":false,"colours":{"red":"100 %"}"#;
    let alternative = r#""route":"screen-printing","mesh":{"opening":"73 um","thread":"40 um","fabric":"59 um"},
        "with":{"screen.ink.transfer":"1","screen.spoilage":"1e-12","screen.make-ready":"1e-12 {piece}"}"#;
    compared(&one_at(&format!(r#""voc_rule":{voc_rule}"#), line, alternative))
}

/// Grams of solvent to air of a material.
fn grams(model: &Model, material: &str) -> f64 {
    1_000.0 * flow(model, &format!("solvent of {material} to air"), |what| matches!(what, What::Evaporated(..)))
}

#[test]
fn an_ink_at_the_limit_lets_9_75_g_per_m2_evaporate() {
    let comparison = square_metre(true);
    let model = comparison.model("only").expect("the order has one alternative");
    near("g VOC/m2", grams(model, "solvent screen ink"), 9.75, 0.005);
    // Ink at the limit is not thinned.
    assert!(model.flows.iter().all(|flow| flow.label != "thinner"));
}

#[test]
fn as_cyclohexanone_that_is_26_2_g_of_co2_per_m2() {
    let comparison = square_metre(true);
    let model = comparison.model("only").expect("the order has one alternative");
    let one = part(model, Indicator::Co2e, "solvent of solvent screen ink to air");
    near("g CO2/m2", 1_000.0 * model.value_of(&model.parts[0], one, faceload_core::load::Per::Order), 26.2, 0.05);
}

#[test]
fn without_the_limit_the_ink_is_thinned_and_more_evaporates() {
    let comparison = square_metre(false);
    let model = comparison.model("only").expect("the order has one alternative");
    assert!(grams(model, "thinner") > 0.0);
    assert!(grams(model, "solvent screen ink") + grams(model, "thinner") > 9.75);
}
