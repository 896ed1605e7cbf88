//! The commands about a pair: how sure, what moves it, where it flips; in words, as JSON, as CSV, as a picture.

use serde_json::Value;

use crate::program::{Ran, faceload, faceload_with};

fn json(words: &[&str]) -> Value {
    let ran = faceload(&[words, &["--json"]].concat());
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{words:?}");
    serde_json::from_str(&ran.result).expect("JSON")
}

/// Every command with a figure, on the first demo.
const FIGURES: [&[&str]; 7] = [
    &["stages", "stop"],
    &["spread", "stop", "--between", "screen,digital"],
    &["drivers", "stop", "--between", "screen,digital"],
    &["break-even", "stop", "--between", "screen,digital", "--draws", "100"],
    &["map", "stop", "--between", "screen,digital", "--draws", "100"],
    &["switches", "stop", "--between", "screen,digital", "--draws", "100"],
    &["plan", "county", "--draws", "100"],
];

#[test]
fn a_figure_is_the_same_in_words_as_json_and_as_csv() {
    for words in FIGURES {
        let text = faceload(words);
        assert_eq!((text.code, text.words.as_str()), (0, ""), "{words:?}");
        let figure = json(words);
        assert!(text.result.starts_with(figure["heading"].as_str().expect("a heading")), "{}", text.result);
        assert!(!figure["sentences"].as_array().expect("sentences").is_empty(), "{words:?}");
        assert_eq!(figure["factors"]["sha_256"].as_str().map(str::len), Some(64), "{words:?}");
        let csv = faceload(&[words, &["--csv"]].concat());
        assert_eq!((csv.code, csv.words.as_str()), (0, ""), "{words:?}");
        let mut rows = csv.result.split("\r\n").filter(|line| !line.is_empty());
        for table in figure["tables"].as_array().expect("tables") {
            let (columns, cells) = (table["columns"].as_array().expect("columns"), table["rows"].as_array().expect("rows"));
            assert!(rows.next().is_some() && rows.next().is_some(), "caption and head");
            assert!(!cells.is_empty(), "{words:?}: {}", table["caption"]);
            for row in cells {
                let row = row.as_array().expect("cells");
                assert_eq!(row.len(), columns.len(), "{words:?}");
                let line = rows.next().expect("a line of CSV for each row");
                for number in row.iter().filter_map(|cell| cell["value"].as_f64()) {
                    assert!(line.contains(&format!("{number}")), "{words:?}: {number} not in {line}");
                }
            }
        }
        assert_eq!(rows.next(), None, "{words:?}");
    }
}

