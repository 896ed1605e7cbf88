//! Room air: fresh air for a room while work goes on in it, warmed in winter, moved by a fan.
//!
//! heat = V rho cp (HDD/365) (1 - heat recovered)/eta; electricity = SFP V. What an oven or a printer extracts is drawn
//! from the room, so it is part of the room's air and never added. 400 m3 at 10 changes an hour,
//! 2 800 K d, 2 080 h a year: 17.3 MWh heat before losses and 2.9 MWh for the fan at 1.25 kW/(m3/s).
//! These flows serve the energy sum and say nothing about what is safe to breathe.

use crate::inventory::{Book, Flows, Formula, Stage};
use crate::quantity::{AirFlow, Electricity, FuelHeat, Kind, Liquid, Mass, Per, Share, Time, Volume, Warmth};

/// Kelvin times hours: what degree-days are.
type WarmthTime = <Warmth as std::ops::Mul<Time>>::Output;

/// Fresh air of so many m3, warmed over the year's mean.
pub fn ventilate(book: &Book, flows: &mut Flows, room: &str, air: Formula<Volume>) {
    let mean_rise = book.rate::<WarmthTime>("order.degree-days").formula() / book.rate::<Time>("calendar.year");
    let heat = air.clone()
        * book.rate::<Per<Mass, Volume>>("air.density")
        * book.rate::<Per<Per<FuelHeat, Mass>, Warmth>>("air.heat-capacity")
        * mean_rise
        * book.rate::<Share>("air.heat-recovery").rest()
        / book.rate::<Share>("air.heater-efficiency");
    flows.heat(Stage::Air, &format!("warming the air of the {room}"), heat);
    flows.electricity(Stage::Air, &format!("fan of the {room}"), air * book.rate::<Per<Electricity, Volume>>("air.fan-power"));
}

/// The least air by the estimating rule behind NFPA 86: 10 000 ft3 per US gallon of solvent
/// evaporated, which keeps vapour below 25 % of its lower flammable limit; 74.8 m3 per litre.
pub fn least_air(book: &Book, evaporated_per_hour: Per<Liquid, Time>) -> AirFlow {
    evaporated_per_hour * book.choice::<Per<Volume, Liquid>>("air.least-per-solvent")
}

/// Whether an air flow falls below that floor.
pub fn is_below_floor(book: &Book, air: AirFlow, evaporated_per_hour: Per<Liquid, Time>) -> bool {
    air.base() < least_air(book, evaporated_per_hour).base()
}
