//! Carriers: electricity areas, heating fuels, freight and vehicles, one row of
//! `factors/carriers.csv` each.
//!
//! A row holds what a unit emits, gas by gas where the source splits it, else as CO2e; and names the
//! rows of `factors.csv` that go with it: the grid loss, the way from the well to the tank, the
//! primary energy. Its gases become inputs of their own: `electricity.us-rfcw.co2e.co2`.

use std::sync::Arc;

use super::file_names::CARRIERS;
use super::row::Row;
use super::{Grade, Input, Origin, Scope, Spread, TableFault, Tables};
use crate::quantity::{Climate, Electricity, Freight, FuelHeat, Kind, Length, Mass, Per, UnitText, nearest};

/// What is carried.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Carried {
    /// An electricity area.
    Electricity,
    /// A heating fuel.
    Heat,
    /// Goods, by weight and way.
    Freight,
    /// People and tools, by way.
    Vehicle,
}

impl Carried {
    /// As ids begin.
    pub const ALL: [(&'static str, Self); 4] =
        [("electricity", Self::Electricity), ("heat", Self::Heat), ("freight", Self::Freight), ("vehicle", Self::Vehicle)];

    /// The beginning of its ids.
    pub fn word(self) -> &'static str {
        Self::ALL.iter().find(|(_, carried)| *carried == self).map_or("", |(word, _)| word)
    }

    /// Whether a unit measures mass of a gas, or CO2e, per what is carried.
    fn fits(self, unit: &UnitText, co2e: bool) -> bool {
        fn per<Q: Kind>(unit: &UnitText, co2e: bool) -> bool
        where
            Mass: std::ops::Div<Q, Output: Kind>,
            Climate: std::ops::Div<Q, Output: Kind>,
        {
            if co2e { unit.measures::<Per<Climate, Q>>() } else { unit.measures::<Per<Mass, Q>>() }
        }
        match self {
            Self::Electricity => per::<Electricity>(unit, co2e),
            Self::Heat => per::<FuelHeat>(unit, co2e),
            Self::Freight => per::<Freight>(unit, co2e),
            Self::Vehicle => per::<Length>(unit, co2e),
        }
    }
}

/// What the emissions of a carrier cover.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// Stack and exhaust only.
    Direct,
    /// Fuel supply, for some sources plants too.
    LifeCycle,
}

impl Basis {
    fn read(text: &str) -> Option<Self> {
        Some(match text {
            "direct" => Self::Direct,
            "life-cycle" => Self::LifeCycle,
            _ => return None,
        })
    }

    /// The word of the table.
    pub fn word(self) -> &'static str {
        match self {
            Self::Direct => "direct",
            Self::LifeCycle => "life-cycle",
        }
    }
}

/// One carrier.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Carrier {
    /// What is carried.
    pub carried: Carried,
    /// As an order writes it, such as `us.rfcw`.
    pub id: String,
    /// As people call it.
    pub name: String,
    /// The country, or a group of them.
    pub country: String,
    /// The year of the data.
    pub year: String,
    /// What its emissions cover.
    pub basis: Basis,
    /// Whether they are split by gas; if not, the set of warming potentials does not move them.
    pub by_gas: bool,
    /// The row of its grid loss; empty but for electricity.
    pub loss: String,
    /// The row of the way from the well to the tank; empty where none is known.
    pub upstream: String,
    /// The row of its primary energy.
    pub energy: String,
    /// The key of the source of its emissions.
    pub source: String,
    /// The grade of its emissions.
    pub grade: Grade,
    pub(super) folder: String,
    pub(super) line: u64,
}

impl Carrier {
    /// The beginning of the ids of its inputs: `us.rfcw` is `electricity.us-rfcw` there.
    pub fn stem(&self) -> String {
        format!("{}.{}", self.carried.word(), self.id.replace('.', "-"))
    }

    /// Name and year.
    ///
    /// ```
    /// use faceload_core::factors::{Carried, Tables};
    /// let tables = Tables::embedded().unwrap();
    /// assert_eq!(tables.carrier(Carried::Electricity, "us.rfcw").unwrap().label(), "RFC West (RFCW), 2023");
    /// ```
    pub fn label(&self) -> String {
        format!("{}, {}", self.name, self.year)
    }

    /// Name, country and year, for where no heading says the country.
    pub fn full_label(&self) -> String {
        if self.name.starts_with(&self.country) { self.label() } else { format!("{}, {} {}", self.name, self.country, self.year) }
    }

