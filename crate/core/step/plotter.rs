//! Plotter: cuts legend and border; hours = cut length (1 + spoiled)/speed.
//!
//! 100 stop signs of 6.35 m with 3 % rework: 654 m, 1.21 h at 0.15 m/s, 0.12 kWh at 0.10 kW.
//! Where no cut length is known, a face takes that of the nearest sign measured, per m2 (grade C).

use super::Step;
use super::layer::spoiled;
use crate::inventory::{Activity, Book, Flows, Formula, Measure, Stage, Work};
use crate::quantity::{FaceArea, Length, Per, Power, Share, Time, of};

const CUT: Measure<Length> = Measure::new("length cut", "m");

/// Faces whose cut length is not known.
const UNMEASURED: Measure<FaceArea> = Measure::new("face area whose cut length is not known", "m2");

/// The plotter, with the rows of what a route spoils.
pub struct Plotter {
    /// The rows whose product is the share of pieces spoiled.
    pub spoiled: &'static [&'static str],
}

impl Step for Plotter {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        match work.job.line.cut_length {
            Some(length) => activity.add(CUT, of(length.metres() * work.faces())),
            None => activity.add(UNMEASURED, work.face() * of::<Share>(work.faces())),
        }
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let cut = CUT.counted() + UNMEASURED.counted() * book.rate::<Per<Length, FaceArea>>("plotter.cut-per-face");
        let hours = cut * (Formula::one() + spoiled(book, self.spoiled)) / book.rate::<Per<Length, Time>>("plotter.speed");
        flows.electricity(Stage::Imaging, "plotter", hours * book.rate::<Power>("plotter.power"));
    }
}
