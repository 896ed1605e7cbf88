//! Floor 2. Owns: the work order as facts; shapes, colours, blanks, sign codes, demo orders.
//! Never: uncertain values.

mod alternative;
mod colour;
pub mod demo;
mod document;
mod fault;
mod fields;
mod job;
mod line;
mod measured;
mod read;
pub mod rows;
mod shape;
mod site;
mod strict;

pub use alternative::{Alternative, DRYINGS, Drying, Ink, Liner, Mesh, Override, RouteName, default_alternatives, inks};
pub use colour::Colour;
pub use document::Document;
pub use fault::OrderFault;
pub(crate) use fields::offer;
pub use job::{Job, jobs};
pub use line::{Base, Blank, Line, Sheeting};
pub(crate) use measured::read_with_unit;
pub use read::{Boundary, EndOfLife, Order};
pub use shape::Shape;
pub use site::{GwpSet, Site};
