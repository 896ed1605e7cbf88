//! Reads the tables and refuses what does not hold together.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::sign::{COLOURS, SHAPES};
use super::source::KINDS;
use super::{Grade, Input, Origin, Scope, Seen, SignRow, Source, Spread, TableFault};
use crate::quantity::{UnitText, read_number};

/// The texts of the tables.
#[derive(Debug, Clone)]
pub struct Texts {
    /// `practice.csv`.
    pub practice: String,
    /// `factors.csv`.
    pub factors: String,
    /// `sources.csv`.
    pub sources: String,
    /// `sign-codes.csv`.
    pub signs: String,
}

/// The tables, read and checked.
#[derive(Debug, Clone)]
pub struct Tables {
    /// Every input of practice and factors, sorted by id.
    pub inputs: Vec<Arc<Input>>,
    /// The sources by key.
    pub sources: BTreeMap<String, Source>,
    /// The sign codes by code.
    pub signs: BTreeMap<String, SignRow>,
}

const PRACTICE: &str = "practice.csv";
const FACTORS: &str = "factors.csv";
const SOURCES: &str = "sources.csv";
const SIGNS: &str = "sign-codes.csv";

impl Texts {
    /// The tables built into the program.
    pub fn embedded() -> Self {
        Self {
            practice: include_str!("../../../factors/practice.csv").to_owned(),
            factors: include_str!("../../../factors/factors.csv").to_owned(),
            sources: include_str!("../../../factors/sources.csv").to_owned(),
            signs: include_str!("../../../factors/sign-codes.csv").to_owned(),
        }
    }
}

/// A row being read: named cells, and the faults found in them.
struct Row<'a> {
    file: &'static str,
    line: u64,
    cells: BTreeMap<&'a str, &'a str>,
    faults: &'a mut Vec<TableFault>,
}

impl Row<'_> {
    fn text(&self, column: &str) -> String {
        self.cells.get(column).copied().unwrap_or_default().to_owned()
    }

    fn refuse(&mut self, column: &str, wanted: &str, help: &str) {
        let came = self.text(column);
        self.faults.push(TableFault {
            file: self.file,
            line: self.line,
            column: column.to_owned(),
            came,
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        });
    }

    fn filled(&mut self, column: &str) -> String {
        let text = self.text(column);
        if text.trim().is_empty() {
            self.refuse(column, "a text", "fill the cell");
        }
        text
    }

    fn number(&mut self, column: &str) -> f64 {
        read_number(&self.text(column)).unwrap_or_else(|_| {
            self.refuse(column, "a number", "write digits with a point, without a unit");
            0.0
        })
    }

    /// A word of a closed list.
    fn word<T>(&mut self, column: &str, read: impl Fn(&str) -> Option<T>, wanted: &str, instead: T) -> T {
        read(&self.text(column)).unwrap_or_else(|| {
            self.refuse(column, wanted, "use one of these words");
            instead
        })
    }

    /// Value, range, spread, unit and evidence: what practice and factors have in common.
    fn input(&mut self, value: &str, origin: Origin) -> Input {
        let unit = UnitText::read(&self.text("unit")).unwrap_or_else(|_| {
            self.refuse("unit", "a unit such as `kg{CO2e}/kW.h`", "see DEVELOPERS.md, units");
            UnitText::pure()
        });
        let spread = self.word("spread", Spread::read, "lognormal, triangular, uniform or fixed", Spread::Fixed);
        let scope =
            if origin == Origin::Practice { self.word("scope", Scope::read, "shop, route or choice", Scope::Shop) } else { Scope::Shop };
        let input = Input {
            id: self.filled("id"),
            item: self.filled("item"),
            unit,
            value: self.number(value),
            centre: self.number(value),
            low: self.number("low"),
            high: self.number("high"),
            spread,
            scope,
            grade: self.word("grade", |text| Grade::read(text).filter(|grade| *grade != Grade::Own), "A, B, C or D", Grade::D),
            source: self.filled("source"),
            place: self.filled("place"),
            year: self.text("year"),
            note: self.text("note"),
            origin,
        };
        if !(input.low <= input.value && input.value <= input.high) {
            self.refuse("low", "low \u{2264} value \u{2264} high", "order the three numbers");
        }
        if input.low < 0.0 {
            self.refuse("low", "a number not below 0", "no input of the model is negative");
        }
        if spread == Spread::Lognormal && input.low <= 0.0 {
            self.refuse("low", "a number above 0, since the spread is lognormal", "raise it, or make the spread triangular");
        }
        if scope == Scope::Choice && spread != Spread::Fixed {
            self.refuse("spread", "fixed, since a choice is never varied", "make the spread fixed, or the scope shop or route");
        }
        input
    }
}

