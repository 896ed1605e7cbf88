//! The mixed plan: each job by the alternative that loads least, where that is clear; otherwise by the user's first.
//!
//! Whether it is clear is judged job by job from the mean and variance of the difference: the middle 90 % of a normal
//! variate, mean -+ 1.645 standard deviations. A job's load is a sum over what is counted of it, so that one
//! covariance of the loads per unit serves every job.

use std::rc::Rc;

use crate::comparison::{Comparison, SMALL_SHARE, small_per_m2};
use crate::inventory::{Activity, Symbol};
use crate::load::{Indicator, Model, Part, Per};
use crate::quantity::Kind;

use super::draws::{Kept, Settings, loads_of};

/// What the mixed plan does with one job.
#[derive(Debug, Clone, PartialEq)]
pub struct Chosen {
    /// The job.
    pub job: usize,
    /// The alternative that makes it.
    pub by: usize,
    /// Whether it clearly loads less than the user's first; false where it is the first itself.
    pub clear: bool,
    /// Its load.
    pub load: f64,
    /// The load by the user's first that can make it.
    pub first: f64,
}

/// Each job by whoever loads least in an indicator.
#[derive(Debug, Clone, PartialEq)]
pub struct Mixed {
    /// What is done with each job that any alternative can make.
    pub jobs: Vec<Chosen>,
    /// The whole order's load, for the whole order.
    pub load: f64,
    /// The same with every job by the user's first that can make it.
    pub first: f64,
}

/// The 95 % point of the standard normal distribution.
const P95: f64 = 1.644_853_626_951_472_2;

/// The mixed plan of an indicator, for the whole order.
pub fn mixed(comparison: &Comparison, indicator: Indicator, settings: Settings) -> Mixed {
    let makes = |at: usize, job: usize| {
        let place = comparison.places[at];
        comparison.makers.of[place][job] == Some(place)
    };
    let model = |at: usize, job: usize| comparison.model_on(comparison.places[at], &[job]);
    let able: Vec<Vec<usize>> =
        (0..comparison.jobs.len()).map(|job| (0..comparison.models.len()).filter(|at| makes(*at, job)).collect()).collect();
    let mut units = Units::default();
    for (job, able) in able.iter().enumerate() {
        for at in able {
            units.meet(*at, &model(*at, job));
        }
    }
    let spread = units.covariance(indicator, settings);
    let mut jobs = Vec::new();
    for (job, able) in able.iter().enumerate() {
        let Some((first, others)) = able.split_first() else { continue };
        let own = model(*first, job);
        let load = own.load(indicator, Per::Order).value;
        let mut chosen = Chosen { job, by: *first, clear: false, load, first: load };
        for at in others {
            let other = model(*at, job);
            let less = other.load(indicator, Per::Order).value;
            let matters = (SMALL_SHARE * less).max(small_per_m2(indicator) * own.m2.base());
            let middle = load - less;
            if less < chosen.load && middle >= matters && middle > P95 * units.deviation(&spread, (*first, &own), (*at, &other)) {
                chosen = Chosen { by: *at, clear: true, load: less, ..chosen };
            }
        }
        jobs.push(chosen);
    }
    let sum = |of: fn(&Chosen) -> f64| jobs.iter().fold(0.0, |sum, chosen| sum + of(chosen));
    Mixed { load: sum(|chosen| chosen.load), first: sum(|chosen| chosen.first), jobs }
}

/// What is counted, by alternative: a job's load is a count times the load of one unit, summed.
#[derive(Default)]
struct Units {
    list: Vec<(usize, Symbol)>,
    /// A model with one unit of it.
    models: Vec<Model>,
}

impl Units {
    fn meet(&mut self, at: usize, model: &Model) {
        for (symbol, _) in model.parts[0].activity.counts() {
            if !self.list.contains(&(at, *symbol)) {
                self.list.push((at, *symbol));
                let part = &model.parts[0];
                self.models.push(Model::of(vec![Part::of(Rc::clone(&part.plan), Activity::one(*symbol), part.m2, Vec::new())]));
            }
        }
    }

    /// The covariance of the loads of every two units.
    fn covariance(&self, indicator: Indicator, settings: Settings) -> Vec<Vec<f64>> {
        let mut loads = loads_of(&self.models.iter().collect::<Vec<_>>(), indicator, Per::Order, settings, &mut Kept::default());
        for load in &mut loads {
            let mean = load.iter().fold(0.0, |sum, one| sum + one) / load.len() as f64;
            load.iter_mut().for_each(|one| *one -= mean);
        }
        let of = |x: &[f64], y: &[f64]| x.iter().zip(y).fold(0.0, |sum, (x, y)| sum + x * y) / x.len() as f64;
        let mut spread = vec![vec![0.0; loads.len()]; loads.len()];
        for x in 0..loads.len() {
            for y in x..loads.len() {
                spread[x][y] = of(&loads[x], &loads[y]);
                spread[y][x] = spread[x][y];
            }
        }
        spread
    }

    /// The standard deviation of the difference of two alternatives on a job.
    fn deviation(&self, spread: &[Vec<f64>], first: (usize, &Model), second: (usize, &Model)) -> f64 {
        let counts = |(at, model): (usize, &Model), sign: f64| -> Vec<(usize, f64)> {
            let counts = model.parts[0].activity.counts().iter();
            counts.filter_map(|(symbol, count)| Some((self.list.iter().position(|unit| *unit == (at, *symbol))?, sign * count))).collect()
        };
        let counts = [counts(first, -1.0), counts(second, 1.0)].concat();
        let of = |(x, left): &(usize, f64)| counts.iter().fold(0.0, |sum, (y, right)| sum + left * right * spread[*x][*y]);
        counts.iter().fold(0.0, |sum, one| sum + of(one)).max(0.0).sqrt()
    }
}
