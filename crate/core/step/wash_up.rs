//! Wash-up: ink wiped from screens at the end of each run, and every so many press hours in it.
//!
//! wash-ups = set-ups + press hours/8, each by the mesh it cleans.

use super::screens::{PRINTING, mesh_set_up};
use super::{Step, cleaner};
use crate::inventory::{Activity, Book, Flows, Material, Part, Stage, Work};
use crate::quantity::{Area, Liquid, Mass, Per, Piece, Share, Time};

static WIPERS: Material = Material { solid: "waste.wipers-landfill.co2e", ..Material::of("wipers", &[Part::Whole("wipers")]) };

/// The wash-up.
pub struct WashUp;

impl Step for WashUp {
    fn count(&self, _: &Work<'_>, _: &mut Activity) {
        // Screens count the mesh.
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let interval = book.rate::<Time>("screen.wash-up-interval");
        let rate = book.rate::<Per<Piece, Time>>("screen.print-rate");
        // Mesh x press hours: each screen's mesh for as long as it prints and is set up.
        let one = crate::quantity::of::<Piece>(1.0);
        let prints = PRINTING.mesh(book) * book.rate::<Share>("screen.spoilage").more() * crate::inventory::Formula::fixed(one)
            + mesh_set_up(book) * book.rate::<Piece>("screen.make-ready");
        let mesh_hours = prints / rate + mesh_set_up(book) * book.rate::<Time>("screen.set-up");
        let washed = mesh_set_up(book) + mesh_hours / interval;
        cleaner::used(book, flows, Stage::CleanUp, washed.clone() * book.rate::<Per<Liquid, Area>>("screen.wash-up"));
        let wipers = washed * book.rate::<Per<Mass, Area>>("screen.wipers");
        flows.buy(&WIPERS, wipers.clone());
        flows.solid_waste(&WIPERS, wipers);
    }
}
