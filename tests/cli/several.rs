//! Several orders added up, and a pair picked out.

use faceload_core::load::{Indicator, Per};
use serde_json::Value;

use crate::program::{faceload, faceload_with};
use crate::shop;

fn result(words: &[&str]) -> Value {
    let ran = faceload(words);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{words:?}");
    serde_json::from_str(&ran.result).expect("JSON")
}

#[test]
fn orders_added_up_load_what_they_load_apart() {
    // As a pair, on the lines both make: direct-applied copy cannot show a speed limit.
    for (a, b) in [("screen", "digital"), ("film", "digital-uv")] {
        let pair = format!("{a},{b}");
        let order = |words: &[&str]| {
            result(&[&["compare"], words, &["--per", "order", "--between", pair.as_str(), "--json"]].concat())["between"].clone()
        };
        let (stop, speed, both) = (order(&["stop"]), order(&["speed"]), order(&["stop", "speed"]));
        assert_eq!(both["lines"].as_u64(), Some(stop["lines"].as_u64().expect("lines") + speed["lines"].as_u64().expect("lines")));
        for indicator in Indicator::ALL {
            for which in ["first", "second"] {
                let load = |between: &Value| between["loads"][indicator.id()][which].as_f64().expect("a number");
                let sum = load(&stop) + load(&speed);
                shop::near(&format!("{}, {which} of {pair}", indicator.id()), load(&both), sum, 1e-9 * sum.max(1e-9));
            }
        }
    }
}

#[test]
fn the_order_in_which_orders_stand_changes_no_load() {
    let order = |first, second| result(&["compare", first, second, "--json"])["alternatives"].clone();
    assert_eq!(order("stop", "diamonds"), order("diamonds", "stop"));
}

#[test]
fn orders_that_differ_in_more_than_their_lines_are_refused() {
    let line = r#""line":[{"code":"R1-1","size":"30 in","quantity":10}]"#;
    for (field, head) in [
        ("life", r#""life":"7 years","#),
        ("gwp", r#""gwp":"AR5","#),
        ("voc_oxidised", r#""voc_oxidised":false,"#),
        ("end_of_life", r#""end_of_life":"reused","#),
        ("boundary", r#""boundary":"face with blank","#),
        ("site", r#""site":{"electricity":"us.average"},"#),
        ("alternative", r#""alternative":[{"id":"screen","route":"screen-printing"}],"#),
    ] {
        let order = format!(r#"{{"schema_version":1,{head}{line}}}"#);
        let ran = faceload_with(&["compare", "stop", "-"], order.as_bytes(), &[]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{field}: {ran:?}");
        let said = format!("field `{field}`: another `{field}` where the same `{field}` as in stop was wanted; ");
        assert!(ran.words.starts_with("-, ") && ran.words.contains(&said), "{field}: {}", ran.words);
    }
    // Two orders on standard input are one order and an empty one.
    let order = format!(r#"{{"schema_version":1,{line}}}"#);
    assert_eq!(faceload_with(&["compare", "-", "-"], order.as_bytes(), &[]).code, 3);
}

#[test]
fn a_pair_is_given_on_the_lines_both_make() {
    for (a, b) in [("screen", "film"), ("film", "screen"), ("direct", "digital-uv")] {
        let between = result(&["compare", "county", "--per", "order", "--between", &format!("{a},{b}"), "--json"])["between"].clone();
        let comparison = shop::compared(faceload_core::order::demo::find("county").expect("a demo").text);
        let place = |id: &str| comparison.models.iter().position(|model| model.alternative.id == id).expect("the alternative");
        let (first, second) = (place(a), place(b));
        assert_eq!(between["alternatives"], serde_json::json!([a, b]));
        let shared = comparison.shared(first, second);
        assert_eq!(between["lines"].as_u64(), Some(comparison.lines_of(&shared) as u64));
        let (one, other) = comparison.of_pair(first, second).expect("they share a line");
        for indicator in Indicator::ALL {
            let said = |key: &str| between["loads"][indicator.id()][key].as_f64().expect("a number");
            let load = |model: &faceload_core::load::Model| model.load(indicator, Per::Order).value;
            assert_eq!((said("first"), said("second")), (load(&one), load(&other)));
            assert_eq!(said("difference"), load(&other) - load(&one));
        }
        let text = faceload(&["compare", "county", "--between", &format!("{a},{b}")]);
        assert_eq!((text.code, text.words.as_str()), (0, ""));
    }
}

#[test]
fn a_pair_that_is_none_is_exit_3() {
    for pair in ["screen", "screen,screen", "screen,film,direct", "", ","] {
        let ran = faceload(&["compare", "--between", pair]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{pair}: {ran:?}");
        assert!(ran.words.contains("where ") && ran.words.contains(" wanted; "), "{pair}: {}", ran.words);
    }
    let ran = faceload(&["compare", "--between", "screen,litho"]);
    assert_eq!(ran.code, 3);
    assert!(ran.words.contains("`litho` where the id of an alternative was wanted; this order has `screen`"), "{}", ran.words);
}

#[test]
fn sources_name_every_source_and_every_row_that_cites_it() {
    let ran = faceload(&["sources"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    for source in shop::tables().sources.values() {
        assert!(ran.result.contains(&format!("{}: {}", source.key, source.title)), "{} is not there", source.key);
        assert!(source.licence.is_empty() || ran.result.contains(&source.licence), "{}", source.key);
    }
    let mut asking = 0;
    for source in shop::tables().sources.values() {
        let Some(licence) = source.asks_for_credit() else { continue };
        asking += 1;
        let said =
            ran.result.split(&format!("\n{}: ", source.key)).nth(1).or_else(|| ran.result.strip_prefix(&format!("{}: ", source.key)));
        let said = said.and_then(|said| said.lines().nth(1)).unwrap_or_else(|| panic!("{} is not there", source.key));
        assert!(said.contains(licence.text) && said.ends_with(&format!("; credit, as the licence asks: {}", source.attribution)), "{said}");
    }
    assert!(asking >= 3);
    for row in &shop::tables().inputs {
        assert!(ran.result.contains(&format!("    {} = ", row.id)), "{} is not there", row.id);
    }
    let few = faceload(&["sources", "aluminium"]);
    assert!(few.code == 0 && few.result.len() < ran.result.len() && few.result.contains("material.aluminium-rolling.co2e"));
    let none = faceload(&["sources", "unobtainium"]);
    assert_eq!((none.code, none.result.as_str()), (3, ""));
    assert!(none.words.contains("`unobtainium`"), "{}", none.words);
}
