//! Carbon of solvents by the atomic weights of IUPAC (abridged, 2021): C 12.011, H 1.008, O 15.999, N 14.007.
//!
//! kg CO2 per kg oxidised = carbons x weight of CO2 / weight of the solvent. Compared with every row
//! of the solvents' table, and with rows that name a solvent, a mean of them or an end.

#![expect(clippy::disallowed_methods, reason = "a check outside the program: its last digits may differ")]

use crate::shop::{compared, factor, near, one, tables};
use faceload_core::factors::{Grade, Input};
use faceload_core::load::Indicator;

const C: f64 = 12.011;
const H: f64 = 1.008;
const O: f64 = 15.999;
const N: f64 = 14.007;

/// Atoms of C, H, O and N in `C6H10O`.
fn atoms(text: &str) -> [f64; 4] {
    ['C', 'H', 'O', 'N'].map(|element| {
        let Some((_, rest)) = text.split_once(element) else { return 0.0 };
        let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
        digits.parse().unwrap_or(1.0)
    })
}

/// Grams a mole.
fn mole(text: &str) -> f64 {
    atoms(text).iter().zip([C, H, O, N]).map(|(count, weight)| count * weight).sum()
}

/// kg CO2 per kg.
fn co2_of(text: &str) -> f64 {
    atoms(text)[0] * (C + 2.0 * O) / mole(text)
}

fn row(id: &str) -> &'static Input {
    &tables().inputs[tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"))]
}

#[test]
fn the_carbon_of_known_solvents_is_as_printed() {
    // Toluene and ethanol as a chemist would check them; N-vinylcaprolactam holds nitrogen.
    near("toluene", co2_of("C7H8"), 3.3434, 0.00005);
    near("ethanol", co2_of("C2H6O"), 1.9106, 0.00005);
    near("N-vinylcaprolactam, g/mol", mole("C8H13NO"), 139.198, 0.0005);
    assert_eq!(atoms("C6H10O"), [6.0, 10.0, 1.0, 0.0]);
}

#[test]
fn every_solvent_of_the_table_weighs_and_holds_what_its_formula_says() {
    assert_eq!(tables().solvents.len(), 31);
    for solvent in tables().solvents.values() {
        near(&format!("{}, g/mol", solvent.id), solvent.molar_mass, mole(&solvent.formula), 0.0006);
        near(&format!("{}, carbon", solvent.id), solvent.carbon_share, atoms(&solvent.formula)[0] * C / mole(&solvent.formula), 0.00006);
        // Carbon of plants, in the one solvent pressed from peel, is not counted.
        let counted = if solvent.id == "d-limonene" { 0.0 } else { co2_of(&solvent.formula) };
        near(&format!("{}, kg CO2/kg", solvent.id), solvent.co2e, counted, 0.00006);
    }
}

#[test]
fn molar_masses_and_densities_agree_with_a_property_library() {
    // Chemicals 1.5.2 and thermo 0.6.1 by registry number, 20 °C; its weights differ in the fifth digit.
    for (cas, mole, density) in [
        ("108-94-1", 98.143, 0.947),
        ("78-93-3", 72.106, 0.805),
        ("108-10-1", 100.159, 0.801),
        ("67-64-1", 58.079, 0.790),
        ("67-63-0", 60.095, 0.787),
        ("64-17-5", 46.068, 0.789),
        ("123-86-4", 116.158, 0.881),
        ("141-78-6", 88.105, 0.900),
        ("110-54-3", 86.175, 0.659),
        ("108-88-3", 92.138, 0.867),
        ("106-42-3", 106.165, 0.861),
        ("95-63-6", 120.192, 0.876),
        ("124-18-5", 142.282, 0.730),
        ("57-55-6", 76.094, 1.036),
        ("80-62-6", 100.116, 0.944),
    ] {
        let solvent = tables().solvents.values().find(|solvent| solvent.cas == cas).unwrap_or_else(|| panic!("no solvent {cas}"));
        near(&format!("{}, g/mol", solvent.id), solvent.molar_mass, mole, 0.005);
        let (found, source, grade) = solvent.density.as_ref().unwrap_or_else(|| panic!("{cas} has no density"));
        assert_eq!((source.as_str(), *grade), ("solvent-properties", Grade::B), "{cas}");
        near(&format!("{}, kg/L", solvent.id), *found, density, 0.0006);
    }
}

