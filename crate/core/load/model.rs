//! The model of an alternative on some jobs: what it makes itself, and what its `otherwise` makes.

use std::collections::BTreeSet;
use std::rc::Rc;

use super::weights::Loads;
use super::{Amount, Contribution, Indicator, Per, Plan};
use crate::inventory::{Activity, InputId, Measure, Terms, What};
use crate::quantity::{FaceArea, Kind};

/// Jobs made by one alternative.
#[derive(Debug, Clone)]
pub struct Part {
    /// How it makes them.
    pub plan: Rc<Plan>,
    /// What the shop does for them.
    pub activity: Activity,
    /// Their faces in use.
    pub m2: FaceArea,
    /// Which jobs of the order.
    pub jobs: Vec<usize>,
    loads: Loads,
}

/// An alternative on some jobs. The first part is its own, even where it makes none of them.
#[derive(Debug, Clone)]
pub struct Model {
    /// The parts, each made by one alternative.
    pub parts: Vec<Part>,
    /// The faces in use, all parts together.
    pub m2: FaceArea,
}

/// The alternative's own plan.
impl std::ops::Deref for Model {
    type Target = Plan;

    fn deref(&self) -> &Plan {
        &self.parts[0].plan
    }
}

impl Part {
    /// Jobs that were counted, made by a plan.
    pub fn of(plan: Rc<Plan>, activity: Activity, m2: FaceArea, jobs: Vec<usize>) -> Self {
        let loads = plan.weights.loads(&activity);
        Self { plan, activity, m2, jobs, loads }
    }

    /// The load of an indicator for these jobs, visits included where a year in service is looked at.
    fn load(&self, indicator: Indicator, per: Per) -> f64 {
        let [first_set, visits] = self.loads[indicator as usize];
        if per == Per::M2Year { first_set + visits } else { first_set }
    }

    /// The value of a formula for these jobs.
    pub fn value(&self, terms: &Terms) -> f64 {
        terms.value(&self.activity, self.plan.values())
    }
}

impl Model {
    /// Puts parts together; the first is the alternative's own.
    pub fn of(parts: Vec<Part>) -> Self {
        let m2 = parts.iter().fold(0.0, |sum, part| sum + part.m2.base());
        Self { parts, m2: Kind::from_base(m2) }
    }

    /// What a part's load is divided by.
    pub fn divisor(&self, part: &Part, per: Per) -> f64 {
        match per {
            Per::Order => 1.0,
            Per::M2 => self.m2.base(),
            Per::M2Year => self.m2.base() * part.plan.life,
        }
    }

    /// Every contribution to an indicator with the part it belongs to.
    pub fn contributions_of(&self, indicator: Indicator, per: Per) -> impl Iterator<Item = (&Part, &Contribution)> {
        self.parts.iter().flat_map(move |part| part.plan.contributions_to(indicator, per).map(move |one| (part, one)))
    }

    /// One contribution's value.
    pub fn value_of(&self, part: &Part, one: &Contribution, per: Per) -> f64 {
        part.value(&one.amount) * part.value(&one.factor) / self.divisor(part, per)
    }

    /// The load in an indicator.
    pub fn load(&self, indicator: Indicator, per: Per) -> Amount {
        let of_part = |part: &Part| part.load(indicator, per) / self.divisor(part, per);
        // A fold from 0: an empty `sum` of floats is -0.
        Amount { indicator, value: self.parts.iter().fold(0.0, |sum, part| sum + of_part(part)) }
    }

    /// The sum of the flows that are wanted, per that.
    pub fn flows_of(&self, per: Per, wanted: impl Fn(&What) -> bool) -> f64 {
        let of_part = |part: &Part| {
            let flows = part.plan.flows.iter().filter(|flow| !flow.blank && Plan::counts(flow.stage, per) && wanted(&flow.what));
            flows.fold(0.0, |sum, flow| sum + part.value(flow.what.terms())) / self.divisor(part, per)
        };
        self.parts.iter().fold(0.0, |sum, part| sum + of_part(part))
    }

    /// A measure's count, all parts together.
    pub fn count<Q: Kind>(&self, measure: Measure<Q>) -> f64 {
        self.parts.iter().fold(0.0, |sum, part| sum + part.activity.total(measure).base())
    }

    /// How much the load changes when one input takes another value where `moves` says so,
    /// everything else at its median.
    pub fn change(&self, indicator: Indicator, per: Per, id: InputId, value: f64, moves: impl Fn(&Part) -> bool) -> f64 {
        let mut change = 0.0;
        for part in self.parts.iter().filter(|part| moves(part)) {
            let mut moved = part.plan.values().to_vec();
            moved[id.index()] = value;
            let at =
                |one: &Contribution, values: &[f64]| one.amount.value(&part.activity, values) * one.factor.value(&part.activity, values);
            let touched = part.plan.contributions_to(indicator, per).filter(|one| one.amount.holds(id) || one.factor.holds(id));
            change += touched.fold(0.0, |sum, one| sum + at(one, &moved) - at(one, part.plan.values())) / self.divisor(part, per);
        }
        change
    }

    /// The inputs that stand in an indicator's load, in any part.
    pub fn inputs_of(&self, indicator: Indicator, per: Per) -> BTreeSet<InputId> {
        let mut inputs = BTreeSet::new();
        self.parts.iter().for_each(|part| inputs.extend(part.plan.inputs(indicator, per)));
        inputs
    }
}
