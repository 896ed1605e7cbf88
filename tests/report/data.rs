//! Every number of the board's answer is one of the data that lie in the same file, and of no other indicator.

use serde_json::Value;

use super::{between, numbers, report, section, words_of};
use crate::program::faceload;

/// Every number in a part of the data.
fn all(value: &Value) -> Vec<f64> {
    match value {
        Value::Number(number) => number.as_f64().into_iter().collect(),
        Value::Array(list) => list.iter().flat_map(all).collect(),
        Value::Object(map) => map.values().flat_map(all).collect(),
        _ => Vec::new(),
    }
}

/// The numbers of a text that none of these becomes by rounding.
fn strange(text: &str, known: &[f64]) -> Vec<f64> {
    let made_of = |shown: f64, decimals: usize| {
        let half = 0.500_001 / (0..decimals).fold(1.0, |power, _| power * 10.0);
        known.iter().any(|value| (value - shown).abs() <= half)
    };
    numbers(text).into_iter().filter(|(shown, decimals)| !made_of(*shown, *decimals)).map(|(shown, _)| shown).collect()
}

/// Shares as they are said of 100 draws: never none nor all.
fn of_hundred(shares: &[f64]) -> Vec<f64> {
    let said = shares.iter().map(|share| (share * 100.0).clamp(1.0, 99.0));
    said.chain([100.0]).collect()
}

fn data(html: &str) -> Value {
    let record: Value = serde_json::from_str(between(html, "id=\"faceload-data\">\n", "</script>")[0]).expect("JSON");
    record["result"].clone()
}

#[test]
fn the_data_are_the_result_of_the_comparison() {
    for order in ["stop", "county"] {
        let result: Value = serde_json::from_str(&faceload(&["compare", order, "--json"]).result).expect("JSON");
        assert_eq!(data(&report(&[order])), result, "{order}");
    }
}

#[test]
fn every_number_of_the_answer_is_in_the_data() {
    let mut looked_at = 0;
    for order in ["stop", "county"] {
        let html = report(&[order]);
        let data = data(&html);
        let answer = section(&html, "report-answer");
        let terms = between(answer, "<dt>", "</dt>");
        for (label, text) in terms.iter().zip(between(answer, "<dd>", "</dd>")) {
            let id = label.to_lowercase();
            let alternatives = data["alternatives"].as_array().expect("alternatives");
            let known: Vec<f64> = alternatives.iter().flat_map(|one| all(&one["loads"][&id])).collect();
            assert!(!known.is_empty(), "{label}");
            assert_eq!(strange(text, &known), Vec::<f64>::new(), "{order}, {label}: {text}");
            looked_at += numbers(text).len();
        }
        let pair = &data["pairs"][0];
        for item in between(section(&html, "report-trade-off"), "<li>", "</li>") {
            let (label, text) = item.split_once(": ").expect("an indicator and its loads");
            let loads = &pair["loads"][&label.to_lowercase()];
            let single = [&loads["first"], &loads["second"]].map(|value| value.as_f64().expect("a number"));
            assert_eq!(strange(text, &single), Vec::<f64>::new(), "{order}: {item}");
            looked_at += numbers(text).len();
        }
        for row in between(section(&html, "report-sure"), "<tr>", "</tr>").into_iter().skip(1) {
            let text = words_of(row);
            let (label, rest) = text.split_once(" | ").expect("an indicator and its shares");
            let less = pair["loads"][&label.to_lowercase()]["draws"]["first_less"].as_f64().expect("a share");
            assert_eq!(strange(rest, &of_hundred(&[less, 1.0 - less])), Vec::<f64>::new(), "{order}: {text}");
            looked_at += numbers(rest).len();
        }
    }
    assert!(looked_at > 110, "only {looked_at} numbers");
}

#[test]
fn a_number_that_is_not_in_the_data_would_be_found() {
    assert_eq!(strange("least screen 79 (65 to 140); MJ", &[79.2, 65.4, 139.6]), Vec::<f64>::new());
    assert_eq!(strange("least screen 78 (65 to 140); MJ", &[79.2, 65.4, 139.6]), vec![78.0]);
    assert_eq!(strange("\u{2212}0.014, 10\u{202f}000", &[-0.0137, 10_000.0]), Vec::<f64>::new());
}
