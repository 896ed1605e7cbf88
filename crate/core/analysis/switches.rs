//! Switches: choices of method, each set the other way and the pair looked at again. They are never drawn: how likely a
//! choice is has no answer.

use crate::comparison::{Comparison, compare};
use crate::factors::Tables;
use crate::load::{Indicator, Per};
use crate::order::{EndOfLife, GwpSet, Order};

use super::draws::{Kept, PairDraws, Settings, loads_of};
use super::finding::{Finding, finding};
use super::interval::Interval;
use super::pair_draws::Pairing;

/// A choice set another way.
#[derive(Debug, Clone, PartialEq)]
pub struct Switched {
    /// Which choice.
    pub switch: &'static str,
    /// What it is set to.
    pub set: String,
    /// Whether the order has it so.
    pub own: bool,
    /// The first's load.
    pub first: f64,
    /// The second's.
    pub second: f64,
    /// Second less first, draw by draw.
    pub difference: Interval,
    /// What the draws say.
    pub finding: Finding,
}

/// Years in service that are tried beside the order's own.
const LIVES: [f64; 3] = [5.0, 10.0, 15.0];

/// A pair under every setting of every switch.
pub fn switches(
    tables: &Tables,
    comparison: &Comparison,
    pair: (usize, usize),
    indicator: Indicator,
    other_areas: &[&str],
    settings: Settings,
) -> Vec<Switched> {
    switches_in(tables, comparison, pair, [indicator], other_areas, settings, &mut Kept::default()).into_iter().flatten().collect()
}

/// The same in several indicators, a list for each of them, with drawn values that may have been kept.
pub fn switches_in<const N: usize>(
    tables: &Tables,
    comparison: &Comparison,
    (a, b): (usize, usize),
    indicators: [Indicator; N],
    other_areas: &[&str],
    settings: Settings,
    kept: &mut Kept,
) -> [Vec<Switched>; N] {
    // Only the two, and whoever makes lines for them.
    let pairing = Pairing::of(tables, comparison, a, b, Indicator::Co2e);
    let own = pairing.order();
    let mut list: Vec<(&'static str, String, bool, Order)> = Vec::new();
    let mut push = |switch, set: &str, is_own, change: &dyn Fn(&mut Order)| {
        let mut order = own.clone();
        change(&mut order);
        list.push((switch, set.to_owned(), is_own, order));
    };
    for (name, set) in GwpSet::ALL {
        push("gwp", name, own.gwp == set, &|order| order.gwp = set);
    }
    for counted in [true, false] {
        push("voc_oxidised", if counted { "counted" } else { "not counted" }, own.voc_oxidised == counted, &|order| {
            order.voc_oxidised = counted
        });
    }
    let mut ends: Vec<EndOfLife> = Vec::new();
    for (name, end) in EndOfLife::ALL {
        // Two words may name one rule.
        if ends.contains(&end) {
            continue;
        }
        ends.push(end);
        push("end_of_life", name, own.end_of_life == end, &|order| order.end_of_life = end);
    }
    push("electricity", &own.site.electricity.full_label(), true, &|_| {});
    for area in other_areas.iter().filter(|area| **area != own.site.electricity.id) {
        if let Some(site) = own.site.in_area(tables, area) {
            push("electricity", &site.electricity.full_label(), false, &|order| order.site = site.clone());
        }
    }
    // Per m2 and per order the life divides nothing.
    for life in LIVES.into_iter().filter(|_| comparison.per == Per::M2Year) {
        push("life", &format!("{life} years"), own.life == life, &|order| order.life = life);
    }
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.clone());
    let mut lists = indicators.map(|_| Vec::new());
    for (switch, set, own, order) in list {
        let Ok(switched) = compare(tables, &order, comparison.per, comparison.boundary) else { continue };
        let place = |id: &str| switched.models.iter().position(|model| model.alternative.id == id);
        let Some((a, b)) = place(&ids[0]).zip(place(&ids[1])) else { continue };
        let Some((first, second)) = switched.of_pair(a, b) else { continue };
        let loads = loads_of(&[&first, &second], &indicators, switched.per, settings, kept);
        for (at, (list, indicator)) in lists.iter_mut().zip(indicators).enumerate() {
            let Some(single) = switched.difference(a, b, indicator) else { continue };
            let difference = Interval::of(&PairDraws { first: &loads[at], second: &loads[N + at] }.differences());
            let finding = finding(&difference, single.first.min(single.second), switched.matters(indicator, &first));
            list.push(Switched { switch, set: set.clone(), own, first: single.first, second: single.second, difference, finding });
        }
    }
    lists
}
