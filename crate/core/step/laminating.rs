//! Laminating: a clear overlay over every print, as long and as wide as the sheeting it covers.
//!
//! energy = P L (1 + spoiled)/v. 80.7 m at 2 m/min and 0.5 kW: 0.34 kWh.

use super::Step;
use super::roll_layout::lay_work;
use super::sheeting::Roll;
use crate::inventory::{Activity, Book, Flows, Material, Measure, Part, Stage, Work};
use crate::quantity::{Length, Per, Power, Share, Time};

const OVERLAY: Roll = Roll::of_overlay();

const LENGTH: Measure<Length> = Measure::new("length laminated", "m");

static CLEAR_OVERLAY: Material = Material {
    passes: "converting.passes.film",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of("clear overlay", &[Part::Share("acrylic", "overlay.acrylic"), Part::Share("adhesive", "overlay.adhesive")])
};

/// Laminating, with the row of what a route spoils.
pub struct Laminating {
    /// The row of pieces spoiled.
    pub spoiled: &'static str,
}

impl Step for Laminating {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let Some(laid) = lay_work(work) else { return };
        OVERLAY.count(work, &laid, activity);
        activity.add(LENGTH, laid.length);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let spoiled = book.rate::<Share>(self.spoiled);
        let bought = OVERLAY.bought(book, self.spoiled, None) * book.rate::<Share>("layout.loss.overlay").more();
        OVERLAY.layer(book, flows, &CLEAR_OVERLAY, "overlay.mass", bought);
        let hours = LENGTH.counted() * spoiled.more() / book.rate::<Per<Length, Time>>("laminator.speed");
        flows.electricity(Stage::Finishing, "laminator", hours * book.rate::<Power>("laminator.power"));
    }
}
