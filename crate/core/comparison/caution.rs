//! Cautions: where an air flow of the energy sum would be too little for the solvent in it.

use crate::inventory::{Stage, What};
use crate::load::Model;
use crate::quantity::{AirFlow, Density, Kind, Liquid, Per, Share, Time, of};
use crate::route::route;
use crate::step::{air, printing_time};

/// An air flow below the floor.
#[derive(Debug, Clone, PartialEq)]
pub struct Caution {
    /// The alternative.
    pub alternative: String,
    /// The air flow.
    pub place: &'static str,
    /// How much air moves, m3/h.
    pub air: f64,
    /// How much the rule asks for, m3/h.
    pub floor: f64,
}

/// The cautions of one model, on its central run: solvent of the prints over the hours of printing.
pub(super) fn cautions(model: &Model) -> Vec<Caution> {
    let evaporated: f64 = model
        .flows
        .iter()
        .filter(|flow| flow.stage == Stage::Drying)
        .filter_map(
            |flow| if let What::Evaporated(_, terms) = &flow.what { Some(terms.value(&model.activity, model.values())) } else { None },
        )
        .sum();
    let made = model.book.rate::<Share>("stock.unsold").per_one_minus();
    let hours: Time = printing_time(&model.book, model.alternative.route == crate::order::RouteName::ScreenPrinting, model.alternative.ink)
        .stocked(&made)
        .value(&model.activity, model.values());
    if hours.base() <= 0.0 || evaporated <= 0.0 {
        return Vec::new();
    }
    let density = model.book.choice::<Density>("cleaner.density").base();
    let per_hour: Per<Liquid, Time> = of(evaporated / density / hours.base());
    route(model.alternative.route)
        .exhausts(&model.book, &model.alternative)
        .into_iter()
        .filter(|(_, flow): &(_, AirFlow)| air::is_below_floor(&model.book, *flow, per_hour))
        .map(|(place, flow)| Caution {
            alternative: model.alternative.id.clone(),
            place,
            air: flow.base(),
            floor: air::least_air(&model.book, per_hour).base(),
        })
        .collect()
}
