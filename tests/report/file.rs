//! The file: it runs nothing, asks for nothing, escapes what an order says, and lists every input.

use serde_json::Value;

use super::{between, report, rows, section};
use crate::program::{faceload, faceload_with};

#[test]
fn it_has_no_script_that_runs_and_asks_for_nothing() {
    let html = report(&["county"]);
    assert_eq!(between(&html, "<script", ">"), [" type=\"application/json\" id=\"faceload-data\""]);
    for way in [" src=", "@import", "url(", "<link", "<iframe", " onload", " style="] {
        assert!(!html.contains(way), "{way}");
    }
    let policy = between(&html, "Content-Security-Policy\" content=\"", "\"")[0];
    assert!(policy.starts_with("default-src 'none'; style-src 'sha256-") && !policy.contains("unsafe"), "{policy}");
    assert!(html.len() < 1_500_000, "{} bytes", html.len());
}

#[test]
fn what_an_order_says_stays_words() {
    let order = br#"{"schema_version":1,"name":"</script><b>x \"y\" \\ {}","line":[{"label":"<i>stop</i>","code":"R1-1","size":"30 in","quantity":10}]}"#;
    let ran = faceload_with(&["report", "-", "-o", "-", "--draws", "100"], order, &[]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(!ran.result.contains("<b>x") && !ran.result.contains("<i>stop"), "markup of an order");
    assert!(ran.result.contains("&lt;/script&gt;&lt;b&gt;x &quot;y&quot; \\ {}"));
    // In the style sheet it is a string, in the data it ends no element.
    assert_eq!(ran.result.matches("</script").count(), 1);
    assert!(ran.result.contains("\\3c \\2f script\\3e \\3c b\\3e x \\22 y\\22  \\5c  \\7b \\7d "), "the head of the sheets");
}

#[test]
fn every_input_stands_in_it_with_its_evidence() {
    let html = report(&["stop"]);
    let listed = rows(section(&html, "report-inputs"));
    let mut asked = 0;
    for alternative in ["screen", "film", "digital-uv"] {
        for indicator in ["energy", "co2e"] {
            let text = faceload(&["explain", "stop", "--alternative", alternative, "--indicator", indicator, "--json"]).result;
            let explained: Value = serde_json::from_str(&text).expect("JSON");
            for input in explained["inputs"].as_array().expect("inputs") {
                let id = format!("[{}]", input["id"].as_str().expect("an id"));
                let row = listed.iter().find(|row| row[0].ends_with(&id)).unwrap_or_else(|| panic!("{id} is not listed"));
                assert_eq!(Some(row[1].as_str()), input["value"].as_str(), "{id}");
                assert_eq!(Some(row[3].as_str()), input["grade"].as_str(), "{id}");
                asked += 1;
            }
        }
    }
    assert!(asked > 200, "{asked}");
}

#[test]
fn every_reference_that_an_input_names_is_there() {
    let html = report(&["county", "--draws", "100"]);
    let references = between(section(&html, "report-references"), "<li>", "</li>").len();
    let named: Vec<usize> = rows(section(&html, "report-inputs"))
        .iter()
        .filter_map(|row| row.get(4)?.strip_prefix('[')?.strip_suffix(']')?.parse().ok())
        .collect();
    assert!(named.len() > 60, "{}", named.len());
    assert!(named.iter().all(|number| (1..=references).contains(number)), "{references} references, {named:?}");
}

#[test]
fn mass_closes_in_every_row() {
    let html = report(&["county", "--draws", "100", "--boundary", "face-with-blank"]);
    let all = rows(section(&html, "report-closure"));
    assert!(all.len() > 50);
    for row in all.iter().skip(1) {
        assert_eq!(row.last().map(String::as_str), Some("closes"), "{row:?}");
    }
}

#[test]
fn a_place_that_cannot_be_written_is_said_and_nothing_is_printed() {
    let ran = faceload(&["report", "stop", "--draws", "100", "-o", "no/such/folder/report.html"]);
    assert_eq!((ran.code, ran.result.as_str()), (3, ""));
    assert!(
        ran.words.starts_with("no/such/folder/report.html: cannot be written (") && ran.words.contains("wanted; give another place"),
        "{}",
        ran.words
    );
    let ran = faceload(&["report", "stop", "--between", "screen,nobody", "-o", "-"]);
    assert!(ran.code == 3 && ran.words.contains("`nobody` where the id of an alternative was wanted"), "{}", ran.words);
}

#[test]
fn one_alternative_alone_makes_a_report_that_says_so() {
    let order = br#"{"schema_version":1,"name":"one","line":[{"label":"stop","code":"R1-1","size":"30 in","quantity":10}],"alternative":[{"id":"only","route":"overlay-film"}]}"#;
    let ran = faceload_with(&["report", "-", "-o", "-", "--draws", "100"], order, &[]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(section(&ran.result, "report-answer").contains("nothing to compare it with"));
}

#[test]
fn loads_on_different_lines_never_stand_beside_each_other() {
    // A warning sign is no light copy on a dark ground, and three colours are too many for film.
    let order = br#"{"schema_version":1,"name":"two","line":[
        {"label":"curve","code":"W1-2","size":"30 in","quantity":10},
        {"label":"stop","code":"R1-1","size":"30 in","quantity":10,"not":{"digital-printing":"agency specification"}}],
        "alternative":[{"id":"copy","route":"direct-applied"},{"id":"jet","route":"digital-printing"}]}"#;
    let ran = faceload_with(&["report", "-", "-o", "-", "--draws", "100"], order, &[]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(section(&ran.result, "report-answer").contains("no common answer"));
    assert!(!ran.result.contains("<div class=\"panels\">") && !section(&ran.result, "report-loads").contains("<table>"));
    for id in ["report-flows", "report-inventory", "report-scopes", "report-consistency"] {
        assert!(section(&ran.result, id).contains("must not be compared"), "{id}");
    }
    assert!(section(&ran.result, "report-sure").contains("Nothing is compared"));
}
