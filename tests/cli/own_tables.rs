//! Own tables: a folder's rows in place of the built-in ones, and what is said of a folder at fault.

use std::path::PathBuf;

use serde_json::Value;

use crate::program::faceload;

/// A folder with these tables, made anew.
fn folder(name: &str, tables: &[(&str, &str)]) -> String {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("own-tables").join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the folder can be made");
    for (file, text) in tables {
        std::fs::write(folder.join(file), text).expect("the table can be written");
    }
    folder.to_string_lossy().into_owned()
}

const PRACTICE: &str = "id,item,unit,default,low,high,spread,scope,source,place,grade,note\n";
const SOURCES: &str = "key,title,publisher,year,kind,seen,licence,attribution,locator\nmeter,Readings of our meter,Tern Harbour sign shop,2026,data sheet,document,,,week 14\n";
const PRESS: &str = "screen.press-power,power of the press,kW,4,3,5,lognormal,route,meter,week 14,D,\n";

fn loads(words: &[&str]) -> Value {
    let ran = faceload(words);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{words:?}");
    serde_json::from_str(&ran.result).expect("JSON")
}

#[test]
fn a_row_of_its_own_is_used_cited_and_changes_only_what_it_stands_for() {
    let folder = folder("good", &[("practice.csv", &format!("{PRACTICE}{PRESS}")), ("sources.csv", SOURCES)]);
    let check = faceload(&["check", &folder]);
    assert_eq!((check.code, check.result.as_str(), check.words.as_str()), (0, "", ""));

    let explained = loads(&["explain", "--alternative", "screen", "--indicator", "energy", "--factors", &folder, "--json"]);
    let row = explained["inputs"].as_array().expect("inputs").iter().find(|input| input["id"] == "screen.press-power").expect("the row");
    assert!(row["value"].as_str().is_some_and(|value| value.starts_with("4 ")), "{row}");
    assert!(row["source"].as_str().is_some_and(|source| source.contains("Readings of our meter")), "{row}");

    let (own, table) = (loads(&["compare", "--factors", &folder, "--json"]), loads(&["compare", "--json"]));
    let energy = |result: &Value, place: usize| result["alternatives"][place]["loads"]["energy"]["value"].as_f64().expect("a number");
    assert_eq!(own["alternatives"][0]["id"], "screen");
    assert!(energy(&own, 0) > energy(&table, 0));
    let digital = own["alternatives"].as_array().expect("alternatives").iter().position(|one| one["id"] == "digital").expect("digital");
    assert_eq!(energy(&own, digital), energy(&table, digital));

    let sources = faceload(&["sources", "meter", "--factors", &folder]);
    assert_eq!((sources.code, sources.words.as_str()), (0, ""));
    assert!(sources.result.contains("Readings of our meter") && sources.result.contains("screen.press-power"), "{}", sources.result);
}

#[test]
fn a_result_says_which_rows_are_the_users_own() {
    let folder = folder("said", &[("practice.csv", &format!("{PRACTICE}{PRESS}")), ("sources.csv", SOURCES)]);
    let said = faceload(&["compare", "--factors", &folder]).result;
    assert!(said.contains("screen.press-power"), "{said}");
    assert!(!faceload(&["compare"]).result.contains("screen.press-power"));
}

#[test]
fn the_fingerprint_of_the_tables_goes_with_every_result() {
    let full = |folder: &[&str]| {
        let ran = faceload(&[&["check", "--fingerprint"], folder].concat());
        assert_eq!((ran.code, ran.words.as_str()), (0, ""));
        ran.result.trim_end().to_owned()
    };
    let built_in = full(&[]);
    assert!(built_in.len() == 64 && built_in.chars().all(|c| c.is_ascii_hexdigit()), "{built_in}");
    let folder = folder("marked", &[("practice.csv", &format!("{PRACTICE}{PRESS}")), ("sources.csv", SOURCES)]);
    let own = full(&[&folder]);
    assert_ne!(own, built_in);
    for (mark, rows, words) in [(&built_in, 0, &[][..]), (&own, 1, &["--factors", &folder][..])] {
        let explain = &["explain", "--alternative", "screen", "--indicator", "co2e"][..];
        for command in [&["compare"][..], &["lines"], explain, &["drivers"], &["spread", "--draws", "1000"]] {
            let said = faceload(&[command, words].concat()).result;
            assert!(said.contains(&format!("Tables {}: ", &mark[..12])), "{said}");
        }
        assert_eq!(loads(&[&["drivers", "--json"], words].concat())["factors"]["sha_256"], **mark);
        let json = loads(&[&["compare", "--json"], words].concat());
        assert_eq!(json["factors"]["sha_256"], **mark);
        assert_eq!(json["factors"]["own_rows"].as_array().map(Vec::len), Some(rows));
    }
}

#[test]
fn a_row_as_it_was_is_not_called_the_users_own() {
    let texts = faceload_core::factors::Texts::embedded();
    let folder = folder("copied", &[("practice.csv", &texts.practice), ("sign-codes.csv", &texts.signs)]);
    let (own, table) = (faceload(&["compare", "--factors", &folder]), faceload(&["compare"]));
    assert_eq!((own.code, own.result), (0, table.result));
}

#[test]
fn a_sign_code_of_the_users_own_is_named() {
    let texts = faceload_core::factors::Texts::embedded();
    let own = texts.signs.replace("red 76.2; white 23.8", "red 70; white 30");
    let folder = folder("stop", &[("sign-codes.csv", &own)]);
    let said = faceload(&["compare", "--factors", &folder]).result;
    assert!(said.contains("in place of or beside the built-in ones: R1-1\n"), "{said}");
    assert_eq!(loads(&["compare", "--factors", &folder, "--json"])["factors"]["own_rows"][0], "R1-1");
}