#[test]
fn a_glycol_ether_is_lighter_than_water() {
    // The library's estimate where it has no table, 1.12 to 1.43 kg/L, is wrong for these.
    let ethers: Vec<_> =
        tables().solvents.values().filter(|one| ["butoxy", "methoxy", "-ether"].iter().any(|part| one.id.contains(part))).collect();
    assert_eq!(ethers.len(), 6);
    for solvent in ethers {
        let (density, ..) = solvent.density.as_ref().unwrap_or_else(|| panic!("{} has no density", solvent.id));
        assert!((0.88..1.0).contains(density), "{}: {density}", solvent.id);
    }
}

#[test]
fn rows_of_a_pure_solvent_hold_its_carbon() {
    let mut pure = 0;
    for input in tables().inputs.iter().filter(|input| input.id.starts_with("oxidation.") && input.source == "iupac-2021") {
        let Some((_, formula)) =
            input.place.rsplit_once(' ').or(Some(("", input.place.as_str()))).filter(|(_, last)| last.starts_with('C'))
        else {
            continue;
        };
        near(&format!("{}, {}", input.id, input.place), input.value, co2_of(formula), 2e-4);
        pure += 1;
    }
    assert_eq!(pure, 3, "ink solvent, isopropanol, jet solvent");
}

#[test]
fn ends_of_ranges_are_the_solvents_that_the_notes_name() {
    let (ink, jet, cleaner) = (row("oxidation.ink-solvent.co2e"), row("oxidation.jet-solvent.co2e"), row("oxidation.cleaner.co2e"));
    near("2-butoxyethyl acetate", ink.low, co2_of("C8H16O3"), 2e-4);
    near("isophorone", ink.high, co2_of("C9H14O"), 2e-4);
    near("methoxypropyl acetate", jet.low, co2_of("C6H12O3"), 2e-4);
    near("butoxyethanol", jet.high, co2_of("C6H14O2"), 2e-4);
    near("diethylene glycol diethyl ether", cleaner.low, co2_of("C8H18O3"), 2e-4);
    near("toluene", cleaner.high, co2_of("C7H8"), 2e-4);
    let water = row("oxidation.water-ink.co2e");
    near("1,2-propanediol", water.low, co2_of("C3H8O2"), 2e-4);
    near("cyclohexanone", water.high, co2_of("C6H10O"), 2e-4);
}

#[test]
fn the_monomer_of_uv_ink_is_the_mean_of_four() {
    let four = ["C12H18O4", "C11H12O3", "C8H13NO", "C13H20O2"].map(co2_of);
    let uv = row("oxidation.uv-monomer.co2e");
    near("geometric mean", uv.value, four.iter().product::<f64>().powf(0.25), 0.005);
    near("hexanediol diacrylate", uv.low, four[0], 2e-4);
    near("isobornyl acrylate", uv.high, four[3], 2e-4);
}

#[test]
fn solvent_to_air_is_counted_by_its_carbon() {
    let comparison = compared(r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":10}]}"#);
    for (id, label, formula) in [
        ("screen", "solvent of thinner to air", "C6H10O"),
        ("digital", "solvent of solvent jet ink to air", "C8H18O3"),
        ("digital", "solvent of isopropanol to air", "C3H8O"),
    ] {
        let model = comparison.model(id).expect("a default alternative");
        near(label, factor(model, Indicator::Co2e, label), co2_of(formula), 2e-4);
    }
}

#[test]
fn an_order_that_names_its_solvents_is_counted_by_their_carbon() {
    let with = r#""oxidation.ink-solvent.co2e":"isophorone","oxidation.cleaner.co2e":{"value":"acetone","note":"safety data sheet of the wash-up"},
        "waste.cleaner-liquid.co2e":"acetone","cleaner.density":"acetone""#;
    let comparison =
        compared(&one(r#""code":"R1-1","size":"30 in","quantity":10"#, &format!(r#""route":"screen-printing","with":{{{with}}}"#)));
    let model = comparison.model("only").expect("the order has one alternative");
    for (label, formula) in [
        ("solvent of solvent screen ink to air", "C9H14O"),
        ("solvent of thinner to air", "C9H14O"),
        ("solvent of cleaner to air", "C3H6O"),
        ("cleaner, liquid", "C3H6O"),
    ] {
        near(label, factor(model, Indicator::Co2e, label), co2_of(formula), 2e-4);
    }
    let named = model.book.row("oxidation.ink-solvent.co2e").expect("the row");
    assert_eq!((named.source.as_str(), named.place.as_str(), named.grade), ("iupac-2021", "isophorone, C9H14O", Grade::B));
    assert_eq!(model.book.row("cleaner.density").map(|row| (row.value, row.grade)), Some((0.790, Grade::B)));
}
