//! `faceload rows`: a spreadsheet's rows as an order; what was understood is said, and no row is lost in silence.

use serde_json::Value;

use crate::program::{Ran, faceload, faceload_with};

const INVENTORY: &str = "tests/cli/rows/inventory.csv";

/// Two rows that can be taken, two that can not.
const MIXED: &str = "code,size,quantity\nR1-1,30 in,12\nTH-9,24 x 30 in,4\nW1-2,36 in,3\nR1-1,large,1\n";

fn rows(text: &str, options: &[&str]) -> Ran {
    faceload_with(&[&["rows", "-"], options].concat(), text.as_bytes(), &[])
}

/// The order that a text of rows becomes.
fn order(text: &str, options: &[&str]) -> Value {
    let ran = rows(text, &[&["-o", "-"], options].concat());
    assert_eq!(ran.code, 0, "{}", ran.words);
    serde_json::from_str(&ran.result).expect("JSON")
}

fn report(text: &str, options: &[&str]) -> Value {
    serde_json::from_str(&rows(text, &[&["--json"], options].concat()).result).expect("JSON")
}

/// A place for files of one test.
fn scratch(name: &str) -> String {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    folder.join(name).to_string_lossy().into_owned()
}

#[test]
fn an_inventory_of_one_sign_a_row_is_added_up_and_every_step_is_said() {
    let ran = faceload(&["rows", INVENTORY]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    let said = ran.result.split_whitespace().collect::<Vec<_>>().join(" ");
    for words in [
        "7 rows, comma between cells; the first row names the columns.",
        "7 rows became 5 lines of 8 signs, equal signs added up; no row is left out.",
        "No column gives the quantity: each row is one sign.",
        "Width and height are taken the other way round where the sign code lies so: D3-1 (3) and R6-1 (2).",
        "1 row with several sizes or codes in a cell: 2 signs.",
        "Left and right variants have the shape and colours of their code, each with an artwork of its own: R6-1 (2).",
        "B Size size by its name",
        "C Sign Text legend its name means it",
        "E Year nothing",
    ] {
        assert!(said.contains(words), "{words}\n{}", ran.result);
    }
    let text = std::fs::read_to_string(INVENTORY).expect("the inventory");
    let order = order(&text, &[]);
    let lines: Vec<String> = order["line"].as_array().expect("lines").iter().map(ToString::to_string).collect();
    assert_eq!(
        lines,
        [
            r#"{"code":"R1-1","size":"30 in","label":"Stop","quantity":2}"#,
            r#"{"code":"R6-1","size":"36 x 12 in","artwork":"R6-1L","label":"R6-1L One way left","quantity":1}"#,
            r#"{"code":"R6-1","size":"36 x 12 in","artwork":"R6-1R","label":"R6-1R One way right","quantity":1}"#,
            r#"{"code":"D3-1","size":"30 x 6 in","label":"Street name","quantity":3,"designs":2}"#,
            r#"{"code":"W11-2","size":"30 x 30 in","label":"Pedestrian crossing","quantity":1}"#,
        ]
    );
}

#[test]
fn while_rows_cannot_be_taken_nothing_is_written() {
    let file = scratch("not-written.json");
    let ran = rows(MIXED, &["-o", &file]);
    assert_eq!(ran.code, 3);
    assert!(!std::path::Path::new(&file).exists());
    assert!(ran.words.starts_with("-: 2 rows could not be taken where every row was wanted; nothing was written; "), "{}", ran.words);
    for words in ["Row 3, column A (`code`): `TH-9` where", "Row 5, column B (`size`): `large` where"] {
        assert!(ran.result.contains(words), "{words}\n{}", ran.result);
    }
}

#[test]
fn rows_left_out_are_saved_with_their_reason_and_can_be_taken_again() {
    let (written, rest) = (scratch("written.json"), scratch("rest.csv"));
    let ran = rows(MIXED, &["-o", &written, "--leave-out", "--left-out", &rest]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    let order: Value = serde_json::from_str(&std::fs::read_to_string(&written).expect("the order")).expect("JSON");
    assert_eq!(order["line"].as_array().map(Vec::len), Some(2));
    assert_eq!(faceload(&["compare", &written]).code, 0);

    let text = std::fs::read_to_string(&rest).expect("the rows left out");
    assert!(text.starts_with("\"code\",\"size\",\"quantity\",\"reason\"\r\n\"TH-9\",\"24 x 30 in\",\"4\",\"row 3: column A"), "{text}");
    let again = report(&text, &["--where-missing", "shape=rectangle", "--where-missing", "colours=blue 60 %; white 40 %"]);
    assert_eq!((&again["rows"], &again["taken"], &again["listed"]), (&Value::from(2), &Value::from(1), &Value::from(1)));
}

#[test]
fn what_is_assumed_stays_in_the_label() {
    let options = ["--where-missing", "shape=rectangle", "--where-missing", "colours=blue 60 %; white 40 %"];
    let order = order("code,size\nTH-9,24 x 30 in\nR1-1,30 in\n", &options);
    assert_eq!(order["line"][0]["label"], "TH-9 (colours, shape assumed)");
    assert_eq!(order["line"][0]["colours"].to_string(), r#"{"white":"40 %","blue":"60 %"}"#);
    assert_eq!((&order["line"][1]["label"], &order["line"][1]["shape"]), (&Value::from("stop"), &Value::Null));
}

#[test]
fn columns_are_taken_as_the_user_says_and_none_twice() {
    let text = "a,b,c\nR1-1,30 in,4\nR1-2,36 in,5\n";
    let fields = |report: &Value| {
        let columns = report["columns"].as_array().expect("columns").iter();
        columns.map(|column| column["field"].as_str().unwrap_or("nothing").to_owned()).collect::<Vec<_>>()
    };
    assert_eq!(fields(&report(text, &[])), ["code", "size", "nothing"]);
    assert_eq!(fields(&report(text, &["--take", "c=quantity"])), ["code", "size", "quantity"]);
    assert_eq!(fields(&report(text, &["--take", "C=quantity", "--take", "a=label"])), ["label", "size", "quantity"]);
    for (option, wanted) in [
        ("d=size", "--take: `d=size` where a column of the file was wanted; it has A a, B b and C c"),
        ("c=colour", "--take: `c=colour` where a field was wanted; use code, "),
        ("c", "--take: `c` where a column and a field was wanted; write `Notes=label`"),
        ("a=size", "--take: `b=size` where a field that no other choice takes was wanted; two columns"),
    ] {
        let ran = rows(text, &["--take", option, "--take", "b=size"]);
        assert_eq!(ran.code, 3, "{option}");
        assert!(ran.words.starts_with(wanted), "{}", ran.words);
    }
    let ran = rows(text, &["--where-missing", "colour=red"]);
    assert!(
        ran.code == 3 && ran.words.starts_with("--where-missing: `colour=red` where a field and its value was wanted; "),
        "{}",
        ran.words
    );
}

#[test]
fn separators_marks_and_encodings_are_found_out_or_chosen_and_shown() {
    let semicolon = report("width (cm);height (cm);shape;colours;qty\n62,5;90;rectangle;red 60 %/white 40 %;3\n", &["--decimal-comma"]);
    assert_eq!(semicolon["lines"][0]["line"]["size"], "62.5 x 90 cm");
    assert!(semicolon["says"].to_string().contains("A comma is taken as the decimal mark, as chosen."));
    let ran = faceload_with(&["rows", "-"], b"code\tsize\tlabel\nR1-1\t30\x94\tcaf\xe9 corner\n", &[]);
    assert_eq!(ran.code, 0, "{}{}", ran.result, ran.words);
    assert!(ran.result.contains("taken as Windows-1252") && ran.result.contains("café corner"), "{}", ran.result);
    let unit = report("code,size\nR7-1,12x18\n", &["--where-missing", "unit=in"]);
    assert_eq!(unit["lines"][0]["line"]["size"], "12 x 18 in");
    let bare = report("R1-1,30 in,4\nR1-2,36 in,5\n", &[]);
    assert_eq!((&bare["header"], &bare["signs"]), (&Value::from(false), &Value::from(9)));
    let with_names = report("\u{feff}code,size\rR1-1,30 in\r", &[]);
    assert_eq!((&with_names["rows"], &with_names["columns"][0]["name"]), (&Value::from(1), &Value::from("code")));
}

#[test]
fn compare_takes_the_file_by_the_same_reading() {
    let file = scratch("inventory.json");
    assert_eq!(faceload(&["rows", INVENTORY, "-o", &file]).code, 0);
    let (rows, order) = (faceload(&["compare", INVENTORY, "--json"]), faceload(&["compare", &file, "--json"]));
    assert_eq!((rows.code, order.code), (0, 0), "{}", rows.words);
    assert_eq!(rows.result, order.result);
    assert!(rows.words.contains("7 rows became 5 lines of 8 signs"), "{}", rows.words);
}

#[test]
fn rows_write_no_escape_codes_to_the_terminal() {
    let text = "\u{1b}[31mcode,size,label\n\u{1b}[31mTH-9,\u{1b}[31m,\u{1b}[31m\nR1-1,30 in,\u{1b}[31mstop\n";
    for options in
        [&[][..], &["--leave-out"], &["--json"], &["--take", "A=code"], &["--take", "Z=code"], &["--where-missing", "shape=\u{1b}"]]
    {
        let ran = rows(text, options);
        assert!(!ran.result.contains('\u{1b}') && !ran.words.contains('\u{1b}'), "{options:?}: {:?} {:?}", ran.result, ran.words);
    }
}
