//! How rows of a spreadsheet were understood: column by column, which lines they became, and what is wrong with the rest.

use faceload_core::in_order;
use faceload_core::order::rows::Field;
use faceload_core::order::rows::{Column, Encoding, How, RowFault, Rows, SEPARATORS, Wanted, letters};
use faceload_core::quantity::group;
use serde_json::{Value, json};

use crate::figure::{Cell, Figure, Table};
use crate::words;

/// How many lines a reader is shown.
const SHOWN_LINES: usize = 8;

/// How many faults a terminal is shown.
const SHOWN_FAULTS: usize = 30;

fn count(number: usize) -> String {
    group(&number.to_string())
}

fn counted(number: usize, one: &str) -> String {
    words::count(number as u64, one)
}

/// The lines and signs that the rows became.
fn became(rows: &Rows) -> String {
    format!("{} of {}", counted(rows.lines.len(), "line"), counted(rows.signs as usize, "sign"))
}

/// Why a column is taken as it is.
fn why(column: &Column) -> &'static str {
    match column.how {
        How::Name => "by its name",
        How::Meaning => "its name means it",
        How::Cells => "by what stands in it",
        How::Chosen => "as chosen",
        How::Given => "another column gives that",
        How::Unknown => "",
    }
}

/// What the rows say, and what was done to understand them.
pub fn sentences(rows: &Rows, wanted: &Wanted) -> Vec<String> {
    let mut said = Vec::new();
    let separator = SEPARATORS.iter().find(|(separator, _)| *separator == rows.separator).map_or("", |(_, name)| name);
    let head =
        if rows.header { "the first row names the columns" } else { "no row names the columns, so they are taken by what stands in them" };
    let empty = if rows.empty > 0 { format!(" and {}", counted(rows.empty, "empty row")) } else { String::new() };
    said.push(format!("{}{empty}, {separator} between cells; {head}.", counted(rows.rows, "row")));
    match rows.encoding {
        Encoding::Utf8 => {}
        Encoding::Utf16 => said.push("The file is UTF-16.".to_owned()),
        Encoding::Windows1252 => {
            said.push("The file is not UTF-8: it was taken as Windows-1252, so look at letters with accents.".to_owned())
        }
    }
    let taken = rows.rows - rows.listed.len();
    let rest = match rows.listed.len() {
        0 => "no row is left out".to_owned(),
        listed => format!("{} could not be taken", counted(listed, "row")),
    };
    let added = if rows.lines.len() < taken { ", equal signs added up" } else { "" };
    said.push(format!("{} became {}{added}; {rest}.", counted(taken, "row"), became(rows)));
    let given = |field: Field| rows.columns.iter().any(|column| column.field == Some(field)) || wanted.where_missing.contains_key(&field);
    if !given(Field::Quantity) {
        said.push("No column gives the quantity: each row is one sign.".to_owned());
    }
    if wanted.decimal_comma {
        said.push("A comma is taken as the decimal mark, as chosen.".to_owned());
    }
    if let Some(unit) = &wanted.unit {
        said.push(format!("Lengths without a unit are taken as `{unit}`, as chosen."));
    }
    let facts = &rows.facts;
    let by_code = |counts: &std::collections::BTreeMap<String, usize>| {
        let each: Vec<String> = counts.iter().map(|(code, number)| format!("{code} ({})", count(*number))).collect();
        words::join(&each.iter().map(String::as_str).collect::<Vec<_>>())
    };
    if !facts.turned.is_empty() {
        said.push(format!("Width and height are taken the other way round where the sign code lies so: {}.", by_code(&facts.turned)));
    }
    if facts.several.0 > 0 {
        said.push(format!(
            "{} with several sizes or codes in a cell: {}.",
            counted(facts.several.0, "row"),
            counted(facts.several.1, "sign")
        ));
    }
    if !facts.variants.is_empty() {
        said.push(format!(
            "Left and right variants have the shape and colours of their code, each with an artwork of its own: {}.",
            by_code(&facts.variants)
        ));
    }
    if facts.own_designs > 0 {
        let help = if given(Field::Legend) { "" } else { "; take a column as the legend to count equal ones once" };
        said.push(format!(
            "{} without a legend, of codes whose signs each have their own: each counts as a design of its own{help}.",
            counted(facts.own_designs, "row")
        ));
    }
    for (field, number) in &facts.assumed {
        let value = wanted.where_missing.get(field).map_or("", String::as_str);
        said.push(format!(
            "Assumed, as chosen where missing: {} `{value}` in {}; its lines say so.",
            field.label(),
            counted(*number, "row")
        ));
    }
    let usual: Vec<&str> = [
        (Field::Sheeting, "prismatic sheeting"),
        (Field::Blank, "a blank of aluminium 0.080 in"),
        (Field::Sides, "one side"),
        (Field::Stock, "made for stock where a sign code is known, else to order"),
    ]
    .into_iter()
    .filter(|(field, _)| !given(*field))
    .map(|(_, words)| words)
    .collect();
    if !usual.is_empty() && !rows.lines.is_empty() {
        said.push(format!("As in any order that does not say: {}.", usual.join("; ")));
    }
    said
}

