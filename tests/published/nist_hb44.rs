//! Units of NIST Handbook 44 (2026), Appendix C, exact by definition; the Btu (International Table)
//! of NIST SP 811.

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
