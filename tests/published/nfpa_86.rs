//! NFPA 86, the estimating rule that finishing handbooks give for its 25 % limit: 10,000 ft3 of air
//! per US gallon of solvent evaporated, 74.8 m3 per litre. It says when a caution is printed, not
//! what is safe.

use crate::shop::{amount, book, compared, input, near, one, order};
use faceload_core::comparison::Comparison;
use faceload_core::inventory::{Stage, What};
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

/// 100 stop signs in a room with so many m3 of air an hour.
fn in_a_room(air: &str, stock: bool) -> Comparison {
    let line = format!(r#""code":"R1-1","size":"30 in","quantity":100,"batch":100,"stock":{stock}"#);
    compared(&one(&line, &format!(r#""route":"screen-printing","with":{{"air.screen-room":"{air} m3/h","oven.exhaust":"1 m3/s"}}"#)))
}

#[test]
fn an_air_flow_below_the_rule_is_cautioned_and_one_above_is_not() {
    let still = in_a_room("0.01", false);
    assert_eq!(still.cautions.len(), 1, "{:?}", still.cautions);
    let caution = &still.cautions[0];
    assert_eq!((caution.alternative.as_str(), caution.place), ("only", "screen room"));
    near("air reckoned, m3/h", caution.air, 0.01, 1e-12);
    // Solvent of the prints by the litre, over the 1.3 h in which 104 impressions are printed.
    let model = &still.models[0];
    let evaporated = model.flows.iter().filter(|flow| flow.stage == Stage::Drying && matches!(flow.what, What::Evaporated(..)));
    let kg: f64 = evaporated.map(|flow| amount(model, flow.what.terms())).sum();
    let litres_an_hour = kg / input(model, "cleaner.density") / 1.3;
    near("air asked for, m3/h", caution.floor, litres_an_hour * 74.8, caution.floor * 1e-3);
    assert!(in_a_room("8000", false).cautions.is_empty());
}

#[test]
fn signs_made_for_stock_are_cautioned_as_well() {
    let (for_stock, to_order) = (in_a_room("0.01", true), in_a_room("0.01", false));
    assert_eq!(for_stock.cautions.len(), 1, "{:?}", for_stock.cautions);
    near("air asked for, m3/h", for_stock.cautions[0].floor, to_order.cautions[0].floor, to_order.cautions[0].floor * 1e-6);
    assert!(in_a_room("8000", true).cautions.is_empty());
}
