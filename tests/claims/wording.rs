//! The wording guard: an allowed and a refused sentence for every clause, and words that only look like claims.

use faceload_report::claims::{Around, RULES, Seen, check};

fn refusals(text: &str) -> Vec<String> {
    check(text, Around::Alone(&[])).iter().map(ToString::to_string).collect()
}

#[track_caller]
fn passes(text: &str) {
    assert_eq!(refusals(text), Vec::<String>::new(), "{text}");
}

#[track_caller]
fn is_refused(text: &str) {
    assert!(!refusals(text).is_empty(), "{text}");
}

#[test]
fn every_clause_refuses_its_sentence_and_allows_the_other() {
    for rule in &RULES {
        let place = format!("{}, {}", rule.document, rule.place);
        let by: Vec<&str> = check(rule.refused, Around::Alone(&[])).iter().map(|one| one.rule.place).collect();
        assert!(by.contains(&rule.place), "{place}: `{}` is refused by {by:?}", rule.refused);
        let names: &[&str] = if rule.allowed.contains(" of film ") { &["film", "digital"] } else { &[] };
        let against: Vec<String> = check(rule.allowed, Around::Alone(names)).iter().map(ToString::to_string).collect();
        assert!(against.is_empty(), "{place}: `{}`: {against:?}", rule.allowed);
    }
}

#[test]
fn every_clause_says_why_and_the_way_out_and_whether_it_was_seen() {
    for rule in &RULES {
        for words in [rule.document, rule.place, rule.asks, rule.reason, rule.way_out] {
            assert!(words.len() > 2 && words.trim() == words && !words.ends_with('.'), "{}: `{words}`", rule.place);
        }
    }
    for document in ["ISO 14021:2016", "ISO 14026:2017", "ISO 14044:2006", "16 CFR 260 of 11 October 2012", "(EU) 2024/825"] {
        assert!(RULES.iter().any(|rule| rule.document.contains(document)), "{document}");
    }
    assert!(RULES.iter().any(|rule| rule.seen == Seen::Memory), "clauses from memory say so");
}

#[test]
fn a_refusal_says_where_what_why_and_the_way_out() {
    assert_eq!(
        refusals("Our sustainable route."),
        [
            "`sustainable`: no method shows sustainability, and five indicators do not (ISO 14021:2016 with A1:2021, 5.5; seen through an excerpt); \
             say what was reckoned: a load in an indicator"
        ]
    );
}

#[test]
fn green_is_a_colour_of_film_and_sign_and_else_a_claim() {
    for text in [
        "Green film on white sheeting.",
        "The guide signs are green and white.",
        "White copy on green sheeting.",
        "24 green guide signs.",
        "Fluorescent yellow-green sheeting.",
        "White on green.",
        "Green direct-applied sheeting.",
        "The green retroreflective film is cut.",
    ] {
        passes(text);
    }
    for text in ["Our signs are green.", "Green printing.", "Go green signs.", "Our green signs.", "A greener film.", "Think green. Film."]
    {
        is_refused(text);
    }
}

#[test]
fn a_denial_is_no_endorsement_and_half_a_denial_is_none() {
    for text in
        ["Not verified by a third party.", "Nothing here is a statement of conformity, certification or durability.", "No panel review."]
    {
        passes(text);
    }
    for text in [
        "Not only verified, but certified.",
        "It is not expensive and certified.",
        "No doubt certified.",
        "Not verified by us; certified by others.",
        "This is not. Certified by others.",
    ] {
        is_refused(text);
    }
}

#[test]
fn words_are_found_in_any_dress() {
    for text in [
        "ECO-FRIENDLY",
        "eco\u{ad}logical",
        "Eco\u{200b}logical",
        "Carbon\u{2011}neutral",
        "CO\u{2082}-neutral",
        "net\u{a0}zero",
        "sustain\u{200d}ability",
    ] {
        is_refused(text);
    }
    for text in [
        "Offset printing.",
        "The pH-neutral cleaner.",
        "Natural gas heats the oven.",
        "Economic order quantity.",
        "The cleaner is bought.",
        "At least 12 faces.",
    ] {
        passes(text);
    }
}

#[test]
fn a_comparison_that_lacks_one_thing_is_refused_for_that_thing() {
    let whole = RULES.iter().map(|rule| rule.allowed).find(|text| text.contains("in 99 of 100")).expect("a comparison that is allowed");
    let around = Around::Alone(&["film", "digital"]);
    assert!(check(whole, around).is_empty());
    for (part, other, missing) in [
        ("Per m2 of", "For", "a unit"),
        ("kept in service 10 years, ", "", "how long both are kept in service"),
        ("in 99 of 100 draws of our input ranges ", "", "a range or a share of draws"),
        ("under the stated assumptions", "as follows", "the assumptions"),
        ("tables 0a1b2c", "care", "the assumptions and tables"),
        ("; water about the same", "", "the other indicators"),
        (" Not verified by a third party.", "", "its limits"),
        (" Not a public comparative assertion: no panel review.", "", "its limits"),
    ] {
        assert!(whole.contains(part), "{part}");
        let text =
            whole.replace(part, other).replace("(range 3.9 to 7.6)", if missing.contains("share") { "" } else { "(range 3.9 to 7.6)" });
        let found: Vec<String> = check(&text, around).iter().map(ToString::to_string).collect();
        assert!(found.iter().any(|one| one.contains(&format!("without {missing}"))), "{part}: {found:?}");
    }
    let nobody = check(whole, Around::Alone(&["film", "screen"]));
    assert!(nobody.iter().any(|one| one.words.contains("what it is compared with")), "the other side is not named");
}
