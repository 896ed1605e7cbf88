//! Screen ink: how much a mesh lays down, what of it stays, what goes to air.
//!
//! wet film V = A kappa TIV k_t, with the theoretical ink volume TIV of the mesh and the share k_t
//! that reaches the sheeting; V is the thinned mixture: ink V/(1 + f), thinner V f/(1 + f).
//! Of the ink, its VOC goes to air and its solids stay. TIV = open area x fabric thickness, open
//! area = (w/(w + d))^2 with opening w and thread d: 73, 40 and 59 um give 24.62 cm3/m2.

use super::Step;
use super::screens::mesh_set_up;
use crate::inventory::{Activity, Book, Flows, Formula, Material, Measure, Part, Stage, Work};
use crate::order::{Ink, Mesh};
use crate::quantity::{Area, Density, FaceArea, Liquid, Per, Piece, Share, of};

const TRANSPARENT: (Measure<FaceArea>, Measure<Per<FaceArea, Piece>>, &str) = (
    Measure::new("area printed in transparent ink", "m2"),
    Measure::new("area of one make-ready piece of every run, transparent ink", "m2"),
    "screen.ink.volume.transparent",
);

const OPAQUE: (Measure<FaceArea>, Measure<Per<FaceArea, Piece>>, &str) = (
    Measure::new("area printed in opaque ink", "m2"),
    Measure::new("area of one make-ready piece of every run, opaque ink", "m2"),
    "screen.ink.volume.opaque",
);

/// The rows that a stated mesh replaces.
pub const MESH_ROWS: [&str; 2] = [TRANSPARENT.2, OPAQUE.2];

static SOLVENT_INK: Material = Material {
    oxidised: "oxidation.ink-solvent.co2e",
    solid: "waste.plastics-landfill.co2e",
    liquid: "waste.ink-liquid.co2e",
    burnt: "waste.ink-burnt.co2e",
    ..Material::of("solvent screen ink", &[Part::Whole("solvent-ink")])
};

static UV_INK: Material = Material {
    oxidised: "oxidation.uv-monomer.co2e",
    solid: "waste.plastics-landfill.co2e",
    liquid: "waste.ink-liquid.co2e",
    burnt: "waste.ink-burnt.co2e",
    ..Material::of("UV screen ink", &[Part::Whole("uv-ink")])
};

static WATER_INK: Material = Material {
    oxidised: "oxidation.water-ink.co2e",
    solid: "waste.plastics-landfill.co2e",
    liquid: "waste.ink-liquid.co2e",
    burnt: "waste.ink-burnt.co2e",
    ..Material::of("water-based screen ink", &[Part::Whole("water-ink")])
};

static THINNER: Material =
    Material { oxidised: "oxidation.ink-solvent.co2e", ..Material::of("thinner", &[Part::Whole("oxygenated-solvent")]) };

/// Screen ink of one kind.
pub struct ScreenInk {
    /// Which.
    pub ink: Ink,
    /// Whether a VOC limit binds the ink as applied, so that none is thinned.
    pub voc_rule: bool,
}

impl Step for ScreenInk {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        for printed in &work.printed {
            let (area, per_piece, _) = if printed.colour.is_opaque() { OPAQUE } else { TRANSPARENT };
            let one = work.face() * of::<Share>(printed.coverage);
            activity.add(area, one * of::<Share>(work.faces()));
            activity.add(per_piece, one * of::<Share>(work.runs_of(printed.colour)) / of::<Piece>(1.0));
        }
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        type Film = Per<Liquid, FaceArea>;
        let spoiled = book.rate::<Share>("screen.spoilage");
        let make_ready = book.rate::<Piece>("screen.make-ready");
        let transfer = book.rate::<Share>("screen.ink.transfer");
        let film = |on: bool| {
            [TRANSPARENT, OPAQUE].into_iter().fold(Formula::zero(), |sum, (area, per_piece, volume)| {
                let printed = if on { area.counted() } else { area.counted() * spoiled + per_piece.counted() * make_ready };
                sum + printed * book.rate::<Film>(volume) * transfer
            })
        };
        let (on_faces, on_waste) = (film(true), film(false));
        let (material, voc, density) = match self.ink {
            Ink::Solvent if self.voc_rule => (&SOLVENT_INK, "screen.ink.voc-rule", "screen.ink.solvent.density"),
            Ink::Solvent => (&SOLVENT_INK, "screen.ink.solvent.voc", "screen.ink.solvent.density"),
            Ink::Uv => (&UV_INK, "screen.ink.uv.voc", "screen.ink.uv.density"),
            Ink::Water | Ink::Resin => (&WATER_INK, "screen.ink.water.voc", "screen.ink.water.density"),
        };
        let (voc, density) = (book.rate::<Density>(voc), book.rate::<Density>(density));
        let thinned = self.ink == Ink::Solvent && !self.voc_rule;
        let ink_share = if thinned { book.rate::<Share>("screen.ink.solvent.thinner").per_one_plus() } else { Formula::one() };

        let residue = mesh_set_up(book)
            * book.rate::<Per<Liquid, Area>>("screen.ink.residue")
            * book.rate::<Share>("screen.ink.residue-reused").rest();
        let ink_on_faces = on_faces.clone() * ink_share.clone();
        let ink_on_waste = on_waste.clone() * ink_share.clone();
        let printed = ink_on_faces.clone() + ink_on_waste.clone();
        let watery = self.ink == Ink::Water;
        let water = if watery { book.rate::<Density>("screen.ink.water.water").formula() } else { Formula::zero() };
        let solids = density.formula() - voc.formula() - water.clone();
        flows.buy(material, (printed.clone() + residue.clone()) * density);
        flows.on_face(material, ink_on_faces * solids.clone());
        flows.solid_waste(material, ink_on_waste * solids);
        if watery {
            flows.dry(material, printed.clone() * water);
        }
        flows.evaporate(Stage::Drying, material, printed * voc);
        flows.liquid_waste(material, residue * density);
        if thinned {
            let thinner = (on_faces + on_waste) * (Formula::one() - ink_share) * book.rate::<Density>("screen.ink.thinner-density");
            flows.buy(&THINNER, thinner.clone());
            flows.evaporate(Stage::Drying, &THINNER, thinner);
        }
    }
}

/// The share of a mesh that is open.
pub fn open_area(mesh: Mesh) -> f64 {
    let (w, d) = (mesh.opening.metres(), mesh.thread.metres());
    (w / (w + d)) * (w / (w + d))
}

/// The theoretical ink volume of a mesh, mL per m2 (1 um of wet film is 1 mL/m2).
///
/// ```
/// use faceload_core::{order::Mesh, quantity::Span, step::theoretical_volume};
/// let um = |n: i64| Span::nanometres(n * 1000);
/// let mesh = Mesh { opening: um(73), thread: um(40), fabric: um(59) };
/// assert!((theoretical_volume(mesh) - 24.62).abs() < 0.005);
/// ```
pub fn theoretical_volume(mesh: Mesh) -> f64 {
    open_area(mesh) * mesh.fabric.metres() * 1e6
}
