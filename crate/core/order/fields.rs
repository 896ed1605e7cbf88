//! Reads the fields of one table of an order; every fault is noted, none stops the reading.

use serde_json::{Map, Value};

use super::document::below;
use super::{Document, OrderFault};
use crate::in_order;
use crate::quantity::{Span, UnitText, group, read_number};

/// Why a comma in a number is refused.
const COMMA: &str = "a comma may mean a thousand or a decimal: write `1200` and `0.5`";

/// The lengths a field takes.
#[derive(Clone, Copy)]
pub(super) struct Bounds {
    pub least: Span,
    pub most: Span,
    pub words: &'static str,
    pub help: &'static str,
}

impl Bounds {
    /// From so many nanometres to so many, in words.
    pub const fn new(least: i64, most: i64, words: &'static str) -> Self {
        Self { least: Span::nanometres(least), most: Span::nanometres(most), words, help: "write it as `30 in` or `762 mm`" }
    }

    /// With another example.
    pub const fn such_as(self, help: &'static str) -> Self {
        Self { help, ..self }
    }
}

/// The fields of one table.
pub(super) struct Fields<'a, 'f> {
    document: &'a Document,
    path: String,
    map: Option<&'a Map<String, Value>>,
    known: Vec<&'static str>,
    pub faults: &'f mut Vec<OrderFault>,
}

impl<'a, 'f> Fields<'a, 'f> {
    pub fn new(document: &'a Document, path: &str, value: &'a Value, faults: &'f mut Vec<OrderFault>) -> Self {
        let mut fields = Self { document, path: path.to_owned(), map: value.as_object(), known: Vec::new(), faults };
        if fields.map.is_none() {
            fields.refuse_at(path, &shown(value), "a table of fields", "write it as `{ key = value }`");
        }
        fields
    }

    pub fn path(&self, key: &str) -> String {
        below(&self.path, key)
    }

