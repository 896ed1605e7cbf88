//! Effort: attended time and days until ready. Not a load, but a buyer asks next.
//!
//! days = attended hours/8 + waiting: prints on racks dry between colours, solvent prints outgas
//! before the overlay.

use super::Comparison;
use crate::inventory::What;
use crate::load::{Model, Per};
use crate::quantity::{Kind, Time};
use crate::route::route;

/// What an alternative takes beside its loads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effort {
    /// Attended hours for the whole order.
    pub attended: f64,
    /// Days of one shift until the order is ready, one worker.
    pub days: f64,
}

/// The effort of a model.
pub fn effort(comparison: &Comparison, model: &Model) -> Effort {
    let attended = model.flows_of(Per::Order, |what| matches!(what, What::Attended(_)));
    let shift = model.book.choice::<Time>("calendar.working-day").base();
    let waiting = model.parts.iter().fold(0.0, |most: f64, part| {
        let route = route(part.plan.alternative.route);
        let works = part.jobs.iter().filter_map(|job| route.work(&comparison.jobs[*job], &part.plan.layout).ok());
        let colours = works.map(|work| work.printed.len()).max().unwrap_or(0);
        most.max(route.waiting(&part.plan.book, &part.plan.alternative, colours as f64))
    });
    Effort { attended, days: attended / shift + waiting / 24.0 }
}
