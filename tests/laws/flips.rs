//! Break-even, drivers, mixed plan: they agree with the comparison they are about.

use faceload_core::analysis::{Kept, Over, POINTS, Pairing, Settings, break_even, drivers, mixed, swings};
use faceload_core::comparison::{Comparison, compare};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, demo};

use crate::shop::{self, tables};

const FEW: Settings = Settings { number: 200, seed: 3, design: faceload_core::analysis::Design::LatinHypercube, threads: 1 };

fn place(comparison: &Comparison, id: &str) -> usize {
    comparison.models.iter().position(|model| model.alternative.id == id).expect("an alternative")
}

fn stop_signs(quantity: u32) -> String {
    format!(r#"{{"schema_version":1,"line":[{{"code":"R1-1","size":"30 in","quantity":{quantity},"stock":false,"screens":"new"}}]}}"#)
}

fn per_m2(text: &str) -> Comparison {
    compare(tables(), &shop::order(text), Per::M2, Boundary::Face).expect("a comparison")
}

#[test]
fn at_the_break_even_quantity_the_lesser_alternative_changes() {
    let comparison = per_m2(&stop_signs(100));
    let (a, b) = (place(&comparison, "screen"), place(&comparison, "digital"));
    for indicator in [Indicator::Co2e, Indicator::Energy] {
        let axis = Over::Quantity.axis(&comparison.order, tables(), None, POINTS).expect("an axis");
        let pairing = Pairing::of(tables(), &comparison, a, b, indicator);
        let found = break_even(&pairing, axis, FEW, &mut Kept::default(), |_| true).expect("an end");
        assert!(!found.crossings.is_empty(), "{}", indicator.id());
        for crossing in &found.crossings {
            assert_eq!(crossing.to, crossing.from + 1.0);
            let lesser = |quantity: f64| {
                let order = per_m2(&stop_signs(quantity as u32));
                order.difference(a, b, indicator).expect("a pair").value() < 0.0
            };
            assert_ne!(lesser(crossing.from), lesser(crossing.to), "{} at {}", indicator.id(), crossing.from);
            assert_eq!(lesser(crossing.to), crossing.second_less_after);
        }
        // One sign pays all set-ups, ten thousand next to none: it crosses an odd number of times.
        assert_eq!(found.crossings.len() % 2, 1);
        let spread = found.spread.expect("draws that cross");
        assert!(spread.p5 <= spread.median && spread.median <= spread.p95);
        assert!((0.0..=1.0).contains(&found.without));
    }
}

#[test]
fn the_break_even_life_makes_the_loads_per_year_equal() {
    let comparison = per_m2(&stop_signs(100));
    let (a, b) = (place(&comparison, "screen"), place(&comparison, "digital"));
    let axis = Over::Life.axis(&comparison.order, tables(), None, POINTS).expect("an axis");
    let pairing = Pairing::of(tables(), &comparison, a, b, Indicator::Co2e);
    let found = break_even(&pairing, axis, FEW, &mut Kept::default(), |_| true).expect("an end");
    let [crossing] = found.crossings[..] else { panic!("{:?}", found.crossings) };
    // Without visits: L_B = L_A load_B/load_A.
    let load = |at: usize| comparison.models[at].load(Indicator::Co2e, Per::M2).value;
    shop::near("life", crossing.from, 10.0 * load(b) / load(a), 1e-6);
}

#[test]
fn the_break_even_of_an_input_makes_the_difference_vanish() {
    let comparison = per_m2(&stop_signs(20));
    let (a, b) = (place(&comparison, "screen"), place(&comparison, "digital"));
    let mut crossed = 0;
    for swing in swings(&comparison, a, b, Indicator::Co2e).into_iter().filter(faceload_core::analysis::Swing::turns) {
        let id = comparison.models[a].book.input(swing.input).id.clone();
        let axis = Over::Input(id.clone()).axis(&comparison.order, tables(), None, 9).expect("an axis");
        let pairing = Pairing::of(tables(), &comparison, a, b, Indicator::Co2e);
        let found = break_even(&pairing, axis, FEW, &mut Kept::default(), |_| true).expect("an end");
        assert!(!found.crossings.is_empty(), "{id} turns the ranking between its ends");
        for crossing in &found.crossings {
            let (first, second) = pairing.single(&Over::Input(id.clone()), crossing.from).expect("a pair");
            assert!((second - first).abs() < 1e-6 * first, "{id}: {first} and {second}");
            crossed += 1;
        }
    }
    assert!(crossed > 0, "at twenty signs no input turns the ranking: choose another quantity");
}

#[test]
fn drivers_agree_with_the_swings_and_their_shares_with_each_other() {
    for name in ["stop", "diamonds", "guide"] {
        let comparison = shop::compared(demo::find(name).expect("a demo").text);
        for (a, b) in comparison.first_pairs() {
            let found = drivers(&comparison, a, b, Indicator::Co2e).expect("a pair");
            let single = comparison.difference(a, b, Indicator::Co2e).expect("a pair");
            shop::near("headline", found.headline, single.value(), 1e-9 * single.first);
            let swings = swings(&comparison, a, b, Indicator::Co2e);
            for row in &found.rows {
                // An input with draws of its own in each route moves both at once in a swing.
                if row.drawn.route.is_some() && comparison.models[a].alternative.route != comparison.models[b].alternative.route {
                    continue;
                }
                if let Some(swing) = swings.iter().find(|swing| comparison.models[a].book.input(swing.input).id == row.drawn.id) {
                    shop::near(&row.drawn.id, row.at_ends.0, swing.at_low, 1e-9 * single.first);
                    shop::near(&row.drawn.id, row.at_ends.1, swing.at_high, 1e-9 * single.first);
                }
                assert!(row.first <= row.total + 1e-9 && row.first > -1e-9 && row.total < 1.0 + 1e-9, "{}", row.drawn.id);
            }
            let first: f64 = found.rows.iter().map(|row| row.first).sum();
            let total: f64 = found.rows.iter().map(|row| row.total).sum();
            assert!(first <= 1.0 + 1e-9 && total >= 1.0 - 1e-9, "{name}: {first} and {total}");
            assert!(found.on_grade_d <= found.on_weak + 1e-9 && found.on_weak <= 1.0 + 1e-9);
            if let Some(share) = found.weak.turns_at {
                assert!((0.0..=1.0).contains(&share) && found.weak.at_ends * found.headline < 0.0);
            } else {
                assert!(found.weak.at_ends * found.headline >= 0.0);
            }
        }
    }
}

#[test]
fn a_mixed_plan_never_loads_more_than_the_first_alternatives() {
    for demo in demo::DEMOS {
        let comparison = shop::compared(demo.text);
        for indicator in Indicator::ALL {
            let plan = mixed(&comparison, indicator, FEW);
            assert!(plan.load <= plan.first + 1e-9 * plan.first, "{} {}", demo.name, indicator.id());
            for chosen in &plan.jobs {
                let place = comparison.places[chosen.by];
                assert_eq!(comparison.makers.of[place][chosen.job], Some(place), "who makes it can");
                assert!(!chosen.clear || chosen.load < chosen.first);
            }
        }
    }
}

#[test]
fn a_long_job_and_a_short_one_go_to_different_alternatives() {
    let comparison = shop::compared(demo::find("county").expect("the combined demo").text);
    let plan = mixed(&comparison, Indicator::Co2e, Settings { number: 2_000, ..FEW });
    let by = |label: &str| {
        let chosen = plan.jobs.iter().find(|chosen| comparison.jobs[chosen.job].line.label.starts_with(label)).expect("the job");
        comparison.models[chosen.by].alternative.id.clone()
    };
    assert_eq!(by("speed limit"), "screen");
    assert!(by("harbour trail").starts_with("digital"), "one sign of its own design: {}", by("harbour trail"));
    assert!(by("street names").starts_with("digital"), "forty designs, a screen for each colour of each: {}", by("street names"));
}
