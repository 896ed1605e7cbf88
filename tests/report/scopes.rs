//! Greenhouse gases by scope (GHG Protocol): nothing is counted twice, nothing is lost, each flow stands where the protocol puts it.

use serde_json::Value;

use super::{number, report, rows, section};
use crate::program::faceload;

/// The rows of the table, by scope, with the numbers of the alternatives.
fn scopes(words: &[&str]) -> Vec<(String, Vec<f64>)> {
    let html = report(words);
    let all = rows(section(&html, "report-scopes"));
    all.into_iter().skip(1).map(|row| (row[0].clone(), row[2..].iter().map(|cell| number(cell).expect("a number")).collect())).collect()
}

#[test]
fn the_scopes_add_up_to_the_load_of_the_order() {
    for (order, extra) in
        [("stop", &["--draws", "100"][..]), ("county", &["--draws", "100"]), ("stop", &["--draws", "100", "--boundary", "face-with-blank"])]
    {
        let words = [&[order], extra].concat();
        let found = scopes(&words);
        let result = faceload(&[&["compare"], &words[..], &["--json", "--per", "order"]].concat()).result;
        let result: Value = serde_json::from_str(&result).expect("JSON");
        for (at, one) in result["alternatives"].as_array().expect("alternatives").iter().enumerate() {
            let load = one["loads"]["co2e"]["value"].as_f64().expect("a number");
            let (last, parts) = found.split_last().expect("rows");
            let sum: f64 = parts.iter().map(|(_, values)| values[at]).sum();
            assert_eq!(last.0, "all");
            assert!((last.1[at] / load - 1.0).abs() < 0.006, "{words:?}: {} printed, {load} in the result", last.1[at]);
            assert!((sum / load - 1.0).abs() < 0.006, "{words:?}: the rows make {sum}, the load is {load}");
        }
    }
}

#[test]
fn each_scope_holds_what_the_protocol_puts_there() {
    let found = scopes(&["stop", "--draws", "100"]);
    let row = |name: &str| found.iter().find(|(scope, _)| scope == name).map(|(_, values)| values.clone()).expect("a row");
    // Every route heats the air of its room.
    assert!(row("scope 1").iter().all(|value| *value > 0.0));
    let screen_and_uv = (row("outside the scopes")[0], row("outside the scopes")[1]);
    assert!(screen_and_uv.0 > 2.0 * screen_and_uv.1, "solvent ink gives more to the air than UV ink: {screen_and_uv:?}");
    assert!(row("scope 3, 3 fuel and energy besides")[0] < 0.1 * row("scope 2, location-based")[0], "the grid loses a few per cent");
}
