//! Cleaners: solvent that washes ink from screens and printers. Part goes to air, the rest is
//! hazardous liquid; its carbon is the same whether burnt or oxidised in air.
//!
//! to air = litres x density x VOC content x share evaporated.

use crate::inventory::{Book, Flows, Formula, Material, Part, Stage};
use crate::quantity::{Density, Liquid, Share};

static CLEANER: Material = Material {
    oxidised: "oxidation.cleaner.co2e",
    liquid: "waste.cleaner-liquid.co2e",
    ..Material::of(
        "cleaner",
        &[Part::Share("hydrocarbon-solvent", "cleaner.hydrocarbon-share"), Part::Rest("oxygenated-solvent", "cleaner.hydrocarbon-share")],
    )
};

/// Uses so many litres of cleaner.
pub(super) fn used(book: &Book, flows: &mut Flows, stage: Stage, litres: Formula<Liquid>) {
    let bought = litres * book.rate::<Density>("cleaner.density");
    let to_air = bought.clone() * book.rate::<Share>("cleaner.voc") * book.rate::<Share>("cleaner.evaporated");
    flows.buy(&CLEANER, bought.clone());
    flows.evaporate(stage, &CLEANER, to_air.clone());
    flows.liquid_waste(&CLEANER, bought - to_air);
}
