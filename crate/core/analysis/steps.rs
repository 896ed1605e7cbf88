//! Steps: sums of products taken apart by what their products share most (x y + x z = x (y + z)), so that
//! (1 + a)(1 + b) costs three steps again after it was multiplied out. Equal steps are one step, whoever needs them.

use std::collections::BTreeMap;

use faceload_numeric::Step;

use crate::inventory::Form;

use super::columns::ColumnId;

/// The place of a step.
pub type At = u32;

/// The step that makes 1.
pub const ONE: At = 0;

/// The place of a form of an input.
pub type FormId = u16;

/// Products with their coefficients.
pub type Terms = Vec<(Vec<FormId>, f64)>;

/// So many times what a step makes.
pub type Scaled = (At, f64);

/// Steps, each after those that it needs.
#[derive(Debug, Clone)]
pub struct Steps {
    list: Vec<Step>,
    known: BTreeMap<Step, At>,
    forms: Vec<(ColumnId, Form)>,
    /// By column, its forms.
    of_column: Vec<Vec<(Form, FormId)>>,
    /// By form, in how many products of the sum at hand it stands.
    uses: Vec<usize>,
}

impl Default for Steps {
    fn default() -> Self {
        let mut known = BTreeMap::new();
        known.insert(Step::One, ONE);
        Self { list: vec![Step::One], known, forms: Vec::new(), of_column: Vec::new(), uses: Vec::new() }
    }
}

impl Steps {
    /// Every step.
    pub fn list(&self) -> &[Step] {
        &self.list
    }

    /// The place of a form of a column.
    pub fn form(&mut self, (column, form): (ColumnId, Form)) -> FormId {
        let place = usize::from(column);
        if self.of_column.len() <= place {
            self.of_column.resize(place + 1, Vec::new());
        }
        if let Some((_, known)) = self.of_column[place].iter().find(|(known, _)| *known == form) {
            return *known;
        }
        let id = self.forms.len() as FormId;
        self.forms.push((column, form));
        self.uses.push(0);
        self.of_column[place].push((form, id));
        id
    }

    /// The steps that make a sum.
    pub fn sum(&mut self, terms: Terms) -> Scaled {
        let Some(shared) = self.most_used(&terms) else { return self.plain(terms, None) };
        let (mut with, without): (Terms, Terms) = terms.into_iter().partition(|(product, _)| product.contains(&shared));
        for (product, _) in &mut with {
            product.retain(once(shared));
        }
        let (inner, scale) = self.sum(with);
        let form = self.formed(shared);
        let product = (self.times(form, inner), scale);
        if without.is_empty() {
            product
        } else if self.most_used(&without).is_none() {
            self.plain(without, Some(product))
        } else {
            let rest = self.sum(without);
            self.added(vec![rest, product])
        }
    }

    /// The first of the forms that stand in most products; none where none stands in two.
    fn most_used(&mut self, terms: &Terms) -> Option<FormId> {
        let forms = || terms.iter().flat_map(|(product, _)| product);
        let mut most = None;
        for form in forms() {
            self.uses[usize::from(*form)] += 1;
        }
        for form in forms() {
            let uses = self.uses[usize::from(*form)];
            if uses > 1 && most.is_none_or(|(known, by)| (uses, by) > (known, *form)) {
                most = Some((uses, *form));
            }
        }
        for form in forms() {
            self.uses[usize::from(*form)] = 0;
        }
        most.map(|(_, form)| form)
    }

    /// A sum whose products share nothing, with something beside it.
    fn plain(&mut self, terms: Terms, beside: Option<Scaled>) -> Scaled {
        let mut list = Vec::with_capacity(terms.len() + 1);
        for (product, coefficient) in terms {
            let made = product.into_iter().fold(ONE, |before, form| {
                let form = self.formed(form);
                self.times(before, form)
            });
            list.push((made, coefficient));
        }
        list.extend(beside);
        self.added(list)
    }

    fn added(&mut self, list: Vec<Scaled>) -> Scaled {
        match list[..] {
            [] => (ONE, 0.0),
            [one] => one,
            _ => (self.step(Step::Sum(list.into_iter().map(|(at, by)| (at, by.to_bits())).collect())), 1.0),
        }
    }

    fn formed(&mut self, form: FormId) -> At {
        let (column, form) = self.forms[usize::from(form)];
        self.step(Step::Form(column, form))
    }

    fn times(&mut self, a: At, b: At) -> At {
        match (a, b) {
            (ONE, other) | (other, ONE) => other,
            _ => self.step(Step::Times(a.min(b), a.max(b))),
        }
    }

    fn step(&mut self, step: Step) -> At {
        if let Some(known) = self.known.get(&step) {
            return *known;
        }
        let at = self.list.len() as At;
        self.list.push(step.clone());
        self.known.insert(step, at);
        at
    }
}

/// Lets everything stay but the first of those that are equal to one.
fn once(one: FormId) -> impl FnMut(&FormId) -> bool {
    let mut gone = false;
    move |form| {
        let goes = !gone && *form == one;
        gone |= goes;
        !goes
    }
}
