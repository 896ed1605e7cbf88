//! Copy: letters and border cut from white sheeting, positioned and applied on the coloured ground.
//!
//! gross = net [(1 - border)/(fill x nest) + border/0.95]: 1.784 m2 of copy with a fifth of it border,
//! glyphs filling half of their boxes, nested at 0.85, take 3.73 m2 of sheeting.

use super::layer::{line, spoiled};
use super::sheeting::{BEADED_SHEETING, PRISMATIC_SHEETING};
use super::{Step, air};
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Work};
use crate::order::{Colour, Liner, Sheeting};
use crate::quantity::{AirFlow, BoughtArea, FaceArea, Grammage, Kind, Per, Piece, Share, Time, of};

/// Copy on the faces, by construction of the sheeting.
type OnFaces = Measure<BoughtArea>;

const PRISMATIC: OnFaces = Measure::new("prismatic copy on the faces", "m2");
const BEADED: OnFaces = Measure::new("beaded copy on the faces", "m2");
const CHARACTERS: Measure<Piece> = Measure::new("characters applied", "pieces");

const SPOILED: &[&str] = &["direct.spoilage"];

/// Faces whose characters are not known.
const UNCOUNTED: Measure<FaceArea> = Measure::new("face area whose characters are not known", "m2");

/// Copy cut, positioned and applied.
pub struct CopyApplied {
    /// The liner of the sheeting.
    pub liner: Liner,
}

/// The gross sheeting of so much copy.
pub(crate) fn gross(book: &Book, net: Formula<BoughtArea>) -> Formula<BoughtArea> {
    let border = book.rate::<Share>("direct.border");
    let letters = net.clone() * border.rest() / book.rate::<Share>("direct.fill") / book.rate::<Share>("direct.nest");
    letters + net * border / book.rate::<Share>("direct.border-yield")
}

impl Step for CopyApplied {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let job = &work.job.line;
        let coverage = job.colours.get(&Colour::White).copied().unwrap_or(0.0);
        let on_faces = if job.sheeting == Sheeting::Beaded { BEADED } else { PRISMATIC };
        activity.add(on_faces, of(work.face().base() * coverage * work.faces()));
        match job.characters {
            Some(characters) => activity.add(CHARACTERS, of(f64::from(characters) * work.faces())),
            None => activity.add(UNCOUNTED, work.face() * of::<Share>(work.faces())),
        }
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let made = Formula::one() + spoiled(book, SPOILED);
        let kinds: [(OnFaces, &'static Material, &str); 2] =
            [(PRISMATIC, &PRISMATIC_SHEETING, "sheeting.prismatic.mass"), (BEADED, &BEADED_SHEETING, "sheeting.beaded.mass")];
        for (on_faces, material, mass) in kinds {
            let bought = gross(book, on_faces.counted()) * made.clone() * book.rate::<Share>("layout.loss.sheeting").more();
            let mass = book.rate::<Grammage>(mass);
            let kept = on_faces.counted() * mass;
            flows.buy(material, bought.clone() * mass);
            flows.on_face(material, kept.clone());
            flows.solid_waste(material, bought.clone() * mass - kept);
            line(book, flows, material, &bought, self.liner);
        }
        let characters = CHARACTERS.counted() + UNCOUNTED.counted() * book.rate::<Per<Piece, FaceArea>>("direct.characters");
        let attended = characters * book.rate::<Per<Time, Piece>>("labour.copy");
        air::ventilate(book, flows, "copy room", attended.clone() * book.rate::<AirFlow>("air.copy-room"));
        flows.attend("positioning and applying copy", attended);
    }
}
