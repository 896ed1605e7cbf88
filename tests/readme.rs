//! What the documents show is so: commands run, the order is taken, numbers are those of today, and
//! every file named is there.

use std::path::Path;

use serde_json::Value;

use crate::program::{faceload, faceload_with};

fn text_of(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// The blocks of a document fenced by that word.
fn blocks<'a>(text: &'a str, word: &str) -> Vec<&'a str> {
    let fence = format!("```{word}\n");
    text.split(fence.as_str()).skip(1).map(|rest| rest.split("```").next().unwrap_or_default()).collect()
}

#[test]
fn every_command_of_the_program_in_readme_runs() {
    let readme = text_of("README.md");
    let commands: Vec<&str> =
        blocks(&readme, "sh").into_iter().flat_map(str::lines).filter_map(|line| line.strip_prefix("cargo run --release -- ")).collect();
    assert!(commands.len() >= 3, "{commands:?}");
    for command in commands {
        let words: Vec<&str> = command.split('#').next().unwrap_or_default().split_whitespace().collect();
        let ran = faceload(&words);
        assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{command}");
        assert_eq!(ran.result.is_empty(), words == ["check"] || words.contains(&"-o"), "{command}");
    }
}

#[test]
fn every_chore_in_the_documents_is_one() {
    let chores = text_of("crate/xtask/main.rs")
        + &["start", "test", "page", "bless", "tables", "oracles", "ci", "measure", "budgets", "screenshots", "types"]
            .map(|chore| {
                std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("crate/xtask/{chore}.rs"))).unwrap_or_default()
            })
            .concat();
    for document in ["README.md", "DEVELOPERS.md"] {
        for (_, rest) in
            text_of(document).match_indices("cargo xtask ").map(|(at, found)| (at, text_of(document)[at + found.len()..].to_owned()))
        {
            let chore: String = rest.chars().take_while(|c| c.is_ascii_lowercase()).collect();
            assert!(chore.is_empty() || chores.contains(&format!("name: \"{chore}\"")), "{document}: no chore `{chore}`");
        }
    }
}

#[test]
fn the_order_in_readme_is_taken_and_has_its_alternatives() {
    let readme = text_of("README.md");
    let orders = blocks(&readme, "toml");
    assert!(!orders.is_empty());
    for order in orders {
        let ran = faceload_with(&["compare", "-", "--json"], order.as_bytes(), &[]);
        assert_eq!((ran.code, ran.words.as_str()), (0, ""));
        let json: Value = serde_json::from_str(&ran.result).expect("JSON");
        let stated = order.matches("[[alternative]]").count();
        assert_eq!(json["alternatives"].as_array().map(Vec::len), Some(if stated == 0 { 6 } else { stated }));
        assert_eq!(json["lines_compared"], json["lines"]);
    }
}

#[test]
fn numbers_in_readme_are_those_of_today() {
    const NAME: &str = "loads of the demo stop, per m2";
    let readme = text_of("README.md");
    let (before, rest) = readme.split_once(&format!("<!-- generated: {NAME} -->\n")).unwrap_or_else(|| panic!("no place for the {NAME}"));
    let (kept, after) = rest.split_once("<!-- end -->").expect("an end of the generated text");
    let ran = faceload(&["compare", "stop"]).result;
    // The last line names the tables by a mark that changes with every row; README says so in words.
    let (shown, last) = ran.trim_end().rsplit_once('\n').expect("lines");
    assert!(last.starts_with("  Tables ") && readme.contains("The last line, left out here, names the tables"), "{last}");
    let now = format!("```text\n{shown}\n```\n");
    if std::env::var_os("FACELOAD_BLESS").is_some_and(|value| value == "1") {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md");
        std::fs::write(path, format!("{before}<!-- generated: {NAME} -->\n{now}<!-- end -->{after}")).expect("README.md can be written");
        return;
    }
    assert!(kept == now, "stale; run `cargo xtask bless`\n--- kept\n{kept}--- now\n{now}");
}

#[test]
fn every_generated_text_in_readme_is_made_by_a_test() {
    assert_eq!(text_of("README.md").matches("<!-- generated: ").count(), 1);
}

#[test]
fn every_file_named_in_the_documents_is_there() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    for document in ["README.md", "DEVELOPERS.md", "CHANGELOG.md", "factors/CHANGES.md", "factors/README.md"] {
        for named in text_of(document).split('`').skip(1).step_by(2) {
            let is_path = named.contains('/')
                && named.chars().all(|c| c.is_ascii_alphanumeric() || "/._-".contains(c))
                && (named.ends_with('/') || Path::new(named).extension().is_some());
            // A path may be given from the core; what is built is not kept.
            if is_path && !named.starts_with("target/") && !["", "crate/core/"].iter().any(|from| top.join(from).join(named).exists()) {
                found.push(format!("{document}: `{named}`"));
            }
        }
    }
    assert!(found.is_empty(), "not there:\n{}", found.join("\n"));
}