#[test]
fn own_tables_write_no_escape_codes_to_the_terminal() {
    for (file, text) in [
        ("practice.csv", format!("{PRACTICE}{}", PRESS.replace("power of", "\u{1b}[31mpower of"))),
        ("practice.csv", PRACTICE.replace("item", "\u{1b}[31m")),
        ("sources.csv", SOURCES.replace("Readings", "\u{1b}[31mReadings")),
    ] {
        let folder = folder("escape", &[(file, &text)]);
        let ran = faceload(&["check", &folder]);
        assert_eq!((ran.code, ran.result.as_str()), (4, ""), "{ran:?}");
        assert!(!ran.words.contains('\u{1b}') && ran.words.contains("u{1b}"), "{:?}", ran.words);
    }
}

#[test]
fn a_folder_at_fault_is_exit_4_with_words_and_no_result() {
    let row = |id: &str, unit: &str, value: &str, source: &str| {
        format!("{PRACTICE}{id},power of the press,{unit},{value},3,5,lognormal,route,{source},week 14,D,\n")
    };
    for (name, table, text, said) in [
        (
            "number",
            "practice.csv",
            row("screen.press-power", "kW", "four", "shop"),
            "practice.csv, line 2, column `default`: `four` where ",
        ),
        (
            "unit",
            "practice.csv",
            row("screen.press-power", "kg", "4", "common-practice"),
            "practice.csv, line 2, column `unit`: `kg` where ",
        ),
        (
            "unread",
            "practice.csv",
            row("screen.press-power", "furlong", "4", "common-practice"),
            "practice.csv, line 2, column `unit`: `furlong` where ",
        ),
        ("range", "practice.csv", row("screen.press-power", "kW", "9", "common-practice"), "practice.csv, line 2, column `low`: "),
        (
            "source",
            "practice.csv",
            row("screen.press-power", "kW", "4", "hearsay"),
            "practice.csv, line 2, column `source`: `hearsay` where ",
        ),
        ("columns", "practice.csv", PRACTICE.replace("low,high", "high,low"), "practice.csv, line 1, column `all`: "),
        ("length", "factors.csv", "id,item\nmaterial.acrylic.co2e,acrylic\n".to_owned(), "factors.csv, line 1, column `all`: "),
        ("unused", "sources.csv", SOURCES.to_owned(), "sources.csv, line 2, column `key`: `meter` where "),
    ] {
        let folder = folder(name, &[(table, &text)]);
        for words in [
            &["check", folder.as_str()][..],
            &["compare", "--factors", &folder],
            &["lines", "--factors", &folder],
            &["sources", "--factors", &folder],
            &["explain", "--alternative", "screen", "--indicator", "co2e", "--factors", &folder],
        ] {
            let ran = faceload(words);
            assert_eq!((ran.code, ran.result.as_str()), (4, ""), "{name}, {words:?}: {ran:?}");
            assert!(ran.words.contains(said) && ran.words.contains("; "), "{name}, {words:?}: {}", ran.words);
        }
    }
}

#[test]
fn a_folder_without_tables_or_that_is_not_there_is_exit_4() {
    let empty = folder("empty", &[("notes.txt", "nothing\n")]);
    for folder in [empty.as_str(), "tests/no-such-folder"] {
        let ran = faceload(&["check", folder]);
        assert_eq!((ran.code, ran.result.as_str()), (4, ""), "{ran:?}");
        assert!(
            ran.words
                .contains("no table in it where one of practice.csv, factors.csv, carriers.csv, sources.csv, sign-codes.csv and solvents.csv was wanted"),
            "{}",
            ran.words
        );
    }
}

#[test]
fn a_table_that_is_not_text_is_exit_4() {
    let folder = folder("bytes", &[]);
    std::fs::write(PathBuf::from(&folder).join("practice.csv"), b"id,item\n\xff\xfe\n").expect("the table can be written");
    let ran = faceload(&["check", &folder]);
    assert_eq!((ran.code, ran.result.as_str()), (4, ""), "{ran:?}");
    assert!(ran.words.contains("practice.csv: cannot be read (") && ran.words.contains("save it as UTF-8"), "{}", ran.words);
}

#[test]
fn a_code_of_its_own_can_be_ordered() {
    // The row of a square sign, under another code and name.
    let table = faceload_core::factors::Texts::embedded().signs;
    let header = table.lines().next().expect("columns");
    let row = table.lines().find(|line| line.starts_with("R3-1,")).expect("a square sign");
    let item = row.split(',').nth(1).expect("what it is");
    let own = row.replacen("R3-1", "TH-1", 1).replacen(item, "harbour", 1);
    let folder = folder("signs", &[("sign-codes.csv", &format!("{header}\n{own}\n"))]);
    let order = PathBuf::from(&folder).join("order.toml");
    std::fs::write(&order, "schema_version = 1\n[[line]]\ncode = \"TH-1\"\nsize = \"24 in\"\nquantity = 5\n")
        .expect("the order can be written");
    let order = order.to_string_lossy().into_owned();
    assert_eq!(faceload(&["compare", &order]).code, 3);
    let ran = faceload(&["compare", &order, "--factors", &folder]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    assert!(ran.result.contains("harbour"), "{}", ran.result);
}
