//! Floor 8. Owns: paired draws and what they say, how far each input moves the difference of a pair.
//! Never: its own copy of the model: it asks the model for its products.

mod column;
mod draws;
mod elasticity;
mod finding;
mod interval;
mod moments;
mod program;
mod stream;
mod sum;
mod swing;
mod variance;

pub use column::{Drawn, Shape};
pub use draws::{Draws, Kept, NUMBERS, PairDraws, Settings};
pub use elasticity::{elasticities, elasticity_of, gradient};
pub use finding::{Finding, PairSpread, finding};
pub use interval::{Interval, quantiles, rank_shares, share_above_zero, wilson};
pub use moments::mean;
pub use program::Program;
pub use stream::{BLOCK, Design, Stream};
pub use sum::{ColumnId, Columns, Product, Sum, Way, flows, load};
pub use swing::{Swing, moved, swings, swings_of};
pub use variance::{Moments, Variance};
