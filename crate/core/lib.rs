//! Everything that computes: from a work order to a comparison of the ways to make its sign faces.
//!
//! One direction; each floor uses lower floors only, and a test reads the `use` lines to see to it.
//!
//! ```text
//! order -> activity -> inventory -> load -> comparison -> analysis
//! ```
//!
//! No files, no clock, no environment, no printing, no drawing.
//!
//! ```
//! use faceload_core::{comparison::compare, factors::Tables, load::{Indicator, Per}, order::{Boundary, Document, Order, demo}};
//! let tables = Tables::embedded().unwrap();
//! let demo = demo::find("stop").unwrap();
//! let order = Order::read(Document::json(demo.name, demo.text).unwrap(), &tables).unwrap();
//! let comparison = compare(&tables, &order, Per::M2, Boundary::Face).unwrap();
//! let screen = comparison.model("screen").unwrap().load(Indicator::Co2e, Per::M2);
//! assert!(screen.value > 1.0 && screen.value < 8.0);
//! ```

#[macro_use]
extern crate uom;

pub mod quantity;
pub mod factors;
pub mod order;
pub mod inventory;
pub mod step;
pub mod route;
pub mod load;
pub mod comparison;
pub mod analysis;

mod in_order;
pub(crate) use in_order::few_in_order;
pub use in_order::in_order;