#[test]
fn a_picture_is_written_where_there_is_one_and_refused_in_words_where_there_is_none() {
    let folder = std::env::temp_dir().join(format!("faceload-pictures-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    for words in FIGURES {
        let file = folder.join(format!("{}.svg", words[0]));
        let ran = faceload(&[words, &["--svg", file.to_str().expect("UTF-8")]].concat());
        if ["switches", "plan"].contains(&words[0]) {
            assert_eq!(ran.code, 3, "{words:?}");
            assert!(ran.words.contains("--csv"), "{}", ran.words);
            continue;
        }
        assert_eq!(ran.code, 0, "{words:?}: {}", ran.words);
        let drawing = std::fs::read_to_string(&file).expect("the picture");
        assert!(drawing.starts_with("<svg") && drawing.trim_end().ends_with("</svg>"), "{words:?}");
    }
    let ran = faceload(&["spread", "stop", "--svg", "/no/such/folder/x.svg"]);
    assert_eq!(ran.code, 3);
    assert!(ran.words.contains("/no/such/folder/x.svg"), "{}", ran.words);
    std::fs::remove_dir_all(&folder).expect("the folder goes");
}

#[test]
fn compare_says_in_how_many_draws_and_never_none_or_all() {
    let ran = faceload(&["compare", "custom", "--between", "screen,digital"]);
    assert_eq!(ran.code, 0, "{}", ran.words);
    assert!(ran.result.contains("in more than 99 of 100"), "{}", ran.result);
    assert!(!ran.result.contains("100 of 100 draws") && !ran.result.contains(" 0 of 100"), "{}", ran.result);
    assert!(!ran.result.to_lowercase().contains("probab") && !ran.result.to_lowercase().contains("signific"), "{}", ran.result);
}

#[test]
fn the_same_seed_gives_the_same_bytes_and_another_other_ones() {
    let with = |seed: &str| faceload(&["spread", "diamonds", "--draws", "2000", "--seed", seed, "--json"]).result;
    assert_eq!(with("7"), with("7"));
    assert_ne!(with("7"), with("8"));
}

#[track_caller]
fn refused(ran: Ran, parts: &[&str]) {
    assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{}", ran.words);
    for part in parts {
        assert!(ran.words.contains(part), "`{part}` is not in: {}", ran.words);
    }
    assert_eq!(ran.words.lines().count(), 1, "{}", ran.words);
}

#[test]
fn draws_that_cannot_be_made_are_refused() {
    for draws in ["0", "99", "1000000000000", "-5", "1e4", "many"] {
        let words = ["spread", "stop", &format!("--draws={draws}")].map(str::to_owned);
        refused(faceload(&words.each_ref().map(String::as_str)), &["--draws", draws, "a whole number from 100 to 1000000"]);
    }
}

#[test]
fn a_scan_takes_fewer_draws_than_one_comparison() {
    for command in ["break-even", "map", "switches", "plan"] {
        refused(faceload(&[command, "stop", "--draws", "1000000"]), &["1000000", "a whole number from 100 to 20000"]);
    }
}

#[test]
fn what_cannot_be_varied_is_refused_with_a_way_out() {
    let over = |over: &str| faceload(&["break-even", "stop", "--over", over]);
    refused(over("oven.exhaus"), &["oven.exhaus", "did you mean `oven.exhaust`?"]);
    refused(over("quantitty"), &["did you mean `quantity`?"]);
    refused(over("something else"), &["`something else`", "faceload drivers"]);
    refused(over("layout.bleed"), &["layout.bleed", "fixed", "--from", "--to"]);
    refused(
        faceload(&["break-even", "stop", "--over", "oven.exhaust", "--from", "1", "--to", "0.5"]),
        &["from 1 to 0.5", "ends after it starts"],
    );
    refused(faceload(&["break-even", "stop", "--from", "-3", "--to", "5"]), &["-3"]);
    refused(faceload(&["map", "stop", "--over", "quantity,quantity"]), &["two different things", "quantity,colours"]);
    refused(faceload(&["map", "stop", "--over", "quantity"]), &["two different things"]);
}

#[test]
fn a_pair_that_is_none_is_refused() {
    for command in ["spread", "drivers", "break-even", "map", "switches"] {
        refused(faceload(&[command, "stop", "--between", "screen,screen"]), &["two different alternatives"]);
        refused(faceload(&[command, "stop", "--between", "screen,pad"]), &["`pad`", "`digital`"]);
        // Street-name blades can't be made by direct-applied copy, guide signs not on a screen.
        let order = br#"{"schema_version":1,"line":[{"label":"x","code":"R1-1","size":"30 in","quantity":4,
            "not":{"screen-printing":"agency specification"}}]}"#;
        let ran = faceload_with(&[command, "-", "--between", "screen,digital"], order, &[]);
        assert_eq!(ran.code, 3, "{command}: {}", ran.result);
    }
}

#[test]
fn a_fixed_input_is_varied_where_the_range_is_given() {
    let ran = faceload(&["break-even", "stop", "--over", "layout.bleed", "--from", "0", "--to", "0.02", "--draws", "100"]);
    assert_eq!(ran.code, 0, "{}", ran.words);
}
