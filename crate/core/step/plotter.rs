//! Plotter: cuts legend and border; hours = cut length (1 + spoiled)/speed.
//!
//! 100 stop signs of 6.35 m with 3 % rework: 654 m, 1.21 h at 0.15 m/s, 0.12 kWh at 0.10 kW.
//! Where no cut length is known, a face takes that of the nearest sign measured, per m2 (grade C).

use super::Step;
use super::layer::spoiled;
use crate::inventory::{Activity, Book, Flows, Formula, Measure, Stage, Work};
use crate::quantity::{Kind, Length, Per, Power, Time, of};

const CUT: Measure<Length> = Measure::new("length cut", "m");

/// Metres cut per m2 of a face that states none: the curve sign's 7.76 m on 0.579 m2.
const CUT_PER_M2: f64 = 7.76 / 0.5787;

/// The plotter, with the rows of what a route spoils.
pub struct Plotter {
    /// The rows whose product is the share of pieces spoiled.
    pub spoiled: &'static [&'static str],
}

impl Step for Plotter {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let length = work.job.line.cut_length.map_or_else(|| work.face().base() * CUT_PER_M2, |length| length.metres());
        activity.add(CUT, of(length * work.faces()));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let hours = CUT.counted() * (Formula::one() + spoiled(book, self.spoiled)) / book.rate::<Per<Length, Time>>("plotter.speed");
        flows.electricity(Stage::Imaging, "plotter", hours * book.rate::<Power>("plotter.power"));
    }
}
