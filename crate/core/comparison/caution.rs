//! Cautions: where an air flow of the energy sum would be too little for the solvent in it.

use crate::inventory::{Stage, What};
use crate::load::Model;
use crate::order::RouteName;
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

/// The cautions of a model's own part, on its central run: solvent of the prints over the hours of printing.
pub(super) fn cautions(model: &Model) -> Vec<Caution> {
    let part = &model.parts[0];
    let (plan, alternative) = (&part.plan, &part.plan.alternative);
    let exhausts = route(alternative.route).exhausts(&plan.book, alternative);
    if exhausts.is_empty() {
        return Vec::new();
    }
    let of_prints = plan.flows.iter().filter(|flow| flow.stage == Stage::Drying && matches!(flow.what, What::Evaporated(..)));
    let evaporated = of_prints.fold(0.0, |sum, flow| sum + part.value(flow.what.terms()));
    let made = plan.book.rate::<Share>("stock.unsold").per_one_minus();
    let press = alternative.route == RouteName::ScreenPrinting;
    let hours: Time = printing_time(&plan.book, press, alternative.ink).stocked(&made).value(&part.activity, plan.values());
    if hours.base() <= 0.0 || evaporated <= 0.0 {
        return Vec::new();
    }
    let density = plan.book.choice::<Density>("cleaner.density").base();
    let per_hour: Per<Liquid, Time> = of(evaporated / density / hours.base());
    let below = exhausts.into_iter().filter(|(_, flow): &(_, AirFlow)| air::is_below_floor(&plan.book, *flow, per_hour));
    below
        .map(|(place, flow)| Caution {
            alternative: alternative.id.clone(),
            place,
            air: flow.base(),
            floor: air::least_air(&plan.book, per_hour).base(),
        })
        .collect()
}
