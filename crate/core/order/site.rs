//! Where the faces are made, and what the shop runs on.
//!
//! The electricity area decides the basis of the order: where its row is direct, so are fuels,
//! freight and vehicles; where it is life-cycle, they count the way from the well to the tank too.
//! Never both in one order.

use std::sync::Arc;

use crate::factors::{Basis, Carried, Carrier, Tables};

/// The set of global warming potentials used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GwpSet {
    /// IPCC AR4 (2007).
    Ar4,
    /// IPCC AR5 (2013).
    Ar5,
    /// IPCC AR6 (2021).
    Ar6,
}

impl GwpSet {
    /// As orders write it.
    pub const ALL: [(&'static str, Self); 3] = [("AR4", Self::Ar4), ("AR5", Self::Ar5), ("AR6", Self::Ar6)];

    /// The beginning of the ids of its rows.
    pub fn stem(self) -> &'static str {
        match self {
            Self::Ar4 => "gwp.ar4",
            Self::Ar5 => "gwp.ar5",
            Self::Ar6 => "gwp.ar6",
        }
    }
}

/// The shop's site.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// The electricity area, such as `us.rfcw`.
    pub electricity: Arc<Carrier>,
    /// The heating fuel, such as `us.natural-gas`.
    pub heat: Arc<Carrier>,
    /// What carries goods in and out, such as `us.truck`.
    pub freight: Arc<Carrier>,
    /// What is driven to the signs, such as `us.light-truck`.
    pub vehicle: Arc<Carrier>,
    /// Heating degree-days a year, K d.
    pub degree_days: f64,
    /// Whether screen ink is bound by a VOC limit of 396 g/L as applied.
    pub voc_rule: bool,
    /// How far the finished faces travel, km; absent: left out.
    pub delivery: Option<f64>,
    /// The round trip to a sign at replacement, km; absent: left out.
    pub visit: Option<f64>,
}

impl Site {
    /// What emissions cover in this order.
    pub fn basis(&self) -> Basis {
        self.electricity.basis
    }

    /// The same site in another electricity area; freight and vehicle move with it where they are
    /// the usual ones. None where the tables lack the area, or a carrier does not fit its basis.
    pub fn in_area(&self, tables: &Tables, id: &str) -> Option<Self> {
        let area = tables.carrier(Carried::Electricity, id)?;
        let moved = |carrier: &Arc<Carrier>| {
            let (carried, old) = (carrier.carried, &self.electricity);
            let is_usual = carrier.id == usual(tables, Some(old), carried);
            if is_usual { tables.carrier(carried, usual(tables, Some(area), carried)).cloned() } else { Some(Arc::clone(carrier)) }
        };
        let site = Self { electricity: Arc::clone(area), freight: moved(&self.freight)?, vehicle: moved(&self.vehicle)?, ..self.clone() };
        let all_fit = [&site.heat, &site.freight, &site.vehicle].into_iter().all(|carrier| fits(area, carrier));
        all_fit.then_some(site)
    }
}

/// The truck and the vehicle of a country; where none is its own, those of the United Kingdom, which
/// alone are published both from the exhaust and from the well.
const OWN_WAYS: [(&str, &str, &str); 1] = [("United States", "us.truck", "us.light-truck")];
const OTHER_WAYS: (&str, &str) = ("uk.truck", "uk.van");

/// Whether a carrier can stand in an order with that area: in a life-cycle order it must know the
/// way from the well to the tank.
pub(super) fn fits(area: &Carrier, carrier: &Carrier) -> bool {
    area.basis == Basis::Direct || !carrier.upstream.is_empty()
}

/// What carries goods, or drives to the signs, where the order does not say.
pub(super) fn usual(tables: &Tables, area: Option<&Carrier>, carried: Carried) -> &'static str {
    let pick = |freight, vehicle| if carried == Carried::Freight { freight } else { vehicle };
    let of_country = |area: &Carrier| OWN_WAYS.iter().find(|(country, ..)| *country == area.country);
    let own = area.and_then(|area| {
        let id = of_country(area).map(|(_, freight, vehicle)| pick(*freight, *vehicle))?;
        tables.carrier(carried, id).filter(|carrier| fits(area, carrier)).map(|_| id)
    });
    own.unwrap_or(pick(OTHER_WAYS.0, OTHER_WAYS.1))
}
