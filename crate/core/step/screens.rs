//! Screens: one per colour and run; made new, or kept for the next run of a standard code.
//!
//! mesh coated per screen A_s = (W + 2m)(H + 2m), with the ink-well margin m: a 30 in sign with
//! 0.12 m takes 1.004 m2. Of a kept screen each run bears one of so many makings and reclaims.

use crate::inventory::{Activity, Book, Formula, Measure, Work};
use crate::quantity::{Area, Length, Piece, Share, of};

/// Screens of one kind: their image, half their edges, their number.
pub(super) struct Screens {
    pub image: Measure<Area>,
    pub edge: Measure<Length>,
    pub number: Measure<Piece>,
}

pub(super) const NEW: Screens = Screens {
    image: Measure::new("image of screens made new", "m2"),
    edge: Measure::new("width and height of screens made new", "m"),
    number: Measure::new("screens made new", "pieces"),
};

pub(super) const KEPT: Screens = Screens {
    image: Measure::new("image of kept screens set up", "m2"),
    edge: Measure::new("width and height of kept screens set up", "m"),
    number: Measure::new("kept screens set up", "pieces"),
};

/// The screens once for every face they print.
pub(super) const PRINTING: Screens = Screens {
    image: Measure::new("image printed, every impression", "m2"),
    edge: Measure::new("width and height printed, every impression", "m"),
    number: Measure::new("impressions", "pieces"),
};

impl Screens {
    fn add(&self, work: &Work<'_>, number: f64, activity: &mut Activity) {
        let (w, h) = (work.job.line.width.metres(), work.job.line.height.metres() * work.n_up());
        activity.add(self.image, of(number * w * h));
        activity.add(self.edge, of(number * (w + h)));
        activity.add(self.number, of(number));
    }

    /// The mesh coated.
    pub fn mesh(&self, book: &Book) -> Formula<Area> {
        let margin = book.rate::<Length>("screen.margin");
        self.image.counted() + (self.edge.counted() * margin).times(2.0) + (plain(self.number.counted()) * (margin * margin)).times(4.0)
    }
}

/// Counts the screens of a job.
pub(super) fn count(work: &Work<'_>, activity: &mut Activity) {
    if work.job.line.kept { &KEPT } else { &NEW }.add(work, work.set_ups(), activity);
    PRINTING.add(work, work.impressions(), activity);
}

/// Screens set up, new and kept.
pub(super) fn set_up() -> Formula<Piece> {
    NEW.number.counted() + KEPT.number.counted()
}

/// The mesh set up, new and kept.
pub(super) fn mesh_set_up(book: &Book) -> Formula<Area> {
    NEW.mesh(book) + KEPT.mesh(book)
}

/// Screens made for this order: new ones, and its part of the kept ones.
pub(super) fn made(book: &Book) -> Formula<Piece> {
    NEW.number.counted() + KEPT.number.counted() / book.rate::<Share>("screen.kept-uses")
}

/// Mesh made for this order.
pub(super) fn mesh_made(book: &Book) -> Formula<Area> {
    NEW.mesh(book) + KEPT.mesh(book) / book.rate::<Share>("screen.kept-uses")
}

/// Images made for this order.
pub(super) fn images_made(book: &Book) -> Formula<Area> {
    NEW.image.counted() + KEPT.image.counted() / book.rate::<Share>("screen.kept-uses")
}

/// A number of pieces as a plain number.
pub(super) fn plain(pieces: Formula<Piece>) -> Formula<Share> {
    pieces.retyped(1.0)
}
