//! Factors: what one unit of a flow loads in one indicator.
//!
//! - electricity: (CO2 + CH4 GWP + N2O GWP)/(1 - grid loss), gas by gas where published so;
//! - fuel, freight, vehicle: the same without a loss; from the well to the tank where the
//!   electricity area is life-cycle;
//! - material: its parts by share, converting passes at the supplier's grid, freight to the shop;
//! - solvent to air: 1 kg VOC per kg; its carbon as CO2 where the order counts oxidised solvent;
//! - waste: 1 kg per kg, and its treatment in CO2e; at the end of life the face is burnt with its
//!   blank where that is melted again, without credit.

use std::sync::Arc;

use crate::factors::{Basis, Carried, Carrier, Tables};
use crate::inventory::{Activity, Book, Formula, Material, Part, Terms, What};
use crate::load::Indicator;
use crate::order::{EndOfLife, Order};
use crate::quantity::{
    Climate, Co2ePerKg, Co2ePerKwh, Electricity, Freight, FuelHeat, Kind, Length, Mass, Per, PrimaryEnergy, Share, Solvent, Waste, Water,
    of,
};

/// The factor of a flow for an indicator, and its unit; none where the indicator does not count it.
pub(super) fn factor(indicator: Indicator, what: &What, blank: bool, book: &Book, order: &Order) -> Option<(Terms, &'static str)> {
    let factors = Factors { book, order };
    Some(match (indicator, what) {
        (Indicator::Energy, What::Electricity(_)) => (factors.electricity_energy().into_terms(), "MJ primary per kWh"),
        (Indicator::Energy, What::Heat(_)) => {
            (book.rate::<Per<PrimaryEnergy, FuelHeat>>(&order.site.heat.energy).formula().into_terms(), "MJ primary per MJ")
        }
        (Indicator::Energy, What::Bought(material, _)) => (factors.material_energy(material).into_terms(), "MJ primary per kg"),
        (Indicator::Energy, What::Freight(_)) => (factors.freight_energy().into_terms(), "MJ primary per kg\u{b7}m"),
        (Indicator::Energy, What::Travel(_)) => {
            (book.rate::<Per<PrimaryEnergy, Length>>(&order.site.vehicle.energy).formula().into_terms(), "MJ primary per m")
        }
        (Indicator::Energy, What::WaterDrawn(_)) => {
            ((factors.water("water.supply.electricity") * factors.electricity_energy()).into_terms(), "MJ primary per L")
        }
        (Indicator::Energy, What::WaterToSewer(_)) => {
            ((factors.water("water.sewer.electricity") * factors.electricity_energy()).into_terms(), "MJ primary per L")
        }
        (Indicator::Water, What::WaterDrawn(_)) => (Formula::fixed(of::<Per<Water, Water>>(1.0)).into_terms(), "L per L"),
        (Indicator::Solvent, What::Evaporated(..)) => (Formula::fixed(of::<Per<Solvent, Mass>>(1.0)).into_terms(), "kg VOC per kg"),
        (Indicator::Waste, What::SolidWaste(..) | What::LiquidWaste(..)) => {
            (Formula::fixed(of::<Per<Waste, Mass>>(1.0)).into_terms(), "kg waste per kg")
        }
        (Indicator::Co2e, What::Electricity(_)) => (factors.electricity_co2e().into_terms(), "kg CO2e per kWh"),
        (Indicator::Co2e, What::Heat(_)) => (factors.heat_co2e().into_terms(), "kg CO2e per MJ"),
        (Indicator::Co2e, What::Bought(material, _)) => (factors.material_co2e(material).into_terms(), "kg CO2e per kg"),
        (Indicator::Co2e, What::Freight(_)) => (factors.freight_co2e().into_terms(), "kg CO2e per kg\u{b7}m"),
        (Indicator::Co2e, What::Travel(_)) => (factors.emitted::<Length>(&order.site.vehicle).into_terms(), "kg CO2e per m"),
        (Indicator::Co2e, What::WaterDrawn(_)) => {
            ((factors.water("water.supply.electricity") * factors.electricity_co2e()).into_terms(), "kg CO2e per L")
        }
        (Indicator::Co2e, What::WaterToSewer(_)) => {
            ((factors.water("water.sewer.electricity") * factors.electricity_co2e()).into_terms(), "kg CO2e per L")
        }
        (Indicator::Co2e, What::Evaporated(material, _)) if order.voc_oxidised => {
            (factors.row(material.oxidised).into_terms(), "kg CO2e per kg oxidised")
        }
        (Indicator::Co2e, What::SolidWaste(material, _)) => (factors.row(material.solid).into_terms(), "kg CO2e per kg"),
        (Indicator::Co2e, What::LiquidWaste(material, _)) => (factors.row(material.liquid).into_terms(), "kg CO2e per kg burnt"),
        (Indicator::Co2e, What::Discarded(material, _)) if !blank => (factors.discarded(material).into_terms(), "kg CO2e per kg"),
        _ => return None,
    })
}

