//! A layer: sheeting, film or overlay from a roll, with adhesive and the liner that covers it.

use super::roll_layout::Laid;
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Work};
use crate::order::Liner;
use crate::quantity::{BoughtArea, Grammage, Length, Per, Piece, Share, of};

/// What is counted for one kind of layer.
pub(super) struct Layer {
    /// Laid out for the faces ordered.
    pub run: Measure<BoughtArea>,
    /// For the faces once more: what a share of spoiled pieces takes.
    pub per_spoiled: Measure<BoughtArea>,
    /// For one make-ready piece in every run and colour.
    pub per_make_ready: Measure<Per<BoughtArea, Piece>>,
    /// What a metre of leader takes.
    pub leaders: Measure<Per<BoughtArea, Length>>,
    /// On the faces.
    pub covered: Measure<BoughtArea>,
}

static LINER_PAPER: Material =
    Material { solid: "waste.liner-paper-landfill.co2e", ..Material::of("paper liner", &[Part::Whole("kraft-paper")]) };
static LINER_SILICONE: Material =
    Material { solid: "waste.liner-paper-landfill.co2e", ..Material::of("liner silicone", &[Part::Whole("silicone")]) };
static LINER_PET: Material = Material { solid: "waste.plastics-landfill.co2e", ..Material::of("PET liner", &[Part::Whole("pet-film")]) };

/// The share of pieces spoiled: the product of rows.
pub(super) fn spoiled(book: &Book, rows: &[&str]) -> Formula<Share> {
    rows.iter().fold(Formula::one(), |product, row| product * book.rate::<Share>(row))
}

impl Layer {
    /// Counts a job laid out, of which so much lies on one face.
    pub fn count(&self, work: &Work<'_>, laid: &Laid, covered: f64, activity: &mut Activity) {
        let faces = work.faces();
        activity.add(self.run, laid.area);
        activity.add(self.per_spoiled, laid.per_piece * of::<Share>(faces));
        activity.add(self.per_make_ready, laid.per_piece * of::<Share>(work.make_ready_runs()) / of::<Piece>(1.0));
        activity.add(self.leaders, of(laid.roll.metres() * laid.rolls));
        activity.add(self.covered, of(faces * covered));
    }

    /// The area bought, without make-ready and layout loss.
    pub fn bought(&self, book: &Book, spoiled: &Formula<Share>) -> Formula<BoughtArea> {
        self.run.counted() + self.per_spoiled.counted() * spoiled.clone() + self.leaders.counted() * book.rate::<Length>("layout.leader")
    }

    /// Buys the layer with its liner, and throws away what does not stay on the faces.
    pub fn buy(&self, book: &Book, flows: &mut Flows, material: &'static Material, mass: &str, bought: Formula<BoughtArea>, liner: Liner) {
        let mass = book.rate::<Grammage>(mass);
        let on_faces = self.covered.counted() * mass;
        flows.buy(material, bought.clone() * mass);
        flows.on_face(material, on_faces.clone());
        flows.solid_waste(material, bought.clone() * mass - on_faces);
        line(book, flows, material, &bought, liner);
    }
}

/// Buys the liner of so much material, and throws it away.
pub(super) fn line(book: &Book, flows: &mut Flows, material: &'static Material, bought: &Formula<BoughtArea>, liner: Liner) {
    let parts: &[(&'static Material, &str)] = match liner {
        Liner::Paper => &[(&LINER_PAPER, "liner.paper.mass"), (&LINER_SILICONE, "liner.silicone.mass")],
        Liner::Pet => &[(&LINER_PET, "liner.pet.mass"), (&LINER_SILICONE, "liner.silicone.mass")],
    };
    for (part, row) in parts {
        let mass = bought.clone() * book.rate::<Grammage>(row);
        flows.buy_for(part, material, mass.clone());
        flows.solid_waste_of(part, material, mass);
    }
}
