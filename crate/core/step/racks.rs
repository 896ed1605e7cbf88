//! Racks: prints dry in moving air for hours; they stand outside press hours, so their air is added.
//!
//! air = area x passes x q x time: 4 m3/h per m2 for 16 h.

use super::oven::dried;
use super::{Step, air};
use crate::inventory::{Activity, Book, Flows, Work};
use crate::quantity::{AirFlow, FaceArea, Per, Time};

/// The racks.
pub struct Racks;

impl Step for Racks {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        super::oven::count(work, activity);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let air = dried(book) * book.rate::<Per<AirFlow, FaceArea>>("rack.air") * book.rate::<Time>("rack.time");
        air::ventilate(book, flows, "drying racks", air);
    }
}