    /// The rows it names, with the columns that name them.
    pub(super) fn named(&self) -> [(&'static str, &str); 3] {
        [("loss", &self.loss), ("upstream", &self.upstream), ("energy", &self.energy)]
    }

    fn item(&self, gas: &str) -> String {
        match self.carried {
            Carried::Electricity => format!("{gas} of electricity generated, {}", self.label()),
            Carried::Heat => format!("{gas} of {} burnt, {} {}", self.name, self.country, self.year),
            Carried::Freight => format!("{gas} of freight by {}, {} {}", self.name, self.country, self.year),
            Carried::Vehicle => format!("{gas} of a {}, {} {}", self.name, self.country, self.year),
        }
    }
}

/// The columns of the table.
pub(super) const COLUMNS: [&str; 20] = [
    "id",
    "name",
    "country",
    "year",
    "basis",
    "co2",
    "ch4",
    "n2o",
    "co2e",
    "unit",
    "trace_unit",
    "range",
    "trace_range",
    "loss",
    "upstream",
    "energy",
    "source",
    "place",
    "grade",
    "note",
];

/// The columns that hold gases, with their names.
const GASES: [(&str, &str); 4] = [("co2", "CO2"), ("ch4", "CH4"), ("n2o", "N2O"), ("co2e", "CO2e")];

/// One row: the carrier, and an input for each gas that it gives.
pub(super) fn read(row: &mut Row<'_>) -> (Carrier, Vec<Input>) {
    let whole = row.filled("id");
    let (word, id) = whole.split_once('.').unwrap_or((&whole, ""));
    let carried = Carried::ALL.iter().find(|(known, _)| *known == word).map(|(_, carried)| *carried);
    let written = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-' || c == '.';
    if carried.is_none() || id.is_empty() || !id.chars().all(written) {
        row.refuse(
            "id",
            "`electricity.`, `heat.`, `freight.` or `vehicle.` and a name in small letters",
            "write it as `electricity.us.rfcw`",
        );
    }
    let by_gas = row.text("co2e").is_empty();
    let carrier = Carrier {
        carried: carried.unwrap_or(Carried::Electricity),
        id: id.to_owned(),
        name: row.filled("name"),
        country: row.filled("country"),
        year: row.filled("year"),
        basis: row.word("basis", Basis::read, "direct or life-cycle", Basis::Direct),
        by_gas,
        loss: row.text("loss"),
        upstream: row.text("upstream"),
        energy: row.filled("energy"),
        source: row.filled("source"),
        grade: row.grade(),
        folder: row.folder.to_owned(),
        line: row.line,
    };
    if carrier.carried != Carried::Electricity && carrier.basis != Basis::Direct {
        row.refuse("basis", "direct", "give the way from the well to the tank as a row of its own, and name it in `upstream`");
    }
    if (carrier.carried == Carried::Electricity) == carrier.loss.is_empty() {
        row.refuse("loss", "the grid loss of an electricity area, and of nothing else", "name a row such as `grid-loss.us-2023`");
    }
    let gases = GASES.iter().filter(|(column, _)| (*column != "co2e") == by_gas);
    let mut inputs: Vec<Input> = gases.map(|(column, gas)| rate(row, &carrier, column, gas)).collect();
    if !by_gas {
        if let Some((column, _)) = GASES[..3].iter().find(|(column, _)| !row.text(column).is_empty()) {
            row.refuse(column, "nothing beside `co2e`", "give the three gases, or CO2e alone");
        }
        inputs[0].note = join(&inputs[0].note, "published as CO2e only: the set of warming potentials does not move it");
    }
    (carrier, inputs)
}

/// The input of one gas.
fn rate(row: &mut Row<'_>, carrier: &Carrier, column: &str, gas: &str) -> Input {
    let main = matches!(gas, "CO2" | "CO2e");
    let (unit_column, range_column) = if main { ("unit", "range") } else { ("trace_unit", "trace_range") };
    let text = row.text(unit_column).replace("{gas}", &format!("{{{gas}}}"));
    let unit = UnitText::read(&text).ok().filter(|unit| carrier.carried.fits(unit, gas == "CO2e"));
    if unit.is_none() {
        let example = match carrier.carried {
            Carried::Electricity => "kg{gas}/kW.h",
            Carried::Heat => "kg{gas}/MMBTU{HHV}",
            Carried::Freight => "kg{gas}/t/km",
            Carried::Vehicle => "kg{gas}/km",
        };
        row.refuse(unit_column, &format!("a unit such as `{example}`"), "keep `{gas}` as it is; see DEVELOPERS.md, units");
    }
    let (value, range) = (row.number(column), row.number(range_column));
    if value < 0.0 {
        row.refuse(column, "a number not below 0", "no input of the model is negative");
    }
    if range < 1.0 {
        row.refuse(range_column, "a number not below 1", "the 90 % range reaches from the value divided by it to the value times it");
    }
    let spread = if range > 1.0 && value > 0.0 { Spread::Lognormal } else { Spread::Fixed };
    let (low, high) =
        if spread == Spread::Fixed { (value, value) } else { (rounded(value / range).min(value), rounded(value * range).max(value)) };
    Input {
        id: format!("{}.co2e{}", carrier.stem(), if gas == "CO2e" { String::new() } else { format!(".{column}") }),
        item: carrier.item(gas),
        unit: unit.unwrap_or_else(UnitText::pure),
        value,
        centre: value,
        low,
        high,
        spread,
        scope: Scope::Shop,
        grade: carrier.grade,
        source: carrier.source.clone(),
        place: row.filled("place"),
        region: carrier.country.clone(),
        year: carrier.year.clone(),
        note: row.text("note"),
        origin: Origin::Factor,
    }
}

/// An end of a range, to four digits as the other tables print them.
fn rounded(end: f64) -> f64 {
    nearest(&format!("{end:.3e}")).unwrap_or(end)
}

fn join(first: &str, second: &str) -> String {
    if first.is_empty() { second.to_owned() } else { format!("{first}; {second}") }
}

/// Rows that a carrier names and the tables do not have.
pub(super) fn dangling(tables: &Tables) -> Vec<TableFault> {
    let named = tables.carriers.values().flat_map(|carrier| carrier.named().map(|(column, id)| (carrier, column, id)));
    let missing = named.filter(|(_, _, id)| !id.is_empty() && tables.find(id).is_none());
    let fault = |(carrier, column, id): (&Arc<Carrier>, &str, &str)| TableFault {
        folder: carrier.folder.clone(),
        file: CARRIERS,
        line: carrier.line,
        column: column.to_owned(),
        came: id.to_owned(),
        wanted: "the id of a row of factors.csv".to_owned(),
        help: "add that row, or name another".to_owned(),
    };
    missing.map(fault).collect()
}
