//! Reads rows of the tables and refuses what does not hold together.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::file_names::{FACTORS, PRACTICE, SIGNS, SOURCES};
use super::fingerprint::Keyed;
use super::row::rows;
use super::{Origin, SignRow, Source, TableFault, Tables, Texts};

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
pub(super) struct Reading<'a> {
    folder: &'a str,
    tables: Tables,
    /// Keys of the sources that were there before this folder.
    before: BTreeSet<String>,
    faults: Vec<TableFault>,
    /// Which row cites which source.
    cited: Vec<(&'static str, u64, String)>,
    /// The sources that this folder gives.
    given: Vec<(u64, String)>,
}

/// Reads the tables of a folder, in place of and beside the rows of tables read before; all faults at once.
pub(super) fn read(folder: &str, texts: &Texts, before: Option<&Tables>) -> Result<Tables, Vec<TableFault>> {
    let tables = before.cloned().unwrap_or_default();
    let keys = tables.sources.keys().cloned().collect();
    let mut reading = Reading { folder, tables, before: keys, faults: Vec::new(), cited: Vec::new(), given: Vec::new() };
    reading.sources(&texts.sources);
    reading.inputs(texts, before.is_some());
    reading.signs(&texts.signs, before.is_some());
    reading.finish()
}

impl Reading<'_> {
    fn sources(&mut self, text: &str) {
        let Self { folder, tables, faults, given, .. } = self;
        let mut keys = BTreeSet::new();
        rows(folder, SOURCES, text, &SOURCE_COLUMNS, faults, |mut row| {
            let source = Source::read(&mut row);
            if !keys.insert(source.key.clone()) {
                row.refuse("key", "a key of its own", "rename one of the two");
            }
            tables.written.put(Keyed::Source, &source.key, row.file, &row.cells());
            given.push((row.line, source.key.clone()));
            tables.sources.insert(source.key.clone(), source);
        });
    }

    fn inputs(&mut self, texts: &Texts, own: bool) {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut seen = BTreeSet::new();
        for (file, text, columns, value, origin) in [
            (PRACTICE, &texts.practice, &PRACTICE_COLUMNS[..], "default", Origin::Practice),
            (FACTORS, &texts.factors, &FACTOR_COLUMNS, "value", Origin::Factor),
        ] {
            rows(folder, file, text, columns, faults, |mut row| {
                let input = row.input(value, origin);
                cited.push((file, row.line, input.source.clone()));
                row.grade_within(input.grade, tables.sources.get(&input.source));
                if !seen.insert(input.id.clone()) {
                    row.refuse("id", "an id of its own", "rename one of the two");
                    return;
                }
                // A row as it was before puts nothing in the place of anything.
                if tables.written.put(Keyed::Input, &input.id, file, &row.cells()) && own {
                    tables.own.push(input.id.clone());
                }
                match tables.inputs.binary_search_by(|other| other.id.cmp(&input.id)) {
                    Ok(place) if !tables.inputs[place].unit.measures_as(&input.unit) => {
                        let wanted = format!("a unit that measures the same as `{}`", tables.inputs[place].unit.text());
                        row.refuse("unit", &wanted, "keep the unit of the row it replaces");
                    }
                    Ok(place) => tables.inputs[place] = Arc::new(input),
                    Err(place) => tables.inputs.insert(place, Arc::new(input)),
                }
            });
        }
    }

    fn signs(&mut self, text: &str, own: bool) {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut seen = BTreeSet::new();
        rows(folder, SIGNS, text, &SIGN_COLUMNS, faults, |mut row| {
            let sign = SignRow::read(&mut row);
            cited.push((SIGNS, row.line, sign.source.clone()));
            row.grade_within(sign.grade, tables.sources.get(&sign.source));
            if !seen.insert(sign.code.clone()) {
                row.refuse("code", "a code of its own", "take one of the two out");
            }
            if tables.written.put(Keyed::Sign, &sign.code, SIGNS, &row.cells()) && own {
                tables.own.push(sign.code.clone());
            }
            tables.signs.insert(sign.code.clone(), sign);
        });
    }

    /// Checks the keys both ways: no dangling citation, no source of the folder that nobody cites.
    fn finish(mut self) -> Result<Tables, Vec<TableFault>> {
        let mut refuse = |file, line, column: &str, came: &str, wanted: &str, help: &str| {
            self.faults.push(TableFault {
                folder: self.folder.to_owned(),
                file,
                line,
                column: column.to_owned(),
                came: came.to_owned(),
                wanted: wanted.to_owned(),
                help: help.to_owned(),
            });
        };
        for (file, line, key) in self.cited.iter().filter(|(.., key)| !self.tables.sources.contains_key(key)) {
            refuse(file, *line, "source", key, "a key of sources.csv", "add the source, or mend the key");
        }
        let cited: BTreeSet<&String> = self.cited.iter().map(|(.., key)| key).chain(&self.before).collect();
        for (line, key) in self.given.iter().filter(|(_, key)| !cited.contains(key)) {
            refuse(SOURCES, *line, "key", key, "a source that a row cites", "cite it, or take it out");
        }
        if !self.faults.is_empty() {
            return Err(self.faults);
        }
        self.tables.own.sort_unstable();
        self.tables.own.dedup();
        self.tables.fingerprint = self.tables.written.fingerprint();
        Ok(self.tables)
    }
}
