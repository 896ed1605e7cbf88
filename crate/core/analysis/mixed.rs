//! The mixed plan: each job by the alternative that loads least, where that is clear; otherwise by the user's first.
//!
//! Whether it is clear is judged job by job by the same rule as for a pair: the middle 90 % of the paired difference leaves
//! zero out. A job's load is a sum over what is counted of it, so that one set of draws of the loads per unit serves
//! every job. (Mean and variance would not do: where a screen is made for few signs the difference leans far to one side,
//! and a normal interval around its mean calls clear ones unclear.)

use std::rc::Rc;

use crate::comparison::{Comparison, small_per_m2};
use crate::inventory::{Activity, Symbol};
use crate::load::{Indicator, Model, Part, Per};
use crate::quantity::Kind;

use super::draws::{Kept, Settings, loads_of};
use super::finding::{Finding, finding};
use super::interval::Interval;

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
    let drawn = units.drawn(indicator, settings);
    let mut jobs = Vec::new();
    for (job, able) in able.iter().enumerate() {
        let Some((first, others)) = able.split_first() else { continue };
        let own = model(*first, job);
        let load = own.load(indicator, Per::Order).value;
        let mut chosen = Chosen { job, by: *first, clear: false, load, first: load };
        for at in others {
            let other = model(*at, job);
            let less = other.load(indicator, Per::Order).value;
            let difference = Interval::of(&units.differences(&drawn, (*first, &own), (*at, &other)));
            let matters = small_per_m2(indicator) * own.m2.base();
            if less < chosen.load && finding(&difference, load.min(less), matters) == Finding::SecondLess {
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

    /// The draws of the load of each unit.
    fn drawn(&self, indicator: Indicator, settings: Settings) -> Vec<Vec<f64>> {
        loads_of(&self.models.iter().collect::<Vec<_>>(), &[indicator], Per::Order, settings, &mut Kept::default())
    }

    /// The draws of the second's load on a job less the first's.
    fn differences(&self, drawn: &[Vec<f64>], first: (usize, &Model), second: (usize, &Model)) -> Vec<f64> {
        let mut sum = vec![0.0; drawn.first().map_or(0, Vec::len)];
        for ((at, model), sign) in [(first, -1.0), (second, 1.0)] {
            for (symbol, count) in model.parts[0].activity.counts() {
                let Some(unit) = self.list.iter().position(|unit| *unit == (at, *symbol)) else { continue };
                let times = sign * count;
                sum.iter_mut().zip(&drawn[unit]).for_each(|(sum, load)| *sum += times * load);
            }
        }
        sum
    }
}
