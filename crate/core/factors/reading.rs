//! Reads rows of the tables and refuses what does not hold together.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::file_names::{FACTORS, PRACTICE, SIGNS, SOLVENTS, SOURCES};
use super::sign::{COLOURS, Legend, SHAPES};
use super::source::KINDS;
use super::{Grade, Input, Origin, Scope, Seen, SignRow, Solvent, Source, Spread, TableFault, Tables, Texts, solvent};
use crate::quantity::{UnitText, read_number};

/// A row being read: named cells, and the faults found in them.
pub(super) struct Row<'a> {
    folder: &'a str,
    file: &'static str,
    pub(super) line: u64,
    cells: BTreeMap<&'a str, &'a str>,
    faults: &'a mut Vec<TableFault>,
}

impl Row<'_> {
    pub(super) fn text(&self, column: &str) -> String {
        self.cells.get(column).copied().unwrap_or_default().to_owned()
    }

    pub(super) fn refuse(&mut self, column: &str, wanted: &str, help: &str) {
        let came = self.text(column);
        self.faults.push(TableFault {
            folder: self.folder.to_owned(),
            file: self.file,
            line: self.line,
            column: column.to_owned(),
            came,
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        });
    }

    pub(super) fn filled(&mut self, column: &str) -> String {
        let text = self.text(column);
        if text.trim().is_empty() {
            self.refuse(column, "a text", "fill the cell");
        }
        text
    }

    pub(super) fn number(&mut self, column: &str) -> f64 {
        read_number(&self.text(column)).unwrap_or_else(|_| {
            self.refuse(column, "a number", "write digits with a point, without a unit");
            0.0
        })
    }

    /// A word of a closed list.
    pub(super) fn word<T>(&mut self, column: &str, read: impl Fn(&str) -> Option<T>, wanted: &str, instead: T) -> T {
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
pub(super) fn rows<'a>(
    folder: &'a str,
    file: &'static str,
    text: &'a str,
    columns: &[&'a str],
    faults: &mut Vec<TableFault>,
    mut each: impl FnMut(Row<'_>),
) {
    // A folder of own tables need not hold every file.
    if text.trim().is_empty() {
        return;
    }
    let mut reader = csv::ReaderBuilder::new().from_reader(text.as_bytes());
    let headers = reader.headers().cloned().unwrap_or_default();
    if headers.iter().ne(columns.iter().copied()) {
        faults.push(TableFault {
            folder: folder.to_owned(),
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
                each(Row { folder, file, line, cells, faults });
            }
            Err(error) => faults.push(TableFault {
                folder: folder.to_owned(),
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

const SOURCE_COLUMNS: [&str; 9] = ["key", "title", "publisher", "year", "kind", "seen", "licence", "attribution", "locator"];

const PRACTICE_COLUMNS: [&str; 12] =
    ["id", "item", "unit", "default", "low", "high", "spread", "scope", "source", "place", "grade", "note"];

const FACTOR_COLUMNS: [&str; 19] = [
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

const SIGN_COLUMNS: [&str; 15] = [
    "code",
    "item",
    "shape",
    "height_over_width",
    "corner_over_width",
    "colours",
    "rim",
    "cut_length",
    "measured_width",
    "characters",
    "legend",
    "source",
    "place",
    "grade",
    "note",
];

/// Tables being read: the built-in ones, then those of a folder in place of or beside their rows.
pub(super) struct Reading {
    pub tables: Tables,
    pub faults: Vec<TableFault>,
    /// Which row cites which source.
    cited: Vec<(String, &'static str, u64, &'static str, String)>,
}

impl Reading {
    pub fn new() -> Self {
        let tables = Tables {
            inputs: Vec::new(),
            sources: BTreeMap::new(),
            signs: BTreeMap::new(),
            solvents: BTreeMap::new(),
            uncited: Vec::new(),
            own: Vec::new(),
        };
        Self { tables, faults: Vec::new(), cited: Vec::new() }
    }

    /// Takes the rows of a folder; where they are a user's own, they replace rows of the same id.
    pub fn take(&mut self, folder: &str, texts: &Texts, own: bool) {
        self.sources(folder, &texts.sources);
        let mut inputs = Vec::new();
        rows(folder, PRACTICE, &texts.practice, &PRACTICE_COLUMNS, &mut self.faults, |mut row| {
            inputs.push((PRACTICE, row.line, row.input("default", Origin::Practice)));
        });
        rows(folder, FACTORS, &texts.factors, &FACTOR_COLUMNS, &mut self.faults, |mut row| {
            inputs.push((FACTORS, row.line, row.input("value", Origin::Factor)));
        });
        let mut seen = BTreeSet::new();
        for (file, line, input) in inputs {
            self.cited.push((folder.to_owned(), file, line, "source", input.source.clone()));
            let mut refuse = |column: &str, came: String, wanted: String, help: String| {
                self.faults.push(TableFault { folder: folder.to_owned(), file, line, column: column.to_owned(), came, wanted, help });
            };
            if let Some(source) = self.tables.sources.get(&input.source).filter(|source| input.grade < source.best_grade()) {
                let help = format!("`{}` carries no better", input.source);
                refuse("grade", input.grade.to_string(), format!("{} or lower", source.best_grade()), help);
            }
            if !seen.insert(input.id.clone()) {
                refuse("id", input.id, "an id of its own".to_owned(), "rename one of the two".to_owned());
                continue;
            }
            if own {
                self.tables.own.push(input.id.clone());
            }
            match self.tables.inputs.binary_search_by(|other| other.id.cmp(&input.id)) {
                Ok(place) if !self.tables.inputs[place].unit.measures_as(&input.unit) => {
                    let wanted = format!("a unit that measures the same as `{}`", self.tables.inputs[place].unit.text());
                    refuse("unit", input.unit.text().to_owned(), wanted, "keep the unit of the row it replaces".to_owned());
                }
                Ok(place) => self.tables.inputs[place] = Arc::new(input),
                Err(place) => self.tables.inputs.insert(place, Arc::new(input)),
            }
        }
        self.signs(folder, &texts.signs);
        self.solvents(folder, &texts.solvents);
    }

    fn sources(&mut self, folder: &str, text: &str) {
        let sources = &mut self.tables.sources;
        let mut keys = BTreeSet::new();
        rows(folder, SOURCES, text, &SOURCE_COLUMNS, &mut self.faults, |mut row| {
            let known = |text: &str| KINDS.iter().any(|(kind, _)| *kind == text).then(|| text.to_owned());
            let kind = row.word("kind", known, "a kind of source", String::new());
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
            if !keys.insert(source.key.clone()) {
                row.refuse("key", "a key of its own", "rename one of the two");
            }
            sources.insert(source.key.clone(), source);
        });
    }

    fn signs(&mut self, folder: &str, text: &str) {
        let (signs, cited) = (&mut self.tables.signs, &mut self.cited);
        let mut seen = BTreeSet::new();
        rows(folder, SIGNS, text, &SIGN_COLUMNS, &mut self.faults, |mut row| {
            let sign = sign(&mut row);
            cited.push((folder.to_owned(), SIGNS, row.line, "source", sign.source.clone()));
            if !seen.insert(sign.code.clone()) {
                row.refuse("code", "a code of its own", "take one of the two out");
            }
            signs.insert(sign.code.clone(), sign);
        });
    }

    fn solvents(&mut self, folder: &str, text: &str) {
        let (solvents, cited) = (&mut self.tables.solvents, &mut self.cited);
        let mut seen = BTreeSet::new();
        rows(folder, SOLVENTS, text, &solvent::COLUMNS, &mut self.faults, |mut row| {
            let solvent = Solvent::read(&mut row);
            let keys = [("source", &solvent.source), ("found_by", &solvent.found_by)].into_iter().filter(|(_, key)| !key.is_empty());
            let keys = keys.chain(solvent.density.iter().map(|(_, source, _)| ("density_source", source)));
            cited.extend(keys.map(|(column, key)| (folder.to_owned(), SOLVENTS, row.line, column, key.clone())));
            if !seen.insert(solvent.id.clone()) {
                row.refuse("id", "a name of its own", "rename one of the two");
            }
            solvents.insert(solvent.id.clone(), solvent);
        });
    }

    /// Checks that no citation dangles, and notes the sources that nobody cites.
    pub fn finish(mut self) -> Result<Tables, Vec<TableFault>> {
        for (folder, file, line, column, key) in &self.cited {
            if !self.tables.sources.contains_key(key) {
                self.faults.push(TableFault {
                    folder: folder.clone(),
                    file,
                    line: *line,
                    column: (*column).to_owned(),
                    came: key.clone(),
                    wanted: "a key of sources.csv".to_owned(),
                    help: "add the source, or mend the key".to_owned(),
                });
            }
        }
        let cited: BTreeSet<&String> = self.cited.iter().map(|(.., key)| key).collect();
        self.tables.uncited = self.tables.sources.keys().filter(|key| !cited.contains(key)).cloned().collect();
        self.tables.own.sort_unstable();
        if self.faults.is_empty() { Ok(self.tables) } else { Err(self.faults) }
    }
}

/// One sign code.
fn sign(row: &mut Row<'_>) -> SignRow {
    let colour = |text: &str| COLOURS.contains(&text).then(|| text.to_owned());
    let shape = |text: &str| SHAPES.contains(&text).then(|| text.to_owned());
    let shares = row.text("colours");
    let shares = shares.split(';').filter_map(|part| part.trim().rsplit_once(' '));
    let colours = shares.filter_map(|(colour, share)| Some((colour.to_owned(), read_number(share).ok()?)));
    let sign = SignRow {
        code: row.filled("code"),
        item: row.filled("item"),
        shape: row.word("shape", shape, "a shape of sign faces", String::new()),
        height_over_width: row.number("height_over_width"),
        corner_over_width: row.number("corner_over_width"),
        colours: colours.collect(),
        cut: (!row.text("cut_length").is_empty()).then(|| (row.number("cut_length"), row.number("measured_width"))),
        characters: (!row.text("characters").is_empty()).then(|| row.number("characters") as u32),
        legend: row.word("legend", Legend::read, "one, few or each", Legend::One),
        rim: row.word("rim", colour, "a colour of sign faces", String::new()),
        source: row.filled("source"),
        place: row.filled("place"),
        grade: row.word("grade", Grade::read, "A, B, C or D", Grade::D),
    };
    for (column, number, least) in
        [("height_over_width", sign.height_over_width, f64::MIN_POSITIVE), ("corner_over_width", sign.corner_over_width, 0.0)]
    {
        if number < least {
            row.refuse(column, "a number above nothing", "measure it on the artwork");
        }
    }
    if sign.cut.is_some_and(|(cut, at)| cut <= 0.0 || at <= 0.0) {
        let column = if row.number("cut_length") <= 0.0 { "cut_length" } else { "measured_width" };
        row.refuse(column, "a length above nothing", "give both in metres, or leave both out");
    }
    let characters = row.text("characters");
    if !characters.is_empty() && characters.parse::<u32>().is_err() {
        row.refuse("characters", "a whole number", "count the characters, or leave the cell empty");
    }
    if sign.colours.iter().any(|(name, _)| colour(name).is_none()) {
        row.refuse("colours", "colours of sign faces", "use the colours of an order");
    }
    if !(99.0..=101.0).contains(&sign.colours.iter().map(|(_, share)| share).sum::<f64>()) {
        row.refuse("colours", "shares that sum to 100", "list every colour with its share, apart by `;`");
    }
    sign
}
