//! A changed record is found out: 1,000 single edits of its values, edits that leave every value, edits of the page around it.

use faceload_report::data::verify::{Given, verify};
use faceload_report::data::{put_in, taken_from};
use serde_json::{Number, Value};

use super::{ODD, record, tables};

/// The pointers of every leaf.
fn leaves(tree: &Value, path: &str, out: &mut Vec<String>) {
    match tree {
        Value::Object(map) => {
            map.iter().for_each(|(key, value)| leaves(value, &format!("{path}/{}", key.replace('~', "~0").replace('/', "~1")), out))
        }
        Value::Array(list) => list.iter().enumerate().for_each(|(at, value)| leaves(value, &format!("{path}/{at}"), out)),
        _ => out.push(path.to_owned()),
    }
}

/// Numbers by a linear congruence (Knuth's MMIX constants); the same on every run.
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, end: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % end
    }
}

/// A leaf a little other: a digit more, the next number, one letter, the other flag.
fn edited(leaf: &Value, numbers: &mut Numbers) -> Value {
    match leaf {
        Value::Null => Value::from(0),
        Value::Bool(flag) => Value::Bool(!flag),
        Value::Number(number) => match (number.as_u64(), number.as_f64()) {
            (Some(whole), _) => Value::from(whole + 1),
            (_, Some(value)) => Number::from_f64(f64::from_bits(value.to_bits() + 1)).map_or(Value::Null, Value::Number),
            _ => Value::Null,
        },
        Value::String(text) => {
            let mut letters: Vec<char> = text.chars().collect();
            if letters.is_empty() {
                return Value::from("x");
            }
            let at = numbers.below(letters.len());
            letters[at] = match letters[at] {
                '9' => '8',
                digit if digit.is_ascii_digit() => char::from(digit as u8 + 1),
                'x' => 'y',
                _ => 'x',
            };
            Value::from(letters.into_iter().collect::<String>())
        }
        other => panic!("no leaf: {other}"),
    }
}

fn found_out(text: &str) -> Result<String, Vec<String>> {
    verify("data.json", &Given::Record(text), tables(), &|_| None, |_| true)
}

#[test]
fn a_thousand_single_edits_are_all_found() {
    let whole = record(ODD);
    assert!(found_out(&whole.json()).is_ok(), "{:?}", found_out(&whole.json()));
    let mut all = Vec::new();
    leaves(&whole.tree, "", &mut all);
    let mut numbers = Numbers(20_261_125);
    // What it was made from counts most and is the smaller part: every third edit is there.
    let first: Vec<String> = all.iter().filter(|path| path.starts_with("/made_from")).cloned().collect();
    assert!(first.len() > 30 && all.len() > 2_000, "{} of {}", first.len(), all.len());
    for edit in 0..1_000 {
        let path = if edit % 3 == 0 { &first[numbers.below(first.len())] } else { &all[numbers.below(all.len())] };
        let mut other = whole.tree.clone();
        let leaf = other.pointer_mut(path).unwrap_or_else(|| panic!("no {path}"));
        *leaf = edited(leaf, &mut numbers);
        assert_ne!(other, whole.tree, "{path}");
        let mut text = serde_json::to_string_pretty(&other).expect("JSON");
        text.push('\n');
        let found = found_out(&text).expect_err(path);
        assert!(found.len() > 1 || found[0].contains("where"), "{path}: {found:?}");
    }
}

#[test]
fn an_edit_that_leaves_every_value_is_found_too() {
    let text = record(ODD).json();
    for (part, other) in [
        ("  \"program\"", " \"program\""),
        ("\"schema_version\": 1,", "\"schema_version\": 1, \"schema_version\": 1,"),
        ("\"seed\": 1,", "\"seed\": 1.0e0,"),
    ] {
        assert!(text.contains(part), "{part}");
        let found = found_out(&text.replacen(part, other, 1)).expect_err(part);
        assert!(!found.is_empty(), "{part}");
    }
    assert!(found_out(&text[..text.len() / 2]).expect_err("half a file")[0].contains("text that is not JSON"));
}

#[test]
fn a_page_carries_its_record_whatever_an_order_says() {
    let record = record(&ODD.replace("=film", "</script><script>alert(1)</script>"));
    let page = format!("<!doctype html>\n<p>4.3</p>\n{}\n<p>end</p>\n", put_in(&record.json()));
    assert_eq!(page.matches("</script>").count(), 1, "no text of an order ends the block");
    let carried: Value = serde_json::from_str(taken_from(&page).expect("a record")).expect("JSON");
    assert_eq!(carried, record.tree);
    let with = |page: &str, made: &str| verify("report.html", &Given::Page(page), tables(), &|_| Some(made.to_owned()), |_| true);
    assert!(with(&page, &page).is_ok_and(|said| said.contains("the whole page came out as it stands")));
    let changed = page.replace("<p>4.3</p>", "<p>3.4</p>");
    let found = with(&changed, &page).expect_err("a visible number was changed");
    assert_eq!(found[1], "the page, line 2: `<p>3.4</p>` where `<p>4.3</p>` is made again");
    let alone = verify("report.html", &Given::Page(&page), tables(), &|_| None, |_| true);
    assert!(alone.is_ok_and(|said| said.contains("the page around them was not compared")), "what was not compared is said");
    let two = format!("{page}{}", put_in("{}"));
    assert!(with(&two, &two).expect_err("two records")[0].contains("more than one block"));
}
