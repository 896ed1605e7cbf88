//! What must change nothing: units, the order of lines, one line as two, an equal alternative, a
//! step that is not taken.

use std::sync::Arc;

use faceload_core::analysis::swings;
use faceload_core::comparison::compare;
use faceload_core::factors::{Input, Legend, Spread, Tables};
use faceload_core::inventory::Flow;
use faceload_core::load::{Indicator, Model, Per};
use faceload_core::order::Boundary;
use proptest::prelude::*;

use super::{bits, cases, compared, compared_as};
use crate::made_up::{self, MadeUp, Units};
use crate::shop::{self, tables};

proptest! {
    #![proptest_config(cases())]

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
        let Some(place) = split.lines.iter().position(|line| one_legend(&line.face) && line.quantity > 1) else { return Ok(()) };
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
            let equals = ["way 1", "way 2"].map(|id| comparison.models.iter().position(|model| model.alternative.id == id));
            // Neither makes anything, where one does not.
            let [Some(first), Some(second)] = equals else {
                prop_assert_eq!(equals, [None, None]);
                return Ok(());
            };
            for indicator in Indicator::ALL {
                let difference = comparison.difference(first, second, indicator).map(|difference| difference.value());
                prop_assert_eq!(difference, Some(0.0));
                prop_assert_eq!(swings(&comparison, first, second, indicator), vec![]);
            }
        }
    }

    #[test]
    fn swings_are_finite_and_hold_the_difference_between_their_ends(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for (a, b) in comparison.pairs().into_iter().take(1) {
            for indicator in Indicator::ALL {
                let Some(now) = comparison.difference(a, b, indicator) else { continue };
                let now = now.value();
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

    #[test]
    fn without_organic_solvent_nothing_evaporates(order in made_up::order()) {
        let order = MadeUp { alternatives: made_up::every_way(), ..order };
        let Ok(comparison) = compare(&without_solvent(), &shop::order(&order.inches()), Per::Order, Boundary::Face) else { return Ok(()) };
        for model in &comparison.models {
            prop_assert_eq!(model.load(Indicator::Solvent, Per::Order).value.to_bits(), 0.0_f64.to_bits(), "{}", model.alternative.id);
        }
    }

    #[test]
    fn without_overlay_its_flows_vanish_and_no_other_changes(order in made_up::order(), ink in prop_oneof![Just("solvent"), Just("uv"), Just("resin")]) {
        let with = |overlay: bool| {
            let alternative = format!(r#"{{"id":"only","route":"digital-printing","ink":"{ink}","overlay":{overlay}}}"#);
            compared(&MadeUp { alternatives: vec![alternative], ..order.clone() }.inches())
        };
        let (Some(covered), Some(bare)) = (with(true), with(false)) else { return Ok(()) };
        let (covered, bare) = (&covered.models[0], &bare.models[0]);
        let of_overlay = |flow: &&Flow| flow.label.contains("overlay") || flow.label.starts_with("laminat");
        let overlay: Vec<&Flow> = covered.flows.iter().filter(of_overlay).collect();
        prop_assert!(overlay.len() >= 3);
        prop_assert_eq!(bare.flows.iter().filter(of_overlay).count(), 0);
        prop_assert!(bare.book.used().iter().all(|id| !bare.book.input(*id).id.contains("overlay") && !bare.book.input(*id).id.contains("laminator")));
        let shared = |flow: &&Flow| !of_overlay(flow) && !OF_BOTH.contains(&flow.label.as_str());
        let values = |model: &Model| -> Vec<(String, u64)> {
            model.flows.iter().filter(shared).map(|flow| (flow.label.clone(), shop::amount(model, flow.what.terms()).to_bits())).collect()
        };
        prop_assert_eq!(values(covered), values(bare));
    }
}

/// Whether a face is that of a code whose signs all show the same: street names do not.
fn one_legend(face: &str) -> bool {
    tables().signs.iter().any(|(code, sign)| face == format!(r#""code":"{code}""#) && sign.legend != Legend::Each)
}

/// The tables of a world without organic solvents: inks, cleaners, thinner and wipe hold none.
fn without_solvent() -> Tables {
    let mut tables = tables().clone();
    let more = ["screen.ink.voc-rule", "screen.ink.solvent.thinner", "wipe.isopropanol"];
    let of_solvent = |id: &str| id.ends_with(".voc") || more.contains(&id);
    let places: Vec<usize> = (0..tables.inputs.len()).filter(|place| of_solvent(&tables.inputs[*place].id)).collect();
    assert_eq!(places.len(), 10, "three screen inks, three jet inks, cleaner, VOC rule, thinner, wipe");
    for place in places {
        let none = Input { value: 0.0, low: 0.0, high: 0.0, spread: Spread::Fixed, ..Input::clone(&tables.inputs[place]) };
        tables.inputs[place] = Arc::new(none);
    }
    tables
}

/// Flows that overlay and sheeting share: both are carried.
const OF_BOTH: [&str; 1] = ["delivery of the faces"];
