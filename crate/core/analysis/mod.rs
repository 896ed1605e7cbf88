//! Floor 8. Owns: how far each input moves the difference of a pair.
//! Never: its own copy of the model: it asks the model for the change.

mod swing;

pub use swing::{Swing, moved, swings, swings_of};