/// The first lines, as they were understood.
pub fn lines(rows: &Rows) -> Table {
    let text = |line: &Value, key: &str| {
        line.get(key).map_or_else(String::new, |value| value.as_str().map_or_else(|| value.to_string(), str::to_owned))
    };
    let colours = |line: &Value| {
        let each = line["colours"].as_object().into_iter().flatten();
        each.map(|(name, share)| format!("{name} {}", share.as_str().unwrap_or_default())).collect::<Vec<_>>().join("; ")
    };
    let number = |number: u64| Cell::number(number as f64, group(&number.to_string()));
    let row = |(line, from): (&Value, &Vec<usize>)| {
        vec![
            Cell::from(text(line, "label")),
            Cell::from(if line.get("code").is_some() { text(line, "code") } else { text(line, "shape") }),
            Cell::from(text(line, "size")),
            number(line["quantity"].as_u64().unwrap_or(0)),
            number(line["designs"].as_u64().unwrap_or(1)),
            Cell::from(colours(line)),
            number(from.len() as u64),
        ]
    };
    let more = rows.lines.len().saturating_sub(SHOWN_LINES);
    let caption = if more > 0 { format!("the first {SHOWN_LINES} of {} lines", count(rows.lines.len())) } else { "the lines".to_owned() };
    Table {
        caption,
        columns: ["line", "sign", "size", "quantity", "designs", "colours", "from rows"].map(str::to_owned).to_vec(),
        rows: rows.lines.iter().zip(&rows.from).take(SHOWN_LINES).map(row).collect(),
        aside: Vec::new(),
    }
}

fn columns(rows: &Rows) -> Table {
    let row = |(place, column): (usize, &Column)| {
        let field = column.field.map_or("nothing", Field::label);
        let unit = column.unit.map_or_else(String::new, |unit| format!(", in {unit}"));
        let samples: Vec<String> = column.samples.iter().map(|sample| short(sample)).collect();
        [letters(place), short(&column.name), format!("{field}{unit}"), why(column).to_owned(), samples.join(" | ")]
            .map(Cell::from)
            .to_vec()
    };
    Table {
        caption: "the columns".to_owned(),
        columns: ["column", "name", "taken as", "why", "first cells"].map(str::to_owned).to_vec(),
        rows: rows.columns.iter().enumerate().map(row).collect(),
        aside: Vec::new(),
    }
}

/// A text of one line that does not run over.
fn short(text: &str) -> String {
    let plain: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    if plain.chars().count() <= 28 { plain } else { plain.chars().take(27).chain(['\u{2026}']).collect() }
}

/// Faults that want the same in the same column, whatever came: one kind.
pub struct Kind<'r> {
    /// The first of them.
    pub first: &'r RowFault,
    /// What came, and in how many rows, most rows first.
    pub came: Vec<(&'r str, usize)>,
    /// All rows.
    pub all: RowFault,
}

/// How many of the things that came a reader is shown.
const SHOWN_CAME: usize = 6;

