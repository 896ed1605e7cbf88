//! The tables: practice, factors, carriers, sources, sign codes, solvents.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::file_names::{CARRIERS, FACTORS, PRACTICE, SIGNS, SOLVENTS, SOURCES};
use super::fingerprint::{Fingerprint, Written};
use super::{Carried, Carrier, Input, SignRow, Solvent, Source, TableFault, reading};
use crate::in_order;

/// The texts of the tables; an empty one has no rows.
#[derive(Debug, Clone, Default)]
pub struct Texts {
    /// `practice.csv`.
    pub practice: String,
    /// `factors.csv`.
    pub factors: String,
    /// `carriers.csv`.
    pub carriers: String,
    /// `sources.csv`.
    pub sources: String,
    /// `sign-codes.csv`.
    pub signs: String,
    /// `solvents.csv`.
    pub solvents: String,
}

/// The tables, read and checked.
#[derive(Debug, Clone, Default)]
pub struct Tables {
    /// Every input of practice, factors and carriers, sorted by id.
    pub inputs: Vec<Arc<Input>>,
    /// The sources by key.
    pub sources: BTreeMap<String, Source>,
    /// The sign codes by code.
    pub signs: BTreeMap<String, SignRow>,
    /// The solvents by name.
    pub solvents: BTreeMap<String, Solvent>,
    /// Electricity areas, fuels, freight and vehicles, by what they carry and id.
    pub carriers: BTreeMap<(Carried, String), Arc<Carrier>>,
    /// The built-in sources that none of these rows cites, with their lines: a published value must.
    pub(super) uncited: Vec<(u64, String)>,
    /// The rows that own tables put in place of, or beside, the built-in ones, by id or sign code.
    pub own: Vec<String>,
    /// The texts of the own tables, where there are any: a result can be made again from them.
    pub own_texts: Option<Texts>,
    /// The fingerprint of all of them.
    pub fingerprint: Fingerprint,
    /// The rows as they are written.
    pub(super) written: Written,
}

impl Texts {
    /// The text of the table in a file of that name.
    pub fn of(&mut self, file: &str) -> Option<&mut String> {
        Some(match file {
            PRACTICE => &mut self.practice,
            FACTORS => &mut self.factors,
            CARRIERS => &mut self.carriers,
            SOURCES => &mut self.sources,
            SIGNS => &mut self.signs,
            SOLVENTS => &mut self.solvents,
            _ => return None,
        })
    }

    /// The tables built into the program.
    pub fn embedded() -> Self {
        Self {
            practice: include_str!("../../../factors/practice.csv").to_owned(),
            factors: include_str!("../../../factors/factors.csv").to_owned(),
            carriers: include_str!("../../../factors/carriers.csv").to_owned(),
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
        reading::read("factors", texts, None)
    }

    /// These tables with a folder's own rows in place of or beside theirs.
    pub fn with_own(&self, folder: &str, own: &Texts) -> Result<Self, Vec<TableFault>> {
        let tables = reading::read(folder, own, Some(self))?;
        Ok(Self { own_texts: Some(own.clone()), ..tables })
    }

    /// The place of an input among the sorted rows.
    pub fn find(&self, id: &str) -> Option<usize> {
        self.inputs.binary_search_by(|input| input.id.as_str().cmp(id)).ok()
    }

    /// The carrier that an order calls so.
    pub fn carrier(&self, carried: Carried, id: &str) -> Option<&Arc<Carrier>> {
        self.carriers.get(&(carried, id.to_owned()))
    }

    /// The carriers of one sort: by country, the newest year first, then by name.
    pub fn carriers_of(&self, carried: Carried) -> Vec<&Arc<Carrier>> {
        let mut list: Vec<&Arc<Carrier>> = self.carriers.values().filter(|carrier| carrier.carried == carried).collect();
        in_order(&mut list, |a, b| a.country.cmp(&b.country).then(b.year.cmp(&a.year)).then(a.name.cmp(&b.name)));
        list
    }
}
