//! The plan of one alternative: its inputs, its flows, each with its factor, before any job is counted.

use std::collections::BTreeSet;
use std::rc::Rc;

use super::composition;
use super::factor::factor;
use super::weights::Weights;
use super::{Indicator, Per};
use crate::factors::TableFault;
use crate::inventory::{Activity, Book, Flow, Gap, InputId, Layout, Stage, Terms, gaps};
use crate::order::{Alternative, Boundary, Order, OrderFault};
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
    /// How much, for the whole order; one for all indicators of a flow.
    pub amount: Rc<Terms>,
    /// The amount's unit.
    pub amount_unit: &'static str,
    /// What one unit loads.
    pub factor: Terms,
    /// The factor's unit.
    pub factor_unit: &'static str,
}

/// The plan of one alternative.
#[derive(Debug)]
pub struct Plan {
    /// The alternative.
    pub alternative: Alternative,
    /// Its inputs.
    pub book: Book,
    /// How the shop lays out.
    pub layout: Layout,
    /// Its flows.
    pub flows: Vec<Flow>,
    /// Every flow's load, boundary applied.
    pub contributions: Vec<Contribution>,
    /// Years in service.
    pub life: f64,
    values: Vec<f64>,
    pub(super) weights: Weights,
}

/// Why a plan cannot be made.
#[derive(Debug)]
pub enum PlanFault {
    /// The order's own values don't hold together.
    Order(Vec<OrderFault>),
    /// The tables lack a row, or don't hold together.
    Table(Vec<TableFault>),
    /// Mass does not close: a fault of ours.
    Mass(Vec<Gap>),
}

impl Plan {
    /// Makes the plan of an alternative.
    pub fn make(order: &Order, alternative: &Alternative, book: Book, boundary: Boundary) -> Result<Self, PlanFault> {
        let layout = Layout::read(&book);
        let flows = route::flows(order, alternative, &book).stocked(&book).list;
        let mut contributions = Vec::new();
        for flow in flows.iter().filter(|flow| !flow.blank || boundary == Boundary::FaceWithBlank) {
            let amount = Rc::new(flow.what.terms().clone());
            for indicator in Indicator::ALL {
                if let Some((factor, factor_unit)) = factor(indicator, &flow.what, flow.blank, &book, order) {
                    contributions.push(Contribution {
                        indicator,
                        stage: flow.stage,
                        label: flow.label.clone(),
                        amount: Rc::clone(&amount),
                        amount_unit: flow.what.unit(),
                        factor,
                        factor_unit,
                    });
                }
            }
        }
        if !book.faults().is_empty() {
            return Err(PlanFault::Table(book.faults()));
        }
        composition::check(order, &book, &flows)?;
        let values = book.values();
        // On the coefficients mass closes for every order and every value of every input.
        let gaps = gaps(&flows, &Activity::default(), &values);
        if !gaps.is_empty() {
            return Err(PlanFault::Mass(gaps));
        }
        let life = alternative.life.unwrap_or(order.life);
        let weights = Weights::of(&contributions, &values);
        Ok(Self { alternative: alternative.clone(), book, layout, flows, contributions, life, values, weights })
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

    /// The contributions to an indicator that count per that.
    pub fn contributions_to(&self, indicator: Indicator, per: Per) -> impl Iterator<Item = &Contribution> {
        self.contributions.iter().filter(move |one| one.indicator == indicator && Self::counts(one.stage, per))
    }

    /// The inputs that stand in an indicator's load.
    pub fn inputs(&self, indicator: Indicator, per: Per) -> BTreeSet<InputId> {
        self.contributions_to(indicator, per)
            .flat_map(|one| one.amount.0.iter().chain(&one.factor.0))
            .flat_map(|term| &term.inputs)
            .map(|(id, _)| *id)
            .collect()
    }
}
