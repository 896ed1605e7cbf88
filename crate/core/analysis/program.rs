//! A program: many sums of products, each shared part worked out once, 40 draws at a time.
//!
//! A sum is taken apart by what its products share most (x y + x z = x (y + z)), so that (1 + a)(1 + b) costs three
//! steps again after it was multiplied out. Equal steps are one step, whoever needs them.

use std::collections::BTreeMap;

use super::sum::{ColumnId, Flow, Sum, Way};

/// Draws worked on at once.
pub const LANES: usize = 40;

/// A step's place.
type At = u32;

/// One step: what it makes from steps before it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Step {
    /// A column.
    Drawn(ColumnId),
    /// 1/x.
    Reciprocal(At),
    /// 1/(1 + scale x), the scale by its bits.
    PerOnePlus(At, u64),
    /// The product of two.
    Times(At, At),
    /// A constant and multiples of steps, coefficients by their bits.
    Sum(u64, Vec<(u64, At)>),
}

/// Steps in an order in which they can be taken, and which of them are wanted.
#[derive(Debug, Clone, Default)]
pub struct Program {
    steps: Vec<Step>,
    known: BTreeMap<Step, At>,
    outputs: Vec<At>,
}

impl Program {
    /// Adds an output: the sum of flows.
    pub fn push(&mut self, flows: &[Flow]) {
        let mut sum = Vec::new();
        for flow in flows {
            let amount = self.factored(&flow.amount);
            let factor = self.factored(&flow.factor);
            let product = self.step(Step::Times(amount.min(factor), amount.max(factor)));
            sum.push((flow.by.to_bits(), product));
        }
        let output = self.step(Step::Sum(0.0_f64.to_bits(), sum));
        self.outputs.push(output);
    }

    /// How many outputs it has.
    pub fn outputs(&self) -> usize {
        self.outputs.len()
    }

    /// How many steps it takes.
    pub fn steps(&self) -> usize {
        self.steps.len()
    }

    fn step(&mut self, step: Step) -> At {
        if let Some(known) = self.known.get(&step) {
            return *known;
        }
        let at = self.steps.len() as At;
        self.steps.push(step.clone());
        self.known.insert(step, at);
        at
    }

    /// The step that makes a sum.
    fn factored(&mut self, sum: &Sum) -> At {
        let terms = sum.0.iter().map(|(product, coefficient)| (product.clone(), *coefficient)).collect();
        self.taken_apart(terms)
    }

    fn taken_apart(&mut self, terms: Vec<(Vec<(ColumnId, Way)>, f64)>) -> At {
        let mut uses: BTreeMap<(ColumnId, Way), usize> = BTreeMap::new();
        for one in terms.iter().flat_map(|(product, _)| product) {
            *uses.entry(*one).or_insert(0) += 1;
        }
        // The first of those used most.
        let most = uses.iter().fold(None, |most: Option<(&(ColumnId, Way), usize)>, (one, uses)| match most {
            Some((_, known)) if known >= *uses => most,
            _ => Some((one, *uses)),
        });
        if let Some((shared, uses)) = most.filter(|(_, uses)| *uses > 1) {
            let shared = *shared;
            debug_assert!(uses > 1);
            let (with, mut rest): (Vec<_>, Vec<_>) = terms.into_iter().partition(|(product, _)| product.contains(&shared));
            let with =
                with.into_iter().map(|(product, coefficient)| (product.into_iter().filter(|one| *one != shared).collect(), coefficient));
            let inner = self.taken_apart(with.collect());
            let x = self.way(shared);
            let product = self.step(Step::Times(x.min(inner), x.max(inner)));
            if rest.is_empty() {
                return product;
            }
            // What is left is a sum of its own, with the product beside it.
            let (constant, mut list) = self.plain(&mut rest);
            list.push((1.0_f64.to_bits(), product));
            return self.step(Step::Sum(constant, list));
        }
        let (constant, list) = self.plain(&mut terms.clone());
        self.step(Step::Sum(constant, list))
    }

    /// The constant of some terms and the steps of the others.
    fn plain(&mut self, terms: &mut Vec<(Vec<(ColumnId, Way)>, f64)>) -> (u64, Vec<(u64, At)>) {
        let mut constant = 0.0;
        terms.retain(|(product, coefficient)| {
            if product.is_empty() {
                constant += coefficient;
            }
            !product.is_empty()
        });
        let mut uses: BTreeMap<(ColumnId, Way), usize> = BTreeMap::new();
        for one in terms.iter().flat_map(|(product, _)| product) {
            *uses.entry(*one).or_insert(0) += 1;
        }
        if uses.values().any(|uses| *uses > 1) {
            let inner = self.taken_apart(std::mem::take(terms));
            return (constant.to_bits(), vec![(1.0_f64.to_bits(), inner)]);
        }
        let mut list = Vec::new();
        for (product, coefficient) in terms.iter() {
            let mut at = None;
            for one in product {
                let x = self.way(*one);
                at = Some(match at {
                    None => x,
                    Some(before) => self.step(Step::Times(x.min(before), x.max(before))),
                });
            }
            list.extend(at.map(|at| (coefficient.to_bits(), at)));
        }
        (constant.to_bits(), list)
    }

