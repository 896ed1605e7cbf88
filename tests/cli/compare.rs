//! `faceload compare`: an answer for a person, the same result as JSON.

use faceload_core::comparison::compare;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, demo};
use faceload_core::quantity::Kind;
use serde_json::Value;

use crate::program::{faceload, faceload_with};
use crate::shop::tables;

/// An order in TOML, and the same in JSON.
const TOML: &str = r#"
schema_version = 1
name = "Tern Harbour County, spring"
[site]
degree_days = "1500 K.d"
delivery = "60 km"
[[line]]
code = "R1-1"
size = "30 in"
quantity = 12
[[line]]
shape = "rectangle"
size = "24 x 30 in"
quantity = 3
colours = { blue = "60 %" }
[[alternative]]
id = "ours"
route = "digital-printing"
with = { "printer.power.solvent" = { value = "1.9 kW", note = "meter, week 14", grade = "own" } }
"#;
const JSON: &str = r#"{"schema_version":1,"name":"Tern Harbour County, spring","site":{"degree_days":"1500 K.d","delivery":"60 km"},
"line":[{"code":"R1-1","size":"30 in","quantity":12},{"shape":"rectangle","size":"24 x 30 in","quantity":3,"colours":{"blue":"60 %"}}],
"alternative":[{"id":"ours","route":"digital-printing","with":{"printer.power.solvent":{"value":"1.9 kW","note":"meter, week 14","grade":"own"}}}]}"#;

#[test]
fn every_demo_has_an_answer_on_standard_output_and_no_words() {
    for demo in demo::DEMOS {
        let ran = faceload(&["compare", demo.name]);
        assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{}", demo.name);
        for said in [
            "ranges are the middle 90 % of 10 000 draws",
            "Left out: ",
            "Not covered: ",
            "not a public comparative assertion",
            "kg CO2e",
            "screen-uv",
            "digital-uv",
        ] {
            assert!(ran.result.split_whitespace().collect::<Vec<_>>().join(" ").contains(said), "{}: nothing of `{said}`", demo.name);
        }
        assert!(ran.result.lines().all(|line| line.chars().count() <= 110), "{}: a line too wide", demo.name);
    }
}

#[test]
fn without_an_order_the_first_demo_is_compared() {
    assert_eq!(faceload(&["compare"]).result, faceload(&["compare", "stop"]).result);
}

#[test]
fn the_json_holds_the_loads_of_the_core_to_the_last_bit() {
    for demo in demo::DEMOS {
        for (per_name, per) in Per::ALL {
            for (boundary_name, boundary) in [("face", Boundary::Face), ("face-with-blank", Boundary::FaceWithBlank)] {
                let ran = faceload(&["compare", demo.name, "--per", per_name, "--boundary", boundary_name, "--json"]);
                assert_eq!((ran.code, ran.words.as_str()), (0, ""));
                let json: Value = serde_json::from_str(&ran.result).expect("JSON");
                let order = Order::read(Document::json(demo.name, demo.text).expect("JSON"), tables()).expect("a demo");
                let comparison = compare(tables(), &order, per, boundary).expect("a demo can be compared");
                assert_eq!(json["schema_version"], 1);
                assert_eq!((json["per"].as_str(), json["boundary"].as_str()), (Some(per_name), Some(boundary_name)));
                assert_eq!(
                    (json["lines"].as_u64(), json["lines_compared"].as_u64()),
                    (Some(order.lines.len() as u64), Some(comparison.lines_of(&comparison.common) as u64))
                );
                let alternatives = json["alternatives"].as_array().expect("alternatives");
                assert_eq!(alternatives.len(), comparison.models.len());
                for (said, model) in alternatives.iter().zip(&comparison.models) {
                    assert_eq!(said["id"].as_str(), Some(model.alternative.id.as_str()));
                    assert_eq!(said["route"].as_str(), Some(model.alternative.route.name()));
                    assert_eq!(said["m2"].as_f64(), Some(model.m2.base()));
                    assert_eq!(said["loads"].as_object().map(|loads| loads.len()), Some(5));
                    for indicator in Indicator::ALL {
                        let load = &said["loads"][indicator.id()];
                        let value = load["value"].as_f64().expect("a number");
                        assert_eq!(value.to_bits(), model.load(indicator, per).value.to_bits(), "{} {indicator:?}", demo.name);
                        assert_eq!(load["unit"].as_str(), Some(format!("{}{}", indicator.unit(), per.suffix()).as_str()));
                    }
                }
            }
        }
    }
}

