//! Floor 7. Owns: alternatives on the same lines, and pairs of them.
//! Never: a single score across indicators.

mod caution;
mod compare;
mod effort;
mod fault;
mod makers;
mod pair;

pub use caution::Caution;
pub use compare::{Comparison, compare};
pub use effort::{Effort, effort};
pub use fault::CompareFault;
pub use makers::{Dropped, Makers};
pub use pair::{Difference, SMALL_SHARE, Verdict, small_per_m2};
