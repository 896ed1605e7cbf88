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
