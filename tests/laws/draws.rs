//! Draws: about the headline, paired, the same however they are made, and never of what is fixed.

use faceload_core::analysis::{Columns, Design, Draws, Interval, Kept, Moments, PairSpread, Program, Settings, load};
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::order::demo;

use crate::shop;

fn drawn(comparison: &Comparison, settings: Settings) -> Draws {
    Draws::make(comparison, &comparison.pairs(), settings, &mut Kept::default(), |_| true)
}

fn demos() -> impl Iterator<Item = (&'static str, Comparison)> {
    demo::DEMOS.iter().map(|demo| (demo.name, shop::compared(demo.text)))
}

#[test]
fn with_every_input_at_its_median_the_products_come_to_the_load() {
    for (name, comparison) in demos() {
        for model in &comparison.models {
            for indicator in Indicator::ALL {
                let mut columns = Columns::default();
                let mut program = Program::default();
                program.push(model, &[indicator], comparison.per, &mut columns);
                let medians: Vec<[f64; 1]> = columns.medians().into_iter().map(|median| [median]).collect();
                let medians: Vec<&[f64]> = medians.iter().map(<[f64; 1]>::as_slice).collect();
                let mut out = vec![Vec::new()];
                program.run(&medians, 1, &mut out);
                let (found, wanted) = (out[0][0], model.load(indicator, comparison.per).value);
                assert!((found - wanted).abs() <= 1e-11 * wanted.abs(), "{name} {}: {found} for {wanted}", model.alternative.id);
            }
        }
    }
}

#[test]
fn loads_are_finite_and_not_negative_in_every_draw() {
    for (name, comparison) in demos() {
        let draws = drawn(&comparison, Settings::default());
        for at in 0..comparison.models.len() {
            for indicator in Indicator::ALL {
                let loads = draws.load(&comparison, at, indicator);
                assert_eq!(loads.len(), 10_000);
                assert!(loads.iter().all(|load| load.is_finite() && *load >= 0.0), "{name} {}", indicator.id());
            }
        }
    }
}

#[test]
fn equal_alternatives_differ_by_nothing_in_every_draw() {
    let text = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":100}],
        "alternative":[{"id":"a","route":"digital-printing"},{"id":"b","route":"digital-printing"}]}"#;
    let comparison = shop::compared(text);
    let draws = drawn(&comparison, Settings::default());
    for indicator in Indicator::ALL {
        let pair = draws.pair(&comparison, 0, 1, indicator).expect("a pair");
        assert!(pair.differences().iter().all(|one| *one == 0.0), "{}", indicator.id());
        let spread = PairSpread::of(&comparison, &draws, 0, 1, indicator).expect("a pair");
        assert_eq!(spread.first_less, 0.5);
    }
}

#[test]
fn threads_seeds_and_pairs_keep_their_promise() {
    let comparison = shop::compared(demo::DEMOS[0].text);
    let settings = Settings { number: 3_000, ..Settings::default() };
    let all = |settings: Settings| -> Vec<u64> {
        let draws = drawn(&comparison, settings);
        let of = |at: usize, indicator| draws.load(&comparison, at, indicator).iter().map(|load| load.to_bits()).collect::<Vec<_>>();
        (0..comparison.models.len())
            .flat_map(|at| Indicator::ALL.into_iter().flat_map(move |indicator| of(at, indicator)).collect::<Vec<_>>())
            .collect()
    };
    let one = all(settings);
    assert_eq!(one, all(Settings { threads: 2, ..settings }), "two threads");
    assert_eq!(one, all(Settings { threads: 8, ..settings }), "eight threads");
    assert_ne!(one, all(Settings { seed: 2, ..settings }), "another seed");
    assert_ne!(one, all(Settings { design: Design::Plain, ..settings }), "another design");
}

