//! The fields of an order, as the source of `crate/core/order` asks for them.

use std::path::Path;

use faceload_core::order::RouteName;

/// The table a field stands in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Table {
    Top,
    Site,
    Line,
    Not,
    Alternative,
    Mesh,
    With,
}

/// How a field is read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Reader {
    Word,
    Length,
    Whole,
    Flag,
    Label,
    Measured(String),
    Text,
    List,
    Inside,
}

/// A field.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Field {
    pub table: Table,
    pub key: String,
    pub reader: Reader,
}

impl Field {
    /// Where it stands, and its key.
    pub fn name(&self) -> String {
        let table = match self.table {
            Table::Top => "",
            Table::Site => "site.",
            Table::Line => "line.",
            Table::Not => "line.not.",
            Table::Alternative => "alternative.",
            Table::Mesh => "alternative.mesh.",
            Table::With => "alternative.with.",
        };
        format!("{table}{}", self.key)
    }
}

/// The functions that read a table, by file and name; all others of the file read the file's own.
const READ_BY: [(&str, &str, Table); 3] =
    [("alternative.rs", "read_mesh", Table::Mesh), ("alternative.rs", "read_with", Table::With), ("read.rs", "read_site", Table::Site)];

/// How a call is read; `side` and `area` are what `read_mesh` and `read_site` call their own.
fn reader(call: &str, rest: &str) -> Option<Reader> {
    Some(match call {
        "word" => Reader::Word,
        "length" | "length_of" | "side" => Reader::Length,
        "whole" => Reader::Whole,
        "flag" => Reader::Flag,
        "label" => Reader::Label,
        "measured" => Reader::Measured(rest.split('"').nth(1).unwrap_or_default().to_owned()),
        "text" | "area" => Reader::Text,
        "list" => Reader::List,
        "get" => Reader::Inside,
        _ => return None,
    })
}

/// The fields that a file asks for.
fn in_file(file: &str, own: Table) -> Vec<Field> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("crate/core/order").join(file);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{file}: {error}"));
    let text = text.split("#[cfg(test)]").next().unwrap_or_default();
    let mut fields: Vec<Field> = Vec::new();
    for (at, _) in text.match_indices("(\"") {
        let (before, rest) = (&text[..at], &text[at + 2..]);
        let call: String = before.chars().rev().take_while(|c| c.is_ascii_lowercase() || *c == '_').collect();
        let call: String = call.chars().rev().collect();
        let (key, rest) = rest.split_once('"').unwrap_or_default();
        let Some(reader) = reader(&call, rest).filter(|_| key.chars().all(|c| c.is_ascii_lowercase() || c == '_')) else { continue };
        let function = before.rsplit("\nfn ").next().unwrap_or_default().split(['(', '<']).next().unwrap_or_default();
        let table = READ_BY.iter().find(|(of, name, _)| *of == file && *name == function).map_or(own, |(.., table)| *table);
        match fields.iter_mut().find(|known| known.table == table && known.key == key) {
            // A field is often looked for before it is read, and a text may be a length: the reader that says more counts.
            Some(known) if known.reader == Reader::Inside || (known.reader == Reader::Text && reader != Reader::Inside) => {
                known.reader = reader
            }
            Some(_) => {}
            None => fields.push(Field { table, key: key.to_owned(), reader }),
        }
    }
    fields
}

/// Every field of an order.
pub fn fields() -> Vec<Field> {
    let mut fields = [("read.rs", Table::Top), ("line.rs", Table::Line), ("alternative.rs", Table::Alternative)]
        .into_iter()
        .flat_map(|(file, table)| in_file(file, table))
        .collect::<Vec<_>>();
    // The routes ruled out are asked for by their names.
    fields.extend(RouteName::ALL.map(|(name, _)| Field { table: Table::Not, key: name.to_owned(), reader: Reader::Label }));
    fields
}
