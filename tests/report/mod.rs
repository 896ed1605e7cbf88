//! The report: its words are those of the data, its sums are those of its own tables, and it runs nothing.

mod by_hand;
mod data;
mod file;
mod scopes;
mod snapshot;

use crate::program::faceload;

/// The report of an order, as the command line prints it.
fn report(words: &[&str]) -> String {
    let ran = faceload(&[&["report"], words, &["-o", "-"]].concat());
    assert_eq!((ran.code, ran.words.as_str()), (0, ""), "{words:?}");
    ran.result
}

/// What stands between two texts, each time.
fn between<'a>(text: &'a str, from: &str, to: &str) -> Vec<&'a str> {
    text.split(from).skip(1).map(|rest| rest.split(to).next().unwrap_or_default()).collect()
}

/// The text without elements and pictures, an element that ends a line at its end.
fn words_of(html: &str) -> String {
    let mut out = String::new();
    for (at, piece) in html.split("<svg").enumerate() {
        let shown = if at == 0 { piece } else { piece.split_once("</svg>").map_or("", |(_, rest)| rest) };
        for (at, part) in shown.split('<').enumerate() {
            let (element, words) = if at == 0 { ("", part) } else { part.split_once('>').unwrap_or((part, "")) };
            if matches!(element, "/td" | "/th" | "/dt") {
                out.push_str(" | ");
            }
            out.push_str(words);
        }
    }
    let plain = out.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    plain.lines().map(str::trim_end).filter(|line| !line.is_empty()).map(|line| format!("{line}\n")).collect()
}

/// A section of a report by the id of its heading.
fn section<'a>(html: &'a str, id: &str) -> &'a str {
    between(html, &format!("<section aria-labelledby=\"{id}\">"), "</section>")
        .first()
        .copied()
        .unwrap_or_else(|| panic!("no section {id}"))
}

/// The rows of a section's tables, cell by cell.
fn rows(section: &str) -> Vec<Vec<String>> {
    between(section, "<tr>", "</tr>")
        .into_iter()
        .map(|row| {
            let row = row.replace("</th>", "</td>");
            let mut cells: Vec<String> = row.split("</td>").map(|cell| words_of(cell).trim().to_owned()).collect();
            cells.pop();
            cells
        })
        .collect()
}

/// A number as a reader reads it.
fn number(shown: &str) -> Option<f64> {
    shown.replace('\u{202f}', "").replace('\u{2212}', "-").trim().parse().ok()
}

/// The numbers in a text, each with how many decimals it shows; what belongs to a name is none.
fn numbers(text: &str) -> Vec<(f64, usize)> {
    let is_part = |c: char| c.is_ascii_digit() || matches!(c, '.' | '\u{202f}' | '\u{2212}');
    let words = text.split(|c: char| c.is_whitespace() && c != '\u{202f}' || matches!(c, '(' | ')' | ':' | ';' | ','));
    words
        .filter(|word| !word.is_empty() && word.chars().all(is_part))
        .filter_map(|word| Some((number(word)?, word.split_once('.').map_or(0, |(_, decimals)| decimals.len()))))
        .collect()
}
