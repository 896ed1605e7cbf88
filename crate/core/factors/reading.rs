//! Reads rows of the tables and refuses what does not hold together.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::file_names::{CARRIERS, FACTORS, PRACTICE, SIGNS, SOLVENTS, SOURCES};
use super::fingerprint::Keyed;
use super::row::{Row, rows};
use super::{Input, Origin, SignRow, Solvent, Source, TableFault, Tables, Texts, carrier, solvent};
use crate::in_order;

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
    /// Which row cites which source, in which column.
    cited: Vec<(&'static str, u64, &'static str, String)>,
    /// The sources that this folder gives.
    given: Vec<(u64, String)>,
}

/// Reads the tables of a folder, in place of and beside the rows of tables read before; all faults at once.
pub(super) fn read(folder: &str, texts: &Texts, before: Option<&Tables>) -> Result<Tables, Vec<TableFault>> {
    let tables = before.cloned().unwrap_or_default();
    let mut keys = BTreeSet::new();
    keys.extend(tables.sources.keys().cloned());
    let mut reading = Reading { folder, tables, before: keys, faults: Vec::new(), cited: Vec::new(), given: Vec::new() };
    reading.sources(&texts.sources);
    let seen = reading.inputs(texts, before.is_some());
    reading.carriers(&texts.carriers, before.is_some(), seen);
    reading.signs(&texts.signs, before.is_some());
    reading.solvents(&texts.solvents, before.is_some());
    reading.finish(before.is_some())
}

