//! Inkjet: prints every colour in one pass on sheeting from the roll.
//!
//! hours = scanned area (1 + misprint)/speed; ink = face area x coverage x v100 x density factor.
//! 103 pieces of 0.774 m square at 10 m2/h: 61.7 m2, 6.17 h; with standby of a 6 h day 8.33 kWh.
//! Purge and cleaning are charged by print hours, a day's worth for a day's printing.

use super::{Step, air, cleaner};
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Stage, Work};
use crate::order::Ink;
use crate::quantity::{AirFlow, Area, Density, FaceArea, Liquid, Per, Piece, Power, Share, Time, of};

const SCANNED: Measure<Area> = Measure::new("area scanned, bleed included", "m2");
const PRINTED: Measure<FaceArea> = Measure::new("area printed, all colours", "m2");
const PIECES: Measure<Piece> = Measure::new("prints trimmed and checked", "pieces");
const FACES: Measure<FaceArea> = Measure::new("area of prints left to outgas", "m2");

const fn jet_ink(name: &'static str, stuff: &'static [Part], oxidised: &'static str) -> Material {
    Material {
        oxidised,
        solid: "waste.plastics-landfill.co2e",
        liquid: "waste.ink-liquid.co2e",
        burnt: "waste.ink-burnt.co2e",
        ..Material::of(name, stuff)
    }
}

static SOLVENT_INK: Material = jet_ink("solvent jet ink", &[Part::Whole("solvent-ink")], "oxidation.jet-solvent.co2e");
static UV_INK: Material = jet_ink("UV jet ink", &[Part::Whole("uv-ink")], "oxidation.uv-monomer.co2e");
static RESIN_INK: Material = jet_ink("resin jet ink", &[Part::Whole("water-ink")], "oxidation.water-ink.co2e");

/// The printer, with its ink.
pub struct Inkjet {
    /// Which.
    pub ink: Ink,
}

/// The hours in which it prints.
pub(super) fn printing_hours(book: &Book, ink: Ink) -> Formula<Time> {
    let speed = match ink {
        Ink::Solvent => "printer.speed.solvent",
        Ink::Uv => "printer.speed.uv",
        Ink::Resin | Ink::Water => "printer.speed.resin",
    };
    SCANNED.counted() * book.rate::<Share>("printer.misprint").more() / book.rate::<Per<Area, Time>>(speed)
}

impl Step for Inkjet {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let bleed = work.bleed() * 2;
        let scanned = (work.piece_width() + bleed).metres() * (work.strip_height() + bleed).metres() * f64::from(work.pieces());
        activity.add(SCANNED, of(scanned * work.faces()));
        activity.add(PIECES, of(work.faces()));
        activity.add(PRINTED, work.face() * work.coverage() * of::<Share>(work.faces()));
        activity.add(FACES, work.face() * of::<Share>(work.faces()));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let misprint = book.rate::<Share>("printer.misprint");
        let (material, power, voc, room) = match self.ink {
            Ink::Solvent => (&SOLVENT_INK, "printer.power.solvent", "jet-ink.solvent.voc", "air.printer.solvent"),
            Ink::Uv => (&UV_INK, "printer.power.uv", "jet-ink.uv.voc", "air.printer.uv"),
            Ink::Resin | Ink::Water => (&RESIN_INK, "printer.power.resin", "jet-ink.resin.voc", "air.printer.resin"),
        };
        let hours = printing_hours(book, self.ink);
        let days = hours.clone() / book.rate::<Time>("printer.hours-a-day");
        let power = book.rate::<Power>(power);
        flows.electricity(Stage::Imaging, "printer", hours.clone() * power);
        let standby = power * book.rate::<Time>("printer.warm-up")
            + book.rate::<Power>("printer.ready") * book.rate::<Time>("printer.ready-time")
            + book.rate::<Power>("printer.sleep") * book.rate::<Time>("printer.sleep-time");
        flows.electricity(Stage::Imaging, "printer warming up, ready and asleep", days.clone() * standby);

        let film = book.rate::<Per<Liquid, FaceArea>>("printer.ink-volume") * book.rate::<Share>("printer.density-factor");
        let density = book.rate::<Density>("jet-ink.density");
        let voc = book.rate::<Share>(voc);
        let on_faces = PRINTED.counted() * film * density;
        let on_waste = on_faces.clone() * misprint;
        let purge = days.clone() * book.rate::<Liquid>("printer.purge") * density;
        let printed = on_faces.clone() + on_waste.clone();
        flows.buy(material, printed.clone() + purge.clone());
        let watery = self.ink == Ink::Resin;
        let water = if watery { book.rate::<Share>("jet-ink.resin.water").formula() } else { Formula::zero() };
        let solids = voc.rest() - water.clone();
        flows.on_face(material, on_faces * solids.clone());
        flows.solid_waste(material, on_waste * solids);
        if watery {
            flows.dry(material, printed.clone() * water);
        }
        flows.evaporate(Stage::Drying, material, printed * voc);
        flows.liquid_waste(material, purge);
        cleaner::used(book, flows, Stage::CleanUp, days * book.rate::<Liquid>("printer.cleaning"));

        let trim = PIECES.counted() * book.rate::<Per<Time, Piece>>("labour.trim");
        flows.attend("printing and trimming", hours.clone() * book.rate::<Share>("labour.printer-attended") + trim);
        air::ventilate(book, flows, "printer room", hours * book.rate::<AirFlow>(room));
        if self.ink == Ink::Solvent {
            let outgassing = FACES.counted()
                * misprint.more()
                * book.rate::<Per<AirFlow, FaceArea>>("air.outgassing")
                * book.rate::<Time>("air.outgassing-time");
            air::ventilate(book, flows, "outgassing racks", outgassing);
        }
    }
}
