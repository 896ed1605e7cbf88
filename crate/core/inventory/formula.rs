//! Formulas: sums of products of measures and inputs, typed by what they come to.
//!
//! A step writes `PRINTED.counted() * book.rate("screen.ink.volume.transparent")` and gets a
//! formula whose value is a volume of ink; the compiler refuses to add it to a mass. The same
//! formula gives the value, its arithmetic in words, and how far each input moves it, so that there
//! is one model and no copy of it. No branch, `min`, `max` or `ceil` ever touches an input.

use std::marker::PhantomData;
use std::ops::{Add, Div, Mul, Sub};

use faceload_numeric::Form;

use super::{Activity, InputId};
use crate::few_in_order;
use crate::quantity::{Kind, Share};

/// A measure in a formula.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Symbol {
    /// A number made of the name, so that names need not be compared letter by letter.
    pub(super) mark: u32,
    /// What is counted.
    pub name: &'static str,
    /// The unit of its base.
    pub unit: &'static str,
    /// Whether of the lines made for stock.
    pub stock: bool,
}

impl Symbol {
    /// The symbol of a measure.
    pub const fn new(name: &'static str, unit: &'static str, stock: bool) -> Self {
        // FNV-1a; two names of one mark are still told apart by their letters.
        let (bytes, mut mark, mut at) = (name.as_bytes(), 0x811c_9dc5_u32, 0);
        while at < bytes.len() {
            mark = (mark ^ bytes[at] as u32).wrapping_mul(0x0100_0193);
            at += 1;
        }
        Self { mark, name, unit, stock }
    }
}

impl Symbol {
    /// Whether it is the same symbol; the mark and the name's place in memory tell nearly always.
    pub(super) fn is(&self, other: Self) -> bool {
        self.mark == other.mark && self.stock == other.stock && (std::ptr::eq(self.name, other.name) || self.name == other.name)
    }
}

/// One product.
#[derive(Debug, Clone, PartialEq)]
pub struct Term {
    /// A plain number: conversions, small whole numbers.
    pub coefficient: f64,
    /// At most one measure, so that the formula is linear in the order.
    pub measure: Option<Symbol>,
    /// The inputs, sorted.
    pub inputs: Vec<(InputId, Form)>,
}

impl Term {
    /// The product's value.
    pub fn value(&self, activity: &Activity, values: &[f64]) -> f64 {
        let counted = self.measure.map_or(self.coefficient, |symbol| self.coefficient * activity.count(symbol));
        self.times_inputs(counted, values)
    }

    /// What one of its measure adds.
    pub fn rate(&self, values: &[f64]) -> f64 {
        self.times_inputs(self.coefficient, values)
    }

    fn times_inputs(&self, number: f64, values: &[f64]) -> f64 {
        self.inputs.iter().fold(number, |product, (id, form)| product * form.at(values[id.index()]))
    }

    fn same_product(&self, other: &Self) -> bool {
        self.measure == other.measure && self.inputs == other.inputs
    }

    fn times(&self, other: &Self) -> Self {
        debug_assert!(self.measure.is_none() || other.measure.is_none(), "a product of two measures is not linear in the order");
        let mut inputs = self.inputs.clone();
        for (id, form) in &other.inputs {
            let twin = inputs.iter_mut().find(|(known, form)| known == id && matches!(form, Form::Power(_)));
            match (twin, form) {
                (Some((_, Form::Power(power))), Form::Power(more)) => *power += more,
                _ => inputs.push((*id, *form)),
            }
        }
        inputs.retain(|(_, form)| *form != Form::Power(0));
        few_in_order(&mut inputs);
        Self { coefficient: self.coefficient * other.coefficient, measure: self.measure.or(other.measure), inputs }
    }
}

/// A sum of products, without its type.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Terms(pub Vec<Term>);

impl Terms {
    /// The sum's value.
    pub fn value(&self, activity: &Activity, values: &[f64]) -> f64 {
        self.0.iter().fold(0.0, |sum, term| sum + term.value(activity, values))
    }

    /// Whether an input stands in it.
    pub fn holds(&self, id: InputId) -> bool {
        self.0.iter().any(|term| term.inputs.iter().any(|(known, _)| *known == id))
    }

    fn push(&mut self, term: Term) {
        match self.0.iter_mut().find(|known| known.same_product(&term)) {
            Some(known) => known.coefficient += term.coefficient,
            None => self.0.push(term),
        }
    }

    pub(super) fn plus(mut self, other: &Self, sign: f64) -> Self {
        for term in &other.0 {
            self.push(Term { coefficient: sign * term.coefficient, ..term.clone() });
        }
        self
    }

    fn times(&self, other: &Self) -> Self {
        let mut product = Self::default();
        for left in &self.0 {
            for right in &other.0 {
                product.push(left.times(right));
            }
        }
        product
    }

    /// The same formula for the lines made for stock.
    pub(super) fn of_stock(&self) -> Self {
        let terms = self.0.iter().map(|term| Term { measure: term.measure.map(|symbol| Symbol { stock: true, ..symbol }), ..term.clone() });
        Self(terms.collect())
    }
}

/// A formula whose value is a `Q`.
#[derive(Debug, Clone)]
pub struct Formula<Q> {
    terms: Terms,
    kind: PhantomData<fn() -> Q>,
}

