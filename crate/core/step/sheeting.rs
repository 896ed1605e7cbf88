//! Sheeting: cut from the roll, printed, trimmed; its liner peeled off.
//!
//! bought = [S(N) + S1 (N rho + make-ready pieces on good sheeting) + leaders] (1 + layout loss),
//! where S1 is what one more piece takes; leaders by share of a roll.
//! 100 faces of 30 in on a 30 in roll: 59.57 m2 with 2 % spoilage and 2 x 0.3 make-ready pieces.

use super::Step;
use super::roll_layout::{Laid, lay_work};
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Work};
use crate::order::Sheeting;
use crate::quantity::{BoughtArea, Grammage, Length, Per, Piece, Share, of};

/// What is counted for one construction of sheeting or film.
pub(super) struct Roll {
    run: Measure<BoughtArea>,
    per_spoiled: Measure<BoughtArea>,
    per_make_ready: Measure<Per<BoughtArea, Piece>>,
    leaders: Measure<Per<BoughtArea, Length>>,
    covered: Measure<BoughtArea>,
}

const PRISMATIC: Roll = Roll {
    run: Measure::new("prismatic sheeting laid out", "m2"),
    per_spoiled: Measure::new("prismatic sheeting for the faces once more", "m2"),
    per_make_ready: Measure::new("prismatic sheeting for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("prismatic roll width, by share of a roll", "m"),
    covered: Measure::new("prismatic sheeting on the faces", "m2"),
};

const BEADED: Roll = Roll {
    run: Measure::new("beaded sheeting laid out", "m2"),
    per_spoiled: Measure::new("beaded sheeting for the faces once more", "m2"),
    per_make_ready: Measure::new("beaded sheeting for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("beaded roll width, by share of a roll", "m"),
    covered: Measure::new("beaded sheeting on the faces", "m2"),
};

/// Sheeting bought for a job before spoilage, leaders and loss: what the hand results count.
pub const SHEETING_BOUGHT: Measure<BoughtArea> = PRISMATIC.run;

static PRISMATIC_SHEETING: Material = Material {
    passes: "converting.passes.prismatic",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of(
        "prismatic sheeting",
        &[
            Part::Share("polycarbonate", "sheeting.prismatic.polycarbonate"),
            Part::Share("acrylic", "sheeting.prismatic.acrylic"),
            Part::Share("adhesive", "sheeting.prismatic.adhesive"),
        ],
    )
};

static BEADED_SHEETING: Material = Material {
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

static LINER_PAPER: Material =
    Material { solid: "waste.liner-paper-landfill.co2e", ..Material::of("paper liner", &[Part::Whole("kraft-paper")]) };
static LINER_SILICONE: Material =
    Material { solid: "waste.liner-paper-landfill.co2e", ..Material::of("liner silicone", &[Part::Whole("silicone")]) };

/// Sheeting, with the row of what a route spoils, and whether its make-ready takes good sheeting.
pub struct SheetingCut {
    /// The row of pieces spoiled.
    pub spoiled: &'static str,
    /// The rows of make-ready pieces, and of their share on good sheeting.
    pub make_ready: Option<(&'static str, &'static str)>,
}

impl Roll {
    /// The clear overlay, laid out as the sheeting under it.
    pub(super) const fn of_overlay() -> Self {
        Self {
            run: Measure::new("overlay laid out", "m2"),
            per_spoiled: Measure::new("overlay for the faces once more", "m2"),
            per_make_ready: Measure::new("overlay for one make-ready piece in every run and colour", "m2"),
            leaders: Measure::new("overlay roll width, by share of a roll", "m"),
            covered: Measure::new("overlay on the faces", "m2"),
        }
    }

    /// Counts a job laid out.
    pub(super) fn count(&self, work: &Work<'_>, laid: &Laid, activity: &mut Activity) {
        let faces = work.faces();
        let set_ups = work.runs() * work.printed.len() as f64;
        activity.add(self.run, laid.area);
        activity.add(self.per_spoiled, laid.per_piece * of::<Share>(faces));
        activity.add(self.per_make_ready, laid.per_piece * of::<Share>(set_ups) / of::<Piece>(1.0));
        activity.add(self.leaders, of(laid.roll.metres() * laid.rolls));
        activity.add(self.covered, of(faces * crate::quantity::Kind::base(work.face())));
    }

    /// The area bought, without layout loss.
    pub(super) fn bought(&self, book: &Book, spoiled: &str, make_ready: Option<(&str, &str)>) -> Formula<BoughtArea> {
        let mut bought = self.run.counted()
            + self.per_spoiled.counted() * book.rate::<Share>(spoiled)
            + self.leaders.counted() * book.rate::<Length>("layout.leader");
        if let Some((pieces, on_sheeting)) = make_ready {
            bought = bought + self.per_make_ready.counted() * book.rate::<Piece>(pieces) * book.rate::<Share>(on_sheeting);
        }
        bought
    }

    /// Buys a layer with its liner, and throws away what does not stay on the faces.
    pub(super) fn layer(&self, book: &Book, flows: &mut Flows, material: &'static Material, mass: &str, bought: Formula<BoughtArea>) {
        let mass = book.rate::<Grammage>(mass);
        let on_faces = self.covered.counted() * mass;
        flows.buy(material, bought.clone() * mass);
        flows.on_face(material, on_faces.clone());
        flows.solid_waste(material, bought.clone() * mass - on_faces);
        for (liner, row) in [(&LINER_PAPER, "liner.paper.mass"), (&LINER_SILICONE, "liner.silicone.mass")] {
            let mass = bought.clone() * book.rate::<Grammage>(row);
            flows.buy_for(liner, material, mass.clone());
            flows.solid_waste_of(liner, material, mass);
        }
    }
}

impl Step for SheetingCut {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let Some(laid) = lay_work(work) else { return };
        let roll = if work.job.line.sheeting == Sheeting::Beaded { BEADED } else { PRISMATIC };
        roll.count(work, &laid, activity);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        for (roll, material, mass) in
            [(PRISMATIC, &PRISMATIC_SHEETING, "sheeting.prismatic.mass"), (BEADED, &BEADED_SHEETING, "sheeting.beaded.mass")]
        {
            let bought = roll.bought(book, self.spoiled, self.make_ready) * book.rate::<Share>("layout.loss.sheeting").more();
            roll.layer(book, flows, material, mass, bought);
        }
    }
}
