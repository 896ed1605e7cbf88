//! Laminating: a clear overlay over every print, as long and as wide as the sheeting it covers.
//!
//! energy = P L (1 + spoiled)/v. 80.7 m at 2 m/min and 0.5 kW: 0.34 kWh.

use super::Step;
use super::layer::{Layer, spoiled};
use super::roll_layout::lay_work;
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Stage, Work};
use crate::order::Liner;
use crate::quantity::{Length, Per, Power, Share, Time};

const OVERLAY: Layer = Layer {
    run: Measure::new("overlay laid out", "m2"),
    per_spoiled: Measure::new("overlay for the faces once more", "m2"),
    per_make_ready: Measure::new("overlay for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("overlay roll width, by share of a roll", "m"),
    covered: Measure::new("overlay on the faces", "m2"),
};

const LENGTH: Measure<Length> = Measure::new("length laminated", "m");

static CLEAR_OVERLAY: Material = Material {
    passes: "converting.passes.film",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of("clear overlay", &[Part::Share("acrylic", "overlay.acrylic"), Part::Share("adhesive", "overlay.adhesive")])
};

/// Laminating, with the rows of what a route spoils.
pub struct Laminating {
    /// The rows whose product is the share of pieces spoiled.
    pub spoiled: &'static [&'static str],
    /// The liner of the overlay.
    pub liner: Liner,
}

impl Step for Laminating {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let Some(laid) = lay_work(work) else { return };
        OVERLAY.count(work, &laid, work.covered(), activity);
        activity.add(LENGTH, laid.length);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let spoiled = spoiled(book, self.spoiled);
        let bought = OVERLAY.bought(book, &spoiled) * book.rate::<Share>("layout.loss.overlay").more();
        OVERLAY.buy(book, flows, &CLEAR_OVERLAY, "overlay.mass", bought, self.liner);
        let hours = LENGTH.counted() * (Formula::one() + spoiled) / book.rate::<Per<Length, Time>>("laminator.speed");
        flows.electricity(Stage::Finishing, "laminator", hours.clone() * book.rate::<Power>("laminator.power"));
        flows.attend("laminating", hours);
    }
}
