//! NFPA 86, the estimating rule that finishing handbooks give for its 25 % limit: 10,000 ft3 of air
//! per US gallon of solvent evaporated, 74.8 m3 per litre. It says when a caution is printed, not
//! what is safe.

use crate::shop::{book, near, order};
use faceload_core::quantity::{AirFlow, Kind, Liquid, Per, Time, of};
use faceload_core::step::air::{is_below_floor, least_air};

const STOP: &str = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":10}]}"#;

#[test]
fn a_litre_an_hour_asks_for_74_8_m3_an_hour() {
    let order = order(STOP);
    let book = book(&order);
    let least = least_air(&book, of::<Per<Liquid, Time>>(1.0)).base();
    near("m3/h", least, 74.8, 0.05);
    near("ft3 per gallon", least / 28.316_846_592e-3 * 3.785_411_784, 10_000.0, 1e-8);
}

#[test]
fn a_flow_just_below_the_rule_is_below_and_one_just_above_is_not() {
    let order = order(STOP);
    let book = book(&order);
    let two_litres = of::<Per<Liquid, Time>>(2.0);
    assert!(is_below_floor(&book, of::<AirFlow>(149.5), two_litres));
    assert!(!is_below_floor(&book, of::<AirFlow>(149.7), two_litres));
}
