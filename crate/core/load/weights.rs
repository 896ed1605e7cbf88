//! Weights: what one unit of each measure loads in each indicator, every input at its value.
//!
//! A load is linear in the order, so the sum over all flows, products and factors collapses to one
//! number per measure and indicator. An edit of the order redoes these few products only.

use std::collections::BTreeMap;

use super::{Contribution, Indicator};
use crate::inventory::{Activity, Stage, Symbol};

/// Loads by indicator: of the first set of faces, and of the visits to it.
pub(super) type Loads = [[f64; 2]; Indicator::ALL.len()];

/// The weights of one plan.
#[derive(Debug)]
pub(super) struct Weights(Vec<(Symbol, Loads)>);

impl Weights {
    /// Collapses contributions.
    pub fn of(contributions: &[Contribution], values: &[f64]) -> Self {
        let nothing = Activity::default();
        let mut weights: BTreeMap<Symbol, Loads> = BTreeMap::new();
        for one in contributions {
            let factor = one.factor.value(&nothing, values);
            for term in &one.amount.0 {
                let Some(symbol) = term.measure else { continue };
                let rate = term.rate(values);
                let loads = weights.entry(symbol).or_insert([[0.0; 2]; Indicator::ALL.len()]);
                loads[one.indicator as usize][usize::from(one.stage == Stage::Service)] += rate * factor;
            }
        }
        Self(weights.into_iter().collect())
    }

    /// The loads of what was counted, for the whole order.
    pub fn loads(&self, activity: &Activity) -> Loads {
        let mut sums = [[0.0; 2]; Indicator::ALL.len()];
        for (symbol, count) in activity.counts() {
            if let Ok(at) = self.0.binary_search_by(|(known, _)| known.cmp(symbol)) {
                for (sum, weight) in sums.iter_mut().zip(&self.0[at].1) {
                    sum[0] += count * weight[0];
                    sum[1] += count * weight[1];
                }
            }
        }
        sums
    }
}
