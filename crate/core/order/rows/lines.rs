//! Rows as lines: equal signs are added up, and what could not be understood is listed with its faults.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Map, Value, json};

use super::super::{Document, OrderFault, line};
use super::code::Codes;
use super::grid::{self, Row};
use super::sign::{Fault, Reader, Sign};
use super::{Column, Encoding, Field, RowFault, Wanted, column, text};
use crate::factors::{Legend, Tables};
use crate::in_order;
use crate::quantity::group;

/// What was done to understand the rows, beyond reading them.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Facts {
    /// Signs whose width and height were taken the other way round, by code, since their code lies so.
    pub turned: BTreeMap<String, usize>,
    /// Rows that hold several signs, and how many signs those are.
    pub several: (usize, usize),
    /// Signs that are the left or right variant of a code.
    pub variants: BTreeMap<String, usize>,
    /// Rows in which a field holds only because the user said so.
    pub assumed: BTreeMap<Field, usize>,
    /// Rows without a legend of a code whose signs each have their own: each is counted as a design of its own.
    pub own_designs: usize,
}

impl Facts {
    fn add(&mut self, row: &Self) {
        let add = |sum: &mut BTreeMap<String, usize>, more: &BTreeMap<String, usize>| {
            for (key, count) in more {
                *sum.entry(key.clone()).or_default() += count;
            }
        };
        add(&mut self.turned, &row.turned);
        add(&mut self.variants, &row.variants);
        for (field, count) in &row.assumed {
            *self.assumed.entry(*field).or_default() += count;
        }
        self.several.0 += row.several.0;
        self.several.1 += row.several.1;
        self.own_designs += row.own_designs;
    }
}

/// Rows, understood as far as they can be.
pub struct Rows {
    /// The file.
    pub file: String,
    /// How its bytes were taken.
    pub encoding: Encoding,
    /// What stands between cells.
    pub separator: char,
    /// Whether the first row names the columns.
    pub header: bool,
    /// Its columns.
    pub columns: Vec<Column>,
    /// Rows of signs, the empty ones left aside.
    pub rows: usize,
    /// Rows in which nothing stands.
    pub empty: usize,
    /// The lines, as an order writes them.
    pub lines: Vec<Value>,
    /// The numbers of the rows that became each line.
    pub from: Vec<Vec<usize>>,
    /// How many signs the lines are.
    pub signs: u64,
    /// What was done to understand them.
    pub facts: Facts,
    /// What is wrong, most rows first.
    pub faults: Vec<RowFault>,
    /// The rows listed: their number, their cells, and the places of their faults.
    pub listed: Vec<(usize, Vec<String>, Vec<usize>)>,
}

impl Rows {
    /// Reads a file's bytes; what keeps all of it from being read is one fault.
    pub fn read(file: &str, bytes: &[u8], wanted: &Wanted, tables: &Tables) -> Result<Self, OrderFault> {
        let (text, encoding) = text::read(file, bytes)?;
        let (cells, separator) = grid::read(file, &text, wanted.separator)?;
        let codes = Codes::of(tables);
        let (columns, header) = column::columns(&cells, wanted, &codes);
        let data = cells.get(usize::from(header)..).unwrap_or_default();
        let filled: Vec<&Row> = data.iter().filter(|row| !row.is_empty()).collect();
        let whole = |came: String, wanted: String, help: &str| OrderFault {
            file: file.to_owned(),
            line: None,
            field: String::new(),
            came,
            wanted,
            help: help.to_owned(),
        };
        if filled.is_empty() {
            return Err(whole("column names alone".to_owned(), "rows of signs below them".to_owned(), "copy the rows too"));
        }
        let reader = Reader { codes, columns: &columns, wanted };
        let mut checked = Checked { tables, known: BTreeMap::new() };
        let mut sums = Sums::default();
        let mut faults: BTreeMap<Fault, Vec<usize>> = BTreeMap::new();
        let mut listed: Vec<(&Row, Vec<Fault>)> = Vec::new();
        let mut facts = Facts::default();
        for row in &filled {
            let mut of_row = Facts::default();
            let read = reader.read(row, &mut of_row).and_then(|signs| match checked.faults(&reader, row, &signs) {
                none if none.is_empty() => Ok(signs),
                some => Err(some),
            });
            match read {
                Ok(signs) => {
                    of_row.own_designs = usize::from(signs.iter().any(|sign| sign.is_a_design_of_its_own()));
                    facts.add(&of_row);
                    for sign in signs {
                        sums.add(sign, row.number);
                    }
                }
                Err(mut of_row) => {
                    in_order(&mut of_row, Ord::cmp);
                    of_row.dedup();
                    for fault in &of_row {
                        faults.entry(fault.clone()).or_default().push(row.number);
                    }
                    listed.push((row, of_row));
                }
            }
        }
        let mut faults: Vec<(Fault, Vec<usize>)> = faults.into_iter().collect();
        in_order(&mut faults, |(_, a), (_, b)| b.len().cmp(&a.len()).then(a.first().cmp(&b.first())));
        let mut places = BTreeMap::new();
        places.extend(faults.iter().enumerate().map(|(place, (fault, _))| (fault, place)));
        let listed = listed
            .into_iter()
            .map(|(row, of_row)| (row.number, row.cells.clone(), of_row.iter().filter_map(|fault| places.get(fault).copied()).collect()))
            .collect();
        let (lines, from): (Vec<Value>, Vec<Vec<usize>>) = sums.groups.into_iter().map(Group::line).unzip();
        let signs = lines.iter().filter_map(|line| line["quantity"].as_u64()).sum::<u64>();
        if lines.len() > super::super::read::MOST_LINES || signs > super::super::read::MOST_SIGNS {
            let count = |number: u64| group(&number.to_string());
            return Err(whole(
                format!("{} signs on {} lines", count(signs), count(lines.len() as u64)),
                format!(
                    "at most {} signs on {} lines",
                    count(super::super::read::MOST_SIGNS),
                    count(super::super::read::MOST_LINES as u64)
                ),
                "split the rows into several files",
            ));
        }
        let faults = faults
            .into_iter()
            .map(|(fault, rows)| RowFault {
                file: file.to_owned(),
                name: fault.column.map(|column| columns[column].name.clone()).unwrap_or_default(),
                column: fault.column,
                came: fault.came,
                wanted: fault.wanted,
                help: fault.help,
                rows,
            })
            .collect();
        Ok(Self {
            file: file.to_owned(),
            encoding,
            separator,
            header,
            rows: filled.len(),
            empty: data.len() - filled.len(),
            columns,
            lines,
            from,
            signs,
            facts,
            faults,
            listed,
        })
    }
}

