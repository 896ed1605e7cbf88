//! `faceload statement`: what may be sent, why none may, and sentences of one's own.

use serde_json::Value;

use crate::program::{faceload, faceload_with};

#[test]
fn the_statement_is_one_paragraph_and_the_json_has_the_same_text() {
    let ran = faceload(&["statement", "stop", "--between", "film,digital"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(
        ran.result.starts_with("Per m2 of sign face kept in service 10 years, face only, under the stated assumptions:"),
        "{}",
        ran.result
    );
    assert!(!ran.result.contains("\n\n"));
    let json = faceload(&["statement", "stop", "--between", "film,digital", "--json"]);
    let json: Value = serde_json::from_str(&json.result).expect("JSON");
    let words = |text: &str| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
    assert_eq!(words(json["text"].as_str().expect("a text")), words(&ran.result));
    assert_eq!((&json["between"], &json["why_none"]), (&serde_json::json!(["film", "digital"]), &serde_json::json!([])));
}

#[test]
fn a_statement_may_be_pasted_back_and_passes() {
    let text = faceload(&["statement", "county", "--between", "screen,film", "--indicator", "solvent"]).result;
    let ran = faceload(&["statement", "county", "--wording", &text]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(ran.result.contains("That is no clearance and no legal advice"), "{}", ran.result);
}

#[test]
fn where_none_may_be_sent_the_reasons_are_words_and_the_exit_is_3() {
    for more in [&[][..], &["--json"]] {
        let ran = faceload(&[&["statement", "stop", "--draws", "100"], more].concat());
        assert_eq!((ran.code, ran.result.as_str()), (3, ""));
        assert_eq!(
            ran.words,
            "no statement about screen and film may be sent:\n100 draws are too few to say how sure it is; make at least 1\u{202f}000\n"
        );
    }
    let apart = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":9,"not":{"overlay-film":"agency specification"}},
    {"code":"R1-1","size":"36 in","quantity":9,"not":{"screen-printing":"no press"}}],
    "alternative":[{"id":"film","route":"overlay-film"},{"id":"screen","route":"screen-printing"}]}"#;
    let ran = faceload_with(&["statement", "-"], apart.as_bytes(), &[]);
    assert_eq!(ran.code, 3);
    assert!(ran.words.contains("film and screen share no line, so nothing compares them"), "{}", ran.words);
}

#[test]
fn a_sentence_of_ones_own_is_refused_rule_by_rule() {
    let ran = faceload(&["statement", "--wording", "Our eco-friendly film is carbon neutral and always lasts longer."]);
    assert_eq!((ran.code, ran.result.as_str()), (3, ""));
    for part in ["`eco`", "`neutral`", "`always`", "`lasts`"] {
        assert!(ran.words.contains(part), "{part}: {}", ran.words);
    }
    assert!(ran.words.lines().all(|line| line.contains("; ") && line.contains('(')), "{}", ran.words);
}
