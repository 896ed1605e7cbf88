//! One row as signs, or as the faults that keep it from being one.

use serde_json::{Map, Value};

use super::super::fields::quoted;
use super::code::{Codes, parts};
use super::lines::Facts;
use super::size::{FaceSize, Length};
use super::{Column, Field, Wanted, cell, colours, size};
use crate::factors::{Legend, SignRow};
use crate::quantity::{NumberFault, Span};

/// So many equal signs.
pub(super) struct Sign {
    /// The line without its quantity and designs.
    pub line: Map<String, Value>,
    pub quantity: u32,
    /// Designs, where the row says how many.
    pub designs: Option<u32>,
    /// What it shows, where the row says it.
    pub legend: Option<String>,
    /// How many legends its code stands for, where the table has it.
    pub known: Option<Legend>,
}

impl Sign {
    /// A text that is equal for signs that can be added up.
    pub fn key(&self) -> String {
        serde_json::to_string(&self.line).unwrap_or_default()
    }
}

/// A fault of one row, before rows with the same are put together.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Fault {
    pub column: Option<usize>,
    pub came: String,
    pub wanted: String,
    pub help: String,
}

/// What all rows are read with.
pub(super) struct Reader<'t, 'w> {
    pub codes: Codes<'t>,
    pub columns: &'w [Column],
    pub wanted: &'w Wanted,
}

/// A row being read.
struct RowReader<'r, 't, 'w> {
    with: &'r Reader<'t, 'w>,
    row: &'r super::grid::Row,
    faults: Vec<Fault>,
    /// Fields that hold only because the user said so.
    assumed: Vec<Field>,
}

impl Reader<'_, '_> {
    /// The column that gives a field.
    pub fn column(&self, field: Field) -> Option<usize> {
        self.columns.iter().position(|column| column.field == Some(field))
    }

    /// The signs of a row; what was done to understand it is noted.
    pub fn read(&self, row: &super::grid::Row, facts: &mut Facts) -> Result<Vec<Sign>, Vec<Fault>> {
        let mut reading = RowReader { with: self, row, faults: Vec::new(), assumed: Vec::new() };
        let signs = reading.signs(facts);
        match signs {
            Some(signs) if reading.faults.is_empty() => {
                for field in reading.assumed {
                    *facts.assumed.entry(field).or_default() += 1;
                }
                Ok(signs)
            }
            _ => Err(reading.faults),
        }
    }
}