/// One input, typed.
#[derive(Debug, Clone, Copy)]
pub struct Rate<Q> {
    id: InputId,
    kind: PhantomData<fn() -> Q>,
}

impl<Q: Kind> Rate<Q> {
    pub(super) fn new(id: InputId) -> Self {
        Self { id, kind: PhantomData }
    }

    fn as_form(self, form: Form) -> Terms {
        Terms(vec![Term { coefficient: 1.0, measure: None, inputs: vec![(self.id, form)] }])
    }

    /// The input as a formula.
    pub fn formula(self) -> Formula<Q> {
        Formula::of(self.as_form(Form::Power(1)))
    }
}

impl Rate<Share> {
    /// 1 + x.
    pub fn more(self) -> Formula<Share> {
        Formula::one() + self.formula()
    }

    /// 1 - x.
    pub fn rest(self) -> Formula<Share> {
        Formula::one() - self.formula()
    }

    /// 1/(1 + x).
    pub fn per_one_plus(self) -> Formula<Share> {
        Formula::of(self.as_form(Form::PerOnePlus))
    }

    /// 1/(1 - x).
    pub fn per_one_minus(self) -> Formula<Share> {
        Formula::of(self.as_form(Form::PerOneMinus))
    }
}

impl Formula<Share> {
    /// One.
    pub fn one() -> Self {
        Self::of(Terms(vec![Term { coefficient: 1.0, measure: None, inputs: Vec::new() }]))
    }
}

impl<Q: Kind> Formula<Q> {
    fn of(terms: Terms) -> Self {
        Self { terms, kind: PhantomData }
    }

    pub(crate) fn of_terms(terms: Terms) -> Self {
        Self::of(terms)
    }

    /// Nothing.
    pub fn zero() -> Self {
        Self::of(Terms::default())
    }

    pub(super) fn measure(symbol: Symbol) -> Self {
        Self::of(Terms(vec![Term { coefficient: 1.0, measure: Some(symbol), inputs: Vec::new() }]))
    }

    /// A fixed quantity.
    pub fn fixed(quantity: Q) -> Self {
        Self::of(Terms(vec![Term { coefficient: quantity.base(), measure: None, inputs: Vec::new() }]))
    }

    /// So many times as much.
    pub fn times(mut self, factor: f64) -> Self {
        for term in &mut self.terms.0 {
            term.coefficient *= factor;
        }
        self
    }

    /// The same number under another kind: only for the few conversions that have a name.
    pub(crate) fn retyped<R: Kind>(self, factor: f64) -> Formula<R> {
        Formula::of(self.times(factor).terms)
    }

    /// The mass of a gas per something as CO2e per the same thing.
    pub(crate) fn converted<R: Kind>(self, potential: Formula<crate::quantity::Co2ePerKg>) -> Formula<R> {
        debug_assert!(
            R::EXPONENTS.iter().zip(Q::EXPONENTS).zip(crate::quantity::Co2ePerKg::EXPONENTS).all(|((r, q), p)| *r == q + p),
            "kinds must multiply"
        );
        Formula::of(self.terms.times(&potential.terms))
    }

    /// The terms, without their type.
    pub fn terms(&self) -> &Terms {
        &self.terms
    }

    /// The terms, without their type.
    pub fn into_terms(self) -> Terms {
        self.terms
    }

    /// With what is made for stock, of which a share is never used: `made` is 1/(1 - share).
    pub fn stocked(self, made: &Formula<Share>) -> Self {
        let stock = self.terms.of_stock().times(&made.terms);
        Self::of(self.terms.plus(&stock, 1.0))
    }

    /// The value.
    pub fn value(&self, activity: &Activity, values: &[f64]) -> Q {
        Q::from_base(self.terms.value(activity, values))
    }
}

impl<Q: Kind> Add for Formula<Q> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::of(self.terms.plus(&other.terms, 1.0))
    }
}

impl<Q: Kind> Sub for Formula<Q> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::of(self.terms.plus(&other.terms, -1.0))
    }
}

impl<A: Kind + Mul<B, Output: Kind>, B: Kind> Mul<Formula<B>> for Formula<A> {
    type Output = Formula<A::Output>;
    fn mul(self, other: Formula<B>) -> Self::Output {
        Formula::of(self.terms.times(&other.terms))
    }
}

impl<A: Kind + Mul<B, Output: Kind>, B: Kind> Mul<Rate<B>> for Formula<A> {
    type Output = Formula<A::Output>;
    fn mul(self, rate: Rate<B>) -> Self::Output {
        self * rate.formula()
    }
}

impl<A: Kind + Mul<B, Output: Kind>, B: Kind> Mul<Rate<B>> for Rate<A> {
    type Output = Formula<A::Output>;
    fn mul(self, rate: Rate<B>) -> Self::Output {
        self.formula() * rate.formula()
    }
}

impl<A: Kind + Div<B, Output: Kind>, B: Kind> Div<Rate<B>> for Formula<A> {
    type Output = Formula<A::Output>;
    fn div(self, rate: Rate<B>) -> Self::Output {
        Formula::of(self.terms.times(&rate.as_form(Form::Power(-1))))
    }
}