    pub fn get(&mut self, key: &'static str) -> Option<&'a Value> {
        if !self.known.contains(&key) {
            self.known.push(key);
        }
        self.map?.get(key).filter(|value| !value.is_null())
    }

    pub fn refuse(&mut self, key: &str, came: &str, wanted: &str, help: &str) {
        let path = self.path(key);
        self.refuse_at(&path, came, wanted, help);
    }

    fn refuse_at(&mut self, path: &str, came: &str, wanted: &str, help: &str) {
        self.faults.push(OrderFault {
            file: self.document.name.clone(),
            line: self.document.line(path),
            field: path.to_owned(),
            came: came.to_owned(),
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        });
    }

    /// A text; numbers are taken as they are written.
    pub fn text(&mut self, key: &'static str) -> Option<String> {
        match self.get(key)? {
            Value::String(text) => Some(text.trim().to_owned()),
            Value::Number(number) => Some(number.to_string()),
            other => {
                self.refuse(key, &shown(other), "a text", "put it in quotes");
                None
            }
        }
    }

    /// A text kept for people: at most 200 characters, no control characters.
    pub fn label(&mut self, key: &'static str) -> Option<String> {
        let text = self.text(key)?;
        if text.chars().count() > 200 || text.chars().any(char::is_control) {
            let breaks = text.chars().any(char::is_control);
            let came =
                if breaks { "a text with a line break".to_owned() } else { format!("a text of {} characters", text.chars().count()) };
            self.refuse(key, &came, "at most 200 characters on one line", if breaks { "write it on one line" } else { "shorten it" });
            return None;
        }
        Some(text)
    }

    /// A list of texts kept for people, each once.
    pub fn labels(&mut self, key: &'static str, most: usize) -> Vec<String> {
        let Some(value) = self.get(key) else { return Vec::new() };
        let fits = |text: &str| !text.is_empty() && text.chars().count() <= 200 && !text.chars().any(char::is_control);
        let text = |one: &'a Value| one.as_str().map(str::trim).filter(|text| fits(text));
        let unfit = match value.as_array() {
            None => Some(shown(value)),
            Some(list) if list.len() > most => Some(format!("{} texts", list.len())),
            Some(list) => list.iter().find(|one| text(one).is_none()).map(shown),
        };
        if let Some(came) = unfit {
            let wanted = format!("a list of at most {most} texts, each of 1 to 200 characters on one line");
            self.refuse(key, &came, &wanted, "write `[\"name, office\"]`, or take it out");
            return Vec::new();
        }
        let mut labels: Vec<String> = Vec::new();
        for one in value.as_array().into_iter().flatten().filter_map(text) {
            if labels.iter().all(|known| known != one) {
                labels.push(one.to_owned());
            }
        }
        labels
    }

    /// One word of a closed list; the nearest is offered.
    pub fn word<T: Copy>(&mut self, key: &'static str, words: &[(&str, T)]) -> Option<T> {
        let text = self.text(key)?;
        let found = words.iter().find(|(word, _)| *word == text).map(|(_, meaning)| *meaning);
        if found.is_none() {
            let names: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
            self.refuse(key, &quoted(&text), &list(&names), &offer(&text, &names, "use one of these words"));
        }
        found
    }

    /// A whole number.
    pub fn whole(&mut self, key: &'static str, least: u32, most: u32, help: &str) -> Option<u32> {
        let text = self.text(key)?;
        match read_number(&text) {
            Ok(number) if number.fract() == 0.0 && (f64::from(least)..=f64::from(most)).contains(&number) => Some(number as u32),
            _ => {
                let help = if text.contains(',') { COMMA } else { help };
                self.refuse(key, &quoted(&text), &format!("a whole number from {least} to {}", group(&most.to_string())), help);
                None
            }
        }
    }

    /// A list of tables; anything else is refused.
    pub fn list(&mut self, key: &'static str) -> &'a [Value] {
        match self.get(key) {
            Some(Value::Array(list)) => list,
            Some(other) => {
                self.refuse(key, &shown(other), "a list of tables", "write each as a table of its own");
                &[]
            }
            None => &[],
        }
    }

    /// A yes or no.
    pub fn flag(&mut self, key: &'static str) -> Option<bool> {
        let value = self.get(key)?;
        if let Value::Bool(flag) = value {
            return Some(*flag);
        }
        self.refuse(key, &shown(value), "true or false", "write it without quotes");
        None
    }

    /// A length within bounds.
    pub fn length(&mut self, key: &'static str, bounds: Bounds) -> Option<Span> {
        let text = self.text(key)?;
        self.length_of(key, &text, &text, bounds)
    }

    /// A length that is part of a text; the message shows all of it.
    pub fn length_of(&mut self, key: &'static str, part: &str, whole: &str, bounds: Bounds) -> Option<Span> {
        match Span::read(part) {
            Ok(span) if span >= bounds.least && span <= bounds.most => Some(span),
            _ => {
                let help = if whole.contains(',') {
                    COMMA
                } else if whole.contains('/') {
                    "one size a line: give every blade or sign a line of its own"
                } else {
                    bounds.help
                };
                self.refuse(key, &quoted(whole), &format!("a length {}, with its unit", bounds.words), help);
                None
            }
        }
    }

    /// A number with a unit that measures the same as `unit`, in that unit.
    pub fn measured(&mut self, key: &'static str, unit: &str, least: f64, most: f64, example: &str) -> Option<f64> {
        let text = self.text(key)?;
        let row = UnitText::read(unit).unwrap_or_else(|_| UnitText::pure());
        let read = super::measured::read_with_unit(&text, &row);
        match read {
            Some(number) if (least..=most).contains(&number) => Some(number),
            _ => {
                let words = row.words();
                self.refuse(
                    key,
                    &quoted(&text),
                    &format!("a value from {least} to {} {words}", group(&most.to_string())),
                    &if text.contains(',') { COMMA.to_owned() } else { format!("write it with its unit, such as `{example}`") },
                );
                None
            }
        }
    }

    /// Refuses every key that nobody asked for.
    pub fn finish(mut self) {
        let Some(map) = self.map else { return };
        if map.keys().all(|key| self.known.contains(&key.as_str())) {
            return;
        }
        let mut known: Vec<&str> = self.known.clone();
        in_order(&mut known, Ord::cmp);
        for key in map.keys().filter(|key| !known.contains(&key.as_str())) {
            let help = offer(key, &known, &format!("take it out; known here are {}", list(&known).replace("` or `", "` and `")));
            self.refuse(key, &quoted(key), "a key of an order file", &help);
        }
    }
}

/// A value as a message shows it.
pub(super) fn shown(value: &Value) -> String {
    match value {
        Value::String(text) => quoted(text),
        Value::Array(_) => "a list".to_owned(),
        Value::Object(_) => "a table".to_owned(),
        other => format!("`{other}`"),
    }
}

/// A text as a message shows it: in backticks, shortened.
pub(super) fn quoted(text: &str) -> String {
    let short: String = text.chars().take(60).map(|c| if c.is_control() { ' ' } else { c }).collect();
    if short.trim().is_empty() {
        return "nothing".to_owned();
    }
    if short.len() < text.len() { format!("`{short}\u{2026}`") } else { format!("`{short}`") }
}

/// `a`, `b` or `c`.
pub(super) fn list(names: &[&str]) -> String {
    match names {
        [] => "nothing".to_owned(),
        [one] => format!("`{one}`"),
        [first @ .., last] => format!("{} or `{last}`", first.iter().map(|name| format!("`{name}`")).collect::<Vec<_>>().join(", ")),
    }
}

/// The nearest name, where one is near.
pub(crate) fn offer(text: &str, names: &[&str], otherwise: &str) -> String {
    nearest(text, names).first().map_or_else(|| otherwise.to_owned(), |name| format!("did you mean `{name}`?"))
}

/// The names nearest to a text, where they are near; all of equal distance, by name.
pub(super) fn nearest<'a>(text: &str, names: &[&'a str]) -> Vec<&'a str> {
    let mut near: Vec<(usize, &str)> = names
        .iter()
        .map(|name| (distance(text, name), *name))
        .filter(|(distance, name)| *distance <= 1 + name.chars().count() / 4 && *distance < name.chars().count())
        .collect();
    in_order(&mut near, Ord::cmp);
    let least = near.first().map_or(0, |(distance, _)| *distance);
    near.into_iter().take_while(|(distance, _)| *distance == least).map(|(_, name)| name).collect()
}

/// How many letters differ (Levenshtein).
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.chars().take(80).enumerate() {
        let mut left = i;
        row[0] = i + 1;
        for (j, y) in b.iter().enumerate() {
            let cost = (left + usize::from(x != *y)).min(row[j] + 1).min(row[j + 1] + 1);
            left = row[j + 1];
            row[j + 1] = cost;
        }
    }
    row[b.len()]
}
