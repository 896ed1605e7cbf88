//! Mass closes: what is bought is on the faces, or waste, or in the air, or down the sewer.
//!
//! Checked on the coefficients, so it holds for every value of every input, and on the central run.

use std::collections::BTreeMap;

use super::{Activity, Flow, Terms, What};

/// A material whose mass does not close.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// The material.
    pub material: String,
    /// Bought less found again, as a share of what was bought.
    pub share: f64,
}

/// How closely mass must close.
const NEARLY: f64 = 1e-9;

/// The materials, and water, that do not close.
pub fn gaps(flows: &[Flow], activity: &Activity, values: &[f64]) -> Vec<Gap> {
    let mut balance: BTreeMap<&str, (Terms, f64)> = BTreeMap::new();
    for flow in flows {
        let (name, sign) = match &flow.what {
            What::Bought(material, _) => (material.name, 1.0),
            What::OnFace(material, _)
            | What::SolidWaste(material, _)
            | What::LiquidWaste(material, _)
            | What::Evaporated(material, _)
            | What::Dried(material, _)
            | What::ToSewer(material, _)
            | What::Recycled(material, _) => (material.name, -1.0),
            What::WaterDrawn(_) => ("water", 1.0),
            What::WaterToSewer(_) => ("water", -1.0),
            _ => continue,
        };
        let (sum, largest) = balance.entry(name).or_default();
        *sum = std::mem::take(sum).plus(flow.what.terms(), sign);
        for term in &flow.what.terms().0 {
            *largest = largest.max(term.coefficient.abs());
        }
    }
    let mut gaps = Vec::new();
    for (name, (rest, largest)) in balance {
        let on_coefficients = rest.0.iter().map(|term| term.coefficient.abs()).fold(0.0, f64::max) / largest.max(f64::MIN_POSITIVE);
        let bought: f64 = flows
            .iter()
            .filter(|flow| {
                matches!(&flow.what, What::Bought(material, _) if material.name == name)
                    || (name == "water" && matches!(flow.what, What::WaterDrawn(_)))
            })
            .map(|flow| flow.what.terms().value(activity, values))
            .sum();
        let on_the_run = (rest.value(activity, values) / bought.abs().max(f64::MIN_POSITIVE)).abs();
        let share = if bought == 0.0 && rest.value(activity, values) == 0.0 { on_coefficients } else { on_coefficients.max(on_the_run) };
        if share.is_nan() || share > NEARLY {
            gaps.push(Gap { material: name.to_owned(), share });
        }
    }
    gaps
}