#[test]
fn units_are_those_of_the_five_indicators() {
    for (per, suffix) in [("m2", "/m2"), ("order", ""), ("m2-year", "/(m2\u{b7}year)")] {
        let json: Value = serde_json::from_str(&faceload(&["compare", "--json", "--per", per]).result).expect("JSON");
        let units = [("energy", "MJ primary"), ("water", "L"), ("solvent", "kg VOC"), ("waste", "kg"), ("co2e", "kg CO2e")];
        for (indicator, unit) in units {
            assert_eq!(json["alternatives"][0]["loads"][indicator]["unit"].as_str(), Some(format!("{unit}{suffix}").as_str()));
        }
    }
}

#[test]
fn the_json_is_the_same_bytes_every_time() {
    let once = faceload(&["compare", "diamonds", "--json"]).result;
    assert!(once.ends_with("}\n") && once.len() > 500);
    for _ in 0..3 {
        assert_eq!(faceload(&["compare", "diamonds", "--json"]).result, once);
    }
}

#[test]
fn toml_and_json_of_one_order_have_the_same_result() {
    let toml = faceload_with(&["compare", "-", "--json"], TOML.as_bytes(), &[]);
    let json = faceload_with(&["compare", "-", "--json"], JSON.as_bytes(), &[]);
    assert_eq!((toml.code, toml.words.as_str()), (0, ""));
    assert_eq!(toml.result, json.result);
    assert!(toml.result.contains("\"ours\""));
}

#[test]
fn a_byte_order_mark_and_windows_line_ends_are_taken() {
    let plain = faceload_with(&["compare", "-", "--json"], TOML.as_bytes(), &[]);
    let windows = format!("\u{feff}{}", TOML.replace('\n', "\r\n"));
    assert_eq!(faceload_with(&["compare", "-", "--json"], windows.as_bytes(), &[]).result, plain.result);
    let marked = format!("\u{feff}{JSON}");
    assert_eq!(faceload_with(&["compare", "-", "--json"], marked.as_bytes(), &[]).result, plain.result);
}

#[test]
fn the_boundary_of_the_order_holds_unless_the_command_says_otherwise() {
    let order = JSON.replacen("\"name\"", "\"boundary\":\"face with blank\",\"name\"", 1);
    let of_order = faceload_with(&["compare", "-", "--json"], order.as_bytes(), &[]).result;
    let of_command = faceload_with(&["compare", "-", "--json", "--boundary", "face"], order.as_bytes(), &[]).result;
    assert!(of_order.contains(r#""boundary": "face-with-blank""#), "{of_order}");
    assert_eq!(of_command, faceload_with(&["compare", "-", "--json"], JSON.as_bytes(), &[]).result);
}

#[test]
fn a_line_that_one_alternative_cannot_make_is_left_out_and_said() {
    let order = r#"{"schema_version":1,"line":[{"label":"small","code":"R1-1","size":"30 in","quantity":5},{"label":"large","code":"R1-1","size":"60 in","quantity":5}]}"#;
    let ran = faceload_with(&["compare", "-"], order.as_bytes(), &[]);
    assert_eq!(ran.code, 0);
    let said = ran.result.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("1 of 2 lines") && said.contains("large: screen and screen-uv cannot make it:"), "{}", ran.result);
    let alone = order.replace(r#",{"label":"large","code":"R1-1","size":"60 in","quantity":5}"#, "");
    let loads = |text: &str| {
        let json: Value = serde_json::from_str(&faceload_with(&["compare", "-", "--json"], text.as_bytes(), &[]).result).expect("JSON");
        json["alternatives"].clone()
    };
    assert_eq!(loads(order), loads(&alone));
}

#[test]
fn numbers_as_toml_writes_them_are_taken() {
    let loads = |quantity: &str| {
        let order = format!("schema_version = 1\n[[line]]\ncode = 'R1-1'\nsize = '30 in'\nquantity = {quantity}\n");
        let ran = faceload_with(&["compare", "-", "--json"], order.as_bytes(), &[]);
        assert_eq!(ran.code, 0, "{quantity}: {}", ran.words);
        ran.result
    };
    for quantity in ["1_000", "+1000", "1000.0", "1e3", "'1000'"] {
        assert_eq!(loads(quantity), loads("1000"), "{quantity}");
    }
    // Other bases than ten are refused, never misread.
    for quantity in ["0x10", "0b10", "0o10"] {
        let order = format!("schema_version = 1\n[[line]]\ncode = 'R1-1'\nsize = '30 in'\nquantity = {quantity}\n");
        assert_eq!(faceload_with(&["compare", "-"], order.as_bytes(), &[]).code, 3, "{quantity}");
    }
}

#[test]
fn an_air_flow_below_the_rule_is_cautioned_in_words() {
    let order = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":100,"stock":false}],"alternative":[{"id":"still","route":"screen-printing","with":{"air.screen-room":"0.01 m3/h"}}]}"#;
    let said = faceload_with(&["compare", "-"], order.as_bytes(), &[]).result.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        said.contains("still: the air reckoned for the screen room (0.0100 m3/h) is below the ")
            && said.contains("ask the responsible engineer"),
        "{said}"
    );
}
