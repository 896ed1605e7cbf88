//! Floor 6. Owns: indicators, functional unit, factors applied to flows, contributions.
//! Never: a branch on an uncertain value.

mod composition;
mod factor;
mod functional_unit;
mod indicator;
mod model;
mod plan;
mod weights;

pub use factor::emission;
pub use functional_unit::Per;
pub use indicator::{Amount, Indicator};
pub use model::{Model, Part};
pub use plan::{Contribution, Plan, PlanFault};
