//! A row of a table being read: its cells by their columns, and the faults found in them.

use super::{Grade, Input, Origin, Scope, Source, Spread, TableFault};
use crate::quantity::{UnitText, read_number};

/// A row being read: named cells, and the faults found in them.
pub(super) struct Row<'a> {
    /// The folder of the table.
    pub folder: &'a str,
    /// The table.
    pub file: &'static str,
    /// The line in it, from 1.
    pub line: u64,
    columns: &'a [&'a str],
    record: &'a csv::StringRecord,
    faults: &'a mut Vec<TableFault>,
}

impl Row<'_> {
    /// The text of a cell.
    pub fn text(&self, column: &str) -> String {
        let place = self.columns.iter().position(|known| *known == column);
        place.and_then(|place| self.record.get(place)).unwrap_or_default().to_owned()
    }

    /// All cells, in the order of the columns.
    pub fn cells(&self) -> Vec<&str> {
        self.record.iter().collect()
    }

    /// Whether every cell is plain text; another would run over its neighbours, or steer the terminal it is printed on.
    fn is_plain(&mut self) -> bool {
        let unfit = |cell: &str| cell.contains(|c: char| c.is_control() || c == '"');
        let Some(place) = self.record.iter().position(unfit) else { return true };
        let wanted = "one line of plain text, without a quotation mark inside";
        self.refuse(
            self.columns.get(place).copied().unwrap_or_default(),
            wanted,
            "mend the quotes around the cell, or take the character out",
        );
        false
    }

    /// A cell that must hold a name that others can cite.
    pub fn name(&mut self, column: &str, fits: fn(char) -> bool, wanted: &str) -> String {
        let text = self.filled(column);
        if !text.is_empty() && !text.chars().all(fits) {
            self.refuse(column, wanted, "rename the row");
        }
        text
    }

    /// Refuses a cell.
    pub fn refuse(&mut self, column: &str, wanted: &str, help: &str) {
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

    /// A cell that must hold a text.
    pub fn filled(&mut self, column: &str) -> String {
        let text = self.text(column);
        if text.trim().is_empty() {
            self.refuse(column, "a text", "fill the cell");
        }
        text
    }

    /// A cell that must hold a number.
    pub fn number(&mut self, column: &str) -> f64 {
        read_number(&self.text(column)).unwrap_or_else(|_| {
            self.refuse(column, "a number", "write digits with a point, without a unit");
            0.0
        })
    }

    /// A word of a closed list.
    pub fn word<T>(&mut self, column: &str, read: impl Fn(&str) -> Option<T>, wanted: &str, instead: T) -> T {
        read(&self.text(column)).unwrap_or_else(|| {
            self.refuse(column, wanted, "use one of these words");
            instead
        })
    }

    /// A grade no better than its source can carry.
    pub fn grade_within(&mut self, column: &str, grade: Grade, source: Option<&Source>) {
        if let Some(source) = source.filter(|source| grade < source.best_grade()) {
            self.refuse(column, &format!("{} or lower", source.best_grade()), &format!("`{}` carries no better", source.key));
        }
    }

    /// The grade of a row of the tables.
    pub fn grade(&mut self) -> Grade {
        self.word("grade", |text| Grade::read(text).filter(|grade| *grade != Grade::Own), "A, B, C or D", Grade::D)
    }

    /// Value, range, spread, unit and evidence: what practice and factors have in common.
    pub fn input(&mut self, value: &str, origin: Origin) -> Input {
        let unit = UnitText::read(&self.text("unit")).unwrap_or_else(|_| {
            self.refuse("unit", "a unit such as `kg{CO2e}/kW.h`", "see DEVELOPERS.md, units");
            UnitText::pure()
        });
        let spread = self.word("spread", Spread::read, "lognormal, triangular, uniform or fixed", Spread::Fixed);
        let scope =
            if origin == Origin::Practice { self.word("scope", Scope::read, "shop, route or choice", Scope::Shop) } else { Scope::Shop };
        let id = self.name("id", |c| c.is_ascii_lowercase() || c.is_ascii_digit() || ".-".contains(c), "an id of a-z, 0-9, `.` and `-`");
        let item = self.filled("item");
        let value = self.number(value);
        let input = Input {
            id,
            item,
            unit,
            value,
            centre: value,
            low: self.number("low"),
            high: self.number("high"),
            spread,
            scope,
            grade: self.grade(),
            source: self.filled("source"),
            place: self.filled("place"),
            region: self.text("region"),
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
    columns: &[&str],
    faults: &mut Vec<TableFault>,
    each: &mut dyn FnMut(Row<'_>),
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
                let mut row = Row { folder, file, line, columns, record: &record, faults };
                if row.is_plain() {
                    each(row);
                }
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
