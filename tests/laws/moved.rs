//! A comparison whose values were moved by hand is the one that is made anew, in all it holds.

use faceload_core::analysis::swings_of;
use faceload_core::comparison::compare;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, demo};

use crate::shop::{order, tables};

#[test]
fn moving_a_value_gives_what_making_it_anew_gives() {
    let mut tried = 0;
    for demo in demo::DEMOS.iter().filter(|demo| demo.name != "county") {
        let still = compare(tables(), &order(demo.text), Per::M2Year, Boundary::FaceWithBlank).expect("a comparison");
        let mut before = still.moved(tables(), &[]).expect("no formula depends on it").expect("a comparison");
        // Few, since all that a comparison holds is set side by side.
        for (turn, swing) in swings_of(&still, 0, 1, Indicator::Co2e, |_| true).iter().step_by(19).enumerate() {
            let id = still.models[0].book.input(swing.input).id.clone();
            let end = if turn % 2 == 0 { swing.ends.0 } else { swing.ends.1 };
            let moved = vec![(id.clone(), end)];
            let quick = before.moved(tables(), &moved).expect("no formula depends on it").expect("a comparison");
            let moved_order = order(demo.text).moved_by_hand(moved, tables()).expect("within its range");
            let anew = compare(tables(), &moved_order, Per::M2Year, Boundary::FaceWithBlank).expect("a comparison");
            assert_eq!(format!("{quick:?}"), format!("{anew:?}"), "{}: {id} at {end}", demo.name);
            before = quick;
            tried += 1;
        }
    }
    assert!(tried >= 20, "only {tried} were tried");
}
