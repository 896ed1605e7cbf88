//! Break-even: where the difference of a pair crosses zero as one thing varies.
//!
//! The axis is scanned; each change of sign is closed in on: among whole numbers by trying every one between, else
//! by one root finder. Layout goes in steps (a roll holds whole rows), so that a crossing among whole numbers may be
//! an interval in which the lesser alternative changes more than once. No crossing and several are answers too.
//!
//! Its own spread: the same scan under each draw. A draw's crossing lies between two values in proportion; the
//! share of draws without one is part of the answer.

use super::draws::{Kept, Settings};
use super::interval::{Interval, quantiles};
use super::over::Axis;
use super::pair_draws::{PairPoint, Pairing};
use super::root::{Itp, itp};
use crate::in_order;

/// A change of the lesser alternative.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crossing {
    /// The last value before it.
    pub from: f64,
    /// The first value after it; both are the same where the axis is not in whole numbers.
    pub to: f64,
    /// Whether the second alternative loads less after it.
    pub second_less_after: bool,
}

/// The loads of a pair at one value of the axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// The value.
    pub at: f64,
    /// The first's load.
    pub first: f64,
    /// The second's.
    pub second: f64,
    /// The 5 % and 95 % points of second less first.
    pub difference: (f64, f64),
}

/// Where a pair's difference crosses zero.
#[derive(Debug, Clone)]
pub struct BreakEven {
    /// What was varied.
    pub axis: Axis,
    /// The values at which both can make a line; where they cannot, the rest is left out.
    pub points: Vec<Point>,
    /// The crossings with every input at its median, rising.
    pub crossings: Vec<Crossing>,
    /// Draws made.
    pub draws: usize,
    /// The first crossing of the draws that have one: 5, 25, 50, 75 and 95 % points.
    pub spread: Option<Interval>,
    /// The share of draws without a crossing on the axis.
    pub without: f64,
    /// The share of draws with more than one.
    pub several: f64,
}

/// Whole numbers between two values of the scan that are tried one by one.
const CLOSE: f64 = 120.0;

/// Finds where a pair breaks even; `go_on` hears the share that is done. None where it was told to stop.
pub fn break_even(
    pairing: &Pairing<'_>,
    axis: Axis,
    settings: Settings,
    kept: &mut Kept,
    mut go_on: impl FnMut(f64) -> bool,
) -> Option<BreakEven> {
    let mut scanned: Vec<(f64, Option<PairPoint>)> = Vec::new();
    let count = axis.values.len() as f64;
    for (done, value) in axis.values.iter().enumerate() {
        scanned.push((*value, pairing.at(&axis.over, *value, settings, kept)));
        if !go_on(0.8 * (done + 1) as f64 / count) {
            return None;
        }
    }
    let mut crossings = Vec::new();
    let mut between = Vec::new();
    for pair in scanned.windows(2) {
        let [(from, Some(before)), (to, Some(after))] = pair else { continue };
        let sign_changes = (before.difference() < 0.0) != (after.difference() < 0.0);
        if !sign_changes {
            continue;
        }
        if !axis.whole {
            let mut f = |x: f64| pairing.single(&axis.over, x).map_or(f64::NAN, |(first, second)| second - first);
            let how = Itp { within: 1e-9 * (to - from), k1: 0.2 / (to - from), slack: 1 };
            let (x, _) = itp(&mut f, (*from, *to), (before.difference(), after.difference()), how);
            crossings.push(Crossing { from: x, to: x, second_less_after: after.difference() < 0.0 });
        } else if to - from <= 1.0 {
            crossings.push(Crossing { from: *from, to: *to, second_less_after: after.difference() < 0.0 });
        } else {
            let (first, last) = narrowed(pairing, &axis, (*from, *to), before.difference() < 0.0);
            for at in first..=last {
                let at = f64::from(at);
                if at > *from && at < *to {
                    between.push((at, pairing.at(&axis.over, at, settings, kept)));
                }
            }
            let mut known = (f64::from(first), before.difference() < 0.0);
            for at in first..=last {
                let at = f64::from(at);
                let Some((one, other)) = pairing.single(&axis.over, at) else { continue };
                let negative = other - one < 0.0;
                if at > known.0 && negative != known.1 {
                    crossings.push(Crossing { from: known.0, to: at, second_less_after: negative });
                }
                known = (at, negative);
            }
        }
        if !go_on(0.9) {
            return None;
        }
    }
    scanned.extend(between);
    in_order(&mut scanned, |a, b| a.0.total_cmp(&b.0));
    scanned.dedup_by(|a, b| a.0 == b.0);
    let (spread, without, several, draws) = spread(&scanned);
    let points = scanned.iter().filter_map(|(at, point)| {
        let point = point.as_ref()?;
        let [low, high] = quantiles(&point.differences, [0.05, 0.95]);
        Some(Point { at: *at, first: point.first, second: point.second, difference: (low, high) })
    });
    let points = points.collect();
    Some(BreakEven { axis, points, crossings, draws, spread, without, several })
}

/// A stretch of whole numbers that holds every change of sign near the one found by halving.
fn narrowed(pairing: &Pairing<'_>, axis: &Axis, (mut from, mut to): (f64, f64), negative: bool) -> (u32, u32) {
    let bracket = (from, to);
    while to - from > CLOSE {
        let middle = (0.5 * (from + to)).floor();
        match pairing.single(&axis.over, middle) {
            Some((one, other)) if (other - one < 0.0) == negative => from = middle,
            _ => to = middle,
        }
    }
    let room = 0.5 * (CLOSE - (to - from)).max(0.0);
    (((from - room).max(bracket.0)) as u32, ((to + room).min(bracket.1)) as u32)
}

/// The first crossing of every draw.
fn spread(scanned: &[(f64, Option<PairPoint>)]) -> (Option<Interval>, f64, f64, usize) {
    let made: Vec<(f64, &PairPoint)> = scanned.iter().filter_map(|(at, point)| Some((*at, point.as_ref()?))).collect();
    let draws = made.first().map_or(0, |(_, point)| point.differences.len());
    let mut first = Vec::new();
    let mut several = 0;
    for draw in 0..draws {
        let mut crossings = made.windows(2).filter_map(|pair| {
            let (before, after) = (pair[0].1.differences[draw], pair[1].1.differences[draw]);
            ((before < 0.0) != (after < 0.0)).then(|| pair[0].0 + (pair[1].0 - pair[0].0) * before / (before - after))
        });
        first.extend(crossings.next());
        several += usize::from(crossings.next().is_some());
    }
    let part = |count: usize| if draws == 0 { 0.0 } else { count as f64 / draws as f64 };
    let spread = (!first.is_empty()).then(|| Interval::of(&first));
    (spread, part(draws - first.len()), part(several), draws)
}
