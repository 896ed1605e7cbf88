//! Pairs and `otherwise`: who makes what for whom, on which lines two alternatives are compared.

use faceload_core::comparison::Comparison;
use faceload_core::load::{Indicator, Model, Per};
use faceload_core::order::Boundary;
use faceload_core::quantity::Kind;
use proptest::prelude::*;

use super::{cases, compared, compared_as};
use crate::{made_up, shop};

/// What an alternative makes itself, of all jobs.
fn makes(comparison: &Comparison, place: usize) -> Vec<usize> {
    let dropped = |job: &usize| comparison.makers.dropped.iter().any(|one| one.alternative == place && one.job == *job);
    (0..comparison.jobs.len()).filter(|job| !dropped(job)).collect()
}

/// Follows `otherwise` by hand: the place that makes a job for an alternative.
fn maker(comparison: &Comparison, place: usize, job: usize) -> Option<usize> {
    let mut at = place;
    for _ in 0..comparison.plans.len() {
        if makes(comparison, at).contains(&job) {
            return Some(at);
        }
        let next = comparison.plans[at].alternative.otherwise.clone()?;
        at = comparison.plans.iter().position(|plan| plan.alternative.id == next)?;
    }
    panic!("a chain that comes back was taken");
}

fn load(model: &Model, indicator: Indicator) -> f64 {
    model.load(indicator, Per::Order).value
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn whatever_the_otherwise_can_make_is_made(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for place in 0..comparison.plans.len() {
            for job in 0..comparison.jobs.len() {
                prop_assert_eq!(comparison.makers.of[place][job], maker(&comparison, place, job));
            }
        }
        // Whoever makes nothing is left out, and nobody else.
        let making: Vec<usize> = (0..comparison.plans.len()).filter(|place| (0..comparison.jobs.len()).any(|job| maker(&comparison, *place, job).is_some())).collect();
        prop_assert_eq!(&comparison.places, &making);
    }

    #[test]
    fn the_parts_of_a_model_are_its_jobs_each_once_and_their_square_metres(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for (model, place) in comparison.models.iter().zip(&comparison.places) {
            let asked = if comparison.common.is_empty() { comparison.makers.common(&[*place]) } else { comparison.common.clone() };
            let mut jobs: Vec<usize> = model.parts.iter().flat_map(|part| part.jobs.clone()).collect();
            jobs.sort_unstable();
            prop_assert_eq!(&jobs, &asked);
            prop_assert!((model.m2.base() - comparison.m2_of(&asked)).abs() <= 1e-9 * model.m2.base());
            prop_assert_eq!(&model.parts[0].plan.alternative.id, &comparison.plans[*place].alternative.id);
            for part in &model.parts {
                let by = comparison.plans.iter().position(|plan| plan.alternative.id == part.plan.alternative.id);
                prop_assert!(part.jobs.iter().all(|job| comparison.makers.of[*place][*job] == by));
            }
        }
        // All jobs together are the faces of all lines.
        let all: Vec<usize> = (0..comparison.jobs.len()).collect();
        let faces: f64 = comparison.order.lines.iter().map(|line| line.face().base() * f64::from(line.quantity) * f64::from(line.sides)).sum();
        prop_assert!((comparison.m2_of(&all) - faces).abs() <= 1e-9 * faces);
        prop_assert_eq!(comparison.lines_of(&all), comparison.order.lines.len());
    }

    #[test]
    fn a_pair_is_compared_on_the_jobs_both_make_and_on_no_other(order in made_up::order()) {
        let Some(comparison) = compared_as(&order.inches(), Per::Order, Boundary::Face) else { return Ok(()) };
        for (a, b) in comparison.pairs() {
            let both: Vec<usize> = (0..comparison.jobs.len())
                .filter(|job| [a, b].iter().all(|one| maker(&comparison, comparison.places[*one], *job).is_some()))
                .collect();
            prop_assert_eq!(&comparison.shared(a, b), &both);
            let Some((first, second)) = comparison.of_pair(a, b) else {
                prop_assert!(both.is_empty() && Indicator::ALL.iter().all(|indicator| comparison.difference(a, b, *indicator).is_none()));
                continue;
            };
            prop_assert!(!both.is_empty());
            for model in [&first, &second] {
                let mut jobs: Vec<usize> = model.parts.iter().flat_map(|part| part.jobs.clone()).collect();
                jobs.sort_unstable();
                prop_assert_eq!(&jobs, &both);
            }
            for indicator in Indicator::ALL {
                let difference = comparison.difference(a, b, indicator).expect("they share a job");
                prop_assert_eq!((difference.first, difference.second), (load(&first, indicator), load(&second, indicator)));
            }
        }
    }

    #[test]
    fn a_difference_turned_round_is_its_opposite(order in made_up::order()) {
        use faceload_core::comparison::Verdict;
        for (_, per) in Per::ALL {
            let Some(comparison) = compared_as(&order.inches(), per, Boundary::FaceWithBlank) else { return Ok(()) };
            for (a, b) in comparison.pairs() {
                for indicator in Indicator::ALL {
                    let (Some(there), Some(back)) = (comparison.difference(a, b, indicator), comparison.difference(b, a, indicator)) else {
                        prop_assert!(comparison.shared(a, b).is_empty());
                        continue;
                    };
                    prop_assert_eq!(there.value(), -back.value());
                    // With lives that differ, the threshold per m2 and year is that of the first.
                    if per != Per::M2Year {
                        let turned = match back.verdict {
                            Verdict::FirstLess => Verdict::SecondLess,
                            Verdict::SecondLess => Verdict::FirstLess,
                            Verdict::AboutTheSame => Verdict::AboutTheSame,
                        };
                        prop_assert_eq!(there.verdict, turned, "{:?} of {} and {}", indicator, a, b);
                    }
                }
            }
        }
    }

    #[test]
    fn every_pair_stands_once(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        let count = comparison.models.len();
        let mut pairs: Vec<(usize, usize)> = comparison.pairs().into_iter().map(|(a, b)| (a.min(b), a.max(b))).collect();
        pairs.sort_unstable();
        let all: Vec<(usize, usize)> = (0..count).flat_map(|a| (a + 1..count).map(move |b| (a, b))).collect();
        prop_assert_eq!(pairs, all);
    }

    #[test]
    fn a_model_is_the_sum_of_its_jobs(order in made_up::order()) {
        let Some(comparison) = compared(&order.inches()) else { return Ok(()) };
        for (model, place) in comparison.models.iter().zip(&comparison.places) {
            let jobs: Vec<usize> = model.parts.iter().flat_map(|part| part.jobs.clone()).collect();
            for indicator in Indicator::ALL {
                let apart: f64 = jobs.iter().map(|job| load(&comparison.model_on(*place, &[*job]), indicator)).sum();
                let together = load(model, indicator);
                prop_assert!((apart - together).abs() <= 1e-9 * together.max(1e-9), "{indicator:?}: {apart} apart, {together} together");
            }
        }
    }

    #[test]
    fn a_chain_that_comes_back_is_refused(count in 1_usize..=6, from in 0_usize..6, back in 0_usize..6) {
        let (from, back) = (from % count, back % (from % count + 1));
        // Each of the first hands on to the next; the one at `from` hands back to one before it, or to itself.
        let order = |comes_back: bool| {
            let ways = (0..count).map(|index| {
                let next = if index == from { Some(back).filter(|_| comes_back) } else { Some(index + 1).filter(|_| index < from) };
                let otherwise = next.map_or(String::new(), |next| format!(r#","otherwise":"way {}""#, next + 1));
                format!(r#"{{"id":"way {}","route":"overlay-film"{otherwise}}}"#, index + 1)
            });
            let ways: Vec<String> = ways.collect();
            format!(r#"{{"schema_version":1,"line":[{{"code":"R1-1","size":"30 in","quantity":1}}],"alternative":[{}]}}"#, ways.join(","))
        };
        prop_assert!(shop::read(&order(false)).is_ok());
        let faults = shop::read(&order(true)).expect_err("it leads back");
        prop_assert!(faults.iter().all(|fault| fault.field.ends_with(".otherwise")), "{faults:?}");
        prop_assert!(faults.iter().any(|fault| fault.field == format!("alternative[{}].otherwise", from + 1)), "{faults:?}");
    }

    #[test]
    fn shared_artwork_never_takes_more(line in made_up::line(), designs in 2_u32..=40) {
        let made = |shared: &str| {
            let mut line = made_up::MadeUpLine { quantity: 200, designs, stock: Some(false), ..line.clone() };
            line.rest = line.rest.split(r#","shared_colours""#).next().unwrap_or_default().to_owned() + shared;
            let alternative = r#"{"id":"screen","route":"screen-printing","ink":"uv"}"#.to_owned();
            compared(&made_up::MadeUp { lines: vec![line], head: String::new(), alternatives: vec![alternative] }.inches())
        };
        let (Some(apart), Some(shared)) = (made(""), made(r#","shared_colours":["red","black","green","yellow"]"#)) else { return Ok(()) };
        for indicator in Indicator::ALL {
            let (apart, shared) = (load(&apart.models[0], indicator), load(&shared.models[0], indicator));
            prop_assert!(shared <= apart * (1.0 + 1e-12), "{indicator:?}: {shared} shared, {apart} apart");
        }
    }
}

#[test]
fn what_otherwise_makes_is_made_as_that_alternative_makes_it() {
    // A sign too large for the screen table, and one that fits.
    let order = |lines: &str| {
        format!(
            r#"{{"schema_version":1,"line":[{lines}],"alternative":[{{"id":"screen","route":"screen-printing","otherwise":"film"}},{{"id":"film","route":"overlay-film"}}]}}"#
        )
    };
    let small = r#"{"code":"R1-1","size":"30 in","quantity":10}"#;
    let large = r#"{"shape":"rectangle","size":"42 x 60 in","quantity":10,"colours":{"red":"40 %"}}"#;
    let both = shop::compared(&order(&format!("{small},{large}")));
    let (one, other) = (shop::compared(&order(small)), shop::compared(&order(large)));
    let model = both.model("screen").expect("it makes both");
    assert_eq!(model.parts.len(), 2);
    for indicator in Indicator::ALL {
        let of = |comparison: &Comparison, id: &str| load(comparison.model(id).expect("it makes the line"), indicator);
        let sum = of(&one, "screen") + of(&other, "film");
        shop::near(indicator.id(), of(&both, "screen"), sum, 1e-9 * sum);
        assert_eq!(of(&other, "screen").to_bits(), of(&other, "film").to_bits(), "{indicator:?}");
    }
}
