//! When no statement may be sent: the reason and the way out.

use faceload_core::analysis::{Draws, Kept, Settings};
use faceload_core::comparison::compare;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Order};
use faceload_report::claims::statement::{FEWEST_DRAWS, Statement, statement};

use crate::program::{faceload, faceload_with};
use crate::shop::{self, tables};

fn of(order: &Order, per: Per, number: usize) -> Statement {
    let comparison = compare(tables(), order, per, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"));
    let draws = Draws::make(&comparison, &[(0, 1)], Settings { number, ..Settings::default() }, &mut Kept::default(), |_| true);
    statement(&comparison, &draws, (0, 1), Indicator::Co2e)
}

fn two(first: &str, second: &str, more: &str) -> Order {
    shop::order(&format!(
        r#"{{"schema_version":1,"name":"Tern Harbour County"{more},"line":[{{"label":"stop","code":"R1-1","size":"30 in","quantity":100}}],"alternative":[{{{first}}},{{{second}}}]}}"#
    ))
}

const FILM: &str = r#""id":"film","route":"overlay-film""#;
const PRINT: &str = r#""id":"print","route":"digital-printing""#;

#[track_caller]
fn none_because(order: &Order, per: Per, number: usize, why: &str) {
    let statement = of(order, per, number);
    assert_eq!(statement.text, None);
    assert!(statement.why_none.iter().any(|one| one.contains(why)), "{:?}", statement.why_none);
}

#[test]
fn an_own_value_without_a_note_forbids_it_and_a_note_allows_it() {
    none_because(
        &two(FILM, &format!(r#"{PRINT},"with":{{"printer.power.solvent":"1.9 kW"}}"#), ""),
        Per::M2,
        1_000,
        "print states 1.9 kW for `printer.power.solvent` without a note: nobody can tell where it comes from; write `{ value = \"1.9 kW\", note = \"meter, week 14\" }`",
    );
    let noted = format!(r#"{PRINT},"with":{{"printer.power.solvent":{{"value":"1.9 kW","note":"meter, week 14","grade":"own"}}}}"#);
    let text = of(&two(FILM, &noted, ""), Per::M2, 1_000).text.expect("a statement");
    assert!(text.contains("generic data but for printer.power.solvent"), "{text}");
}

#[test]
fn lives_that_differ_are_compared_per_year_only() {
    let order = two(FILM, &format!(r#"{PRINT},"life":"7 years""#), "");
    for per in [Per::M2, Per::Order] {
        none_because(&order, per, 1_000, "film is kept in service 10 years, print 7 years: that is not the same function");
    }
    let text = of(&order, Per::M2Year, 1_000).text.expect("a statement");
    assert!(text.starts_with("Per m2 of sign face and year, kept in service 10 years (film) and 7 years (print), face only"), "{text}");
}

#[test]
fn too_few_draws_forbid_it() {
    none_because(&two(FILM, PRINT, ""), Per::M2, FEWEST_DRAWS - 1, "999 draws are too few");
    assert!(of(&two(FILM, PRINT, ""), Per::M2, FEWEST_DRAWS).text.is_some());
}

#[test]
fn what_was_moved_by_hand_forbids_it() {
    let order = two(FILM, PRINT, "").moved_by_hand(vec![("oven.exhaust".to_owned(), 1.0)], tables());
    let moved = order.or_else(|_| {
        let row = tables().inputs.iter().find(|row| row.low < row.high).expect("a row with a range");
        two(FILM, PRINT, "").moved_by_hand(vec![(row.id.clone(), row.value)], tables())
    });
    none_because(&moved.expect("a value in its range"), Per::M2, 1_000, "was moved by hand and stands in no order");
}

#[test]
fn a_name_that_is_a_claim_forbids_it() {
    none_because(
        &two(r#""id":"eco film","route":"overlay-film""#, PRINT, ""),
        Per::M2,
        1_000,
        "`eco`: it says nothing that can be checked",
    );
    none_because(&two(FILM, PRINT, r#","reviewers":["an accredited office"]"#), Per::M2, 1_000, "`accredited`: nobody outside");
    let reviewed = of(&two(FILM, PRINT, r#","reviewers":["A. Reader, Tern Harbour County"]"#), Per::M2, 1_000).text.expect("a statement");
    assert!(
        reviewed.contains("Reviewers, as stated by the user and not checked here: A. Reader, Tern Harbour County. For internal decisions"),
        "{reviewed}"
    );
}

#[test]
fn reviewers_are_printed_under_every_result_as_stated_by_the_user() {
    let text = r#"{"schema_version":1,"reviewers":["A. Reader, Tern Harbour County","A. Reader, Tern Harbour County"],"line":[{"code":"R1-1","size":"30 in","quantity":9}]}"#;
    let line = "Reviewers, as stated by the user and not checked here: A. Reader, Tern Harbour County.";
    let ran = faceload_with(&["compare", "-"], text.as_bytes(), &[]);
    assert!(ran.result.contains(line), "{}", ran.result);
    let json = faceload_with(&["compare", "-", "--json"], text.as_bytes(), &[]);
    assert!(json.result.contains(r#""reviewers_stated_by_user": ["#), "{}", json.result);
    assert!(!faceload(&["compare", "stop"]).result.contains("Reviewers"));
}
