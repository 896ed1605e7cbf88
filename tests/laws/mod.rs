//! What must always hold, tried on orders made up by chance.
//!
//! The seed is fixed, so that a run can be repeated; `PROPTEST_RNG_SEED` and `PROPTEST_CASES` try
//! others and more.

mod areas;
mod draws;
mod flips;
mod inputs;
mod jobs;
mod loads;
mod moved;
mod pairs;
mod quantity;
mod rows;
mod sameness;

use std::collections::BTreeMap;

use faceload_core::comparison::{Comparison, compare};
use faceload_core::inventory::{Flow, Stage, What};
use faceload_core::load::{Indicator, Model, Part, Per};
use faceload_core::order::Boundary;
use proptest::prelude::ProptestConfig;
use proptest::test_runner::RngSeed;

use crate::shop::{self, tables};

fn cases() -> ProptestConfig {
    let given = std::env::var_os("PROPTEST_RNG_SEED").is_some();
    let cases = ProptestConfig { failure_persistence: None, ..ProptestConfig::default() };
    if given { cases } else { ProptestConfig { rng_seed: RngSeed::Fixed(20_261_125), ..cases } }
}

/// The comparison of an order, where any alternative can make any line of it.
fn compared_as(text: &str, per: Per, boundary: Boundary) -> Option<Comparison> {
    use faceload_core::comparison::CompareFault::NothingMade;
    match compare(tables(), &shop::order(text), per, boundary) {
        Ok(comparison) => Some(comparison),
        Err(NothingMade(_)) => None,
        Err(fault) => panic!("{fault:?}\n{text}"),
    }
}

fn compared(text: &str) -> Option<Comparison> {
    compared_as(text, Per::Order, Boundary::FaceWithBlank)
}

/// Every alternative's load in every indicator.
fn loads(comparison: &Comparison) -> Vec<[f64; 5]> {
    comparison.models.iter().map(|model| Indicator::ALL.map(|indicator| model.load(indicator, comparison.per).value)).collect()
}

/// The same to the last bit, per order, per m2 and per m2 and year, with and without the blank, and as JSON.
fn bits(text: &str) -> Option<(Vec<[u64; 5]>, String)> {
    let mut all = Vec::new();
    let mut json = String::new();
    for (_, per) in Per::ALL {
        for boundary in [Boundary::Face, Boundary::FaceWithBlank] {
            let comparison = compared_as(text, per, boundary)?;
            all.extend(loads(&comparison).iter().map(|loads| loads.map(f64::to_bits)));
            // The draws take their time; one form of the text stands for all.
            if json.is_empty() {
                json = shop::json(&comparison, None);
            }
        }
    }
    Some((all, json))
}

/// The load of a stage in an indicator, for the whole order.
fn stage(model: &Model, stage: Stage, indicator: Indicator) -> f64 {
    let of_stage = model.contributions_of(indicator, Per::Order).filter(|(_, one)| one.stage == stage);
    of_stage.fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, Per::Order))
}

/// Every flow with the part of the order that it is of.
fn flows(model: &Model) -> impl Iterator<Item = (&Part, &Flow)> {
    model.parts.iter().flat_map(|part| part.plan.flows.iter().map(move |flow| (part, flow)))
}

/// Kilograms bought of every material, and found again.
fn balance(model: &Model) -> BTreeMap<&'static str, (f64, f64)> {
    let mut balance: BTreeMap<&str, (f64, f64)> = BTreeMap::new();
    for (part, flow) in flows(model) {
        let value = part.value(flow.what.terms());
        match &flow.what {
            What::Bought(material, _) => balance.entry(material.name).or_default().0 += value,
            What::OnFace(material, _)
            | What::SolidWaste(material, _)
            | What::LiquidWaste(material, _)
            | What::Evaporated(material, _)
            | What::Dried(material, _)
            | What::ToSewer(material, _)
            | What::Recycled(material, _) => balance.entry(material.name).or_default().1 += value,
            What::WaterDrawn(_) => balance.entry("water").or_default().0 += value,
            What::WaterToSewer(_) => balance.entry("water").or_default().1 += value,
            _ => {}
        }
    }
    balance
}
