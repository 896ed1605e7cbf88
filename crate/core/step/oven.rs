//! Oven: warm air dries solvent prints; the exhaust that keeps it safe takes most of the heat.
//!
//! energy = [c A dT + (rho cp V dT + wall) t]/eta + fan x t, t = area/throughput + warm-up a run.
//! 0.3 m3/s warmed by 45 K: 16.3 kW.

use super::Step;
use crate::inventory::{Activity, Book, Flows, Formula, Measure, Stage, Work};
use crate::quantity::{AirFlow, Electricity, FaceArea, FuelHeat, Mass, Per, Piece, Power, Share, Time, Volume, Warmth, of};

const DRIED: Measure<FaceArea> = Measure::new("face area through the oven, every colour", "m2");
const DRIED_MAKE_READY: Measure<Per<FaceArea, Piece>> = Measure::new("face area of one make-ready piece of every run and colour", "m2");
const RUNS: Measure<Share> = Measure::new("runs that warm the oven up", "");

/// The oven.
pub struct Oven;

/// Counts what is dried.
pub(super) fn count(work: &Work<'_>, activity: &mut Activity) {
    let passes = of::<Share>(work.printed.len() as f64);
    activity.add(DRIED, work.face() * passes * of::<Share>(work.faces()));
    activity.add(DRIED_MAKE_READY, work.face() * of::<Share>(work.make_ready_runs()) / of::<Piece>(1.0));
    if !work.printed.is_empty() {
        activity.add(RUNS, of(work.runs()));
    }
}

/// The area dried, spoiled and make-ready pieces included.
pub(super) fn dried(book: &Book) -> Formula<FaceArea> {
    DRIED.counted() * book.rate::<Share>("screen.spoilage").more() + DRIED_MAKE_READY.counted() * book.rate::<Piece>("screen.make-ready")
}

impl Step for Oven {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        count(work, activity);
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let dried = dried(book);
        let hours =
            dried.clone() / book.rate::<Per<FaceArea, Time>>("oven.throughput") + RUNS.counted() * book.rate::<Time>("oven.warm-up");
        let rise = book.rate::<Warmth>("oven.temperature-rise");
        let air = hours.clone()
            * book.rate::<AirFlow>("oven.exhaust")
            * book.rate::<Per<Mass, Volume>>("air.density")
            * book.rate::<Per<Per<FuelHeat, Mass>, Warmth>>("air.heat-capacity")
            * rise;
        let load = dried * book.rate::<Per<Per<FuelHeat, FaceArea>, Warmth>>("oven.load") * rise;
        let wall = hours.clone() * book.rate::<Per<FuelHeat, Time>>("oven.wall");
        let heat =
            (air + load + wall) / book.rate::<Share>("oven.efficiency") / book.rate::<Per<FuelHeat, Electricity>>("calendar.kilowatt-hour");
        flows.electricity(Stage::Drying, "oven heat", heat);
        flows.electricity(Stage::Drying, "oven fan", hours * book.rate::<Power>("oven.fan"));
    }
}