/// What a carrier emits in an order that uses it, kg CO2e per kWh at the meter, MJ of fuel burnt,
/// kg m carried or m driven; none where the tables lack a row.
pub fn emission(tables: &Tables, order: &Order, carrier: &Arc<Carrier>) -> Option<f64> {
    let mut order = order.clone();
    let site = &mut order.site;
    let place = match carrier.carried {
        Carried::Electricity => &mut site.electricity,
        Carried::Heat => &mut site.heat,
        Carried::Freight => &mut site.freight,
        Carried::Vehicle => &mut site.vehicle,
    };
    *place = Arc::clone(carrier);
    let book = Book::open(tables, &order, order.alternatives.first()?).ok()?;
    let factors = Factors { book: &book, order: &order };
    let terms = match carrier.carried {
        Carried::Electricity => factors.electricity_co2e().into_terms(),
        Carried::Heat => factors.heat_co2e().into_terms(),
        Carried::Freight => factors.freight_co2e().into_terms(),
        Carried::Vehicle => factors.emitted::<Length>(carrier).into_terms(),
    };
    book.faults().is_empty().then(|| terms.value(&Activity::default(), &book.values()))
}

struct Factors<'a> {
    book: &'a Book,
    order: &'a Order,
}

impl Factors<'_> {
    fn row(&self, id: &str) -> Formula<Co2ePerKg> {
        self.book.rate::<Co2ePerKg>(id).formula()
    }

    /// The gases of burning, each by its warming potential; methane as from burning.
    fn gases<Q>(&self, stem: &str) -> Formula<Per<Climate, Q>>
    where
        Q: Kind,
        Mass: std::ops::Div<Q, Output: Kind>,
        Climate: std::ops::Div<Q, Output: Kind>,
    {
        let gwp = self.order.gwp.stem();
        let gas = |gas: &str, potential: Formula<Co2ePerKg>| -> Formula<Per<Climate, Q>> {
            let mass = self.book.rate::<Per<Mass, Q>>(&format!("{stem}.co2e.{gas}")).formula();
            mass.converted(potential)
        };
        // The potential of CO2 stands under that of every gas, so its error is one draw for all.
        let common = self.book.rate::<Share>(&format!("{gwp}.common"));
        let potential = |gas: &str| self.book.rate::<Co2ePerKg>(&format!("{gwp}.{gas}")).formula() * common;
        gas("co2", Formula::fixed(of::<Co2ePerKg>(1.0))) + gas("ch4", potential("ch4")) + gas("n2o", potential("n2o"))
    }

    /// What a carrier emits per unit, on the order's basis.
    fn emitted<Q>(&self, carrier: &Carrier) -> Formula<Per<Climate, Q>>
    where
        Q: Kind,
        Mass: std::ops::Div<Q, Output: Kind>,
        Climate: std::ops::Div<Q, Output: Kind>,
    {
        let row = |id: &str| self.book.rate::<Per<Climate, Q>>(id).formula();
        let stem = carrier.stem();
        let direct = if carrier.by_gas { self.gases::<Q>(&stem) } else { row(&format!("{stem}.co2e")) };
        let from_the_well = self.order.site.basis() == Basis::LifeCycle && !carrier.upstream.is_empty();
        if from_the_well { direct + row(&carrier.upstream) } else { direct }
    }

    fn electricity_co2e(&self) -> Formula<Co2ePerKwh> {
        let area = &self.order.site.electricity;
        self.emitted::<Electricity>(area) * self.book.rate::<Share>(&area.loss).per_one_minus()
    }

    fn electricity_energy(&self) -> Formula<Per<PrimaryEnergy, Electricity>> {
        self.book.rate::<Per<PrimaryEnergy, Electricity>>(&self.order.site.electricity.energy).formula()
    }

    fn heat_co2e(&self) -> Formula<Per<Climate, FuelHeat>> {
        self.emitted::<FuelHeat>(&self.order.site.heat)
    }

    fn freight_co2e(&self) -> Formula<Per<Climate, Freight>> {
        self.emitted::<Freight>(&self.order.site.freight)
    }

    fn freight_energy(&self) -> Formula<Per<PrimaryEnergy, Freight>> {
        self.book.rate::<Per<PrimaryEnergy, Freight>>(&self.order.site.freight.energy).formula()
    }

    fn water(&self, id: &str) -> Formula<Per<Electricity, Water>> {
        self.book.rate::<Per<Electricity, Water>>(id).formula()
    }

    /// The parts of a material by their shares.
    fn parts<Q: Kind + std::ops::Mul<Share, Output = Q>>(&self, material: &Material, row: impl Fn(&str) -> String) -> Formula<Q> {
        material.parts.iter().fold(Formula::zero(), |sum, part| {
            let stuff = self.book.rate::<Q>(&row(part.stuff())).formula();
            sum + match part {
                Part::Whole(_) => stuff,
                Part::Share(_, share) => stuff * self.book.rate::<Share>(share),
                Part::Rest(_, share) => stuff * self.book.rate::<Share>(share).rest(),
            }
        })
    }

    fn material_co2e(&self, material: &Material) -> Formula<Co2ePerKg> {
        let mut sum = self.parts::<Co2ePerKg>(material, |stuff| format!("material.{stuff}.co2e"));
        if !material.passes.is_empty() {
            sum = sum + self.converting(material) * self.book.rate::<Co2ePerKwh>("supplier-electricity.co2e");
        }
        sum + self.freight_co2e() * self.book.rate::<Length>("freight.inbound")
    }

    fn material_energy(&self, material: &Material) -> Formula<Per<PrimaryEnergy, Mass>> {
        type Energy = Per<PrimaryEnergy, Mass>;
        let mut sum = self.parts::<Energy>(material, |stuff| format!("material.{stuff}.energy"));
        if !material.passes.is_empty() {
            sum = sum + self.converting(material) * self.book.rate::<Per<PrimaryEnergy, Electricity>>("supplier-electricity.energy");
        }
        sum + self.freight_energy() * self.book.rate::<Length>("freight.inbound")
    }

    fn converting(&self, material: &Material) -> Formula<Per<Electricity, Mass>> {
        self.book.rate::<Per<Electricity, Mass>>("converting.energy") * self.book.rate::<Share>(material.passes)
    }

    fn discarded(&self, material: &Material) -> Formula<Co2ePerKg> {
        let burnt = if material.burnt.is_empty() {
            self.parts::<Co2ePerKg>(material, |stuff| format!("waste.plastics-burnt.{stuff}.co2e"))
        } else {
            self.row(material.burnt)
        };
        let share = self.book.rate::<Share>("face.burnt-with-blank");
        match self.order.end_of_life {
            EndOfLife::Recycled => burnt * share + self.row(material.solid) * share.rest(),
            EndOfLife::Reused | EndOfLife::Landfilled => self.row(material.solid),
        }
    }
}
