//! Solvents by name: how much CO2 their carbon becomes once it is burnt or oxidised in air, and how
//! dense they are.
//!
//! kg CO2 per kg = carbons x 44.009 / molar mass, full oxidation, from the formula and the abridged
//! atomic weights of IUPAC; cyclohexanone, C6H10O: 2.6904. Carbon of plants is not counted.

use super::Grade;
use super::row::Row;

/// One row of `factors/solvents.csv`.
#[derive(Debug, Clone, PartialEq)]
pub struct Solvent {
    /// As an order names it.
    pub id: String,
    /// Its name in the trade.
    pub item: String,
    /// Its registry number.
    pub cas: String,
    /// Its formula, such as `C6H10O`.
    pub formula: String,
    /// Grams a mole.
    pub molar_mass: f64,
    /// Carbon by mass.
    pub carbon_share: f64,
    /// kg CO2e per kg, fully oxidised.
    pub co2e: f64,
    /// The key of the source of the carbon.
    pub source: String,
    /// How good that is.
    pub grade: Grade,
    /// kg per litre at 20 °C with source and grade, where it was found.
    pub density: Option<(f64, String, Grade)>,
    /// The key of who found it where signs are made; empty where nobody did.
    pub found_by: String,
    /// A note.
    pub note: String,
}

impl Solvent {
    /// Reads one.
    pub(super) fn read(row: &mut Row<'_>) -> Self {
        let density = !row.text("density").is_empty();
        let grade = |row: &mut Row<'_>, column: &str| row.word(column, Grade::read, "A, B, C or D", Grade::D);
        let solvent = Self {
            id: row.filled("id"),
            item: row.filled("item"),
            cas: row.text("cas"),
            formula: row.filled("formula"),
            molar_mass: row.number("molar_mass"),
            carbon_share: row.number("carbon_share"),
            co2e: row.number("co2e"),
            source: row.filled("source"),
            grade: grade(row, "grade"),
            density: density.then(|| (row.number("density"), row.filled("density_source"), grade(row, "density_grade"))),
            found_by: row.text("found_by"),
            note: row.text("note"),
        };
        if solvent.co2e < 0.0 || solvent.co2e > 44.009 / 12.011 {
            row.refuse("co2e", "at most 3.6641, the CO2 of pure carbon", "work it out from the formula");
        }
        for column in ["density_source", "density_grade"] {
            if !density && !row.text(column).is_empty() {
                row.refuse(column, "nothing where no density stands", "give the density, or empty the cell");
            }
        }
        if solvent.density.as_ref().is_some_and(|(density, ..)| *density <= 0.0) {
            row.refuse("density", "a number above 0", "leave the cell empty where it is not known");
        }
        solvent
    }
}

pub(super) const COLUMNS: [&str; 14] = [
    "id",
    "item",
    "cas",
    "formula",
    "molar_mass",
    "carbon_share",
    "co2e",
    "source",
    "grade",
    "density",
    "density_source",
    "density_grade",
    "found_by",
    "note",
];
