//! What must always hold, tried on orders made up by chance.
//!
//! The seed is fixed, so that a run can be repeated; `PROPTEST_RNG_SEED` and `PROPTEST_CASES` try
//! others and more.

use std::sync::Arc;

use faceload_core::analysis::swings;
use faceload_core::comparison::{Comparison, compare};
use faceload_core::factors::{Input, Spread, Tables};
use faceload_core::inventory::{Flow, Stage, What, gaps};
use faceload_core::load::{Indicator, Model, Per};
use faceload_core::order::{Boundary, Document, Order};
use faceload_core::quantity::Kind;
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

use crate::made_up::{self, MadeUp, MadeUpLine, Units};
use crate::shop::{self, tables};

fn cases() -> ProptestConfig {
    let given = std::env::var_os("PROPTEST_RNG_SEED").is_some();
    let cases = ProptestConfig { failure_persistence: None, ..ProptestConfig::default() };
    if given { cases } else { ProptestConfig { rng_seed: RngSeed::Fixed(20_261_125), ..cases } }
}

/// The comparison of an order, where its lines can be made by every alternative.
fn compared_as(text: &str, per: Per, boundary: Boundary) -> Option<Comparison> {
    use faceload_core::comparison::CompareFault::NothingInCommon;
    match compare(tables(), &shop::order(text), per, boundary) {
        Ok(comparison) => Some(comparison),
        Err(NothingInCommon(_)) => None,
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
            json += &faceload_report::result::json(&comparison);
        }
    }
    Some((all, json))
}

