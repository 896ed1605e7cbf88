//! The model of one alternative: its counts, its flows, each with its factor.

use std::collections::BTreeSet;

use super::factor::factor;
use super::{Amount, Indicator, Per};
use crate::factors::TableFault;
use crate::inventory::{Activity, Book, Flow, Gap, InputId, Layout, Stage, Terms, gaps};
use crate::order::{Alternative, Boundary, Job, Order};
use crate::quantity::{FaceArea, Kind};
use crate::route;

/// One flow's load in one indicator: amount x factor.
#[derive(Debug, Clone)]
pub struct Contribution {
    /// The indicator.
    pub indicator: Indicator,
    /// The stage.
    pub stage: Stage,
    /// What flows.
    pub label: String,
    /// How much, for the whole order.
    pub amount: Terms,
    /// The amount's unit.
    pub amount_unit: &'static str,
    /// What one unit loads.
    pub factor: Terms,
    /// The factor's unit.
    pub factor_unit: &'static str,
}

/// The model of one alternative on the jobs that every alternative can make.
#[derive(Debug)]
pub struct Model {
    /// The alternative.
    pub alternative: Alternative,
    /// Its inputs.
    pub book: Book,
    /// Its counts.
    pub activity: Activity,
    /// Its flows.
    pub flows: Vec<Flow>,
    /// Every flow's load, boundary applied.
    pub contributions: Vec<Contribution>,
    /// The faces in use.
    pub m2: FaceArea,
    /// Years in service.
    pub life: f64,
    values: Vec<f64>,
}

/// Why a model cannot be built.
#[derive(Debug)]
pub enum ModelFault {
    /// The tables lack a row.
    Table(Vec<TableFault>),
    /// Mass does not close: a fault of ours.
    Mass(Vec<Gap>),
}

impl Model {
    /// Builds the model of an alternative for some jobs.
    pub fn build(
        order: &Order,
        alternative: &Alternative,
        book: Book,
        layout: &Layout,
        jobs: &[Job],
        boundary: Boundary,
    ) -> Result<Self, ModelFault> {
        let activity = route::count(order, alternative, &book, layout, jobs);
        let flows = route::flows(order, alternative, &book).stocked(&book, &activity).list;
        let mut contributions = Vec::new();
        for flow in flows.iter().filter(|flow| !flow.blank || boundary == Boundary::FaceWithBlank) {
            for indicator in Indicator::ALL {
                if let Some((factor, factor_unit)) = factor(indicator, &flow.what, flow.blank, &book, order) {
                    let contribution = Contribution {
                        indicator,
                        stage: flow.stage,
                        label: flow.label.clone(),
                        amount: flow.what.terms().clone(),
                        amount_unit: flow.what.unit(),
                        factor,
                        factor_unit,
                    };
                    contributions.push(contribution);
                }
            }
        }
        if !book.faults().is_empty() {
            return Err(ModelFault::Table(book.faults()));
        }
        let values = book.values();
        let gaps = gaps(&flows, &activity, &values);
        if !gaps.is_empty() {
            return Err(ModelFault::Mass(gaps));
        }
        let m2 = jobs.iter().fold(0.0, |sum, job| sum + job.line.face().base() * f64::from(job.line.quantity) * f64::from(job.line.sides));
        let life = alternative.life.unwrap_or(order.life);
        Ok(Self { alternative: alternative.clone(), book, activity, flows, contributions, m2: Kind::from_base(m2), life, values })
    }

    /// The values of its inputs.
    pub fn values(&self) -> &[f64] {
        &self.values
    }

    /// Whether a stage counts: the first set of faces is made, delivered and discarded; visits
    /// count where a year in service is looked at.
    pub fn counts(stage: Stage, per: Per) -> bool {
        stage != Stage::Service || per == Per::M2Year
    }

    /// What the order's load is divided by.
    pub fn divisor(&self, per: Per) -> f64 {
        match per {
            Per::Order => 1.0,
            Per::M2 => self.m2.base(),
            Per::M2Year => self.m2.base() * self.life,
        }
    }

    /// The contributions to an indicator that count per that.
    pub fn parts(&self, indicator: Indicator, per: Per) -> impl Iterator<Item = &Contribution> {
        self.contributions.iter().filter(move |part| part.indicator == indicator && Self::counts(part.stage, per))
    }

    /// One contribution's value.
    pub fn value_of(&self, part: &Contribution, per: Per) -> f64 {
        part.amount.value(&self.activity, &self.values) * part.factor.value(&self.activity, &self.values) / self.divisor(per)
    }

    /// The load in an indicator.
    pub fn load(&self, indicator: Indicator, per: Per) -> Amount {
        // A fold from 0: an empty `sum` of floats is -0.
        Amount { indicator, value: self.parts(indicator, per).fold(0.0, |sum, part| sum + self.value_of(part, per)) }
    }

    /// How much the load changes when one input takes another value, everything else at its median.
    pub fn change(&self, indicator: Indicator, per: Per, id: InputId, value: f64) -> f64 {
        let mut moved = self.values.clone();
        moved[id.index()] = value;
        let change: f64 = self
            .parts(indicator, per)
            .filter(|part| part.amount.holds(id) || part.factor.holds(id))
            .map(|part| {
                part.amount.value(&self.activity, &moved) * part.factor.value(&self.activity, &moved)
                    - part.amount.value(&self.activity, &self.values) * part.factor.value(&self.activity, &self.values)
            })
            .fold(0.0, |sum, one| sum + one);
        change / self.divisor(per)
    }

    /// The inputs that stand in an indicator's load.
    pub fn inputs(&self, indicator: Indicator, per: Per) -> BTreeSet<InputId> {
        self.parts(indicator, per)
            .flat_map(|part| part.amount.0.iter().chain(&part.factor.0))
            .flat_map(|term| &term.inputs)
            .map(|(id, _)| *id)
            .collect()
    }
}
