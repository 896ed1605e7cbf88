//! `faceload explain`: every input with its source and grade, every load as the sum of its flows.

use faceload_core::load::{Indicator, Per};
use faceload_core::order::demo;
use serde_json::Value;

use crate::program::{faceload, faceload_with};
use crate::shop;

const ALTERNATIVES: [&str; 6] = ["screen", "screen-uv", "film", "direct", "digital", "digital-uv"];

#[test]
fn every_input_has_a_source_a_place_and_a_grade() {
    let comparison = shop::compared(demo::DEMOS[0].text);
    for id in ALTERNATIVES {
        let model = comparison.model(id).expect("a default alternative");
        for indicator in Indicator::ALL {
            let words = ["explain", "stop", "--alternative", id, "--indicator", indicator.id()];
            let ran = faceload(&[&words[..], &["--json"]].concat());
            assert_eq!((ran.code, ran.words.as_str()), (0, ""));
            let json: Value = serde_json::from_str(&ran.result).expect("JSON");
            let text = faceload(&words).result;
            let inputs = json["inputs"].as_array().expect("inputs");
            let mut named: Vec<&str> = inputs.iter().filter_map(|input| input["id"].as_str()).collect();
            for input in inputs {
                let cell = |key: &str| input[key].as_str().unwrap_or_default();
                assert!(!cell("source").is_empty() && !cell("value").is_empty() && !cell("item").is_empty(), "{input}");
                assert!(["own", "A", "B", "C", "D"].contains(&cell("grade")) && !cell("grade_words").is_empty(), "{input}");
                assert!(!cell("place").is_empty() || cell("source").contains("order") || cell("source").contains("definition"), "{input}");
                assert!(text.contains(cell("id")) && text.contains(cell("source")), "{id}, {indicator:?}: the text is without {input}");
            }
            // An input that is not named moves nothing: beaded sheeting, where there is none.
            for place in model.inputs(indicator, Per::M2) {
                let (id, value) = (&model.book.input(place).id, model.values()[place.index()]);
                assert!(
                    named.contains(&id.as_str()) || model.change(indicator, Per::M2, place, value * 1.5, |_| true) == 0.0,
                    "{id} moves {indicator:?} and is not named"
                );
            }
            named.sort_unstable();
            named.dedup();
            assert_eq!(named.len(), inputs.len(), "an input is named twice");
        }
    }
}

#[test]
fn the_total_is_that_of_compare() {
    for (per_name, per) in Per::ALL {
        let comparison = shop::compared(demo::DEMOS[0].text);
        for indicator in Indicator::ALL {
            let ran = faceload(&["explain", "--alternative", "digital", "--indicator", indicator.id(), "--per", per_name]);
            let load = comparison.model("digital").expect("a default alternative").load(indicator, per);
            let first = ran.result.lines().next().unwrap_or_default().to_owned();
            assert!(first.contains(&faceload_report::words::number(load.value)), "{first} without {}", load.value);
        }
    }
}

#[test]
fn a_value_of_the_shop_is_shown_as_its_own() {
    let order = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":10}],"alternative":[{"id":"ours","route":"digital-printing",
        "with":{"printer.power.solvent":{"value":"1.9 kW","note":"meter, week 14","grade":"own"}}}]}"#;
    let ran = faceload_with(&["explain", "-", "--alternative", "ours", "--indicator", "energy", "--json"], order.as_bytes(), &[]);
    let json: Value = serde_json::from_str(&ran.result).expect("JSON");
    let input = json["inputs"]
        .as_array()
        .expect("inputs")
        .iter()
        .find(|input| input["id"] == "printer.power.solvent")
        .expect("the printer's power");
    assert_eq!(
        (input["value"].as_str(), input["grade"].as_str(), input["note"].as_str(), input["own"].as_bool()),
        (Some("1.9 kW"), Some("own"), Some("meter, week 14"), Some(true))
    );
}

#[test]
fn an_alternative_that_is_not_there_is_exit_3_and_those_there_are_offered() {
    let ran = faceload(&["explain", "--alternative", "litho", "--indicator", "energy"]);
    assert_eq!((ran.code, ran.result.as_str()), (3, ""));
    for id in ALTERNATIVES {
        assert!(ran.words.contains(&format!("`{id}`")), "{}", ran.words);
    }
}