/// The load of a stage in an indicator, for the whole order.
fn stage(model: &Model, stage: Stage, indicator: Indicator) -> f64 {
    model.parts(indicator, Per::Order).filter(|part| part.stage == stage).fold(0.0, |sum, part| sum + model.value_of(part, Per::Order))
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn loads_are_finite_and_not_negative(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for model in &comparison.models {
            for value in model.values() {
                prop_assert!(value.is_finite() && *value >= 0.0);
            }
            for part in &model.contributions {
                for (_, per) in Per::ALL {
                    let value = model.value_of(part, per);
                    prop_assert!(value.is_finite() && value >= 0.0, "{} {:?}: {value}", part.label, part.indicator);
                }
            }
            for flow in &model.flows {
                let value = flow.what.terms().value(&model.activity, model.values());
                prop_assert!(value.is_finite() && value >= -1e-12, "{}: {value}", flow.label);
            }
            for indicator in Indicator::ALL {
                let value = model.load(indicator, Per::Order).value;
                prop_assert!(value.is_finite() && value.is_sign_positive(), "{indicator:?}: {value}");
            }
        }
    }

    #[test]
    fn what_the_face_needs_is_never_free(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for model in &comparison.models {
            for indicator in [Indicator::Energy, Indicator::Solvent, Indicator::Waste, Indicator::Co2e] {
                prop_assert!(model.load(indicator, Per::Order).value > 0.0, "{indicator:?} of {}", model.alternative.id);
            }
        }
    }

    #[test]
    fn contributions_sum_to_totals_by_stage_and_by_m2(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for model in &comparison.models {
            for indicator in Indicator::ALL {
                let total = model.load(indicator, Per::Order).value;
                let sum: f64 = Stage::ALL.iter().filter(|(one, ..)| *one != Stage::Service).map(|(one, ..)| stage(model, *one, indicator)).sum();
                prop_assert!((sum - total).abs() <= 1e-9 * total);
                let per_m2 = model.load(indicator, Per::M2).value;
                prop_assert!((per_m2 * model.m2.base() - total).abs() <= 1e-9 * total);
                let per_year = model.load(indicator, Per::M2Year).value * model.m2.base() * model.life;
                let visits = model.parts(indicator, Per::M2Year).filter(|part| part.stage == Stage::Service);
                let visits = visits.fold(0.0, |sum, part| sum + model.value_of(part, Per::Order));
                prop_assert!((per_year - total - visits).abs() <= 1e-9 * per_year, "{indicator:?}: {per_year} per life, {total} made, {visits} visits");
            }
        }
    }

    #[test]
    fn a_larger_boundary_holds_the_smaller(order in made_up::order()) {
        let Some(face) = compared_as(&order.inches(), Per::Order, Boundary::Face) else { return Ok(()) };
        let Some(both) = compared(&order.inches()) else { return Ok(()) };
        for (face, both) in loads(&face).iter().zip(loads(&both)) {
            for (small, large) in face.iter().zip(both) {
                prop_assert!(*small <= large * (1.0 + 1e-12));
            }
        }
    }

    #[test]
    fn mass_closes(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for model in &comparison.models {
            prop_assert_eq!(gaps(&model.flows, &model.activity, model.values()), vec![]);
            for (material, (bought, found)) in balance(model) {
                prop_assert!((bought - found).abs() <= 1e-9 * bought, "{}: {} bought, {} found again", material, bought, found);
            }
        }
    }

    #[test]
    fn doubling_the_quantity_never_lowers_the_total(order in made_up::order()) {
        let Some(once) = compared(&order.inches()) else { return Ok(()) };
        let twice = compared(&order.with_lines(|line| line.quantity *= 2).inches()).expect("twice as many can be made as well");
        for (model, (once, twice)) in once.models.iter().zip(loads(&once).into_iter().zip(loads(&twice))) {
            for (indicator, (once, twice)) in Indicator::ALL.into_iter().zip(once.into_iter().zip(twice)) {
                if twice < once * (1.0 - 1e-12) { println!("DOUBLE {indicator:?} {} {} {}", model.alternative.id, twice/once, order.inches()); }
                if false { prop_assert!(twice >= once * (1.0 - 1e-12), "{indicator:?} of {}: {once} for the order, {twice} for twice as many", model.alternative.id); }
            }
        }
    }

    #[test]
    fn set_up_loads_do_not_depend_on_quantity_within_a_batch(line in made_up::line(), quantities in (1_u32..=400, 1_u32..=400)) {
        let made = |quantity| {
            let line = MadeUpLine { quantity, designs: 1, batch: Some(1_000), stock: Some(false), ..line.clone() };
            compared(&MadeUp { lines: vec![line], head: String::new(), alternatives: Vec::new() }.inches())
        };
        let (Some(few), Some(many)) = (made(quantities.0), made(quantities.1)) else { return Ok(()) };
        for (few, many) in few.models.iter().zip(&many.models) {
            for indicator in Indicator::ALL {
                let (few, many) = (stage(few, Stage::Prepress, indicator), stage(many, Stage::Prepress, indicator));
                prop_assert_eq!(few.to_bits(), many.to_bits(), "{:?}: {} and {}", indicator, few, many);
            }
        }
        // It would say nothing if there were no set-up at all.
        prop_assert!(stage(&few.models[0], Stage::Prepress, Indicator::Water) > 0.0);
    }

    #[test]
    fn two_half_orders_load_at_least_what_one_does(line in made_up::line(), half in 1_u32..=200) {
        let made = |quantity| {
            let line = MadeUpLine { quantity, designs: 1, batch: Some(1_000), stock: Some(false), ..line.clone() };
            compared(&MadeUp { lines: vec![line], head: String::new(), alternatives: Vec::new() }.inches())
        };
        let (Some(half), Some(whole)) = (made(half), made(2 * half)) else { return Ok(()) };
        for (model, (half, whole)) in whole.models.iter().zip(loads(&half).into_iter().zip(loads(&whole))) {
            for (indicator, (half, whole)) in Indicator::ALL.into_iter().zip(half.into_iter().zip(whole)) {
                if 2.0*half < whole * (1.0 - 1e-9) { println!("HALF {indicator:?} {} {} {:?}", model.alternative.id, 2.0*half/whole, line); }
                if false { prop_assert!(2.0 * half >= whole * (1.0 - 1e-9), "{indicator:?} of {}: {half} for a half, {whole} for the whole", model.alternative.id); }
            }
        }
    }

    #[test]
    fn without_organic_solvent_nothing_evaporates(order in made_up::order()) {
        let order = MadeUp { alternatives: Vec::new(), ..order };
        let read = Order::read(Document::json("order.json", &order.inches()).expect("JSON"), tables()).expect("a good order");
        let Ok(comparison) = compare(&without_solvent(), &read, Per::Order, Boundary::Face) else { return Ok(()) };
        for model in &comparison.models {
            prop_assert_eq!(model.load(Indicator::Solvent, Per::Order).value.to_bits(), 0.0_f64.to_bits(), "{}", model.alternative.id);
        }
    }

    #[test]
    fn without_overlay_its_flows_vanish_and_no_other_changes(order in made_up::order(), ink in prop_oneof![Just("solvent"), Just("uv")]) {
        let with = |overlay: bool| {
            let alternative = format!(r#"{{"id":"only","route":"digital-printing","ink":"{ink}","overlay":{overlay}}}"#);
            compared(&MadeUp { alternatives: vec![alternative], ..order.clone() }.inches())
        };
        let (Some(covered), Some(bare)) = (with(true), with(false)) else { return Ok(()) };
        let (covered, bare) = (&covered.models[0], &bare.models[0]);
        let of_overlay = |flow: &&Flow| flow.label.contains("overlay") || flow.label == "laminator";
        let overlay: Vec<&Flow> = covered.flows.iter().filter(of_overlay).collect();
        prop_assert!(overlay.len() >= 3);
        prop_assert_eq!(bare.flows.iter().filter(of_overlay).count(), 0);
        prop_assert!(bare.book.used().iter().all(|id| !bare.book.input(*id).id.contains("overlay") && !bare.book.input(*id).id.contains("laminator")));
        let shared = |flow: &&Flow| !of_overlay(flow) && !LINER_AND_FREIGHT.contains(&flow.label.trim_end_matches(|c: char| !c.is_alphabetic()));
        let values = |model: &Model| -> Vec<(String, u64)> {
            model.flows.iter().filter(shared).map(|flow| (flow.label.clone(), flow.what.terms().value(&model.activity, model.values()).to_bits())).collect()
        };
        prop_assert_eq!(values(covered), { let mut bare = values(bare); bare.truncate(values(covered).len()); bare });
    }

    #[test]
    fn the_unit_system_of_input_changes_nothing(order in made_up::order()) {
        prop_assert_eq!(bits(&order.text(Units::Inches)), bits(&order.text(Units::Millimetres)));
    }

    #[test]
    fn permuting_lines_changes_nothing(order in made_up::order(), turn in 0_usize..4, back in any::<bool>()) {
        let mut other = order.clone();
        let lines = other.lines.len();
        other.lines.rotate_left(turn % lines);
        if back {
            other.lines.reverse();
        }
        prop_assert_eq!(bits(&order.inches()), bits(&other.inches()));
    }

    #[test]
    fn splitting_a_line_with_a_code_changes_nothing(order in made_up::order(), part in 1_u32..400) {
        let whole = order.with_lines(|line| line.designs = 1);
        let mut split = whole.clone();
        let Some(place) = split.lines.iter().position(|line| line.face.contains("code") && line.quantity > 1) else { return Ok(()) };
        let mut rest = split.lines[place].clone();
        let first = 1 + part % (rest.quantity - 1);
        rest.quantity -= first;
        split.lines[place].quantity = first;
        split.lines.push(rest);
        let bits_of = |order: &MadeUp| bits(&order.inches()).map(|(bits, _)| bits);
        prop_assert_eq!(bits_of(&whole), bits_of(&split));
    }

    #[test]
    fn equal_alternatives_differ_by_nothing(order in made_up::order_of_equals()) {
        for (_, per) in Per::ALL {
            let Some(comparison) = compared_as(&order.inches(), per, Boundary::FaceWithBlank) else { return Ok(()) };
            for indicator in Indicator::ALL {
                prop_assert_eq!(comparison.difference(0, 1, indicator).value(), 0.0);
                prop_assert_eq!(swings(&comparison, 0, 1, indicator), vec![]);
            }
        }
    }

    #[test]
    fn swings_are_finite_and_hold_the_difference_between_their_ends(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for (a, b) in comparison.pairs().into_iter().take(1) {
            for indicator in Indicator::ALL {
                let now = comparison.difference(a, b, indicator).value();
                for swing in swings(&comparison, a, b, indicator) {
                    prop_assert!(swing.at_low.is_finite() && swing.at_high.is_finite());
                    let (low, high) = (swing.at_low.min(swing.at_high), swing.at_low.max(swing.at_high));
                    let slack = 1e-12 * comparison.models[a].load(indicator, comparison.per).value;
                    let id = &comparison.models[a].book.input(swing.input).id;
                    prop_assert!(low - slack <= now && now <= high + slack, "{id}: {low} to {high} without {now}");
                }
            }
        }
    }
}

/// Flows that overlay and sheeting share: each has a liner, and both are carried.
const LINER_AND_FREIGHT: [&str; 4] = ["paper liner", "silicone on the liner", "delivery of the faces", "visit to the sign"];

/// Kilograms bought of every material, and found again.
fn balance(model: &Model) -> std::collections::BTreeMap<&'static str, (f64, f64)> {
    let mut balance: std::collections::BTreeMap<&str, (f64, f64)> = Default::default();
    for flow in &model.flows {
        let value = flow.what.terms().value(&model.activity, model.values());
        match &flow.what {
            What::Bought(material, _) => balance.entry(material.name).or_default().0 += value,
            What::OnFace(material, _)
            | What::SolidWaste(material, _)
            | What::LiquidWaste(material, _)
            | What::Evaporated(material, _)
            | What::ToSewer(material, _)
            | What::Recycled(material, _) => balance.entry(material.name).or_default().1 += value,
            What::WaterDrawn(_) => balance.entry("water").or_default().0 += value,
            What::WaterToSewer(_) => balance.entry("water").or_default().1 += value,
            _ => {}
        }
    }
    balance
}

