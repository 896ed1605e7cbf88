//! Floor 6. Owns: indicators, functional unit, factors applied to flows, contributions.
//! Never: a branch on an uncertain value.

mod factor;
mod functional_unit;
mod indicator;
mod model;
mod plan;
mod shares;
mod weights;

pub use functional_unit::Per;
pub use indicator::{Amount, Indicator};
pub use model::{Model, Part};
pub use plan::{Contribution, Plan, PlanFault};
