//! UV lamps: mercury lamps cure UV ink; they burn while the press prints and part of its set-up,
//! since they cannot be switched on and off with each piece.
//!
//! energy = P (printing hours + idle share x set-up hours): 28.8 kW x (1.3 + 0.5 x 0.5) = 44.6 kWh.

use super::Step;
use super::press::{printing_hours, set_up_hours};
use crate::inventory::{Activity, Book, Flows, Stage, Work};
use crate::quantity::{Power, Share};

/// The lamps.
pub struct UvLamps {
    /// Whether they are LEDs, which burn only while a print passes.
    pub led: bool,
}

impl Step for UvLamps {
    fn count(&self, _: &Work<'_>, _: &mut Activity) {
        // They burn with the press.
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        if self.led {
            flows.electricity(Stage::Drying, "UV LED lamps", printing_hours(book) * book.rate::<Power>("uv.led"));
            return;
        }
        let hours = printing_hours(book) + set_up_hours(book) * book.rate::<Share>("uv.idle");
        flows.electricity(Stage::Drying, "UV lamps", hours * book.rate::<Power>("uv.lamps"));
    }
}
