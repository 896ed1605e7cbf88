//! Floor 8. Owns: paired draws and what they say, how far each input moves the difference of a pair.
//! Never: its own copy of the model: it asks the model for its products.

mod break_even;
mod column;
mod columns;
mod draws;
mod drivers;
mod elasticity;
mod finding;
mod interval;
mod map;
mod mixed;
mod moments;
mod over;
mod pair_draws;
mod program;
mod root;
mod steps;
mod sum;
mod swing;
mod switches;
mod variance;

pub use break_even::{BreakEven, Crossing, Point, break_even};
pub use column::{Drawn, Shape};
pub use columns::{ColumnId, Columns};
pub use draws::{Draws, Kept, NUMBERS, PairDraws, SCANNED, Settings};
pub use drivers::{Driver, Drivers, Weak, drivers};
pub use elasticity::{elasticities, elasticity_of, gradient};
pub use finding::{Finding, PairSpread, finding};
pub use interval::{Interval, quantiles, rank_shares, share_above_zero, share_below, wilson};
pub use map::{Cell, Map, map};
pub use mixed::{Chosen, Mixed, mixed};
pub use moments::mean;
pub use over::{Axis, Over, PALETTE, POINTS, Unvaried};
pub use pair_draws::{PairPoint, Pairing};
pub use program::Program;
pub use root::{Itp, itp};
pub use sum::{Product, Sum, load};
pub use swing::{Swing, swings, swings_of};
pub use switches::{Switched, switches, switches_in};
pub use variance::{Moments, Variance};

pub use faceload_numeric::{BLOCK, Design, Stream};
