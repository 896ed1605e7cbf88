//! Sheeting: cut from the roll, printed, trimmed; its liner peeled off.
//!
//! bought = [S(N) + S1 (N rho + make-ready pieces on good sheeting) + leaders] (1 + layout loss),
//! where S1 is what one more piece takes; leaders by share of a roll.
//! 100 faces of 30 in on a 30 in roll: 59.57 m2 with 2 % spoilage and 2 x 0.3 make-ready pieces.

use super::Step;
use super::layer::{Layer, spoiled};
use super::roll_layout::lay_work;
use crate::inventory::{Activity, Book, Flows, Material, Measure, Part, Work};
use crate::order::{Liner, Sheeting};
use crate::quantity::{Piece, Share};

pub(super) const PRISMATIC: Layer = Layer {
    run: Measure::new("prismatic sheeting laid out", "m2"),
    per_spoiled: Measure::new("prismatic sheeting for the faces once more", "m2"),
    per_make_ready: Measure::new("prismatic sheeting for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("prismatic roll width, by share of a roll", "m"),
    covered: Measure::new("prismatic sheeting on the faces", "m2"),
};

pub(super) const BEADED: Layer = Layer {
    run: Measure::new("beaded sheeting laid out", "m2"),
    per_spoiled: Measure::new("beaded sheeting for the faces once more", "m2"),
    per_make_ready: Measure::new("beaded sheeting for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("beaded roll width, by share of a roll", "m"),
    covered: Measure::new("beaded sheeting on the faces", "m2"),
};

/// Prismatic sheeting: polycarbonate or acrylic, stiff; or flexible, of PVC and polyurethane. Which, say its shares.
pub(super) static PRISMATIC_SHEETING: Material = Material {
    passes: "converting.passes.prismatic",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of(
        "prismatic sheeting",
        &[
            Part::Share("polycarbonate", "sheeting.prismatic.polycarbonate"),
            Part::Share("acrylic", "sheeting.prismatic.acrylic"),
            Part::Share("pvc", "sheeting.prismatic.pvc"),
            Part::Share("polyurethane", "sheeting.prismatic.polyurethane"),
            Part::Share("adhesive", "sheeting.prismatic.adhesive"),
        ],
    )
};

/// Beaded sheeting.
pub(super) static BEADED_SHEETING: Material = Material {
    passes: "converting.passes.beaded",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of(
        "beaded sheeting",
        &[
            Part::Share("pvc", "sheeting.beaded.pvc"),
            Part::Share("polyurethane", "sheeting.beaded.polyurethane"),
            Part::Share("glass-beads", "sheeting.beaded.beads"),
            Part::Share("adhesive", "sheeting.beaded.adhesive"),
        ],
    )
};

/// Sheeting, with the rows of what a route spoils, and whether its make-ready takes good sheeting.
pub struct SheetingCut {
    /// The rows whose product is the share of pieces spoiled.
    pub spoiled: &'static [&'static str],
    /// The rows of make-ready pieces, and of their share on good sheeting.
    pub make_ready: Option<(&'static str, &'static str)>,
    /// Its liner.
    pub liner: Liner,
}

impl Step for SheetingCut {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let Some(laid) = lay_work(work) else { return };
        let layer = if work.job.line.sheeting == Sheeting::Beaded { BEADED } else { PRISMATIC };
        layer.count(work, &laid, work.covered(), activity);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        for (layer, material, mass) in
            [(PRISMATIC, &PRISMATIC_SHEETING, "sheeting.prismatic.mass"), (BEADED, &BEADED_SHEETING, "sheeting.beaded.mass")]
        {
            let mut bought = layer.bought(book, &spoiled(book, self.spoiled));
            if let Some((pieces, on_sheeting)) = self.make_ready {
                bought = bought + layer.per_make_ready.counted() * book.rate::<Piece>(pieces) * book.rate::<Share>(on_sheeting);
            }
            let bought = bought * book.rate::<Share>("layout.loss.sheeting").more();
            layer.buy(book, flows, material, mass, bought, self.liner);
        }
    }
}
