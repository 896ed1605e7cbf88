//! The board's words for the stop signs, and the outline of the rest, as they are kept in `stop.expected`.
//!
//! `FACELOAD_BLESS=1` writes it anew; read the difference.

use std::path::Path;

use super::{between, report, rows, words_of};

#[test]
fn the_report_of_the_stop_signs_says_what_it_said() {
    let html = report(&["stop"]);
    let board = between(&html, "<div class=\"board\">", "<div class=\"rest\">")[0];
    let rest = between(&html, "<div class=\"rest\">", "</main>")[0];
    let outline = between(rest, "<section", "</section>").into_iter().map(|section| {
        let heading = between(section, "<h2", "</h2>")[0];
        let tables = between(section, "<table", "</table>").into_iter().map(|table| rows(table).len().to_string());
        let heading = heading.split_once('>').map_or(heading, |(_, words)| words);
        format!("{heading}: rows {}\n", tables.collect::<Vec<_>>().join(", "))
    });
    let now = words_of(board) + &outline.collect::<String>();
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/report/stop.expected");
    if std::env::var_os("FACELOAD_BLESS").is_some_and(|value| value == "1") {
        std::fs::write(&file, &now).expect("the folder can be written");
    }
    let kept = std::fs::read_to_string(&file).unwrap_or_default();
    assert!(now == kept, "if the new words are better, run `cargo xtask bless`\n--- kept\n{kept}--- now\n{now}");
}
