//! The checks a study closes with: completeness, sensitivity, consistency, and how bad weak data would have to be.

use faceload_core::load::Indicator;

use super::closure;
use super::found::Found;
use super::node::{Node, list, words};
use crate::{drivers, flips, sureness};

/// The checks.
pub fn section(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    let mut inside = vec![words("h3", "Completeness")];
    let largest = closure::largest(found);
    inside.extend(list([
        format!("Mass: the largest share of a material that is not found again is {largest:.0e}."),
        "Every stage from A1 to C4 that differs between alternatives is in; what is out is the same for all, or has no distance in the order.".to_owned(),
        sureness::off_in(comparison, &found.spreads)
            .unwrap_or_else(|| "Every single value of a pair's difference lies in the middle 60 % of its draws.".to_owned()),
    ]));
    inside.push(words("h3", "Sensitivity"));
    let switched = Indicator::ALL.into_iter().zip(&found.switches).filter_map(|(indicator, list)| {
        let sentence = flips::switches(comparison, found.pair?, indicator, list).sentences.into_iter().next()?;
        Some(format!("{}: {sentence}", indicator.label()))
    });
    inside.extend(list(switched));
    inside.push(words("h3", "Weak data all at once"));
    let weak = Indicator::ALL.into_iter().zip(&found.drivers).filter_map(|(indicator, one)| {
        let sentence = drivers::figure(comparison, found.pair?, indicator, one.as_ref()?, 0).sentences.pop()?;
        Some(format!("{}: {sentence}", indicator.label()))
    });
    inside.extend(list(weak));
    inside.push(words("h3", "Consistency"));
    inside.extend(list(["One functional unit, one boundary, one set of factors, one set of warming potentials, one rule for the end of life for all alternatives; shares by grade, place and age stand in the section before.".to_owned()]));
    super::section("report-checks", inside)
}
