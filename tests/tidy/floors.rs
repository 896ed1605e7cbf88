//! Floors of the core: a module uses lower floors only. The floors are the `pub mod` lines of
//! `crate/core/lib.rs`, from the ground up; what a module uses are the `crate::` paths in its files.
//! Tests that stand in a file (from `#[cfg(test)]` on) and comments may look anywhere.

use super::{below_ending, name_of, none, text_of, top, without_tests};

/// The floors, the lowest first.
fn floors(lib: &str) -> Vec<&str> {
    lib.lines().filter_map(|line| line.strip_prefix("pub mod ")?.strip_suffix(';')).collect()
}

/// The modules that a file's text names after `crate::`, with their lines.
fn used(text: &str) -> Vec<(usize, String)> {
    let mut used = Vec::new();
    for (index, line) in without_tests(text).lines().enumerate() {
        let code = line.split("//").next().unwrap_or_default();
        for (at, _) in code.match_indices("crate::") {
            let rest = &code[at + "crate::".len()..];
            // `use crate::{order::Ink, step};` names several.
            let names: Vec<&str> = match rest.strip_prefix('{') {
                Some(list) => list.split('}').next().unwrap_or_default().split(',').collect(),
                None => vec![rest],
            };
            for name in names {
                let name: String = name.trim().chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '_').collect();
                used.push((index + 1, name));
            }
        }
    }
    used
}

/// The lines of a file of a floor that point to the same floor by another path, or higher.
fn upward(floors: &[&str], floor: &str, text: &str) -> Vec<(usize, String)> {
    let height = |name: &str| floors.iter().position(|known| *known == name);
    used(text).into_iter().filter(|(_, name)| height(name).is_some_and(|used| Some(used) > height(floor))).collect()
}

#[test]
fn a_module_uses_lower_floors_only() {
    let core = top().join("crate/core");
    let lib = text_of(&core.join("lib.rs"));
    let floors = floors(&lib);
    assert_eq!(floors.first(), Some(&"quantity"));
    assert!(floors.len() >= 9, "{floors:?}");
    let mut found = Vec::new();
    let mut read = 0;
    for path in below_ending("crate/core", "rs") {
        let inside = path.strip_prefix(&core).expect("below the core");
        let floor = inside.components().next().and_then(|first| first.as_os_str().to_str()).unwrap_or_default().trim_end_matches(".rs");
        if !floors.contains(&floor) {
            continue;
        }
        read += 1;
        found.extend(
            upward(&floors, floor, &text_of(&path))
                .into_iter()
                .map(|(line, name)| format!("{}, line {line}: `{name}` is above `{floor}`", name_of(&path))),
        );
    }
    assert!(read >= 40, "only {read} files were read");
    none(found);
}

#[test]
fn every_folder_of_the_core_is_a_floor() {
    let lib = text_of(&top().join("crate/core/lib.rs"));
    let floors = floors(&lib);
    let mut folders: Vec<String> = std::fs::read_dir(top().join("crate/core"))
        .expect("the core")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.join("mod.rs").exists())
        .map(|path| path.file_name().unwrap_or_default().to_string_lossy().into_owned())
        .collect();
    folders.sort();
    let mut named: Vec<&str> = floors.clone();
    named.sort_unstable();
    assert_eq!(folders, named);
}

#[test]
fn an_upward_line_is_found() {
    let floors = ["quantity", "factors", "order", "inventory", "step"];
    let found = |floor, text| upward(&floors, floor, text).into_iter().map(|(line, name)| format!("{line} {name}")).collect::<Vec<_>>();
    assert_eq!(found("order", "//! Orders.\nuse crate::factors::Tables;\nuse crate::step::lay;\n"), ["3 step"]);
    assert_eq!(found("order", "fn f(book: &crate::inventory::Book) {}"), ["1 inventory"]);
    assert_eq!(found("factors", "use crate::{quantity::Span, step, order::Ink};"), ["1 step", "1 order"]);
    assert_eq!(found("quantity", "pub(crate) use crate::factors::Grade;"), ["1 factors"]);
    // Comments, lower floors and the tests that stand in a file are no fault.
    assert!(found("order", "// as in crate::step::lay\nuse crate::quantity::Span;").is_empty());
    assert!(found("order", "use crate::quantity::Span;\n#[cfg(test)]\nmod tests {\n    use crate::step::lay;\n}").is_empty());
}
