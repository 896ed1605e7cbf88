//! Floor 7. Owns: alternatives on the same lines, and pairs of them.
//! Never: a single score across indicators.

mod caution;
mod compare;
mod pair;

pub use caution::Caution;
pub use compare::{CompareFault, Comparison, Dropped, compare};
pub use pair::{Difference, Verdict};
