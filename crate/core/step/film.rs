//! Film: one whole-face layer for each colour, cut by a plotter, laid on the sheeting, weeded there.
//!
//! bought = [F(N) + F1 N rework + leaders] (1 + layout loss) for every colour; kept = face x coverage,
//! the rest is weeded. 100 stop signs on 30 in rolls with 3 % rework: 59.81 m2 for 36.65 m2 of red.

use super::layer::{Layer, spoiled};
use super::roll_layout::lay_work;
use super::{Step, air};
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Stage, Work};
use crate::order::Liner;
use crate::quantity::{AirFlow, BoughtArea, FaceArea, Length, Per, Piece, Power, Share, Time, Water, of};

const FILM: Layer = Layer {
    run: Measure::new("film laid out, every colour", "m2"),
    per_spoiled: Measure::new("film for the faces once more", "m2"),
    per_make_ready: Measure::new("film for one make-ready piece in every run and colour", "m2"),
    leaders: Measure::new("film roll width, by share of a roll", "m"),
    covered: Measure::new("film kept on the faces", "m2"),
};

const LENGTH: Measure<Length> = Measure::new("length of film applied", "m");
const AREA: Measure<FaceArea> = Measure::new("face area cut, weeded and laid", "m2");
const FACES: Measure<Piece> = Measure::new("faces laid with film", "pieces");

static CUT_FILM: Material = Material {
    passes: "converting.passes.film",
    solid: "waste.plastics-landfill.co2e",
    ..Material::of(
        "cut overlay film",
        &[Part::Share("acrylic", "film.acrylic"), Part::Share("pvc", "film.pvc"), Part::Share("adhesive", "film.adhesive")],
    )
};

const REWORK: &[&str] = &["film.rework"];

/// Film cut, laid and weeded.
pub struct FilmLaid {
    /// The liner of the film.
    pub liner: Liner,
}

impl Step for FilmLaid {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let Some(laid) = lay_work(work) else { return };
        for printed in &work.printed {
            FILM.count(work, &laid, crate::quantity::Kind::base(work.face()) * printed.coverage, activity);
            activity.add(LENGTH, laid.length);
        }
        activity.add(AREA, work.face() * of::<Share>(work.faces()));
        activity.add(FACES, of(work.faces()));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let rework = spoiled(book, REWORK);
        let laid = FILM.bought(book, &rework);
        FILM.buy(book, flows, &CUT_FILM, "film.mass", laid * book.rate::<Share>("layout.loss.film").more(), self.liner);
        let applied = FILM.run.counted() + FILM.per_spoiled.counted() * rework.clone();
        flows.rinse(Stage::Finishing, "application fluid", applied * book.rate::<Per<Water, BoughtArea>>("film.fluid"));
        let hours = LENGTH.counted() * (Formula::one() + rework) / book.rate::<Per<Length, Time>>("applicator.speed");
        flows.electricity(Stage::Finishing, "roll applicator", hours * book.rate::<Power>("applicator.power"));
        let attended = AREA.counted() * book.rate::<Per<Time, FaceArea>>("labour.film")
            + FACES.counted() * book.rate::<Per<Time, Piece>>("labour.film-handling");
        air::ventilate(book, flows, "film room", attended.clone() * book.rate::<AirFlow>("air.film-room"));
        flows.attend("cutting, weeding and laying film", attended);
    }
}
