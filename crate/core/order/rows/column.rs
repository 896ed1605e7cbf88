//! Which column is taken as what: by its name, by what its name means, by what stands in it, or as the user chose.

use super::code::{Codes, looks_like_one};
use super::field::apart;
use super::grid::Row;
use super::{Field, Wanted, cell, colours, size};
use crate::order::Shape;

/// Why a column is taken as it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum How {
    /// Its name is the field's.
    Name,
    /// Its name means the field.
    Meaning,
    /// Its cells look so.
    Cells,
    /// The user said so.
    Chosen,
    /// Another column gives the field that its name means.
    Given,
    /// Nothing says what it is.
    Unknown,
}

/// A column.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// Its name, where the first row gives one.
    pub name: String,
    /// What it is taken as; none for nothing.
    pub field: Option<Field>,
    /// Why.
    pub how: How,
    /// The unit in its name.
    pub unit: Option<&'static str>,
    /// Its first cells that say something.
    pub samples: Vec<String>,
}

/// How many cells of a column are looked at to tell what it is.
const LOOKED_AT: usize = 200;

/// How many cells of a column are shown.
const SHOWN: usize = 3;

/// A column's letters in a spreadsheet: A, B … Z, AA.
pub fn letters(column: usize) -> String {
    let letter = char::from(b'A' + (column % 26) as u8);
    if column < 26 { letter.to_string() } else { format!("{}{letter}", letters(column / 26 - 1)) }
}

/// Every column, and whether the first row names them.
pub(super) fn columns(rows: &[Row], wanted: &Wanted, codes: &Codes<'_>) -> (Vec<Column>, bool) {
    let header = wanted.header.unwrap_or_else(|| has_header(rows, codes));
    let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
    let data = rows.get(usize::from(header)..).unwrap_or_default();
    let mut columns: Vec<Column> = (0..width)
        .map(|place| {
            let name = if header { rows.first().map_or("", |row| row.cell(place)) } else { "" };
            let cells = data.iter().map(|row| row.cell(place)).filter(|cell| !cell::says_nothing(cell));
            let mut samples: Vec<String> = Vec::new();
            for cell in cells.take(LOOKED_AT) {
                if samples.len() < SHOWN && !samples.contains(&on_one_line(cell)) {
                    samples.push(on_one_line(cell));
                }
            }
            Column { name: on_one_line(name), field: None, how: How::Unknown, unit: apart(name).1, samples }
        })
        .collect();
    choose(&mut columns, wanted);
    name(&mut columns);
    look(&mut columns, data, codes, !header);
    (columns, header)
}

/// A text without line breaks and other control characters.
fn on_one_line(text: &str) -> String {
    text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect()
}

/// Takes columns as the user chose.
fn choose(columns: &mut [Column], wanted: &Wanted) {
    for (place, field) in &wanted.columns {
        if let Some(column) = columns.get_mut(*place) {
            (column.field, column.how) = (*field, How::Chosen);
        }
    }
}

/// Takes columns by their names: first those that are a field's own, then those that mean one; each field once.
fn name(columns: &mut [Column]) {
    for exactly in [true, false] {
        for place in 0..columns.len() {
            let Some((field, exact)) = Field::named(&columns[place].name) else { continue };
            if exact != exactly || columns[place].how == How::Chosen {
                continue;
            }
            let free = is_free(columns, field);
            let column = &mut columns[place];
            (column.field, column.how) = match (free, exact) {
                (false, _) => (None, How::Given),
                (true, true) => (Some(field), How::Name),
                (true, false) => (Some(field), How::Meaning),
            };
        }
    }
}

/// Whether no column gives this field yet; a size is width and height in one.
fn is_free(columns: &[Column], field: Field) -> bool {
    let taken = |one: Field| columns.iter().any(|column| column.field == Some(one));
    match field {
        Field::Size => !taken(Field::Size) && !taken(Field::Width) && !taken(Field::Height),
        Field::Width | Field::Height => !taken(field) && !taken(Field::Size),
        other => !taken(other),
    }
}

