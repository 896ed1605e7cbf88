//! Quantity: more signs, more load; a set-up is spread over the signs of its batch.

use faceload_core::inventory::Stage;
use faceload_core::load::{Indicator, Model, Per};
use faceload_core::quantity::{Kind, Span};
use faceload_core::step::{LayoutPiece, lay};
use proptest::prelude::*;

use super::{balance, cases, compared, stage};
use crate::made_up::{self, MadeUp, MadeUpLine};
use crate::shop;

proptest! {
    #![proptest_config(cases())]

    // Waste is apart: a row of the roll that is filled up wastes less; see below.
    #[test]
    fn doubling_the_quantity_never_lowers_a_total_or_what_is_bought(order in made_up::order()) {
        let Some(once) = compared(&order.inches()) else { return Ok(()) };
        let twice = compared(&order.with_lines(|line| line.quantity *= 2).inches()).expect("twice as many can be made as well");
        for (once, twice) in once.models.iter().zip(&twice.models) {
            for indicator in [Indicator::Energy, Indicator::Water, Indicator::Solvent, Indicator::Co2e] {
                let (once, twice) = (once.load(indicator, Per::Order).value, twice.load(indicator, Per::Order).value);
                prop_assert!(twice >= once * (1.0 - 1e-12), "{indicator:?}: {once} for the order, {twice} for twice as many");
            }
            for ((material, (once, _)), (_, (twice, _))) in balance(once).into_iter().zip(balance(twice)) {
                prop_assert!(twice >= once * (1.0 - 1e-12), "{material}: {once} bought for the order, {twice} for twice as many");
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
        prop_assert_eq!(few.models.len(), many.models.len());
        for (few, many) in few.models.iter().zip(&many.models) {
            for indicator in Indicator::ALL {
                let (few, many) = (stage(few, Stage::Prepress, indicator), stage(many, Stage::Prepress, indicator));
                prop_assert_eq!(few.to_bits(), many.to_bits(), "{:?}: {} and {}", indicator, few, many);
            }
        }
        // It would say nothing if there were no set-up at all.
        if let Some(screen) = few.model("screen") {
            prop_assert!(stage(screen, Stage::Prepress, Indicator::Water) > 0.0);
        }
    }

    #[test]
    fn two_half_orders_load_at_least_what_one_does(line in made_up::line(), half in 1_u32..=200) {
        let made = |quantity| {
            let line = MadeUpLine { quantity, designs: 1, batch: Some(1_000), stock: Some(false), ..line.clone() };
            compared(&MadeUp { lines: vec![line], head: String::new(), alternatives: Vec::new() }.inches())
        };
        let (Some(half), Some(whole)) = (made(half), made(2 * half)) else { return Ok(()) };
        for (half, whole) in half.models.iter().zip(&whole.models) {
            for indicator in Indicator::ALL {
                let (half, whole) = (apart_from_length(half, indicator), apart_from_length(whole, indicator));
                prop_assert!(2.0 * half >= whole * (1.0 - 1e-9), "{indicator:?}: {half} for a half, {whole} for the whole");
            }
        }
    }

    #[test]
    fn two_half_orders_take_at_least_the_sheeting_of_one(width in 1_i64..=36, height in 1_i64..=36, half in 1_u64..=300, turns in any::<bool>(), gutter in 0_i64..=2) {
        let inches = |count: i64| Span::nanometres(count * 25_400_000);
        let rolls = [24, 30, 36, 48].map(inches);
        let piece = LayoutPiece { width: inches(width), height: inches(height), trim: Span::ZERO, free: Span::ZERO, gutter: inches(gutter), turns };
        let area = |count| lay(piece, count, &rolls, inches(1_800), Span::ZERO).expect("every piece fits the widest roll").area.base();
        prop_assert!(2.0 * area(half) >= area(2 * half) * (1.0 - 1e-12));
        prop_assert!(area(half + 1) >= area(half));
    }
}

/// A load without the machines that film runs through by the metre: the whole order may lie on a
/// narrower roll, which takes no more area but is longer to apply or to laminate.
fn apart_from_length(model: &Model, indicator: Indicator) -> f64 {
    let by_area = |label: &str| !["laminator", "roll applicator"].contains(&label);
    let parts = model.contributions_of(indicator, Per::Order).filter(|(_, one)| by_area(&one.label));
    parts.fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, Per::Order))
}

#[test]
fn a_second_sign_lowers_no_load_of_make_ready() {
    // One sign lies alone across the 24 in roll, two across the 30 in roll: make-ready pieces, laid
    // as the signs are, must not take less for two signs than for one.
    let loads = |quantity| {
        let order = shop::compared(&format!(
            r#"{{"schema_version":1,"line":[{{"shape":"square","size":"12.25 in","quantity":{quantity},"stock":false,"screens":"kept",
            "colours":{{"red":"5 %","blue":"5 %","black":"5 %","green":"4 %"}}}}],"alternative":[{{"id":"only","route":"screen-printing",
            "ink":"uv","drying":"uv-led","with":{{"screen.make-ready":"5 {{piece}}","screen.make-ready-on-sheeting":"1"}}}}]}}"#
        ));
        [Indicator::Energy, Indicator::Co2e].map(|indicator| order.models[0].load(indicator, Per::Order).value)
    };
    let (one, two) = (loads(1), loads(2));
    assert!(two[0] >= one[0] && two[1] >= one[1], "MJ and kg CO2e of one sign {one:?}, of two {two:?}");
}

#[test]
fn a_row_of_the_roll_that_is_filled_up_wastes_less() {
    // Four 6 in signs lie across the 24 in roll: one sign wastes three places, two waste two.
    let waste = |quantity| {
        let order = shop::compared(&format!(
            r#"{{"schema_version":1,"line":[{{"code":"R1-1","size":"6 in","quantity":{quantity},"stock":false}}]}}"#
        ));
        order.model("screen").expect("a default alternative").load(Indicator::Waste, Per::Order).value
    };
    assert!(waste(2) < waste(1) && waste(4) < waste(2) && waste(5) > waste(4));
}

#[test]
fn very_many_signs_are_counted_right_or_refused() {
    // Equal lines are one job; 5,000 lines of a million signs and designs are more than 32 bits hold.
    let line = r#"{"shape":"square","size":"12 in","quantity":1000000,"designs":1000000,"batch":1,"stock":false,"colours":{"red":"50 %"}}"#;
    let order = |lines: usize| format!(r#"{{"schema_version":1,"line":[{}]}}"#, vec![line; lines].join(","));
    let load = |comparison: &faceload_core::comparison::Comparison| comparison.models[0].load(Indicator::Co2e, Per::Order).value;
    let few = shop::compared(&order(2));
    let Ok(read) = shop::read(&order(5_000)) else { return };
    let Ok(many) = faceload_core::comparison::compare(shop::tables(), &read, Per::Order, faceload_core::order::Boundary::Face) else {
        return;
    };
    assert!((load(&many) / load(&few) / 2_500.0 - 1.0).abs() < 1e-9, "{} for 5,000 lines, {} for 2", load(&many), load(&few));
}
