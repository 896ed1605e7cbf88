//! Floor 4. Owns: the process steps, one file each: what it counts and what it makes flow.
//! Never: a route's name.

pub mod air;
mod blank;
mod copy;
mod film;
mod layer;
mod plotter;
mod racks;
mod cleaner;
mod delivery;
mod inkjet;
mod laminating;
mod oven;
mod press;
mod roll_layout;
mod screen_ink;
mod screen_making;
mod screens;
mod sheeting;
mod uv_lamps;
mod wash_up;
mod wipe;

pub use blank::BlankMaking;
pub use copy::CopyApplied;
pub use delivery::{Delivery, Visits};
pub use film::FilmLaid;
pub use inkjet::Inkjet;
pub use laminating::Laminating;
pub use oven::Oven;
pub use plotter::Plotter;
pub use press::Press;
pub use racks::Racks;
pub use roll_layout::{Laid, Piece as LayoutPiece, lay, lay_faces};
pub use screen_ink::{MESH_ROWS, ScreenInk, open_area, theoretical_volume};
pub use screen_making::ScreenMaking;
pub use sheeting::SheetingCut;
pub use uv_lamps::UvLamps;
pub use wash_up::WashUp;
pub use wipe::Wipe;

use crate::inventory::{Activity, Book, Flows, Formula, Work};
use crate::order::Ink;
use crate::quantity::Time;

/// The hours in which solvent leaves the prints: those of the press, or of the printer.
pub fn printing_time(book: &Book, press: bool, ink: Ink) -> Formula<Time> {
    if press { press::printing_hours(book) } else { inkjet::printing_hours(book, ink) }
}

/// A process step.
pub trait Step {
    /// Counts what a job asks of the step; facts and layout only.
    fn count(&self, work: &Work<'_>, activity: &mut Activity);

    /// Adds the step's flows, as formulas in the counts and the inputs.
    fn flows(&self, book: &Book, flows: &mut Flows);
}
