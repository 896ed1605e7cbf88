//! Wash-up solvents of screen shops by health surveys of the US NIOSH: a sign shop (HETA
//! 2007-0053-3092, 2009) used toluene, n-hexane, isopropanol and acetone, with cyclohexanone in its
//! ink; a decal shop (HHE-80-103-827, 1981) 42 to 85 ppm xylene, 149 to 356 toluene, 52 to 126
//! methyl isobutyl ketone and 12 to 25 methyl ethyl ketone in air, with isophorone in its ink.
//!
//! The first, in equal parts, is the cleaner of the tables; the second lies within its ranges.

use crate::shop::{near, tables};
use faceload_core::factors::{Input, Solvent};

fn solvent(id: &str) -> &'static Solvent {
    tables().solvents.get(id).unwrap_or_else(|| panic!("no solvent `{id}`"))
}

fn row(id: &str) -> &'static Input {
    &tables().inputs[tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"))]
}

/// CO2 and density of a blend by mass.
fn blend(parts: &[(&str, f64)]) -> (f64, f64) {
    let whole: f64 = parts.iter().map(|(_, mass)| mass).sum();
    let of = |each: &dyn Fn(&Solvent) -> f64| parts.iter().map(|(id, mass)| each(solvent(id)) * mass / whole).sum::<f64>();
    let dense = |solvent: &Solvent| 1.0 / solvent.density.as_ref().map_or(f64::NAN, |(density, ..)| *density);
    (of(&|solvent| solvent.co2e), 1.0 / of(&dense))
}

/// The share of a blend that is hydrocarbon: no oxygen in the formula.
fn hydrocarbon(parts: &[(&str, f64)]) -> f64 {
    let whole: f64 = parts.iter().map(|(_, mass)| mass).sum();
    parts.iter().filter(|(id, _)| !solvent(id).formula.contains('O')).map(|(_, mass)| mass / whole).sum()
}

const SIGN_SHOP: [(&str, f64); 4] = [("toluene", 1.0), ("n-hexane", 1.0), ("isopropanol", 1.0), ("acetone", 1.0)];

/// The decal shop by the middle of its readings, ppm x g/mol.
fn decal_shop() -> Vec<(&'static str, f64)> {
    [("xylene", 42.0 + 85.0), ("toluene", 149.0 + 356.0), ("methyl-isobutyl-ketone", 52.0 + 126.0), ("methyl-ethyl-ketone", 12.0 + 25.0)]
        .map(|(id, twice)| (id, twice / 2.0 * solvent(id).molar_mass))
        .to_vec()
}

#[test]
fn the_cleaner_is_the_wash_up_solvent_of_the_sign_shop_in_equal_parts() {
    let (co2, _) = blend(&SIGN_SHOP);
    near("kg CO2/kg oxidised", row("oxidation.cleaner.co2e").value, co2, 0.005);
    near("kg CO2/kg burnt", row("waste.cleaner-liquid.co2e").value, co2, 0.005);
    near("hydrocarbon share", row("cleaner.hydrocarbon-share").value, hydrocarbon(&SIGN_SHOP), 1e-12);
}

#[test]
fn both_shops_lie_within_the_ranges_of_the_cleaner() {
    for (shop, parts) in [("sign shop", SIGN_SHOP.to_vec()), ("decal shop", decal_shop())] {
        let (co2, density) = blend(&parts);
        for (id, value) in
            [("oxidation.cleaner.co2e", co2), ("cleaner.density", density), ("cleaner.hydrocarbon-share", hydrocarbon(&parts))]
        {
            let row = row(id);
            assert!(row.low - 0.005 <= value && value <= row.high + 0.005, "{shop}, {id}: {value} outside {} to {}", row.low, row.high);
        }
    }
    near("decal shop, kg CO2/kg", blend(&decal_shop()).0, 3.15, 0.005);
    near("sign shop, kg/L", blend(&SIGN_SHOP).1, 0.77, 0.005);
}

#[test]
fn ink_solvents_found_in_both_shops_are_the_value_and_the_high_end_of_the_ink_row() {
    let ink = row("oxidation.ink-solvent.co2e");
    near("cyclohexanone", ink.value, solvent("cyclohexanone").co2e, 1e-12);
    near("isophorone", ink.high, solvent("isophorone").co2e, 1e-12);
    assert_eq!((solvent("cyclohexanone").found_by.as_str(), solvent("isophorone").found_by.as_str()), ("niosh-2009", "niosh-1981"));
}
