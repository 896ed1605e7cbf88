//! A pair in one indicator on an order that is varied: its single values and its draws.

use std::cell::OnceCell;
use std::rc::Rc;

use crate::comparison::{Comparison, compare};
use crate::factors::Tables;
use crate::load::{Indicator, Per};
use crate::order::{Boundary, Order};

use super::draws::{Kept, Settings, differences_of};
use super::finding::{Finding, finding};
use super::interval::Interval;
use super::over::Over;

/// Two alternatives, by id, and what is looked at.
#[derive(Debug, Clone)]
pub struct Pairing<'a> {
    tables: &'a Tables,
    order: Order,
    per: Per,
    boundary: Boundary,
    indicator: Indicator,
    ids: [String; 2],
    /// The order as it stands, whose plans serve wherever only its lines are varied.
    planned: Rc<OnceCell<Option<Comparison>>>,
}

/// A pair at one value.
#[derive(Debug, Clone)]
pub struct PairPoint {
    /// The first's load, every input at its median.
    pub first: f64,
    /// The second's.
    pub second: f64,
    /// Second less first, draw by draw.
    pub differences: Vec<f64>,
    /// A difference below this is too small to matter.
    pub matters: f64,
}

impl PairPoint {
    /// Second less first, every input at its median.
    pub fn difference(&self) -> f64 {
        self.second - self.first
    }

    /// What the draws say.
    pub fn finding(&self) -> Finding {
        finding(&Interval::of(&self.differences), self.first.min(self.second), self.matters)
    }
}

impl<'a> Pairing<'a> {
    /// A pair of a comparison's alternatives.
    pub fn of(tables: &'a Tables, comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Self {
        let id = |place: usize| comparison.models[place].alternative.id.clone();
        let ids = [id(a), id(b)];
        let mut order = comparison.order.clone();
        // Only these two, and whoever makes lines for them.
        let mut wanted: Vec<String> = ids.to_vec();
        let mut place = 0;
        while let Some(id) = wanted.get(place) {
            let instead = order.alternatives.iter().find(|one| one.id == *id).and_then(|one| one.otherwise.clone());
            wanted.extend(instead.filter(|id| !wanted.contains(id)));
            place += 1;
        }
        order.alternatives.retain(|alternative| wanted.contains(&alternative.id));
        Self { tables, order, per: comparison.per, boundary: comparison.boundary, indicator, ids, planned: Rc::default() }
    }

    /// The same pair in another indicator.
    pub fn in_indicator(&self, indicator: Indicator) -> Self {
        Self { indicator, ..self.clone() }
    }

    /// The order as it stands.
    pub fn order(&self) -> &Order {
        &self.order
    }

    /// What loads are given per, and which is looked at.
    pub fn looked_at(&self) -> (Per, Indicator) {
        (self.per, self.indicator)
    }

    /// The comparison with something varied, and the places of the two in it.
    fn compared(&self, varied: &[(&Over, f64)]) -> Option<(Comparison, usize, usize)> {
        let mut order = self.order.clone();
        let mut per = self.per;
        for (over, value) in varied {
            order = over.applied(&order, *value, &self.ids[1]);
            per = over.per(per);
        }
        let comparison = if varied.iter().all(|(over, _)| over.is_of_lines()) {
            let planned = self.planned.get_or_init(|| compare(self.tables, &self.order, self.per, self.boundary).ok());
            planned.as_ref()?.on_lines_of(order)
        } else {
            compare(self.tables, &order, per, self.boundary)
        };
        let comparison = comparison.ok()?;
        let place = |id: &str| comparison.models.iter().position(|model| model.alternative.id == id);
        let (a, b) = (place(&self.ids[0])?, place(&self.ids[1])?);
        Some((comparison, a, b))
    }

    /// Both loads with every input at its median; none where the two share no line then.
    pub fn single(&self, over: &Over, value: f64) -> Option<(f64, f64)> {
        let (comparison, a, b) = self.compared(&[(over, value)])?;
        let difference = comparison.difference(a, b, self.indicator)?;
        Some((difference.first, difference.second))
    }

    /// The pair with one thing varied.
    pub fn at(&self, over: &Over, value: f64, settings: Settings, kept: &mut Kept) -> Option<PairPoint> {
        self.varied(&[(over, value)], settings, kept)
    }

    /// The pair with several things varied.
    pub fn varied(&self, varied: &[(&Over, f64)], settings: Settings, kept: &mut Kept) -> Option<PairPoint> {
        let (comparison, a, b) = self.compared(varied)?;
        let difference = comparison.difference(a, b, self.indicator)?;
        let (first, second) = comparison.of_pair(a, b)?;
        let differences = differences_of([&first, &second], self.indicator, comparison.per, settings, kept);
        let matters = comparison.matters(self.indicator, &first);
        Some(PairPoint { first: difference.first, second: difference.second, differences, matters })
    }
}
