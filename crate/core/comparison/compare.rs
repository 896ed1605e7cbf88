//! A comparison: alternatives on the lines that all of them can make, and every pair on its own.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::{Caution, CompareFault, Difference, Makers, caution, small_per_m2};
use crate::factors::{Spread, Tables};
use crate::load::{Indicator, Model, Part, Per, Plan};
use crate::order::{Boundary, Job, Order, jobs};
use crate::quantity::Kind;
use crate::route::{count, open_book};

/// Models by alternative and jobs.
type Kept = BTreeMap<(usize, Vec<usize>), Rc<Model>>;

/// Alternatives compared on the same lines.
#[derive(Debug)]
pub struct Comparison {
    /// The order.
    pub order: Order,
    /// Per what loads are given.
    pub per: Per,
    /// What is counted.
    pub boundary: Boundary,
    /// Every job of the order.
    pub jobs: Vec<Job>,
    /// Every alternative's plan.
    pub plans: Vec<Rc<Plan>>,
    /// Who makes what.
    pub makers: Makers,
    /// The jobs that every alternative below can make; empty where they share none.
    pub common: Vec<usize>,
    /// The models of the alternatives that make anything: on the common jobs, or where there are
    /// none, each on the jobs it makes.
    pub models: Vec<Model>,
    /// Where an air flow is below the fire-protection floor.
    pub cautions: Vec<Caution>,
    /// Models asked for before: alternative and jobs.
    kept: RefCell<Kept>,
    /// The place of each model's alternative among the plans.
    pub places: Vec<usize>,
}

/// Compares an order's alternatives.
pub fn compare(tables: &Tables, order: &Order, per: Per, boundary: Boundary) -> Result<Comparison, CompareFault> {
    let mut faults = Vec::new();
    let mut books = Vec::new();
    for alternative in &order.alternatives {
        match open_book(tables, order, alternative) {
            Ok(book) => books.push((alternative, book)),
            Err(more) => faults.extend(more),
        }
    }
    if !faults.is_empty() {
        return Err(CompareFault::Order(faults));
    }
    let mut plans = Vec::new();
    for (alternative, book) in books {
        plans.push(Rc::new(Plan::make(order, alternative, book, boundary)?));
    }
    Comparison::of(order.clone(), per, boundary, plans)
}

impl Comparison {
    /// Alternatives that are planned, on the order's lines: no plan depends on a line.
    fn of(order: Order, per: Per, boundary: Boundary, plans: Vec<Rc<Plan>>) -> Result<Self, CompareFault> {
        let jobs = jobs(&order.lines);
        let makers = Makers::find(&plans, &jobs);
        let places: Vec<usize> = (0..plans.len()).filter(|place| makers.makes_any(*place)).collect();
        if places.is_empty() {
            return Err(CompareFault::NothingMade(makers.dropped));
        }
        let common = makers.common(&places);
        let (models, cautions, kept) = (Vec::new(), Vec::new(), RefCell::default());
        Ok(Self { order, per, boundary, jobs, plans, makers, common, models, cautions, kept, places }.counted())
    }

    /// With the models of its plans.
    fn counted(mut self) -> Self {
        self.models = self.places.iter().map(|place| self.build(*place, &self.table_jobs(*place))).collect();
        self.cautions = self.models.iter().flat_map(caution::cautions).collect();
        self
    }

    /// The same alternatives on other lines, without planning them anew.
    pub fn on_lines_of(&self, order: Order) -> Result<Self, CompareFault> {
        Self::of(order, self.per, self.boundary, self.plans.clone())
    }

    /// The same comparison with other values moved by hand, without making its plans anew: the same as `compare` of that order,
    /// to the last bit. None where something moved is no uncertain input, before or after.
    pub fn moved(&self, tables: &Tables, moved: &[(String, f64)]) -> Option<Result<Self, CompareFault>> {
        let is_uncertain = |(id, _): &(String, f64)| tables.find(id).is_none_or(|place| tables.inputs[place].spread != Spread::Fixed);
        if !moved.iter().chain(&self.order.moved).all(is_uncertain) {
            return None;
        }
        let order = match self.order.clone().moved_by_hand(moved.to_vec(), tables) {
            Ok(order) => order,
            Err(faults) => return Some(Err(CompareFault::Order(faults))),
        };
        let mut plans = Vec::new();
        for plan in &self.plans {
            let book = match open_book(tables, &order, &plan.alternative) {
                Ok(book) => book,
                Err(faults) => return Some(Err(CompareFault::Order(faults))),
            };
            match plan.with_values(&order, book)? {
                Ok(plan) => plans.push(Rc::new(plan)),
                Err(fault) => return Some(Err(fault.into())),
            }
        }
        let (jobs, makers, common, places) = (self.jobs.clone(), self.makers.clone(), self.common.clone(), self.places.clone());
        let (models, cautions, kept) = (Vec::new(), Vec::new(), RefCell::default());
        Some(Ok(
            Self { order, per: self.per, boundary: self.boundary, jobs, plans, makers, common, models, cautions, kept, places }.counted()
        ))
    }

    /// The jobs an alternative's column is about.
    pub fn table_jobs(&self, place: usize) -> Vec<usize> {
        if self.common.is_empty() { self.makers.common(&[place]) } else { self.common.clone() }
    }