/// The lines as an order of their own, or in an order that is there: beside its lines or in their place.
pub fn order(name: &str, lines: &[Value], before: Option<(&Value, bool)>) -> Value {
    let Some((order, beside)) = before else {
        return json!({ "schema_version": 1, "name": name, "line": lines });
    };
    let mut order = order.clone();
    let kept = order.get("line").and_then(Value::as_array).filter(|_| beside).cloned().unwrap_or_default();
    if let Some(map) = order.as_object_mut() {
        map.insert("line".to_owned(), Value::Array(kept.into_iter().chain(lines.iter().cloned()).collect()));
    }
    order
}

impl Sign {
    /// Whether nothing says what it shows, and its code does not either.
    fn is_a_design_of_its_own(&self) -> bool {
        self.known == Some(Legend::Each) && self.legend.is_none() && self.designs.is_none()
    }
}

/// Lines that the strict reader of orders has seen, each once.
struct Checked<'t> {
    tables: &'t Tables,
    known: BTreeMap<String, Vec<OrderFault>>,
}

impl Checked<'_> {
    /// What the reader of orders says of a row's signs, at the cells it came from.
    fn faults(&mut self, reader: &Reader<'_, '_>, row: &Row, signs: &[Sign]) -> Vec<Fault> {
        let mut found = Vec::new();
        for sign in signs {
            let tables = self.tables;
            let faults = self.known.entry(sign.key()).or_insert_with(|| {
                let mut line = sign.line.clone();
                line.insert("quantity".to_owned(), Value::from(1));
                let document = Document::with_lines("", Value::Null, BTreeMap::new());
                let mut faults = Vec::new();
                line::read(&document, "line", &Value::Object(line), tables, &mut faults);
                faults
            });
            for fault in faults.iter() {
                let word = fault.field.split('.').nth(1).unwrap_or_default();
                let field = Field::read(word).unwrap_or(Field::Code);
                let column = reader.column(field).or_else(|| reader.column(Field::Width).filter(|_| field == Field::Size));
                let cell = column.map(|column| row.cell(column)).filter(|cell| !super::cell::says_nothing(cell));
                found.push(Fault {
                    column,
                    came: cell.map_or_else(|| fault.came.clone(), super::super::fields::quoted),
                    wanted: fault.wanted.clone(),
                    help: fault.help.clone(),
                });
            }
        }
        found
    }
}

/// Equal signs added up, in the order in which the first of each came.
#[derive(Default)]
struct Sums {
    places: BTreeMap<String, usize>,
    groups: Vec<Group>,
}

struct Group {
    line: Map<String, Value>,
    known: Option<Legend>,
    quantity: u32,
    /// Designs as stated by its only row.
    designs: Option<u32>,
    legends: BTreeSet<String>,
    /// Signs without a legend.
    bare: u32,
    rows: Vec<usize>,
}

/// The largest quantity of one line.
const MOST_OF_A_LINE: u32 = 1_000_000;

impl Sums {
    fn add(&mut self, sign: Sign, row: usize) {
        let several_designs = sign.designs.filter(|designs| *designs > 1);
        let key = sign.key();
        // Rows that state several designs may state the same or others: they stay lines of their own.
        let place = self.places.get(&key).copied().filter(|_| several_designs.is_none());
        let place = place.filter(|place| self.groups[*place].quantity <= MOST_OF_A_LINE - sign.quantity);
        let place = place.unwrap_or_else(|| {
            let place = self.groups.len();
            if several_designs.is_none() {
                self.places.insert(key, place);
            }
            self.groups.push(Group {
                line: sign.line,
                known: sign.known,
                quantity: 0,
                designs: several_designs,
                legends: BTreeSet::new(),
                bare: 0,
                rows: Vec::new(),
            });
            place
        });
        let group = &mut self.groups[place];
        group.quantity += sign.quantity;
        match sign.legend {
            Some(legend) => {
                group.legends.insert(legend);
            }
            None => group.bare += 1,
        }
        if group.rows.last() != Some(&row) {
            group.rows.push(row);
        }
    }
}

impl Group {
    /// The line as an order writes it, and its rows.
    fn line(self) -> (Value, Vec<usize>) {
        let legends = self.legends.len() as u32;
        let designs = self.designs.unwrap_or(match self.known {
            Some(Legend::One) => 1,
            Some(Legend::Each) => legends + self.bare,
            Some(Legend::Few) | None => legends.max(1),
        });
        let mut line = self.line;
        line.insert("quantity".to_owned(), Value::from(self.quantity));
        if designs > 1 {
            line.insert("designs".to_owned(), Value::from(designs));
        }
        (Value::Object(line), self.rows)
    }
}