    fn way(&mut self, (column, way): (ColumnId, Way)) -> At {
        let x = self.step(Step::Drawn(column));
        match way {
            Way::PerOnePlus(scale) => self.step(Step::PerOnePlus(x, scale)),
            Way::PerOneMinus(scale) => self.step(Step::PerOnePlus(x, (-f64::from_bits(scale)).to_bits())),
            Way::Power(power) => {
                let mut at = x;
                for _ in 1..power.unsigned_abs() {
                    at = self.step(Step::Times(x, at));
                }
                if power < 0 { self.step(Step::Reciprocal(at)) } else { at }
            }
        }
    }

    /// The program as it is run: each step's place in a small store, used again once free.
    pub fn ready(&self) -> Ready {
        let mut last = vec![0; self.steps.len()];
        for (place, step) in self.steps.iter().enumerate() {
            step.inputs(|input| last[input as usize] = place);
        }
        for output in &self.outputs {
            last[*output as usize] = usize::MAX;
        }
        let mut slot = vec![0_u32; self.steps.len()];
        let mut free: Vec<u32> = Vec::new();
        let mut slots = 0;
        let mut moves = Vec::new();
        for (place, step) in self.steps.iter().enumerate() {
            let mut ended = Vec::new();
            step.inputs(|input| {
                if last[input as usize] == place && !ended.contains(&slot[input as usize]) {
                    ended.push(slot[input as usize]);
                }
            });
            // Its own slot is never one of its inputs'.
            let own = free.pop().unwrap_or_else(|| {
                slots += 1;
                slots - 1
            });
            slot[place] = own;
            free.extend(ended);
            moves.push(step.moved(own, &slot));
        }
        Ready { moves, slots: slots as usize, outputs: self.outputs.iter().map(|output| slot[*output as usize]).collect() }
    }
}

impl Step {
    fn inputs(&self, mut each: impl FnMut(At)) {
        match self {
            Self::Drawn(_) => {}
            Self::Reciprocal(a) | Self::PerOnePlus(a, _) => each(*a),
            Self::Times(a, b) => {
                each(*a);
                each(*b);
            }
            Self::Sum(_, list) => list.iter().for_each(|(_, at)| each(*at)),
        }
    }

    fn moved(&self, own: u32, slot: &[u32]) -> Move {
        let of = |at: &At| slot[*at as usize];
        match self {
            Self::Drawn(column) => Move::Drawn(own, *column),
            Self::Reciprocal(a) => Move::Reciprocal(own, of(a)),
            Self::PerOnePlus(a, scale) => Move::PerOnePlus(own, of(a), f64::from_bits(*scale)),
            Self::Times(a, b) => Move::Times(own, of(a), of(b)),
            Self::Sum(constant, list) => {
                Move::Sum(own, f64::from_bits(*constant), list.iter().map(|(by, at)| (f64::from_bits(*by), of(at))).collect())
            }
        }
    }
}

/// A step with the places it reads and writes.
#[derive(Debug, Clone)]
enum Move {
    Drawn(u32, ColumnId),
    Reciprocal(u32, u32),
    PerOnePlus(u32, u32, f64),
    Times(u32, u32, u32),
    Sum(u32, f64, Vec<(f64, u32)>),
}

/// A program that can be run.
#[derive(Debug, Clone)]
pub struct Ready {
    moves: Vec<Move>,
    slots: usize,
    outputs: Vec<u32>,
}

type Lanes = [f64; LANES];

impl Ready {
    /// Works out every output for the draws of the columns, all of one length; `out` is one output after another.
    pub fn run(&self, columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
        let mut store = vec![[0.0; LANES]; self.slots];
        for first in (0..draws).step_by(LANES) {
            let wide = LANES.min(draws - first);
            for step in &self.moves {
                step.take(&mut store, columns, first, wide);
            }
            for (output, slot) in out.iter_mut().zip(&self.outputs) {
                output.extend_from_slice(&store[*slot as usize][..wide]);
            }
        }
    }
}

impl Move {
    fn take(&self, store: &mut [Lanes], columns: &[&[f64]], first: usize, wide: usize) {
        match self {
            Self::Drawn(own, column) => {
                store[*own as usize][..wide].copy_from_slice(&columns[usize::from(*column)][first..first + wide]);
            }
            Self::Reciprocal(own, a) => {
                let a = store[*a as usize];
                for (x, a) in store[*own as usize].iter_mut().zip(a) {
                    *x = 1.0 / a;
                }
            }
            Self::PerOnePlus(own, a, scale) => {
                let a = store[*a as usize];
                for (x, a) in store[*own as usize].iter_mut().zip(a) {
                    *x = 1.0 / (1.0 + scale * a);
                }
            }
            Self::Times(own, a, b) => {
                let (a, b) = (store[*a as usize], store[*b as usize]);
                for ((x, a), b) in store[*own as usize].iter_mut().zip(a).zip(b) {
                    *x = a * b;
                }
            }
            Self::Sum(own, constant, list) => {
                let mut sum = [*constant; LANES];
                for (by, at) in list {
                    for (sum, x) in sum.iter_mut().zip(&store[*at as usize]) {
                        *sum += by * x;
                    }
                }
                store[*own as usize] = sum;
            }
        }
    }
}
