//! Carbon of solvents by the atomic weights of IUPAC (abridged, 2021): C 12.011, H 1.008, O 15.999.
//!
//! kg CO2 per kg oxidised = carbons x weight of CO2 / weight of the solvent. Compared with rows that
//! name a pure solvent, and with what their notes name as the ends of the range.

use crate::shop::{compared, factor, near, tables};
use faceload_core::factors::Input;
use faceload_core::load::Indicator;

const C: f64 = 12.011;
const H: f64 = 1.008;
const O: f64 = 15.999;

/// kg CO2 per kg of a solvent CcHhOo.
fn co2_of(c: u32, h: u32, o: u32) -> f64 {
    let (c, h, o) = (f64::from(c), f64::from(h), f64::from(o));
    c * (C + 2.0 * O) / (c * C + h * H + o * O)
}

/// Reads `C6H10O`.
fn formula(text: &str) -> (u32, u32, u32) {
    let count = |element: char| {
        let Some((_, rest)) = text.split_once(element) else { return 0 };
        let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
        digits.parse().unwrap_or(1)
    };
    (count('C'), count('H'), count('O'))
}

fn row(id: &str) -> &'static Input {
    &tables().inputs[tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"))]
}

#[test]
fn the_carbon_of_known_solvents_is_as_printed() {
    // Toluene and ethanol as a chemist would check them.
    near("toluene", co2_of(7, 8, 0), 3.3434, 0.00005);
    near("ethanol", co2_of(2, 6, 1), 1.9106, 0.00005);
    assert_eq!(formula("cyclohexanone, C6H10O"), (6, 10, 1));
}

#[test]
fn rows_of_a_pure_solvent_hold_its_carbon() {
    let mut pure = 0;
    for input in tables().inputs.iter().filter(|input| input.id.starts_with("oxidation.") && input.source == "iupac-2021") {
        let (c, h, o) = formula(input.place.rsplit(' ').next().unwrap_or_default());
        near(&format!("{}, {}", input.id, input.place), input.value, co2_of(c, h, o), 2e-4);
        pure += 1;
    }
    assert_eq!(pure, 4, "ink solvent, isopropanol, jet solvent, UV monomer");
}

#[test]
fn ends_of_ranges_are_the_solvents_that_the_notes_name() {
    let (ink, jet, uv) = (row("oxidation.ink-solvent.co2e"), row("oxidation.jet-solvent.co2e"), row("oxidation.uv-monomer.co2e"));
    near("2-butoxyethyl acetate, C8H16O3", ink.low, co2_of(8, 16, 3), 2e-4);
    near("isophorone, C9H14O", ink.high, co2_of(9, 14, 1), 2e-4);
    near("methoxypropyl acetate, C6H12O3", jet.low, co2_of(6, 12, 3), 2e-4);
    near("butoxyethanol, C6H14O2", jet.high, co2_of(6, 14, 2), 2e-4);
    near("isobornyl acrylate, C13H20O2", uv.high, co2_of(13, 20, 2), 2e-4);
    near("toluene, C7H8", row("oxidation.cleaner.co2e").high, co2_of(7, 8, 0), 0.005);
}

#[test]
fn solvent_to_air_is_counted_by_its_carbon() {
    let comparison = compared(r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":10}]}"#);
    for (id, label, (c, h, o)) in [
        ("screen", "solvent of thinner to air", (6, 10, 1)),
        ("digital", "solvent of solvent jet ink to air", (8, 18, 3)),
        ("digital", "solvent of isopropanol to air", (3, 8, 1)),
    ] {
        let model = comparison.model(id).expect("a default alternative");
        near(label, factor(model, Indicator::Co2e, label), co2_of(c, h, o), 2e-4);
    }
}
