//! Jobs: equal lines are made together, lines that differ in one fact are not.

use faceload_core::order::jobs;
use serde_json::{Value, json};

use crate::shop;

/// A line of which every fact is stated.
fn line() -> Value {
    json!({
        "label": "depot", "shape": "rectangle", "width": "24 in", "height": "30 in", "corner": "1 in", "quantity": 6, "designs": 2,
        "colours": {"blue": "60 %", "red": "5 %"}, "rim": "blue", "sides": 1, "batch": 4, "stock": false, "screens": "new",
        "sheeting": "prismatic", "base": "any", "blank": "aluminium 0.080 in", "artwork": "arrow",
        "shared_colours": ["red"], "cut_length": "9 m", "characters": 4
    })
}

/// How many jobs two lines are, and the signs and designs of the first.
fn made(other: &Value) -> (usize, u32, u32) {
    let order = shop::order(&json!({"schema_version": 1, "line": [line(), other]}).to_string());
    let jobs = jobs(&order.lines);
    assert_eq!(jobs.iter().map(|job| job.lines).sum::<usize>(), 2);
    (jobs.len(), jobs[0].line.quantity, jobs[0].line.designs)
}

#[test]
fn lines_equal_in_all_but_label_and_the_way_a_size_is_written_are_one_job() {
    let mut other = line();
    other["label"] = json!("yard");
    other["width"] = json!("609.6 mm");
    other["height"] = json!("2.5 ft");
    assert_eq!(made(&other), (1, 12, 2));
}

#[test]
fn designs_add_where_no_artwork_says_that_they_are_the_same() {
    let mut line = line();
    line.as_object_mut().expect("a line").remove("artwork");
    let order = shop::order(&json!({"schema_version": 1, "line": [line.clone(), line]}).to_string());
    let jobs = jobs(&order.lines);
    assert_eq!((jobs.len(), jobs[0].line.quantity, jobs[0].line.designs), (1, 12, 4));
}

#[test]
fn lines_of_a_code_are_one_design_but_for_codes_whose_signs_each_show_their_own() {
    for (code, designs) in [("R1-1", 1), ("R2-1", 1), ("D3-1", 2), ("M1-1", 2)] {
        let line = json!({"code": code, "size": "30 in", "quantity": 5});
        let order = shop::order(&json!({"schema_version": 1, "line": [line.clone(), line]}).to_string());
        let jobs = jobs(&order.lines);
        assert_eq!((jobs.len(), jobs[0].line.quantity, jobs[0].line.designs), (1, 10, designs), "{code}");
    }
}

#[test]
fn lines_that_differ_in_one_fact_are_two_jobs() {
    for (key, value) in [
        ("shape", json!("square")),
        ("width", json!("25 in")),
        ("height", json!("31 in")),
        ("corner", json!("1.5 in")),
        ("colours", json!({"blue": "61 %", "red": "5 %"})),
        ("rim", json!("white")),
        ("sides", json!(2)),
        ("batch", json!(3)),
        ("stock", json!(true)),
        ("screens", json!("kept")),
        ("sheeting", json!("beaded")),
        ("base", json!("white")),
        ("blank", json!("aluminium 0.100 in")),
        ("blank", json!("panels 0.125 in")),
        ("blank", json!("none")),
        ("artwork", json!("bend")),
        ("shared_colours", json!(["blue"])),
        ("cut_length", json!("8 m")),
        ("characters", json!(5)),
        ("not", json!({"digital-printing": "agency specification"})),
    ] {
        let mut other = line();
        other[key] = value;
        assert_eq!(made(&other).0, 2, "{key}");
    }
}
