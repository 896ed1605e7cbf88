//! Every sentence that the program says of a pair or of an order passes its own guard, on 500 orders made up by chance.

use faceload_core::analysis::{Draws, Kept, Settings};
use faceload_core::comparison::{Comparison, compare};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, demo};
use faceload_report::claims::statement::statement;
use faceload_report::claims::{Around, check, standing_words};
use faceload_report::{differences, sureness, words};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use serde_json::{Value, json};

use crate::made_up;
use crate::shop::{self, tables};

fn drawn(comparison: &Comparison, number: usize) -> Draws {
    Draws::make(comparison, &comparison.pairs(), Settings { number, ..Settings::default() }, &mut Kept::default(), |_| true)
}

/// The order with a note at every value of the shop's own.
fn noted(text: &str) -> String {
    let mut order: Value = serde_json::from_str(text).expect("JSON");
    for alternative in order["alternative"].as_array_mut().into_iter().flatten() {
        for value in alternative["with"].as_object_mut().into_iter().flat_map(|with| with.values_mut()) {
            *value = json!({ "value": value.take(), "note": "meter, week 14", "grade": "own" });
        }
    }
    order.to_string()
}

/// What the guard says against the sentences of a comparison as they stand in a result.
fn against(comparison: &Comparison, draws: &Draws) -> Vec<String> {
    let pairs = comparison.pairs();
    let mut said: Vec<String> = sureness::answer(comparison, draws).into_iter().chain(words::answer(comparison)).collect();
    for (a, b) in pairs {
        said.extend([sureness::pair(comparison, draws, a, b), words::pair(comparison, a, b)]);
        for indicator in Indicator::ALL {
            said.extend([
                sureness::difference_of(comparison, draws, a, b, indicator),
                differences::difference(comparison, a, b, indicator),
            ]);
        }
    }
    said.extend(Indicator::ALL.map(|indicator| sureness::ranked(comparison, draws, indicator)));
    said.extend([words::conditions(comparison), standing_words().to_owned(), words::CAUTION.to_owned()]);
    said.iter().flat_map(|text| check(text, Around::Result).into_iter().map(move |one| format!("{text}\n{one}"))).collect()
}

/// Checks what a statement must hold, whichever pair and indicator.
fn is_whole(text: &str, comparison: &Comparison) -> Result<(), TestCaseError> {
    for part in [
        standing_words(),
        "under the stated assumptions",
        "kept in service",
        words::CAUTION,
        "not a public comparative assertion: no panel review",
    ] {
        prop_assert!(text.contains(part), "without `{}`: {}", part, text);
    }
    prop_assert!(text.contains(&format!("tables {}", comparison.order.tables.short())), "{}", text);
    for indicator in Indicator::ALL {
        prop_assert!(text.contains(indicator.label()), "without {}: {}", indicator.label(), text);
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, rng_seed: RngSeed::Fixed(20_261_125), ..ProptestConfig::default() })]

    #[test]
    fn on_500_orders_every_sentence_passes_the_guard(order in made_up::order(), per in 0_usize..3, blank in any::<bool>(), at in 0_usize..5) {
        let boundary = if blank { Boundary::FaceWithBlank } else { Boundary::Face };
        let Ok(comparison) = compare(tables(), &shop::order(&noted(&order.inches())), Per::ALL[per].1, boundary) else { return Ok(()) };
        let draws = drawn(&comparison, 1_000);
        prop_assert_eq!(against(&comparison, &draws), Vec::<String>::new());
        for pair in comparison.pairs().into_iter().take(4) {
            let statement = statement(&comparison, &draws, pair, Indicator::ALL[at]);
            match &statement.text {
                Some(text) => {
                    is_whole(text, &comparison)?;
                    prop_assert!(statement.why_none.is_empty());
                }
                // Nothing but what this order may lack: a shared line, the same life, a line of its own.
                None => for why in &statement.why_none {
                    let known = ["share no line", "not the same function", "makes none of these lines itself"];
                    prop_assert!(known.iter().any(|words| why.contains(words)), "{}", why);
                }
            }
        }
    }
}

#[test]
fn every_pair_of_every_demo_has_a_statement_or_shares_no_line() {
    let mut made = 0;
    for demo in demo::DEMOS {
        let comparison = compare(tables(), &shop::order(demo.text), Per::M2, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"));
        let draws = drawn(&comparison, 1_000);
        assert_eq!(against(&comparison, &draws), Vec::<String>::new(), "{}", demo.name);
        for (a, b) in comparison.pairs() {
            let one = statement(&comparison, &draws, (a, b), Indicator::Co2e);
            assert_eq!(one.text.is_some(), !comparison.shared(a, b).is_empty(), "{}: {:?} {:?}", demo.name, one.between, one.why_none);
            made += usize::from(one.text.is_some());
        }
    }
    assert!(made > 60, "{made}");
}

#[test]
fn what_is_not_clear_is_said_as_a_sentence_that_may_be_sent() {
    let comparison =
        compare(tables(), &shop::order(demo::DEMOS[0].text), Per::M2, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"));
    let draws = drawn(&comparison, 10_000);
    let place = |id: &str| comparison.models.iter().position(|model| model.alternative.id == id).expect("an alternative");
    let text = |a: &str, b: &str, indicator| statement(&comparison, &draws, (place(a), place(b)), indicator).text.expect("a statement");
    let unclear = text("screen", "film", Indicator::Co2e);
    assert!(unclear.contains("no clear difference between them: in 78 of 100 draws of our input ranges screen was lower"), "{unclear}");
    assert!(
        unclear.contains("screen was lower in waste (in more than 99 of 100); film was lower in solvent"),
        "worse beside better: {unclear}"
    );
    let clear = text("film", "digital", Indicator::Co2e);
    assert!(
        clear.contains("4.7 kg CO2e (range 3.9 to 7.2)") && clear.contains("5.8 kg CO2e (range 4.8 to 8.9)"),
        "digits follow the range: {clear}"
    );
    assert!(text("film", "direct", Indicator::Water).contains("about the same"));
}