/// Calls `each` with every row of a table whose columns are as they must be.
fn rows<'a>(file: &'static str, text: &'a str, columns: &[&'a str], faults: &mut Vec<TableFault>, mut each: impl FnMut(Row<'_>)) {
    let mut reader = csv::ReaderBuilder::new().from_reader(text.as_bytes());
    let headers = reader.headers().cloned().unwrap_or_default();
    if headers.iter().ne(columns.iter().copied()) {
        faults.push(TableFault {
            file,
            line: 1,
            column: "all".to_owned(),
            came: headers.iter().collect::<Vec<_>>().join(","),
            wanted: format!("the columns `{}`", columns.join(",")),
            help: "restore the first line".to_owned(),
        });
        return;
    }
    for record in reader.records() {
        match record {
            Ok(record) => {
                let line = record.position().map_or(0, csv::Position::line);
                let cells = columns.iter().copied().zip(record.iter()).collect();
                each(Row { file, line, cells, faults });
            }
            Err(error) => faults.push(TableFault {
                file,
                line: error.position().map_or(0, csv::Position::line),
                column: "all".to_owned(),
                came: "a row of another length".to_owned(),
                wanted: format!("{} cells", columns.len()),
                help: "put cells with a comma in quotes".to_owned(),
            }),
        }
    }
}

impl Tables {
    /// The tables built into the program.
    pub fn embedded() -> Result<Self, Vec<TableFault>> {
        Self::read(&Texts::embedded())
    }

    /// The place of an input among the sorted rows.
    pub fn find(&self, id: &str) -> Option<usize> {
        self.inputs.binary_search_by(|input| input.id.as_str().cmp(id)).ok()
    }

