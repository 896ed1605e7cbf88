//! Files: what they open with, how long they are, and words that must not stand in them.

use super::{below, below_ending, name_of, none, text_of, top, without_tests};

/// Longer than this, a file holds more than one thing.
const LONGEST: usize = 400;

/// Files that are kept as text.
const TEXTS: [&str; 19] = [
    "rs",
    "toml",
    "md",
    "csv",
    "json",
    "js",
    "mjs",
    "html",
    "css",
    "lock",
    "cff",
    "run",
    "expected",
    "gitignore",
    "npmrc",
    "LICENSE",
    "yml",
    "txt",
    "py",
];

#[test]
fn every_module_file_says_what_it_is() {
    let modules =
        below_ending("crate", "rs").into_iter().chain(below_ending("tests", "rs")).filter(|path| !name_of(path).contains("/examples/"));
    none(modules.filter(|path| !text_of(path).starts_with("//! ")).map(|path| name_of(&path)).collect());
}

#[test]
fn no_file_is_longer_than_400_lines() {
    let long = |folder| {
        below(folder).into_iter().filter_map(|path| {
            let Ok(text) = std::fs::read_to_string(&path) else { return None };
            let lines = without_tests(&text).lines().count();
            (lines > LONGEST).then(|| format!("{}: {lines} lines", name_of(&path)))
        })
    };
    none(
        long("crate")
            .chain(long("www"))
            .chain(below_ending("tests", "rs").into_iter().filter_map(|path| {
                let lines = text_of(&path).lines().count();
                (lines > LONGEST).then(|| format!("{}: {lines} lines", name_of(&path)))
            }))
            .collect(),
    );
}

/// The lines of files that hold one of these words.
fn holding(files: Vec<std::path::PathBuf>, words: &[String], text: impl Fn(&str) -> String) -> Vec<String> {
    let mut found = Vec::new();
    for path in files {
        let Ok(whole) = std::fs::read_to_string(&path) else { continue };
        for (index, line) in text(&whole).lines().enumerate() {
            found.extend(
                words.iter().filter(|word| line.contains(*word)).map(|word| format!("{}, line {}: `{word}`", name_of(&path), index + 1)),
            );
        }
    }
    found
}

fn words(list: &[&str]) -> Vec<String> {
    list.iter().map(|word| (*word).to_owned()).collect()
}

#[test]
fn the_page_writes_no_markup_from_text_and_runs_none() {
    let unsafe_ways = words(&["innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(", "new Function", "setTimeout(\""]);
    assert!(below("www").len() >= 8);
    none(holding(below("www"), &unsafe_ways, str::to_owned));
}

#[test]
fn nothing_is_left_to_do_in_the_program() {
    let left = words(&["todo!", "dbg!", "unimplemented!", "FIXME", "XXX"]);
    none(holding(below_ending("crate", "rs"), &left, str::to_owned));
}

#[test]
fn the_program_does_not_panic_on_what_people_give_it() {
    // In tests, benches, chores and examples a panic is a result.
    let program = below_ending("crate", "rs").into_iter().filter(|path| {
        ["/xtask/", "/examples/", "/bench/", "/checks", "_tests.rs", "picture/look.rs"].iter().all(|part| !name_of(path).contains(part))
    });
    let no_comments = |text: &str| {
        without_tests(text).lines().map(|line| if line.trim_start().starts_with("//") { "" } else { line }).collect::<Vec<_>>().join("\n")
    };
    none(holding(program.collect(), &words(&[".unwrap()", ".expect(", "panic!(", "unreachable!("]), no_comments));
}

#[test]
fn no_file_names_a_place_of_one_machine() {
    // Written in two parts, so that this file holds none of them.
    let places: Vec<String> =
        [("/ro", "ot/"), ("/ho", "me/"), ("/wo", "rk/"), ("/tm", "p/"), ("/Us", "ers/"), ("C:", "\\\\"), ("/mn", "t/")]
            .iter()
            .map(|(a, b)| format!("{a}{b}"))
            .collect();
    let at_start = |text: &str| {
        // A folder further down a path or an address is no place of a machine: the slash must begin the word.
        let begins = |line: &str| {
            places.iter().any(|place| {
                line.match_indices(place.as_str())
                    .any(|(at, _)| !line[..at].ends_with(|c: char| c.is_alphanumeric() || matches!(c, '.' | '_' | '-' | '*')))
            })
        };
        text.lines().map(|line| if begins(line) { line } else { "" }).collect::<Vec<_>>().join("\n")
    };
    none(holding(texts(), &places, at_start));
}

#[test]
fn no_file_names_the_host_of_a_registry() {
    let hosts: Vec<String> = [
        ("registry.", "npmjs"),
        ("static.", "crates"),
        ("index.", "crates"),
        ("files.", "pythonhosted"),
        ("pypi.", "org"),
        ("proxy.", "golang"),
        ("artifact", "ory"),
        ("deb.", "debian.org"),
    ]
    .iter()
    .map(|(a, b)| format!("{a}{b}"))
    .collect();
    none(holding(texts(), &hosts, str::to_owned));
}

/// Every kept text file.
fn texts() -> Vec<std::path::PathBuf> {
    let is_text = |path: &std::path::PathBuf| {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        TEXTS.iter().any(|ending| name.ends_with(ending))
    };
    let texts: Vec<_> = below(".").into_iter().filter(is_text).collect();
    assert!(texts.len() > 100, "only {} texts", texts.len());
    texts
}

#[test]
fn every_text_is_utf8_and_ends_with_a_line() {
    let mut found = Vec::new();
    for path in texts() {
        match String::from_utf8(std::fs::read(&path).expect("a file")) {
            Err(_) => found.push(format!("{}: not UTF-8", name_of(&path))),
            Ok(text) if text.contains('\r') => found.push(format!("{}: carriage returns", name_of(&path))),
            Ok(text) if !text.is_empty() && !text.ends_with('\n') => found.push(format!("{}: no line end at its end", name_of(&path))),
            Ok(_) => {}
        }
    }
    none(found);
}

#[test]
fn no_rust_file_has_tabs_or_blanks_at_a_line_end() {
    let mut found = Vec::new();
    for path in below_ending("crate", "rs").into_iter().chain(below_ending("tests", "rs")) {
        for (index, line) in text_of(&path).lines().enumerate() {
            if line.contains('\t') || line.ends_with(' ') {
                found.push(format!("{}, line {}", name_of(&path), index + 1));
            }
        }
    }
    none(found);
}

#[test]
fn the_top_holds_what_it_is_meant_to_hold() {
    let meant = [
        "CHANGELOG.md",
        "CITATION.cff",
        "Cargo.lock",
        "Cargo.toml",
        "DEVELOPERS.md",
        "LICENSE",
        "README.md",
        "crate",
        "factors",
        "rust-toolchain.toml",
        "target",
        "tests",
        "www",
    ];
    let entries =
        std::fs::read_dir(top()).expect("the top").map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned());
    none(entries.filter(|name| !name.starts_with('.') && !meant.contains(&name.as_str())).collect());
}
