//! Wipe: the blank degreased before the face goes on, the same on every route.

use super::Step;
use crate::inventory::{Activity, Book, Flows, Material, Measure, Part, Stage, Work};
use crate::quantity::{Density, FaceArea, Liquid, Mass, Per, Piece, Share, Time, of};

const WIPED: Measure<FaceArea> = Measure::new("blank wiped", "m2");
const SIGNS: Measure<Piece> = Measure::new("blanks handled", "pieces");

static ISOPROPANOL: Material =
    Material { oxidised: "oxidation.isopropanol.co2e", ..Material::of("isopropanol", &[Part::Whole("oxygenated-solvent")]) };
static RAGS: Material = Material { solid: "waste.wipers-landfill.co2e", ..Material::of("rags", &[Part::Whole("wipers")]) };

/// The wipe.
pub struct Wipe;

impl Step for Wipe {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        activity.add(WIPED, work.face() * of::<Share>(work.faces()));
        activity.add(SIGNS, of(f64::from(work.job.line.quantity)));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let isopropanol =
            WIPED.counted() * book.rate::<Per<Liquid, FaceArea>>("wipe.isopropanol") * book.rate::<Density>("wipe.isopropanol-density");
        flows.buy(&ISOPROPANOL, isopropanol.clone());
        flows.evaporate(Stage::Finishing, &ISOPROPANOL, isopropanol);
        type PerPiece = Per<Time, Piece>;
        let applied =
            WIPED.counted() * book.rate::<Per<Time, FaceArea>>("labour.apply") + SIGNS.counted() * book.rate::<PerPiece>("labour.handling");
        flows.attend("handling blanks and applying faces", applied);
        let rags = WIPED.counted() * book.rate::<Per<Mass, FaceArea>>("wipe.rags");
        flows.buy(&RAGS, rags.clone());
        flows.solid_waste(&RAGS, rags);
    }
}