    /// Reads the tables; all faults at once.
    pub fn read(texts: &Texts) -> Result<Self, Vec<TableFault>> {
        let mut faults = Vec::new();
        let mut tables = Self { inputs: Vec::new(), sources: BTreeMap::new(), signs: BTreeMap::new() };
        let mut order: Vec<(&'static str, u64, String)> = Vec::new();
        rows(
            SOURCES,
            &texts.sources,
            &["key", "title", "publisher", "year", "kind", "seen", "licence", "attribution", "locator"],
            &mut faults,
            |mut row| {
                let kind = row.word(
                    "kind",
                    |text| KINDS.iter().any(|(kind, _)| *kind == text).then(|| text.to_owned()),
                    "a kind of source",
                    String::new(),
                );
                let seen = row.word("seen", Seen::read, "document, excerpt, transcription or memory", Seen::Memory);
                let source = Source {
                    key: row.filled("key"),
                    title: row.filled("title"),
                    publisher: row.text("publisher"),
                    year: row.text("year"),
                    kind,
                    seen,
                    licence: row.text("licence"),
                    attribution: row.text("attribution"),
                    locator: row.text("locator"),
                };
                tables.sources.insert(source.key.clone(), source);
            },
        );
        let practice = ["id", "item", "unit", "default", "low", "high", "spread", "scope", "source", "place", "grade", "note"];
        let mut inputs = Vec::new();
        rows(PRACTICE, &texts.practice, &practice, &mut faults, |mut row| {
            inputs.push((PRACTICE, row.line, row.input("default", Origin::Practice)))
        });
        let factors = [
            "id",
            "item",
            "flow",
            "indicator",
            "gas",
            "value",
            "unit",
            "low",
            "high",
            "spread",
            "source",
            "place",
            "year",
            "region",
            "basis",
            "gwp",
            "boundary",
            "grade",
            "note",
        ];
        rows(FACTORS, &texts.factors, &factors, &mut faults, |mut row| {
            inputs.push((FACTORS, row.line, row.input("value", Origin::Factor)))
        });
        for (file, line, input) in inputs {
            order.push((file, line, input.source.clone()));
            if input.grade < tables.sources.get(&input.source).map_or(Grade::D, Source::best_grade)
                && tables.sources.contains_key(&input.source)
            {
                faults.push(TableFault {
                    file,
                    line,
                    column: "grade".to_owned(),
                    came: input.grade.to_string(),
                    wanted: format!("{} or lower", tables.sources[&input.source].best_grade()),
                    help: format!("`{}` carries no better", input.source),
                });
            }
            let place = tables.inputs.binary_search_by(|other| other.id.cmp(&input.id));
            match place {
                Ok(_) => faults.push(TableFault {
                    file,
                    line,
                    column: "id".to_owned(),
                    came: input.id,
                    wanted: "an id of its own".to_owned(),
                    help: "rename one of the two".to_owned(),
                }),
                Err(place) => tables.inputs.insert(place, Arc::new(input)),
            }
        }
        rows(
            SIGNS,
            &texts.signs,
            &["code", "item", "shape", "height_over_width", "corner_over_width", "colours", "rim", "source", "place", "grade", "note"],
            &mut faults,
            |mut row| {
                let sign = SignRow {
                    code: row.filled("code"),
                    item: row.filled("item"),
                    shape: row.word(
                        "shape",
                        |text| SHAPES.contains(&text).then(|| text.to_owned()),
                        "a shape of sign faces",
                        String::new(),
                    ),
                    height_over_width: row.number("height_over_width"),
                    corner_over_width: row.number("corner_over_width"),
                    colours: row
                        .text("colours")
                        .split(';')
                        .filter_map(|part| part.trim().rsplit_once(' '))
                        .filter_map(|(colour, share)| Some((colour.to_owned(), read_number(share).ok()?)))
                        .collect(),
                    rim: row.word("rim", |text| COLOURS.contains(&text).then(|| text.to_owned()), "a colour of sign faces", String::new()),
                    source: row.filled("source"),
                    place: row.filled("place"),
                    grade: row.word("grade", Grade::read, "A, B, C or D", Grade::D),
                };
                if sign.colours.iter().any(|(colour, _)| !COLOURS.contains(&colour.as_str())) {
                    row.refuse("colours", "colours of sign faces", "use the colours of an order");
                }
                if !(99.0..=101.0).contains(&sign.colours.iter().map(|(_, share)| share).sum::<f64>()) {
                    row.refuse("colours", "shares that sum to 100", "list every colour with its share, apart by `;`");
                }
                order.push((SIGNS, row.line, sign.source.clone()));
                tables.signs.insert(sign.code.clone(), sign);
            },
        );
        let cited: BTreeSet<&String> = order.iter().map(|(.., key)| key).collect();
        for (file, line, key) in &order {
            if !tables.sources.contains_key(key) {
                faults.push(TableFault {
                    file,
                    line: *line,
                    column: "source".to_owned(),
                    came: key.clone(),
                    wanted: "a key of sources.csv".to_owned(),
                    help: "add the source, or mend the key".to_owned(),
                });
            }
        }
        for key in tables.sources.keys().filter(|key| !cited.contains(key)) {
            faults.push(TableFault {
                file: SOURCES,
                line: 0,
                column: "key".to_owned(),
                came: key.clone(),
                wanted: "a source that a row cites".to_owned(),
                help: "cite it, or take it out".to_owned(),
            });
        }
        if faults.is_empty() { Ok(tables) } else { Err(faults) }
    }
}