impl Reading<'_> {
    fn sources(&mut self, text: &str) {
        let Self { folder, tables, faults, given, .. } = self;
        let mut keys = BTreeSet::new();
        rows(folder, SOURCES, text, &SOURCE_COLUMNS, faults, &mut |mut row| {
            let source = Source::read(&mut row);
            if !keys.insert(source.key.clone()) {
                row.refuse("key", "a key of its own", "rename one of the two");
            }
            tables.written.put(Keyed::Source, &source.key, row.file, &row.cells());
            given.push((row.line, source.key.clone()));
            tables.sources.insert(source.key.clone(), source);
        });
    }

    /// Practice and factors; the ids that they hold.
    fn inputs(&mut self, texts: &Texts, own: bool) -> BTreeSet<String> {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut seen = BTreeSet::new();
        for (file, text, columns, value, origin) in [
            (PRACTICE, &texts.practice, &PRACTICE_COLUMNS[..], "default", Origin::Practice),
            (FACTORS, &texts.factors, &FACTOR_COLUMNS, "value", Origin::Factor),
        ] {
            rows(folder, file, text, columns, faults, &mut |mut row| {
                let input = row.input(value, origin);
                cited.push((file, row.line, "source", input.source.clone()));
                row.grade_within("grade", input.grade, tables.sources.get(&input.source));
                if !seen.insert(input.id.clone()) {
                    row.refuse("id", "an id of its own", "rename one of the two");
                    return;
                }
                // A row as it was before puts nothing in the place of anything.
                if tables.written.put(Keyed::Input, &input.id, file, &row.cells()) && own {
                    tables.own.push(input.id.clone());
                }
                put(&mut tables.inputs, input, &mut row);
            });
        }
        seen
    }

    /// Carriers, each with an input for every gas that it gives.
    fn carriers(&mut self, text: &str, own: bool, mut seen: BTreeSet<String>) {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut ids = BTreeSet::new();
        let mut stems: BTreeMap<String, String> = BTreeMap::new();
        stems.extend(tables.carriers.values().map(|carrier| (carrier.stem(), carrier.id.clone())));
        rows(folder, CARRIERS, text, &carrier::COLUMNS, faults, &mut |mut row| {
            let (carrier, rates) = carrier::read(&mut row);
            cited.push((CARRIERS, row.line, "source", carrier.source.clone()));
            row.grade_within("grade", carrier.grade, tables.sources.get(&carrier.source));
            // `us-rfcw` and `us.rfcw` would give their inputs the same ids.
            let other = stems.insert(carrier.stem(), carrier.id.clone());
            if !ids.insert(carrier.stem()) || other.is_some_and(|other| other != carrier.id) {
                row.refuse("id", "an id of its own", "rename one of the two");
                return;
            }
            let changed = tables.written.put(Keyed::Carrier, &row.text("id"), CARRIERS, &row.cells());
            for rate in rates {
                if !seen.insert(rate.id.clone()) {
                    row.refuse(
                        "id",
                        &format!("a carrier whose `{}` no other table gives", rate.id),
                        "take that row out, or rename one of the two",
                    );
                    continue;
                }
                if changed && own {
                    tables.own.push(rate.id.clone());
                }
                put(&mut tables.inputs, rate, &mut row);
            }
            tables.carriers.insert((carrier.carried, carrier.id.clone()), Arc::new(carrier));
        });
    }

    fn signs(&mut self, text: &str, own: bool) {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut seen = BTreeSet::new();
        rows(folder, SIGNS, text, &SIGN_COLUMNS, faults, &mut |mut row| {
            let sign = SignRow::read(&mut row);
            cited.push((SIGNS, row.line, "source", sign.source.clone()));
            row.grade_within("grade", sign.grade, tables.sources.get(&sign.source));
            if !seen.insert(sign.code.clone()) {
                row.refuse("code", "a code of its own", "take one of the two out");
            }
            if tables.written.put(Keyed::Sign, &sign.code, SIGNS, &row.cells()) && own {
                tables.own.push(sign.code.clone());
            }
            tables.signs.insert(sign.code.clone(), sign);
        });
    }

    fn solvents(&mut self, text: &str, own: bool) {
        let Self { folder, tables, faults, cited, .. } = self;
        let mut seen = BTreeSet::new();
        rows(folder, SOLVENTS, text, &solvent::COLUMNS, faults, &mut |mut row| {
            let solvent = Solvent::read(&mut row);
            row.grade_within("grade", solvent.grade, tables.sources.get(&solvent.source));
            let keys = [("source", &solvent.source), ("found_by", &solvent.found_by)].into_iter().filter(|(_, key)| !key.is_empty());
            cited.extend(keys.map(|(column, key)| (SOLVENTS, row.line, column, key.clone())));
            if let Some((_, source, grade)) = &solvent.density {
                row.grade_within("density_grade", *grade, tables.sources.get(source));
                cited.push((SOLVENTS, row.line, "density_source", source.clone()));
            }
            if !seen.insert(solvent.id.clone()) {
                row.refuse("id", "a name of its own", "rename one of the two");
            }
            if tables.written.put(Keyed::Solvent, &solvent.id, SOLVENTS, &row.cells()) && own {
                tables.own.push(solvent.id.clone());
            }
            tables.solvents.insert(solvent.id.clone(), solvent);
        });
    }

    /// Checks the keys both ways: no dangling citation; no source of an own folder that nobody cites, while the built-in ones
    /// that no row cites wait for the published values.
    fn finish(mut self, own: bool) -> Result<Tables, Vec<TableFault>> {
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
        for (file, line, column, key) in self.cited.iter().filter(|(.., key)| !self.tables.sources.contains_key(key)) {
            refuse(file, *line, column, key, "a key of sources.csv", "add the source, or mend the key");
        }
        let mut cited: BTreeSet<&String> = BTreeSet::new();
        cited.extend(self.cited.iter().map(|(.., key)| key).chain(&self.before));
        let uncited = self.given.iter().filter(|(_, key)| !cited.contains(key));
        if own {
            uncited.for_each(|(line, key)| refuse(SOURCES, *line, "key", key, "a source that a row cites", "cite it, or take it out"));
        } else {
            self.tables.uncited = uncited.cloned().collect();
        }
        self.faults.extend(carrier::dangling(&self.tables));
        if !self.faults.is_empty() {
            // A cell that several inputs of a row are read from is at fault once.
            let mut said = BTreeSet::new();
            self.faults.retain(|fault| said.insert(fault.to_string()));
            return Err(self.faults);
        }
        in_order(&mut self.tables.own, Ord::cmp);
        self.tables.own.dedup();
        self.tables.fingerprint = self.tables.written.fingerprint();
        Ok(self.tables)
    }
}

/// Puts an input in place of the one with its id, which must measure the same, or beside the others.
fn put(inputs: &mut Vec<Arc<Input>>, input: Input, row: &mut Row<'_>) {
    match inputs.binary_search_by(|other| other.id.cmp(&input.id)) {
        Ok(place) if !inputs[place].unit.measures_as(&input.unit) => {
            let wanted = format!("a unit that measures the same as `{}`", inputs[place].unit.text());
            row.refuse("unit", &wanted, "keep the unit of the row it replaces");
        }
        Ok(place) => inputs[place] = Arc::new(input),
        Err(place) => inputs.insert(place, Arc::new(input)),
    }
}
