//! Floor 3. Owns: activity, stages, flows as formulas in the inputs, and that mass closes.
//! Never: factors applied.

mod activity;
mod book;
mod closure;
mod flow;
mod formula;
mod material;
mod named_solvent;
mod stage;
mod work;

pub use activity::{Activity, Measure};
pub use book::{Book, InputId};
pub use closure::{Gap, gaps};
pub use faceload_numeric::Form;
pub use flow::{Flow, Flows, Per, What};
pub use formula::{Formula, Rate, Symbol, Term, Terms};
pub use material::{Material, Part};
pub use stage::Stage;
pub use work::{Layout, Printed, Work};
