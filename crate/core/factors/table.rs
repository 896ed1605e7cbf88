//! The tables: practice, factors, sources, sign codes, solvents.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::reading::Reading;
use super::{Input, SignRow, Solvent, Source, TableFault};

/// The texts of the tables; an empty one has no rows.
#[derive(Debug, Clone, Default)]
pub struct Texts {
    /// `practice.csv`.
    pub practice: String,
    /// `factors.csv`.
    pub factors: String,
    /// `sources.csv`.
    pub sources: String,
    /// `sign-codes.csv`.
    pub signs: String,
    /// `solvents.csv`.
    pub solvents: String,
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
    /// The solvents by name.
    pub solvents: BTreeMap<String, Solvent>,
    /// The built-in sources that no row of these tables cites.
    pub uncited: Vec<String>,
    /// The rows that own tables put in place of, or beside, the built-in ones, by id.
    pub own: Vec<String>,
}

impl Texts {
    /// The tables built into the program.
    pub fn embedded() -> Self {
        Self {
            practice: include_str!("../../../factors/practice.csv").to_owned(),
            factors: include_str!("../../../factors/factors.csv").to_owned(),
            sources: include_str!("../../../factors/sources.csv").to_owned(),
            signs: include_str!("../../../factors/sign-codes.csv").to_owned(),
            solvents: include_str!("../../../factors/solvents.csv").to_owned(),
        }
    }
}

impl Tables {
    /// The tables built into the program.
    pub fn embedded() -> Result<Self, Vec<TableFault>> {
        Self::read(&Texts::embedded())
    }

    /// Reads the tables; all faults at once.
    pub fn read(texts: &Texts) -> Result<Self, Vec<TableFault>> {
        let mut reading = Reading::new();
        reading.take("factors", texts, false);
        reading.finish()
    }

    /// The built-in tables with a folder's own rows in place of or beside theirs.
    pub fn with_own(folder: &str, own: &Texts) -> Result<Self, Vec<TableFault>> {
        let mut reading = Reading::new();
        reading.take("factors", &Texts::embedded(), false);
        reading.take(folder, own, true);
        reading.finish()
    }

    /// The place of an input among the sorted rows.
    pub fn find(&self, id: &str) -> Option<usize> {
        self.inputs.binary_search_by(|input| input.id.as_str().cmp(id)).ok()
    }
}