    /// The model of an alternative on some jobs, each made by whoever makes it for that alternative.
    fn build(&self, place: usize, jobs: &[usize]) -> Model {
        let mut by_maker = vec![Vec::new(); self.plans.len()];
        for job in jobs {
            if let Some(maker) = self.makers.of[place][*job] {
                by_maker[maker].push(*job);
            }
        }
        let own = std::mem::take(&mut by_maker[place]);
        let others = by_maker.into_iter().enumerate().filter(|(_, jobs)| !jobs.is_empty());
        let parts = std::iter::once((place, own)).chain(others).map(|(maker, jobs)| {
            let plan = Rc::clone(&self.plans[maker]);
            let activity = count(&self.order, &plan.alternative, &plan.layout, jobs.iter().map(|job| &self.jobs[*job]));
            let m2 = jobs.iter().fold(0.0, |sum, job| sum + square_metres(&self.jobs[*job]));
            Part::of(plan, activity, Kind::from_base(m2), jobs)
        });
        Model::of(parts.collect())
    }

    /// The model of an alternative on some jobs, kept for the next time.
    pub fn model_on(&self, place: usize, jobs: &[usize]) -> Rc<Model> {
        if let Some(model) = self.kept.borrow().get(&(place, jobs.to_vec())) {
            return Rc::clone(model);
        }
        let model = Rc::new(self.build(place, jobs));
        self.kept.borrow_mut().insert((place, jobs.to_vec()), Rc::clone(&model));
        model
    }

    /// The model of that alternative.
    pub fn model(&self, id: &str) -> Option<&Model> {
        self.models.iter().find(|model| model.alternative.id == id)
    }

    /// The pairs that a reader asks of first: the first alternatives of two routes, then the
    /// alternatives of one route.
    pub fn first_pairs(&self) -> Vec<(usize, usize)> {
        let mut pairs = self.pairs();
        let route = |index: usize| self.models[index].alternative.route;
        let first = |index: usize| (0..index).all(|before| route(before) != route(index));
        pairs.retain(|(a, b)| route(*a) == route(*b) || (first(*a) && first(*b)));
        pairs
    }

    /// Every pair, of places among the models; those that a reader asks of first come first.
    pub fn pairs(&self) -> Vec<(usize, usize)> {
        let route = |index: usize| self.models[index].alternative.route;
        let first = |index: usize| (0..index).all(|before| route(before) != route(index));
        let all = || (0..self.models.len()).flat_map(|a| (a + 1..self.models.len()).map(move |b| (a, b)));
        let routes = all().filter(|(a, b)| route(*a) != route(*b) && first(*a) && first(*b));
        let choices = all().filter(|(a, b)| route(*a) == route(*b));
        let rest = all().filter(|(a, b)| route(*a) != route(*b) && !(first(*a) && first(*b)));
        routes.chain(choices).chain(rest).collect()
    }

    /// The jobs that both of a pair can make.
    pub fn shared(&self, a: usize, b: usize) -> Vec<usize> {
        self.makers.common(&[self.places[a], self.places[b]])
    }

    /// A pair's models on the jobs both can make; none where they share no job.
    pub fn of_pair(&self, a: usize, b: usize) -> Option<(Rc<Model>, Rc<Model>)> {
        let jobs = self.shared(a, b);
        (!jobs.is_empty()).then(|| (self.model_on(self.places[a], &jobs), self.model_on(self.places[b], &jobs)))
    }

    /// The difference of two loads on the same jobs; what is too small to matter is judged per m2.
    pub fn between(&self, indicator: Indicator, first: f64, second: f64, model: &Model) -> Difference {
        Difference::between(indicator, first, second, self.m2_per(model))
    }

    /// The m2 of face that one unit of what loads are given per stands for.
    fn m2_per(&self, model: &Model) -> f64 {
        match self.per {
            Per::M2 => 1.0,
            Per::Order => model.m2.base(),
            Per::M2Year => 1.0 / model.life,
        }
    }

    /// A difference below this is too small to matter, on the lines of a model.
    pub fn matters(&self, indicator: Indicator, model: &Model) -> f64 {
        small_per_m2(indicator) * self.m2_per(model)
    }

    /// The difference b - a in an indicator, on the jobs both can make.
    pub fn difference(&self, a: usize, b: usize, indicator: Indicator) -> Option<Difference> {
        let (first, second) = self.of_pair(a, b)?;
        let load = |model: &Model| model.load(indicator, self.per).value;
        Some(self.between(indicator, load(&first), load(&second), &first))
    }

    /// How many lines some jobs stand for.
    pub fn lines_of(&self, jobs: &[usize]) -> usize {
        jobs.iter().map(|job| self.jobs[*job].lines).sum()
    }

    /// Square metres of face of some jobs.
    pub fn m2_of(&self, jobs: &[usize]) -> f64 {
        jobs.iter().fold(0.0, |sum, job| sum + square_metres(&self.jobs[*job]))
    }
}

/// Square metres of face in use of a job.
fn square_metres(job: &Job) -> f64 {
    job.line.face().base() * f64::from(job.line.quantity) * f64::from(job.line.sides)
}
