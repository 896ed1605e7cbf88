//! Loads: finite, not negative, the sum of their parts; mass closes.

use faceload_core::inventory::{Stage, What, gaps};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::Boundary;
use faceload_core::quantity::Kind;
use proptest::prelude::*;

use super::{balance, cases, compared, compared_as, flows, loads, stage};
use crate::{made_up, shop};

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn loads_are_finite_and_not_negative(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for model in &comparison.models {
            for part in &model.parts {
                for value in part.plan.values() {
                    prop_assert!(value.is_finite() && *value >= 0.0);
                }
                for one in part.plan.contributions.iter() {
                    for (_, per) in Per::ALL {
                        let value = model.value_of(part, one, per);
                        prop_assert!(value.is_finite() && value >= 0.0, "{} {:?}: {value}", one.label, one.indicator);
                    }
                }
            }
            for (part, flow) in flows(model) {
                let value = part.value(flow.what.terms());
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
                let per_year = model.load(indicator, Per::M2Year).value * model.m2.base();
                let year = |per| model.contributions_of(indicator, per).fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, Per::Order) / part.plan.life);
                prop_assert!((per_year - year(Per::M2Year)).abs() <= 1e-9 * per_year, "{indicator:?}: {per_year} a year");
                prop_assert!(year(Per::M2Year) >= year(Per::Order), "visits lower {indicator:?}");
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
            for part in &model.parts {
                prop_assert_eq!(gaps(&part.plan.flows, &part.activity, part.plan.values()), vec![]);
            }
            for (material, (bought, found)) in balance(model) {
                prop_assert!((bought - found).abs() <= 1e-9 * bought, "{}: {} bought, {} found again", material, bought, found);
            }
        }
    }
}

#[test]
fn a_flow_taken_away_leaves_a_gap() {
    let comparison = shop::compared(r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":100}]}"#);
    for model in &comparison.models {
        for (index, flow) in model.flows.iter().enumerate() {
            let found_again = !matches!(
                flow.what,
                What::Discarded(..) | What::Attended(_) | What::Electricity(_) | What::Heat(_) | What::Freight(_) | What::Travel(_)
            );
            let (part, value) = (&model.parts[0], shop::amount(model, flow.what.terms()));
            if found_again && value > 0.0 {
                let mut flows = model.flows.to_vec();
                flows.remove(index);
                assert!(!gaps(&flows, &part.activity, part.plan.values()).is_empty(), "{} without {}", model.alternative.id, flow.label);
            }
        }
    }
}
