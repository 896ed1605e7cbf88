//! An order file before it is understood: a tree of values, and the line of each.
//!
//! JSON is the exchange form. The command line also reads TOML and hands over the same tree.

use std::cell::OnceCell;
use std::collections::BTreeMap;

use serde_json::Value;

use super::OrderFault;
use super::fault::plain;
use super::strict::{self, Strict};

/// A tree of values and where each stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Document {
    /// The file's name, for messages.
    pub name: String,
    /// The values.
    pub value: Value,
    /// The text, read again for lines where a message needs one.
    text: String,
    /// The line of each field, by path.
    lines: OnceCell<BTreeMap<String, usize>>,
}

impl Document {
    /// The longest order file taken, in bytes.
    pub const LONGEST: usize = 5_000_000;

    /// The fault of a file that is too long.
    pub fn too_long(name: &str, length: usize) -> OrderFault {
        OrderFault {
            file: name.to_owned(),
            line: None,
            field: String::new(),
            came: format!("{length} bytes"),
            wanted: "an order of at most 5 MB".to_owned(),
            help: "split it into several files".to_owned(),
        }
    }

    /// Reads JSON text.
    pub fn json(name: &str, text: &str) -> Result<Self, OrderFault> {
        let refuse = |line, came: String, wanted: &str, help: &str| OrderFault {
            file: name.to_owned(),
            line,
            field: String::new(),
            came,
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        };
        if text.len() > Self::LONGEST {
            return Err(Self::too_long(name, text.len()));
        }
        let text = text.trim_start_matches('\u{feff}');
        let Strict(value) = serde_json::from_str(text).map_err(|error| {
            if let Some(key) = strict::key_written_twice(&error) {
                let came = format!("`{}` a second time", plain(&key));
                return refuse(Some(error.line()), came, "each key once", "take one of the two out");
            }
            let reason = error.to_string();
            let reason = reason.split(" at line ").next().unwrap_or_default().to_owned();
            refuse(Some(error.line()), format!("text that is not JSON ({reason})"), "an order as JSON", "mend the text at that line")
        })?;
        Ok(Self { name: name.to_owned(), value, text: text.to_owned(), lines: OnceCell::new() })
    }

    /// A tree read from another form, with the line of each field.
    pub fn with_lines(name: &str, value: Value, lines: BTreeMap<String, usize>) -> Self {
        Self { name: name.to_owned(), value, text: String::new(), lines: OnceCell::from(lines) }
    }

    /// The file's name without the folders that lead to it: what a result may say of where it came from.
    pub fn file_name(&self) -> &str {
        self.name.rsplit(['/', '\\']).next().unwrap_or_default()
    }

    /// The line of a field.
    pub fn line(&self, path: &str) -> Option<usize> {
        let lines = self.lines.get_or_init(|| lines_of(&self.text));
        let mut path = path;
        loop {
            if let Some(line) = lines.get(path) {
                return Some(*line);
            }
            path = &path[..path.rfind(['.', '['])?];
        }
    }
}

/// The path of a member or an element below `path`; elements count from 1.
pub(crate) fn below(path: &str, key: &str) -> String {
    if path.is_empty() { key.to_owned() } else { format!("{path}.{key}") }
}

/// Walks text that is known to be JSON; the line of every value.
fn lines_of(text: &str) -> BTreeMap<String, usize> {
    let mut walk = Walk { rest: text.as_bytes(), at: 0, line: 1, lines: BTreeMap::new() };
    walk.value("");
    walk.lines
}

struct Walk<'a> {
    rest: &'a [u8],
    at: usize,
    line: usize,
    lines: BTreeMap<String, usize>,
}

impl Walk<'_> {
    fn peek(&mut self) -> u8 {
        while let Some(byte) = self.rest.get(self.at) {
            match byte {
                b'\n' => self.line += 1,
                b' ' | b'\t' | b'\r' | b',' | b':' => {}
                other => return *other,
            }
            self.at += 1;
        }
        0
    }

    fn string(&mut self) -> String {
        let start = self.at + 1;
        self.at = start;
        while let Some(byte) = self.rest.get(self.at) {
            match byte {
                b'"' => break,
                b'\\' => self.at += 2,
                _ => self.at += 1,
            }
        }
        let text = String::from_utf8_lossy(self.rest.get(start..self.at).unwrap_or_default()).into_owned();
        self.at += 1;
        text
    }

    fn value(&mut self, path: &str) {
        let first = self.peek();
        self.lines.insert(path.to_owned(), self.line);
        match first {
            b'{' => {
                self.at += 1;
                while self.peek() == b'"' {
                    let key = self.string();
                    let path = below(path, &key);
                    self.value(&path);
                }
                self.at += 1;
            }
            b'[' => {
                self.at += 1;
                let mut index = 0;
                while !matches!(self.peek(), b']' | 0) {
                    index += 1;
                    self.value(&format!("{path}[{index}]"));
                }
                self.at += 1;
            }
            b'"' => {
                self.string();
            }
            _ => {
                while self.rest.get(self.at).is_some_and(|byte| !matches!(byte, b',' | b'}' | b']' | b'\n' | b' ' | b'\r' | b'\t')) {
                    self.at += 1;
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_field_has_its_line() {
        let text = "{\n \"name\": \"a \\\" b\",\n \"line\": [\n  {\"quantity\": 1},\n  {\"quantity\":\n 2}\n ]\n}";
        let document = Document::json("o.json", text).unwrap();
        assert_eq!(document.line("name"), Some(2));
        assert_eq!(document.line("line[1].quantity"), Some(4));
        assert_eq!(document.line("line[2].quantity"), Some(6));
        assert_eq!(document.line("line[2].missing"), Some(5));
    }
}