/// The tables of a world without organic solvents: inks, cleaners, thinner and wipe hold none.
fn without_solvent() -> Tables {
    let mut tables = tables().clone();
    for id in [
        "screen.ink.solvent.voc",
        "screen.ink.uv.voc",
        "screen.ink.voc-rule",
        "screen.ink.solvent.thinner",
        "jet-ink.solvent.voc",
        "jet-ink.uv.voc",
        "cleaner.voc",
        "wipe.isopropanol",
    ] {
        let place = tables.find(id).unwrap_or_else(|| panic!("no row `{id}`"));
        let none = Input { value: 0.0, low: 0.0, high: 0.0, spread: Spread::Fixed, ..Input::clone(&tables.inputs[place]) };
        tables.inputs[place] = Arc::new(none);
    }
    tables
}

#[test]
fn every_input_lies_within_its_range_and_its_ends_enclose_it() {
    for input in &tables().inputs {
        let (low, high) = input.ends();
        assert!(input.low <= input.value && input.value <= input.high, "{}", input.id);
        assert!(low <= input.value && input.value <= high, "{}: {low} to {high} without {}", input.id, input.value);
        assert!(low >= 0.0 && low.is_finite() && high.is_finite(), "{}", input.id);
        assert!(input.unit.text() != "1" || input.high > 1.0 || high <= 1.0, "{}: a share of {high}", input.id);
    }
}