/// Takes columns by what stands in them, where no name says it.
fn look(columns: &mut [Column], data: &[Row], codes: &Codes<'_>, unnamed: bool) {
    let shapes = |text: &str| Shape::ALL.iter().any(|(name, _)| *name == text.to_lowercase());
    let whole = |text: &str| text.parse::<u32>().is_ok_and(|number| (1..=100_000).contains(&number));
    type Looks<'a> = &'a dyn Fn(&str) -> bool;
    let code = |text: &str| looks_like_one(text) || codes.find(text).row.is_some();
    let size = |text: &str| size::read(text, None, false).is_ok();
    let colour = |text: &str| colours::read(text, false).is_ok();
    let kinds: [(Field, Looks<'_>); 5] =
        [(Field::Code, &code), (Field::Size, &size), (Field::Shape, &shapes), (Field::Colours, &colour), (Field::Quantity, &whole)];
    for (field, looks) in kinds {
        // A column of numbers may be anything where the columns have names.
        if !is_free(columns, field) || (field == Field::Quantity && !unnamed) {
            continue;
        }
        let alike: Vec<usize> = (0..columns.len())
            .filter(|place| columns[*place].how == How::Unknown)
            .filter(|place| {
                let cells: Vec<&str> =
                    data.iter().map(|row| row.cell(*place)).filter(|cell| !cell::says_nothing(cell)).take(LOOKED_AT).collect();
                let fit = cells.iter().filter(|cell| looks(cell)).count();
                fit > 0 && 10 * fit >= 6 * cells.len()
            })
            .collect();
        // Of several columns of numbers none says that it is the quantity.
        let chosen = if field == Field::Quantity && alike.len() > 1 { None } else { alike.first() };
        if let Some(place) = chosen {
            (columns[*place].field, columns[*place].how) = (Some(field), How::Cells);
        }
    }
}

/// Whether the first row names the columns: it holds a field's name, or nothing that a sign could be while the next rows do.
fn has_header(rows: &[Row], codes: &Codes<'_>) -> bool {
    let Some(first) = rows.first() else { return false };
    if first.cells.iter().any(|cell| Field::named(cell).is_some()) {
        return true;
    }
    let says_a_sign = |row: &Row| {
        (0..row.cells.len()).map(|place| row.cell(place)).any(|cell| {
            looks_like_one(cell)
                || codes.find(cell).row.is_some()
                || cell.parse::<f64>().is_ok()
                || (!cell.is_empty() && size::read(cell, None, false).is_ok())
        })
    };
    !says_a_sign(first) && rows.iter().skip(1).take(20).any(says_a_sign)
}

#[cfg(test)]
mod tests {
    use super::super::grid;
    use super::*;
    use crate::factors::Tables;

    fn taken(text: &str, wanted: &Wanted) -> (Vec<Option<Field>>, bool) {
        let tables = Tables::embedded().unwrap();
        let (rows, _) = grid::read("f", text, None).unwrap();
        let (columns, header) = columns(&rows, wanted, &Codes::of(&tables));
        (columns.iter().map(|column| column.field).collect(), header)
    }

    #[test]
    fn letters_are_those_of_a_spreadsheet() {
        assert_eq!([0, 25, 26, 51, 52, 199].map(letters), ["A", "Z", "AA", "AZ", "BA", "GR"]);
    }

    #[test]
    fn no_field_is_taken_from_two_columns() {
        let (fields, _) = taken("Sign size,size,width,Qty,count\n1,30 in,30 in,2,3", &Wanted::default());
        assert_eq!(fields, [None, Some(Field::Size), None, Some(Field::Quantity), None]);
        let wanted = Wanted { columns: [(4, Some(Field::Quantity)), (1, None)].into(), ..Wanted::default() };
        let (fields, _) = taken("Sign size,size,width,Qty,count\n1,30 in,30 in,2,3", &wanted);
        assert_eq!(fields, [None, None, Some(Field::Width), None, Some(Field::Quantity)]);
    }

    #[test]
    fn without_names_columns_are_taken_by_their_cells() {
        let (fields, header) = taken("R1-1,30 in,stop,12\nR1-2,36 in,yield,4", &Wanted::default());
        assert!(!header);
        assert_eq!(fields, [Some(Field::Code), Some(Field::Size), None, Some(Field::Quantity)]);
        // Two columns of numbers: neither is taken for the quantity.
        let (fields, _) = taken("R1-1,30 in,7,12\nR1-2,36 in,9,4", &Wanted::default());
        assert_eq!(fields, [Some(Field::Code), Some(Field::Size), None, None]);
        // Names that nobody knows, with cells that tell.
        let (fields, header) = taken("Schild,Mass\nR1-1,750 mm\nR1-2,900 mm", &Wanted::default());
        assert!(header);
        assert_eq!(fields, [Some(Field::Code), Some(Field::Size)]);
    }
}
