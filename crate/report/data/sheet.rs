//! A sheet: rows under typed, described columns, from which its CSV, its JSON and its description are made.

use std::borrow::Cow;

use serde_json::{Map, Value, json};

use crate::figure::field_of;

/// What a column holds, in the words of Table Schema.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// Words.
    Text,
    /// A number, in full precision.
    Number,
    /// A whole number.
    Whole,
    /// Yes or no.
    Flag,
}

impl Kind {
    /// As Table Schema and JSON Schema name it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Text => "string",
            Self::Number => "number",
            Self::Whole => "integer",
            Self::Flag => "boolean",
        }
    }
}

/// A column.
#[derive(Debug, Clone)]
pub(super) struct Column {
    /// Its name.
    pub name: &'static str,
    /// What it holds.
    pub kind: Kind,
    /// Whether every row has it.
    pub required: bool,
    /// What it is, in words.
    pub says: Cow<'static, str>,
}

impl Column {
    /// A column that every row has.
    pub const fn of(name: &'static str, kind: Kind, says: &'static str) -> Self {
        Self { name, kind, required: true, says: Cow::Borrowed(says) }
    }

    /// A column that every row has, its words made for this sheet.
    pub fn told(name: &'static str, kind: Kind, says: String) -> Self {
        Self { name, kind, required: true, says: Cow::Owned(says) }
    }

    /// A column that a row may lack.
    pub const fn perhaps(name: &'static str, kind: Kind, says: &'static str) -> Self {
        Self { name, kind, required: false, says: Cow::Borrowed(says) }
    }
}

/// Rows under columns.
#[derive(Debug, Clone)]
pub(super) struct Sheet {
    /// Its name: that of its file and of its member of the record.
    pub name: &'static str,
    /// What its rows are.
    pub says: String,
    /// Its columns.
    pub columns: Vec<Column>,
    /// The columns that together tell its rows apart.
    pub key: &'static [&'static str],
    /// The rows; what is missing is null.
    pub rows: Vec<Vec<Value>>,
}

/// A text, or null where it is empty.
pub(super) fn text(words: &str) -> Value {
    if words.is_empty() { Value::Null } else { Value::String(words.to_owned()) }
}

/// A number; null where there is none.
pub(super) fn number(value: f64) -> Value {
    // The zero of a sum may carry a sign, which nobody means.
    json!(if value == 0.0 { 0.0 } else { value })
}

impl Sheet {
    /// The name of its file.
    pub fn path(&self) -> String {
        format!("{}.csv", self.name)
    }

    /// As CSV (RFC 4180): comma, double quotes where needed, CRLF; numbers as numbers.
    pub fn csv(&self) -> String {
        let field = |cell: &Value| match cell {
            Value::Null => String::new(),
            Value::String(words) => field_of(words),
            other => other.to_string(),
        };
        let mut out = self.columns.iter().map(|column| column.name).collect::<Vec<_>>().join(",");
        out.push_str("\r\n");
        for row in &self.rows {
            out.push_str(&row.iter().map(field).collect::<Vec<_>>().join(","));
            out.push_str("\r\n");
        }
        out
    }

    /// As a list of tables for JSON; texts as they are.
    pub fn json(&self) -> Value {
        let row = |row: &Vec<Value>| {
            let members = self.columns.iter().zip(row).map(|(column, cell)| (column.name.to_owned(), cell.clone()));
            Value::Object(members.collect::<Map<_, _>>())
        };
        Value::Array(self.rows.iter().map(row).collect())
    }
}