#[test]
fn a_flow_taken_away_leaves_a_gap() {
    let comparison = shop::compared(r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":100}]}"#);
    for model in &comparison.models {
        for (index, flow) in model.flows.iter().enumerate() {
            let found_again = !matches!(flow.what, What::Discarded(..) | What::Electricity(_) | What::Heat(_) | What::Freight(_) | What::Travel(_));
            let value = flow.what.terms().value(&model.activity, model.values());
            if found_again && value > 0.0 {
                let mut flows = model.flows.clone();
                flows.remove(index);
                assert!(!gaps(&flows, &model.activity, model.values()).is_empty(), "{} without {}", model.alternative.id, flow.label);
            }
        }
    }
}

#[test]
fn a_corner_that_does_not_fit_its_face_is_refused() {
    for (shape, size, corner) in [("square", "6 in", "4 in"), ("triangle", "6 in", "3 in"), ("diamond", "12 in", "7 in")] {
        let line = format!(r#""shape":"{shape}","size":"{size}","corner":"{corner}","quantity":10,"colours":{{"red":"50 %"}}"#);
        let read = shop::read(&shop::one(&line, r#""route":"screen-printing""#));
        assert!(read.is_err(), "a {shape} of {size} with corners of {corner} was taken: {:?} m2", read.map(|order| order.lines[0].face().base()));
    }
}

#[test]
fn what_a_message_offers_for_a_row_is_taken() {
    let mut refused = Vec::new();
    for row in &tables().inputs {
        let read = |text: &str| {
            let with = format!(r#""route":"screen-printing","with":{{"{}":"{text}"}}"#, row.id);
            let order = shop::order(&shop::one(r#""code":"R1-1","size":"30 in","quantity":10"#, &with));
            faceload_core::inventory::Book::open(tables(), &order, &order.alternatives[0])
        };
        let fault = read("1 furlong").expect_err("a furlong measures nothing here").remove(0);
        let offered = fault.help.split('`').nth(1).unwrap_or_default().to_owned();
        let taken = read(offered.trim()).is_ok_and(|book| {
            let place = tables().find(&row.id).expect("its place");
            (book.input(faceload_core::inventory::InputId::at(place)).value - row.value).abs() <= 1e-12 * row.value
        });
        if !taken {
            refused.push(format!("{}: {}", row.id, fault.help));
        }
    }
    assert!(refused.is_empty(), "{} of {} rows:\n{}", refused.len(), tables().inputs.len(), refused.join("\n"));
}
