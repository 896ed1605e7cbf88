//! Labels: each once, each with the origin of its word, none unused, none asked for that is not there.

use std::collections::BTreeSet;

use faceload_report::labels::{self, Origin};

use super::{below, below_ending, name_of, none, text_of};

#[test]
fn every_label_has_a_text_and_the_origin_of_its_word() {
    let mut ids = BTreeSet::new();
    for label in labels::all() {
        assert!(ids.insert(label.id), "`{}` stands twice", label.id);
        assert!(!label.text.trim().is_empty() && label.text.trim() == label.text, "`{}` has no text", label.id);
        if let Origin::Standard(standard) = label.origin {
            let named = ["ISO ", "EN ", "ASTM ", "GHG Protocol", "NFPA ", "IPCC"].iter().any(|body| standard.starts_with(body));
            assert!(named, "`{}`: which standard is `{standard}`?", label.id);
        }
    }
}

#[test]
fn every_label_asked_for_is_there() {
    let known: BTreeSet<&str> = labels::all().map(|label| label.id).collect();
    let mut found = Vec::new();
    let mut asked = 0;
    for path in below_ending("crate", "rs") {
        let text = text_of(&path);
        for (at, call) in text.match_indices("label(\"") {
            let id = text[at + call.len()..].split('"').next().unwrap_or_default();
            asked += 1;
            // Steps and fields of an order have labels of their own.
            if name_of(&path).starts_with("crate/report/") && !known.contains(id) {
                found.push(format!("{}: `{id}`", name_of(&path)));
            }
        }
    }
    assert!(asked > 0);
    none(found);
}

#[test]
fn every_label_is_used() {
    let elsewhere: String = ["crate", "www"]
        .into_iter()
        .flat_map(below)
        .filter(|path| !name_of(path).starts_with("crate/report/labels"))
        .filter_map(|path| std::fs::read_to_string(path).ok())
        .collect();
    none(
        labels::all()
            .filter(|label| !["\"", "'", "`"].iter().any(|quote| elsewhere.contains(&format!("{quote}{}{quote}", label.id))))
            .map(|label| label.id.to_owned())
            .collect(),
    );
}

/// The names in braces of a text.
fn facts(text: &str) -> impl Iterator<Item = &str> {
    text.split('{').skip(1).filter_map(|part| Some(part.split_once('}')?.0))
}

/// What stands inside the brackets of a call, from its first argument on.
fn arguments(call: &str) -> &str {
    let mut depth = 1;
    let end = call.char_indices().find(|(_, letter)| {
        depth += match letter {
            '(' => 1,
            ')' => -1,
            _ => 0,
        };
        depth == 0
    });
    end.map_or(call, |(at, _)| &call[..at])
}

/// The facts of a label that a call of a script does not give.
fn not_given<'a>(call: &str, text: &'a str) -> Vec<&'a str> {
    let Some((_, given)) = arguments(call).split_once(", ") else { return facts(text).collect() };
    // Facts that come as one thing are not looked into.
    if !given.starts_with('{') || given.contains("...") {
        return Vec::new();
    }
    let names: Vec<&str> = given.split(|c: char| !c.is_alphanumeric() && c != '_').collect();
    facts(text).filter(|name| !names.contains(name)).collect()
}

#[test]
fn a_script_gives_a_label_all_its_facts() {
    let mut found = Vec::new();
    let mut called = 0;
    for path in below_ending("www", "js") {
        let script = text_of(&path);
        for (at, call) in script.match_indices("say(\"") {
            let rest = &script[at + call.len()..];
            let id = rest.split('"').next().unwrap_or_default();
            let Some(label) = labels::all().find(|label| label.id == id) else {
                found.push(format!("{}: no label `{id}`", name_of(&path)));
                continue;
            };
            called += 1;
            found.extend(not_given(rest, label.text).into_iter().map(|fact| format!("{}: `{id}` without its `{fact}`", name_of(&path))));
        }
    }
    assert!(called > 100, "only {called} were read");
    none(found);
}

#[test]
fn a_fact_that_is_left_out_is_found() {
    let text = "{rest} of {all} inputs";
    assert_eq!(not_given("some\") + f(rest, all)", text), ["rest", "all"]);
    assert_eq!(not_given("some\", { rest: count(all) + 1 }) + f(all)", "{rest} of {every}"), ["every"]);
    assert!(not_given("some\", { rest: 1, all })", text).is_empty());
    assert!(not_given("some\", row)", text).is_empty());
}
