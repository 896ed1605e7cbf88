//! Press: prints one colour a pass; set-up per colour and run.
//!
//! hours = [N C (1 + rho) + make-ready pieces]/rate + set-ups x set-up time; 100 faces of one
//! colour with 2 % spoilage and 2 make-ready pieces: 104/80 + 0.5 = 1.8 h, 3.6 kWh at 2 kW.

use super::screens::{PRINTING, plain, set_up};
use super::{Step, air};
use crate::inventory::{Activity, Book, Flows, Formula, Stage, Work};
use crate::quantity::{AirFlow, Per, Piece, Power, Share, Time};

/// The press.
pub struct Press;

/// Impressions: faces and colours, spoiled and make-ready ones included.
pub(super) fn impressions(book: &Book) -> Formula<Piece> {
    PRINTING.number.counted() * book.rate::<Share>("screen.spoilage").more() + plain(set_up()) * book.rate::<Piece>("screen.make-ready")
}

/// The hours in which it prints.
pub(super) fn printing_hours(book: &Book) -> Formula<Time> {
    impressions(book) / book.rate::<Per<Piece, Time>>("screen.print-rate")
}

/// The hours in which it is set up.
pub(super) fn set_up_hours(book: &Book) -> Formula<Time> {
    plain(set_up()) * book.rate::<Time>("screen.set-up")
}

impl Step for Press {
    fn count(&self, _: &Work<'_>, _: &mut Activity) {
        // Screens count what the press prints.
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let hours = printing_hours(book) + set_up_hours(book);
        let racked = impressions(book) * book.rate::<Per<Time, Piece>>("labour.racking");
        flows.attend("setting up, printing and racking", hours.clone() + racked);
        flows.electricity(Stage::Imaging, "press", hours.clone() * book.rate::<Power>("screen.press-power"));
        air::ventilate(book, flows, "screen room", hours * book.rate::<AirFlow>("air.screen-room"));
    }
}
