//! Units of NIST Handbook 44 (2026), Appendix C, exact by definition; the Btu (International Table)
//! of NIST SP 811. Compound units as a general-purpose library computes them.

use crate::shop::near;
use faceload_core::quantity::{Span, UnitText};

/// How many of one unit another is.
fn in_units(of: &str, unit: &str) -> f64 {
    let read = |text| UnitText::read(text).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
    read(unit).from_plain(&read(of)).unwrap_or_else(|| panic!("{of} is no {unit}"))
}

#[test]
fn units_are_exact() {
    for (unit, metric, size) in [
        ("[lb_av]", "kg", 0.453_592_37),
        ("lb", "kg", 0.453_592_37),
        ("[ston_av]", "kg", 907.184_74),
        ("[gal_us]", "L", 3.785_411_784),
        ("gal", "L", 3.785_411_784),
        ("ft3", "L", 28.316_846_592),
        ("[ft_i]3", "L", 28.316_846_592),
        ("ft2", "m2", 0.092_903_04),
        ("in2", "cm2", 6.451_6),
        ("in", "cm", 2.54),
        ("[in_i]", "mm", 25.4),
        ("ft", "m", 0.304_8),
        ("[mi_i]", "m", 1_609.344),
        ("kW.h", "MJ", 3.6),
        ("MMBTU", "GJ", 1.055_055_852_62),
        ("therm", "MJ", 105.505_585_262),
        ("[ston_av].[mi_i]", "t.km", 0.907_184_74 * 1.609_344),
    ] {
        near(&format!("{unit} in {metric}"), in_units(unit, metric), size, size * 1e-12);
    }
}

#[test]
fn derived_units_are_those_printed() {
    near("gallons in a cubic foot", in_units("ft3", "gal"), 7.480_519, 5e-7);
    near("cubic inches in a gallon", in_units("gal", "in3"), 231.0, 231.0 * 1e-12);
    near("mmBtu in kWh", in_units("MMBTU", "kW.h"), 293.071_070, 5e-7);
    near("short ton-mile in tonne-km", in_units("[ston_av].[mi_i]", "t.km"), 1.459_972_318, 5e-10);
    near("kWh in mmBtu per MWh in mmBtu", in_units("MWh", "MMBTU") / in_units("kWh", "MMBTU"), 1_000.0, 1e-9);
}

#[test]
fn lengths_of_a_layout_are_the_same_inches() {
    for (text, nanometres) in [("1 in", 25_400_000), ("1 ft", 304_800_000), ("1 yd", 914_400_000), ("1 mi", 1_609_344_000_000)] {
        assert_eq!(Span::read(text).map(Span::count), Ok(nanometres), "{text}");
    }
}

#[test]
fn compound_units_are_those_of_another_library() {
    // Computed by pint 0.25.3, a general-purpose library for units; its Btu is 1055.056 J, ISO's, so four rows are wider.
    for (of, unit, size, within) in [
        ("yd2", "m2", 0.836_127_36, 1e-12),
        ("[oz_av]", "g", 28.349_523_125, 1e-12),
        ("lb/gal", "g/L", 119.826_427_316_896_7, 1e-12),
        ("[lb_av]/MW.h", "g/kW.h", 0.453_592_37, 1e-12),
        ("lb/ft2", "kg/m2", 4.882_427_636_383_053, 1e-12),
        ("kWh/ft2", "MJ/m2", 38.750_077_500_155_01, 1e-12),
        ("gal/ft2", "L/m2", 40.745_833_333_333_33, 1e-12),
        ("oz/yd2", "g/m2", 33.905_747_474_882_3, 1e-12),
        ("MMBTU", "MJ", 1_055.056, 2e-7),
        ("therm", "MJ", 105.505_6, 2e-7),
        ("MMBTU/ft2", "MJ/m2", 11_356.528_268_612_095, 2e-7),
    ] {
        near(&format!("{of} in {unit}"), in_units(of, unit), size, size * within);
    }
    near("7.36 lb/gal in kg/L", 7.36 * in_units("lb/gal", "kg/L"), 0.881_922_505_052_359_8, 1e-12);
}

#[test]
fn energy_times_a_factor_over_area_and_life_has_the_size_and_the_kind() {
    // 36 MJ x 0.4 kg CO2e/kWh = 4.0 kg CO2e, over 10 ft2 of face and 10 years.
    let read = |text| UnitText::read(text).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
    let (energy, factor, area, life) = (read("MJ"), read("kg{CO2e}/kW.h"), read("[ft_i]2{face}"), read("a"));
    near("kg CO2e", 36.0 * energy.base() * 0.4 * factor.base(), 4.0, 4e-12);
    let load = 36.0 * energy.base() * 0.4 * factor.base() / (10.0 * area.base() * 10.0 * life.base());
    let wanted = read("kg{CO2e}/m2{face}/a");
    near("kg CO2e per m2 and year", load / wanted.base(), 0.430_556_416_668_388_84, 1e-12);
    let kind: Vec<i8> = (0..16).map(|of| energy.kind()[of] + factor.kind()[of] - area.kind()[of] - life.kind()[of]).collect();
    assert_eq!(kind, wanted.kind());
}