impl RowReader<'_, '_, '_> {
    /// What the row itself says.
    fn own(&self, field: Field) -> Option<String> {
        let cell = self.row.cell(self.with.column(field)?);
        (!cell::says_nothing(cell)).then(|| cell.to_owned())
    }

    /// What the row says, else what holds where it is missing.
    fn text(&mut self, field: Field) -> Option<String> {
        self.own(field).or_else(|| {
            let text = self.with.wanted.where_missing.get(&field)?;
            if !self.assumed.contains(&field) {
                self.assumed.push(field);
            }
            Some(text.clone())
        })
    }

    fn refuse(&mut self, field: Field, wanted: &str, help: &str) {
        let column = self.with.column(field);
        let came = column.map_or_else(|| "nothing".to_owned(), |column| quoted(self.row.cell(column)));
        self.refuse_as(field, came, wanted, help);
    }

    fn refuse_as(&mut self, field: Field, came: String, wanted: &str, help: &str) {
        let column = self.with.column(field);
        self.faults.push(Fault { column, came, wanted: wanted.to_owned(), help: help.to_owned() });
    }

    fn whole(&mut self, field: Field) -> Option<u32> {
        let text = self.text(field)?;
        match cell::number(&text, self.with.wanted.decimal_comma) {
            Ok(number) if number.fract() == 0.0 && (1.0..=1e6).contains(&number) => Some(number as u32),
            fault => {
                let help = match fault {
                    Err(NumberFault::Comma) => cell::mark_help(self.with.wanted.decimal_comma),
                    _ => "write digits alone, without a unit",
                };
                self.refuse_as(field, quoted(&text), "a whole number from 1 to 1\u{202f}000\u{202f}000", help);
                None
            }
        }
    }

    fn signs(&mut self, facts: &mut Facts) -> Option<Vec<Sign>> {
        let code_cell = self.own(Field::Code).unwrap_or_default();
        let codes = parts(&code_cell);
        let sizes = self.sizes();
        let quantity = self.whole(Field::Quantity);
        let designs = self.whole(Field::Designs);
        let several = codes.len().max(sizes.as_ref().map_or(0, Vec::len));
        if several > 1 {
            if codes.len() > 1 && sizes.as_ref().is_some_and(|sizes| sizes.len() != codes.len()) {
                self.refuse(Field::Code, "as many sign codes as sizes, or one of each", "give each sign a row of its own");
            }
            if quantity.is_some_and(|quantity| quantity > 1) || designs.is_some_and(|designs| designs > 1) {
                let field = if codes.len() > 1 { Field::Code } else { Field::Size };
                self.refuse(field, "one sign in a row with a quantity", "give each sign a row of its own");
            }
        }
        if designs.is_some_and(|designs| designs > quantity.unwrap_or(1)) {
            self.refuse(Field::Designs, "at most the quantity", "each sign shows one design");
        }
        let colours = self.colours(&codes);
        let first = sizes.as_ref().and_then(|sizes| sizes.first().cloned());
        let mut signs = Vec::new();
        for place in 0..several.max(1) {
            let code = codes.get(place).or(codes.first()).copied();
            let size = sizes.as_ref().and_then(|sizes| sizes.get(place).cloned()).or_else(|| first.clone());
            signs.extend(self.sign(code, size, colours.clone(), facts));
        }
        if !self.faults.is_empty() {
            return None;
        }
        if several > 1 {
            facts.several.0 += 1;
            facts.several.1 += several;
        }
        let legend = self.text(Field::Legend);
        for sign in &mut signs {
            (sign.quantity, sign.designs, sign.legend) = (quantity.unwrap_or(1), designs, legend.clone());
        }
        Some(signs)
    }

    /// One sign of the row.
    fn sign(
        &mut self,
        written: Option<&str>,
        size: Option<FaceSize>,
        colours: Option<Map<String, Value>>,
        facts: &mut Facts,
    ) -> Option<Sign> {
        let code = written.map(|written| self.with.codes.find(written));
        let known = code.and_then(|code| code.row);
        let variant = code.is_some_and(|code| code.variant);
        let mut line = Map::new();
        let own_label = self.own(Field::Label);
        let mut put = |key: &str, value: Option<Value>| {
            if let Some(value) = value {
                line.insert(key.to_owned(), value);
            }
        };
        put("code", known.map(|row| Value::String(row.code.clone())));
        // A code fixes its shape and colours; what holds where a row is missing something is not asked.
        let shape = if known.is_some() { self.own(Field::Shape) } else { self.text(Field::Shape) };
        let shape = shape.map(|text| shape_word(&text));
        let unread = self.with.column(Field::Colours).is_some_and(|column| self.faults.iter().any(|fault| fault.column == Some(column)));
        let lacking = [(Field::Shape, shape.is_none()), (Field::Colours, colours.is_none() && !unread)];
        let lacking: Vec<Field> = lacking.into_iter().filter(|(_, lacks)| *lacks && known.is_none()).map(|(field, _)| field).collect();
        self.lacks(&lacking);
        put("shape", shape.map(Value::String));
        if let Some(mut size) = size {
            if let Some(row) = known.filter(|row| !size.stated && lies_the_other_way(&size, row))
                && let Some(height) = size.height.take()
            {
                *facts.turned.entry(row.code.clone()).or_default() += 1;
                size.height = Some(std::mem::replace(&mut size.width, height));
            }
            put("size", Some(Value::String(size.text())));
        }
        put("colours", colours.map(Value::Object));
        for (field, word) in [(Field::Sheeting, "sheeting"), (Field::Base, "base")] {
            put(word, self.text(field).map(|text| Value::String(text.to_lowercase())));
        }
        put("blank", self.text(Field::Blank).map(|text| Value::String(text.to_lowercase().replace("aluminum", "aluminium"))));
        put(
            "sides",
            self.text(Field::Sides).map(|text| {
                Value::String(match text.to_lowercase().as_str() {
                    "one" | "single" => "1".to_owned(),
                    "two" | "double" => "2".to_owned(),
                    _ => text,
                })
            }),
        );
        put("batch", self.whole(Field::Batch).map(Value::from));
        put("stock", self.stock().map(Value::Bool));
        if variant && let (Some(written), Some(row)) = (written, known) {
            *facts.variants.entry(row.code.clone()).or_default() += 1;
            put("artwork", Some(Value::String(written.to_owned())));
        }
        let item = known.filter(|_| !variant).map(|row| row.item.as_str());
        let label = self.label(written.filter(|_| item.is_none()), own_label.as_deref().or(item));
        line.insert("label".to_owned(), Value::String(label));
        Some(Sign { line, quantity: 1, designs: None, legend: None, known: known.map(|row| row.legend) })
    }

    /// The label: the code where the table does not have it, the row's own words, and what was assumed.
    fn label(&self, code: Option<&str>, own: Option<&str>) -> String {
        let mut label = [code, own].into_iter().flatten().collect::<Vec<_>>().join(" ");
        if label.is_empty() {
            label = "sign".to_owned();
        }
        let mut shown: String = label.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
        let assumed: Vec<&str> = self.assumed.iter().map(|field| field.label()).collect();
        let note = if assumed.is_empty() { String::new() } else { format!(" ({} assumed)", assumed.join(", ")) };
        let room = 200 - note.chars().count().min(150);
        if shown.chars().count() > room {
            shown = shown.chars().take(room - 1).chain(['\u{2026}']).collect();
        }
        shown + &note
    }

    /// A sign that no code of the table describes lacks something.
    fn lacks(&mut self, lacking: &[Field]) {
        let example = |field: &Field| if *field == Field::Shape { "`shape=rectangle`" } else { "`colours=red 60 %; white 40 %`" };
        let words = lacking.iter().map(|field| field.label()).collect::<Vec<_>>().join(" and ");
        let examples = lacking.iter().map(example).collect::<Vec<_>>().join(" and ");
        if !lacking.is_empty() {
            let help = format!("give the {words} in columns of their own, or say what holds where they are missing, such as {examples}");
            let help = match lacking {
                [_, _] => help,
                one => help
                    .replace("columns of their own", "a column")
                    .replace("they are", if *one == [Field::Shape] { "it is" } else { "they are" }),
            };
            match lacking.iter().find(|field| self.with.column(**field).is_some()) {
                Some(field) if self.with.column(Field::Code).is_none() => self.refuse(*field, &words, &help),
                _ => self.refuse(Field::Code, &format!("a sign code measured so far, or {words} beside it"), &help),
            }
        }
    }

    fn sizes(&mut self) -> Option<Vec<FaceSize>> {
        let comma = self.with.wanted.decimal_comma;
        let usual = |field: Field| {
            let column = self.with.column(field).and_then(|column| self.with.columns[column].unit);
            column.or(self.with.wanted.unit.as_deref()).map(str::to_owned)
        };
        if self.with.column(Field::Width).is_none() {
            let Some(text) = self.text(Field::Size) else {
                self.refuse(Field::Size, "a size", "give it in a column, or say what holds where it is missing, such as `size=30 in`");
                return None;
            };
            return match size::read(&text, usual(Field::Size).as_deref(), comma) {
                Ok(sizes) => Some(sizes),
                Err((wanted, help)) => {
                    self.refuse_as(Field::Size, quoted(&text), wanted, help);
                    None
                }
            };
        }
        let mut sides: Vec<Option<Length>> = Vec::new();
        for field in [Field::Width, Field::Height] {
            let side = self.text(field).and_then(|text| match size::read(&text, usual(field).as_deref(), comma).as_deref() {
                Ok([FaceSize { width, height: None, .. }]) => Some(width.clone()),
                Ok(_) => {
                    self.refuse_as(field, quoted(&text), "one length", "write width and height in one column taken as the size");
                    None
                }
                Err((wanted, help)) => {
                    self.refuse_as(field, quoted(&text), wanted, help);
                    None
                }
            });
            sides.push(side);
        }
        let [width, height] = <[Option<Length>; 2]>::try_from(sides).ok()?;
        let Some(width) = width else {
            if self.faults.is_empty() {
                self.refuse(Field::Width, "a width", "fill the cell");
            }
            return None;
        };
        Some(vec![FaceSize { width, height, stated: true }])
    }

    /// The colours of the row; a code that the table has needs none.
    fn colours(&mut self, codes: &[&str]) -> Option<Map<String, Value>> {
        let all_known = !codes.is_empty() && codes.iter().all(|code| self.with.codes.find(code).row.is_some());
        let text = if all_known { self.own(Field::Colours) } else { self.text(Field::Colours) }?;
        match colours::read(&text, self.with.wanted.decimal_comma) {
            Ok(map) => Some(map),
            Err((came, wanted, help)) => {
                self.refuse_as(Field::Colours, came, &wanted, &help);
                None
            }
        }
    }

    fn stock(&mut self) -> Option<bool> {
        let text = self.text(Field::Stock)?;
        match text.to_lowercase().as_str() {
            "yes" | "y" | "true" | "1" | "stock" | "for stock" => Some(true),
            "no" | "n" | "false" | "0" | "order" | "to order" => Some(false),
            _ => {
                self.refuse_as(Field::Stock, quoted(&text), "yes (for stock) or no (to order)", "write `yes` or `no`");
                None
            }
        }
    }
}

/// The shape meant, by plain words for it.
fn shape_word(text: &str) -> String {
    let word = text.to_lowercase();
    match word.as_str() {
        "rectangular" => "rectangle".to_owned(),
        "round" | "circle" | "circular" => "disc".to_owned(),
        "octagonal" => "octagon".to_owned(),
        "triangular" => "triangle".to_owned(),
        "pentagonal" => "pentagon".to_owned(),
        _ => word,
    }
}

/// Whether a size has the proportions of its code with width and height the other way round.
fn lies_the_other_way(size: &FaceSize, row: &SignRow) -> bool {
    let span = |length: &Length| Span::read(&length.text()).ok().map(Span::metres).filter(|metres| *metres > 0.0);
    let (Some(width), Some(height)) = (span(&size.width), size.height.as_ref().and_then(span)) else { return false };
    let (proportion, usual) = (height / width, row.height_over_width);
    let near = |proportion: f64| (0.8..=1.25).contains(&(proportion / usual));
    match row.legend {
        Legend::Each => usual != 1.0 && proportion != 1.0 && (proportion > 1.0) != (usual > 1.0),
        Legend::One | Legend::Few => !near(proportion) && near(1.0 / proportion),
    }
}
