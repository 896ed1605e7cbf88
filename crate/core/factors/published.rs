//! Published values: what publications say of a thing, value by value, behind the one value and the
//! range that a row of the tables holds.
//!
//! They back a row, so that its default and range can be worked out again, and show a reader what
//! else was published. No result uses them: an order takes one by its value. So they are read by the
//! command line and by tests, and stay out of the page.

use std::collections::BTreeSet;

use super::file_names::{PUBLISHED, SOURCES};
use super::row::rows;
use super::{Grade, TableFault, Tables};
use crate::quantity::UnitText;

/// What a published value is to the row it backs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// It is the row's value.
    Default,
    /// The row's value is the geometric mean of these.
    Mean,
    /// It counts for the range.
    Also,
    /// It is the low end.
    Low,
    /// It is the high end.
    High,
    /// It stands beside, for another thing, boundary or vintage; it counts for nothing.
    Beside,
}

impl Role {
    /// The roles by the words of the table.
    pub const ALL: [(&'static str, Self); 6] = [
        ("default", Self::Default),
        ("mean", Self::Mean),
        ("also", Self::Also),
        ("low", Self::Low),
        ("high", Self::High),
        ("beside", Self::Beside),
    ];
}

/// One row of `factors/published.csv`.
#[derive(Debug, Clone, PartialEq)]
pub struct Published {
    /// Its id.
    pub id: String,
    /// The row it backs.
    pub backs: String,
    /// What it is to that row.
    pub roles: Vec<Role>,
    /// What was measured or worked out.
    pub item: String,
    /// The value as published, in `unit`.
    pub value: f64,
    /// The unit, that of the row.
    pub unit: UnitText,
    /// How much of it a unit of the row takes: 1.095 kg of ingot make 1 kg of sheet.
    pub times: f64,
    /// The key of the source.
    pub source: String,
    /// The place in it.
    pub place: String,
    /// The year of the data.
    pub year: String,
    /// Where it holds.
    pub region: String,
    /// From where to where it counts.
    pub boundary: String,
    /// The grade.
    pub grade: Grade,
    /// A note.
    pub note: String,
}

impl Published {
    /// Whether it has that role.
    pub fn is(&self, role: Role) -> bool {
        self.roles.contains(&role)
    }

    /// The value that counts for the row it backs.
    pub fn counted(&self) -> f64 {
        self.value * self.times
    }
}

const COLUMNS: [&str; 14] =
    ["id", "backs", "role", "item", "value", "unit", "times", "source", "place", "year", "region", "boundary", "grade", "note"];

/// The published values behind these tables; refuses a value that backs no row or cites no source,
/// and a source that neither they nor any row cite.
pub fn published(tables: &Tables) -> Result<Vec<Published>, Vec<TableFault>> {
    read(tables, include_str!("../../../factors/published.csv"))
}

fn read(tables: &Tables, text: &str) -> Result<Vec<Published>, Vec<TableFault>> {
    let mut faults = Vec::new();
    let mut found: Vec<Published> = Vec::new();
    let mut seen = BTreeSet::new();
    rows("factors", PUBLISHED, text, &COLUMNS, &mut faults, &mut |mut row| {
        let role = |text: &str| -> Option<Vec<Role>> {
            text.split(' ').map(|word| Role::ALL.iter().find(|(known, _)| *known == word).map(|(_, role)| *role)).collect()
        };
        let unit = UnitText::read(&row.text("unit")).unwrap_or_else(|_| {
            row.refuse("unit", "a unit such as `kg{CO2e}/kg`", "take that of the row it backs");
            UnitText::pure()
        });
        let one = Published {
            id: row.filled("id"),
            backs: row.filled("backs"),
            roles: row.word("role", role, "default, mean, also, low, high or beside", Vec::new()),
            item: row.filled("item"),
            value: row.number("value"),
            unit,
            times: row.number("times"),
            source: row.filled("source"),
            place: row.filled("place"),
            year: row.filled("year"),
            region: row.filled("region"),
            boundary: row.filled("boundary"),
            grade: row.word("grade", Grade::read, "A, B, C or D", Grade::D),
            note: row.text("note"),
        };
        match tables.find(&one.backs).map(|place| &tables.inputs[place]) {
            None => row.refuse("backs", "the id of a row of practice.csv or factors.csv", "take the value out, or add the row"),
            Some(input) if !input.unit.measures_as(&one.unit) => {
                row.refuse("unit", &format!("a unit that measures the same as `{}`", input.unit.text()), "take that of the row it backs");
            }
            Some(_) => {}
        }
        match tables.sources.get(&one.source) {
            None => row.refuse("source", "a key of sources.csv", "add the source, or mend the key"),
            Some(source) if one.grade < source.best_grade() => {
                row.refuse("grade", &format!("{} or lower", source.best_grade()), "the source carries no better");
            }
            Some(_) => {}
        }
        if !seen.insert(one.id.clone()) {
            row.refuse("id", "an id of its own", "rename one of the two");
        }
        found.push(one);
    });
    for (line, key) in tables.uncited.iter().filter(|(_, key)| !found.iter().any(|one| one.source == *key)) {
        faults.push(TableFault {
            folder: "factors".to_owned(),
            file: SOURCES,
            line: *line,
            column: "key".to_owned(),
            came: key.clone(),
            wanted: "a source that a row cites".to_owned(),
            help: "cite it, or take it out".to_owned(),
        });
    }
    if faults.is_empty() { Ok(found) } else { Err(faults) }
}
