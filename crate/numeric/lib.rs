//! Arithmetic on many numbers at once: every loop that is gone through for each draw. It knows nothing of signs, units or models.
//!
//! It is a package of its own so that the page, which is built for size, has these loops built for speed (`profile.page`). So
//! whatever loops here is no generic function, and is not put in place where it is called: it would be built with whoever calls it.

mod exponential;
mod form;
mod lane;
mod layout;
mod normal;
mod order_statistics;
mod run;
mod spread;
mod stream;
mod table;
mod wide;

pub use exponential::{exp, ln};
pub use form::Form;
pub use layout::Layout;
pub use normal::{normal_quantile, normal_quantiles};
pub use order_statistics::order_statistics;
pub use run::{Load, Step, run};
pub use spread::{lognormals, triangular, triangulars, uniforms};
pub use stream::{BLOCK, Design, Stream};
pub use table::{TILE, Table};
use wide::wide;
