//! Words that a reader of the page sees stand in the table of labels: no script and no mark-up holds more than a word
//! of its own.

use std::collections::BTreeMap;

use faceload_report::labels;

use super::{below_ending, name_of, none, text_of, top};

/// Two words side by side, as a reader would read them.
fn is_prose(text: &str) -> bool {
    let is_word = |word: &str| {
        let word = word.trim_matches(|c: char| matches!(c, ',' | ';' | ':' | '.' | '(' | ')' | '!' | '?'));
        word.chars().count() > 1 && word.chars().all(|c| c.is_alphabetic() || matches!(c, '-' | '\''))
    };
    let words: Vec<&str> = text.split_whitespace().collect();
    words.windows(2).any(|two| two.iter().all(|word| is_word(word)))
}

/// Texts that scripts hold and no reader sees: a mode, a selector, a media query, classes, the reason of a fault of the
/// program itself.
fn is_unseen(text: &str, before: &str) -> bool {
    let before = before.trim_end();
    text == "use strict"
        || text.starts_with(['#', '[', '('])
        || (text.starts_with('.') && !text.starts_with(". "))
        || ["class:", "className =", "Error(", "refused:"].iter().any(|end| before.ends_with(end))
        || before.rsplit_once("class:").is_some_and(|(_, since)| !since.contains([',', '}']))
}

/// The texts of a script, in quotes or between back ticks, each with its line and what stands before it.
fn texts(script: &str) -> Vec<(usize, String, String)> {
    let letters: Vec<char> = script.chars().collect();
    let mut found = Vec::new();
    let mut open: Vec<bool> = Vec::new(); // for each brace, whether it stands in a template
    let mut at = 0;
    let mut template = false;
    let mut text = String::new();
    let mut text_from = 0;
    let line = |at: usize| letters[..at].iter().filter(|c| **c == '\n').count() + 1;
    let before = |at: usize| letters[at.saturating_sub(80)..at].iter().collect::<String>();
    while at < letters.len() {
        let (now, next) = (letters[at], letters.get(at + 1).copied().unwrap_or(' '));
        match (template, now) {
            (true, '\\') => at += 1,
            (true, '`') | (true, '$') if now == '`' || next == '{' => {
                found.push((line(at), std::mem::take(&mut text), before(text_from)));
                template = false;
                if now == '$' {
                    open.push(true);
                    at += 1;
                }
            }
            (true, _) => text.push(now),
            (false, '/') if next == '/' => at = skipped(&letters, at, "\n"),
            (false, '/') if next == '*' => at = skipped(&letters, at, "*/"),
            (false, '/') if before(at).trim_end().ends_with(['(', ',', '=', ':', '[', '!', '&', '|', '?', '{', '}', ';', '>']) => {
                at = end_of_pattern(&letters, at);
            }
            (false, '`') => {
                template = true;
                text_from = at;
            }
            (false, '"' | '\'') => {
                let from = at;
                at += 1;
                while letters[at] != now {
                    at += if letters[at] == '\\' { 2 } else { 1 };
                }
                found.push((line(from), letters[from + 1..at].iter().collect(), before(from)));
            }
            (false, '{') => open.push(false),
            (false, '}') => {
                template = open.pop().unwrap_or(false);
                text_from = at;
            }
            (false, _) => {}
        }
        at += 1;
    }
    found
}

/// The last place of what ends so.
fn skipped(letters: &[char], from: usize, end: &str) -> usize {
    let end: Vec<char> = end.chars().collect();
    let place = letters[from + 2..].windows(end.len()).position(|some| some == end);
    place.map_or(letters.len(), |place| from + 1 + place + end.len())
}

/// The last place of a regular expression.
fn end_of_pattern(letters: &[char], from: usize) -> usize {
    let (mut at, mut in_set) = (from + 1, false);
    while letters[at] != '/' || in_set {
        match letters[at] {
            '\\' => at += 1,
            '[' => in_set = true,
            ']' => in_set = false,
            _ => {}
        }
        at += 1;
    }
    at
}

fn prose(script: &str) -> Vec<(usize, String)> {
    let seen = texts(script).into_iter().filter(|(_, text, before)| is_prose(text) && !is_unseen(text, before));
    seen.map(|(line, text, _)| (line, text)).collect()
}

#[test]
fn no_script_holds_words_of_its_own() {
    let mut found = Vec::new();
    let mut read = 0;
    for path in below_ending("www", "js") {
        let name = name_of(&path);
        let script = text_of(&path);
        read += texts(&script).len();
        // Where the program does not start there is no table.
        let starts = |text: &String| !text.contains("The program inside this page") && !text.contains("Another browser, or");
        found.extend(
            prose(&script).into_iter().filter(|(_, text)| starts(text)).map(|(line, text)| format!("{name}, line {line}: `{text}`")),
        );
    }
    assert!(read > 500, "only {read} texts were read");
    none(found);
}

#[test]
fn words_of_a_script_are_found_wherever_they_stand() {
    for (script, wanted) in [
        ("note.textContent = \"not updated yet\";", 1),
        ("say(`${count} more inputs move it`); // of no use here", 1),
        ("f({ text: `${a ? `two words` : \"\"} and so on` })", 2),
        ("element(\"p\", { class: \"quiet note\" }); find(\"#edit summary\"); /more than one/.test(text)", 0),
        ("/* a note of ours */ const one = 'word';", 0),
        ("throw new TypeError(\"only the worker is started\");", 0),
        ("element(\"p\", { class: \"quiet\", text: \"under way here\" })", 1),
    ] {
        assert_eq!(prose(script).len(), wanted, "{script}: {:?}", prose(script));
    }
}

/// The tags of a mark-up with the text after each.
fn tags(html: &str) -> impl Iterator<Item = (&str, &str)> {
    html.split('<').skip(1).filter_map(|part| part.split_once('>'))
}

fn attribute<'a>(tag: &'a str, name: &str) -> Option<&'a str> {
    tag.split_once(&format!(" {name}=\""))?.1.split('"').next()
}

#[test]
fn the_words_of_the_mark_up_are_those_of_the_table() {
    let table: BTreeMap<&str, &str> = labels::all().map(|label| (label.id, label.text)).collect();
    let html = text_of(&top().join("www/index.html"));
    let (_, body) = html.split_once("<body>").expect("a body");
    let mut found = Vec::new();
    let mut labelled = 0;
    for (tag, text) in tags(body) {
        for (words, name) in [(Some(text.trim()), "data-label"), (attribute(tag, "aria-label"), "data-name-label")] {
            let Some(words) = words else { continue };
            match attribute(tag, name) {
                Some(id) if table.get(id) == Some(&words) => labelled += 1,
                Some(id) => found.push(format!("`{words}` where the table has `{id}`: {:?}", table.get(id))),
                // What stands there before the program starts, and an example of an order.
                None if is_prose(words) && !words.starts_with("The program inside this page") && !words.starts_with("100 stop signs") => {
                    found.push(format!("`{words}` has no {name}"));
                }
                None => {}
            }
        }
    }
    assert!(labelled > 40, "{labelled}");
    none(found);
}
