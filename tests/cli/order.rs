//! `faceload order`: an order as JSON that the page opens, or as a link; and a link in place of an order.

use faceload_report::link::{BEGINS, Linked};

use crate::program::{faceload, faceload_with};
use crate::shop::tables;

/// An order in TOML with a value of the shop's own, its keys in an order of their own.
const TOML: &[u8] = br#"schema_version = 1
name = "Tern Harbour County, spring"
boundary = "face-with-blank"

[[line]]
label = "stop"
quantity = 12
code = "R1-1"
size = "30 in"

[[alternative]]
route = "digital-printing"
id = "ours"
with = { "printer.power.solvent" = { value = "1.9 kW", note = "meter, week 14", grade = "own" } }

[[alternative]]
id = "film"
route = "overlay-film"
"#;

fn ran(words: &[&str]) -> String {
    let ran = faceload_with(words, TOML, &[]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{words:?}");
    ran.result
}

#[test]
fn toml_becomes_json_with_the_same_answer_and_json_stays_as_it_is() {
    let json = ran(&["order", "-"]);
    assert!(json.starts_with("{\n  \"schema_version\": 1,") && json.ends_with("}\n"), "{json}");
    let again = faceload_with(&["order", "-"], json.as_bytes(), &[]);
    assert_eq!((again.code, again.result.as_str()), (0, json.as_str()));
    assert_eq!(faceload_with(&["compare", "-", "--json"], json.as_bytes(), &[]).result, ran(&["compare", "-", "--json"]));
}

#[test]
fn a_link_has_the_same_answer_as_its_order() {
    let link = ran(&["order", "-", "--link", "--own"]);
    assert!(link.starts_with(BEGINS) && link.ends_with('\n') && link.len() < 2_000, "{link}");
    let address = format!("https://signs.example/faceload.html{}&view=read", link.trim());
    let linked = faceload(&["compare", &address, "--json"]);
    assert_eq!((linked.code, linked.words.as_str()), (0, ""));
    let of_file = |text: &str| {
        text.lines().filter(|line| !line.contains("\"file\"")).map(|line| line.replace("the order in the link", "-")).collect::<String>()
    };
    assert_eq!(of_file(&linked.result), of_file(&ran(&["compare", "-", "--json"])));
}

#[test]
fn without_own_values_a_link_says_so_to_whoever_opens_it() {
    let link = ran(&["order", "-", "--link"]);
    let read = Linked::read(&link).expect("a link");
    assert_eq!((read.left_out, read.boundary.as_str()), (1, "face-with-blank"));
    assert!(!serde_json::to_string(&read).expect("JSON").contains("meter, week 14"));
    let opened = faceload(&["compare", &link]);
    assert_eq!(opened.code, 0);
    assert_eq!(opened.words, "The link was made without one value of the shop's own: its numbers are generic.\n");
}

#[test]
fn other_tables_are_named() {
    let mut linked = Linked::read(&ran(&["order", "-", "--link"])).expect("a link");
    (linked.tables, linked.left_out) = ("0123456789ab".to_owned(), 0);
    let words = faceload(&["lines", &linked.write().expect("a link")]).words;
    let now = tables().fingerprint.short().to_owned();
    assert_eq!(
        words,
        format!("The link was made with the tables 0123456789ab; these are {now}, so numbers may differ from what its sender saw.\n")
    );
}

#[test]
fn what_was_moved_by_hand_is_moved_or_refused() {
    let mut linked = Linked::read(&ran(&["order", "-", "--link"])).expect("a link");
    linked.left_out = 0;
    let plain = faceload(&["compare", &linked.write().expect("a link"), "--json"]).result;
    let input = tables().inputs.iter().find(|input| input.id == "printer.power.solvent").expect("a row");
    linked.moved = vec![(input.id.clone(), input.high)];
    let moved = faceload(&["compare", &linked.write().expect("a link"), "--json"]);
    assert_eq!(moved.code, 0, "{}", moved.words);
    assert_ne!(moved.result, plain);
    linked.moved = vec![(input.id.clone(), input.high * 100.0)];
    let refused = faceload(&["compare", &linked.write().expect("a link")]);
    assert_eq!((refused.code, refused.result.as_str()), (3, ""));
    assert!(refused.words.contains("printer.power.solvent") && refused.words.contains("move it within its range"), "{}", refused.words);
}

#[test]
fn a_bad_link_is_refused_as_bad_input() {
    for link in ["#1.", "#1.%3Cscript%3E", "https://signs.example/#1.AAAA"] {
        let ran = faceload(&["compare", link]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{link}");
        assert!(ran.words.starts_with("the link: ") && ran.words.contains(" wanted; "), "{link}: {}", ran.words);
    }
}

#[test]
fn a_bad_order_makes_neither_json_nor_link() {
    for words in [&["order", "-"][..], &["order", "-", "--link"]] {
        let ran = faceload_with(words, b"{\"schema_version\": 1, \"line\": [{\"quantity\": \"1,234\"}]}", &[]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""));
        assert!(ran.words.contains("`1,234`"), "{}", ran.words);
    }
}