/// The kinds of faults, most rows first.
pub fn kinds(rows: &Rows) -> Vec<Kind<'_>> {
    let mut kinds: Vec<Kind<'_>> = Vec::new();
    for fault in &rows.faults {
        let same =
            |kind: &&mut Kind<'_>| (kind.first.column, &kind.first.wanted, &kind.first.help) == (fault.column, &fault.wanted, &fault.help);
        match kinds.iter_mut().find(same) {
            Some(kind) => {
                kind.came.push((&fault.came, fault.rows.len()));
                kind.all.rows.extend(&fault.rows);
            }
            None => kinds.push(Kind { first: fault, came: vec![(&fault.came, fault.rows.len())], all: fault.clone() }),
        }
    }
    for kind in &mut kinds {
        in_order(&mut kind.all.rows, Ord::cmp);
        kind.all.rows.dedup();
        let once = kind.came.iter().all(|(_, number)| *number == 1);
        let shown: Vec<String> = match kind.came.as_slice() {
            several if once => several.iter().take(SHOWN_CAME).map(|(came, _)| (*came).to_owned()).collect(),
            [(one, _)] => vec![(*one).to_owned()],
            several => several.iter().take(SHOWN_CAME).map(|(came, number)| format!("{came} ({})", count(*number))).collect(),
        };
        let more = kind.came.len().saturating_sub(SHOWN_CAME);
        kind.all.came = match shown.as_slice() {
            [one] => one.clone(),
            all if more > 0 => format!("{} and {} more", all.join(", "), count(more)),
            all => words::join(&all.iter().map(String::as_str).collect::<Vec<_>>()),
        };
    }
    in_order(&mut kinds, |a, b| b.all.rows.len().cmp(&a.all.rows.len()));
    kinds
}

/// All of it for a terminal.
pub fn figure(rows: &Rows, wanted: &Wanted) -> Figure {
    let mut sentences = sentences(rows, wanted);
    let kinds = kinds(rows);
    let said = |fault: &RowFault| words::capital(&format!("{}, {}: {}.", fault.rows_in_words(), fault.place(), fault.words()));
    sentences.extend(kinds.iter().take(SHOWN_FAULTS).map(|kind| said(&kind.all)));
    let more = kinds.len().saturating_sub(SHOWN_FAULTS);
    if more > 0 {
        sentences.push(format!("And {more} more kinds of fault: `--left-out FILE` and `--json` give all."));
    }
    Figure { heading: format!("Rows of {}", rows.file), sentences, tables: vec![columns(rows), lines(rows)] }
}

/// All of it as data; with every line and its rows where asked.
pub fn json(rows: &Rows, wanted: &Wanted, all: bool) -> Value {
    let column = |(place, column): (usize, &Column)| {
        json!({
            "column": letters(place), "name": column.name, "field": column.field.map(Field::word), "why": why(column),
            "unit": column.unit, "cells": column.samples,
        })
    };
    let fault = |fault: &RowFault| json!({ "where": fault.rows_in_words(), "place": fault.place(), "came": fault.came, "wanted": fault.wanted, "help": fault.help });
    let mut report = json!({
        "schema_version": 1,
        "file": rows.file,
        "separator": rows.separator.to_string(),
        "header": rows.header,
        "rows": rows.rows,
        "empty": rows.empty,
        "taken": rows.rows - rows.listed.len(),
        "listed": rows.listed.len(),
        "signs": rows.signs,
        "count": rows.lines.len(),
        "says": sentences(rows, wanted),
        "columns": rows.columns.iter().enumerate().map(column).collect::<Vec<_>>(),
        "first": lines(rows),
    });
    if all {
        let with_rows = |one: &RowFault| {
            let mut value = fault(one);
            value["rows"] = json!(one.rows);
            value
        };
        report["faults"] = rows.faults.iter().map(with_rows).collect();
        let lines = rows.lines.iter().zip(&rows.from).map(|(line, from)| json!({ "rows": from, "line": line }));
        report["lines"] = lines.collect();
    } else {
        report["fields"] = fields();
        report["lines_words"] = json!(became(rows));
        report["listed_words"] = json!(counted(rows.listed.len(), "row"));
        report["faults"] = kinds(rows).iter().map(|kind| fault(&kind.all)).collect();
    }
    report
}

/// What a column may be taken as: word and label of each.
fn fields() -> Value {
    Field::all().map(|field| json!({ "value": field.word(), "text": field.label() })).collect()
}
