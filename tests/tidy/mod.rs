//! The files themselves: floors, sizes, words, labels, tables.

mod bit_flips;
mod described;
mod files;
mod floors;
mod labels;
mod refused_tables;
mod tables;
mod used_rows;
mod words_of_the_page;

use std::path::{Path, PathBuf};

/// Folders that are made by tools and not kept.
const NOT_KEPT: [&str; 4] = ["target", "node_modules", "__pycache__", ".git"];

/// The top of the repository.
fn top() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Every kept file below a folder of the repository, sorted.
fn below(folder: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![top().join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display())) {
            let path = entry.expect("an entry of a folder").path();
            let name = path.file_name().and_then(|name| name.to_str()).unwrap_or_default().to_owned();
            match path.is_dir() {
                true if !NOT_KEPT.contains(&name.as_str()) => folders.push(path),
                false => found.push(path),
                true => {}
            }
        }
    }
    found.sort();
    found
}

/// The files below a folder whose name ends so.
fn below_ending(folder: &str, ending: &str) -> Vec<PathBuf> {
    below(folder).into_iter().filter(|path| path.extension().is_some_and(|found| found == ending)).collect()
}

/// A file's text.
fn text_of(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Its path from the top.
fn name_of(path: &Path) -> String {
    path.strip_prefix(top()).unwrap_or(path).to_string_lossy().into_owned()
}

/// The text without the tests that stand in it: all from `#[cfg(test)]` on.
fn without_tests(text: &str) -> &str {
    text.split("#[cfg(test)]").next().unwrap_or_default()
}

/// Fails with every line that was found at fault.
#[track_caller]
fn none(found: Vec<String>) {
    assert!(found.is_empty(), "{} found:\n{}", found.len(), found.join("\n"));
}