#[test]
fn an_input_more_leaves_the_draws_of_all_others_alone() {
    // An overridden input is not drawn: the others' draws stay, so that what does not hold it keeps its bits.
    let drawn_with = |with: &str| {
        let text = format!(
            r#"{{"schema_version":1,"line":[{{"code":"R1-1","size":"30 in","quantity":100}}],
            "alternative":[{{"id":"only","route":"digital-printing","with":{{{with}}}}}]}}"#
        );
        let comparison = shop::compared(&text);
        let draws = drawn(&comparison, Settings { number: 2_000, ..Settings::default() });
        draws.load(&comparison, 0, Indicator::Solvent).to_vec()
    };
    assert_eq!(drawn_with(""), drawn_with(r#""overlay.mass":"0.09 kg/m2""#));
    assert_ne!(drawn_with(""), drawn_with(r#""printer.ink-volume":"12 mL/m2""#));
}

#[test]
fn the_closed_form_agrees_with_draws() {
    for (name, comparison) in demos().filter(|(name, _)| ["stop", "guide", "custom"].contains(name)) {
        let settings = Settings { number: 100_000, ..Settings::default() };
        let draws = Draws::make(&comparison, &[], settings, &mut Kept::default(), |_| true);
        for (at, model) in comparison.models.iter().enumerate() {
            for indicator in Indicator::ALL {
                let mut columns = Columns::default();
                let sum = load(model, indicator, comparison.per, &mut columns);
                let exact = Moments::of(&sum, &columns).variance();
                let loads = draws.load(&comparison, at, indicator);
                let mean = loads.iter().sum::<f64>() / loads.len() as f64;
                let variance = loads.iter().map(|load| (load - mean) * (load - mean)).sum::<f64>() / loads.len() as f64;
                assert!(
                    (mean - exact.mean).abs() <= 0.01 * exact.mean + 1e-12,
                    "{name} {} {}: mean {mean}, {}",
                    model.alternative.id,
                    indicator.id(),
                    exact.mean
                );
                assert!(
                    (variance - exact.variance).abs() <= 0.15 * exact.variance + 1e-12,
                    "{name} {} {}: variance {variance}, {}",
                    model.alternative.id,
                    indicator.id(),
                    exact.variance
                );
                let sum_of_first: f64 = exact.shares.values().map(|(first, _)| first).sum();
                assert!(exact.variance == 0.0 || (0.3..1.0 + 1e-9).contains(&sum_of_first), "{sum_of_first}");
                assert!(exact.shares.values().all(|(first, total)| *first <= total + 1e-9 && *first >= -1e-9));
            }
        }
    }
}

#[test]
fn twice_the_draws_are_about_the_same_interval() {
    let comparison = shop::compared(demo::DEMOS[0].text);
    let interval = |number| {
        let draws = Draws::make(&comparison, &[], Settings { number, ..Settings::default() }, &mut Kept::default(), |_| true);
        Interval::of(draws.load(&comparison, 0, Indicator::Co2e))
    };
    let (few, many) = (interval(10_000), interval(40_000));
    assert!((few.p5 / many.p5 - 1.0).abs() < 0.02 && (few.p95 / many.p95 - 1.0).abs() < 0.03, "{few:?} {many:?}");
}

#[test]
fn work_that_is_stopped_says_how_far_it_came() {
    let comparison = shop::compared(demo::DEMOS[0].text);
    let mut heard = Vec::new();
    let settings = Settings { number: 50_000, ..Settings::default() };
    let draws = Draws::make(&comparison, &[], settings, &mut Kept::default(), |done| {
        heard.push(done);
        done < 20_000
    });
    assert_eq!(heard, [10_000, 20_000]);
    assert_eq!((draws.settings.number, draws.asked), (20_000, 50_000));
    assert_eq!(draws.load(&comparison, 0, Indicator::Co2e).len(), 20_000);
    assert!(faceload_report::sureness::drawn(&draws).contains(" 20\u{202f}000 draws of 50\u{202f}000 asked for of "));
}

#[test]
fn ten_thousand_equal_lines_are_drawn_as_one() {
    let line = r#"{"code":"R1-1","size":"30 in","quantity":1}"#;
    let order = |lines: usize| format!(r#"{{"schema_version":1,"line":[{}]}}"#, vec![line; lines].join(","));
    let steps = |text: &str| {
        let comparison = shop::compared(text);
        let mut columns = Columns::default();
        let mut program = Program::default();
        for model in &comparison.models {
            program.push(model, &Indicator::ALL, comparison.per, &mut columns);
        }
        (program.steps(), columns.list().len())
    };
    // A thing counted once or twice may share a step with another by chance; lines add none.
    let ((one, inputs), (many, same)) = (steps(&order(1)), steps(&order(10_000)));
    assert_eq!(inputs, same);
    assert!(one.abs_diff(many) <= one / 100, "{one} steps for one line, {many} for ten thousand");
}
