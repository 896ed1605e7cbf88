//! Areas: the electricity area decides what the order's emissions cover, and any area can be chosen.

use faceload_core::comparison::compare;
use faceload_core::factors::{Basis, Carried};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, demo};
use serde_json::{Value, json};

use crate::shop::{order, tables};

/// The stop sign demo on another site.
fn stop(site: &Value) -> String {
    let mut stop: Value = serde_json::from_str(demo::find("stop").expect("a demo").text).expect("JSON");
    stop["site"] = site.clone();
    stop.to_string()
}

/// The ids of the inputs that an order's CO2e rests on, its first alternative's.
fn rests_on(site: &Value) -> Vec<String> {
    let comparison = compare(tables(), &order(&stop(site)), Per::M2Year, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"));
    let model = &comparison.models[0];
    let mut ids: Vec<String> =
        model.inputs_of(Indicator::Co2e, Per::M2Year).into_iter().map(|id| model.book.input(id).id.clone()).collect();
    ids.sort();
    ids
}

fn upstream(site: &Value) -> Vec<String> {
    rests_on(site).into_iter().filter(|id| id.starts_with("upstream.")).collect()
}

#[test]
fn a_life_cycle_area_counts_fuels_and_vehicles_from_the_well_a_direct_one_does_not() {
    let site = |area: &str| json!({"electricity": area, "heat": "uk.gas-oil", "delivery": "60 km", "visit": "30 km"});
    let well = ["upstream.uk-gas-oil.co2e", "upstream.uk-truck.co2e", "upstream.uk-van.co2e"];
    assert_eq!(upstream(&site("uk.life-cycle")), well);
    assert_eq!(upstream(&site("de")), well);
    let grid = ["upstream.uk-electricity.co2e", well[0], well[1], well[2]];
    assert_eq!(upstream(&site("uk.well-to-tank")), grid);
    assert!(upstream(&site("uk")).is_empty() && upstream(&site("us.rfcw")).is_empty());
}

#[test]
fn every_order_is_on_one_basis() {
    for area in tables().carriers_of(Carried::Electricity) {
        let order = order(&stop(&json!({"electricity": area.id})));
        let site = &order.site;
        assert_eq!(site.basis(), area.basis);
        for way in [&site.heat, &site.freight, &site.vehicle] {
            assert!(site.basis() == Basis::Direct || !way.upstream.is_empty(), "{}: {} without its well", area.id, way.id);
        }
    }
}

#[test]
fn freight_and_vehicles_are_the_countrys_own_or_the_united_kingdoms() {
    for (area, freight, vehicle) in [
        ("us.rfcw", "us.truck", "us.light-truck"),
        ("us.state-tx-2022", "us.truck", "us.light-truck"),
        ("us.life-cycle", "uk.truck", "uk.van"),
        ("uk", "uk.truck", "uk.van"),
        ("ca", "uk.truck", "uk.van"),
    ] {
        let site = order(&stop(&json!({"electricity": area}))).site;
        assert_eq!((site.freight.id.as_str(), site.vehicle.id.as_str()), (freight, vehicle), "{area}");
    }
}

#[test]
fn every_area_compares_the_stop_sign_with_finite_positive_loads() {
    let mut seen = 0;
    for area in tables().carriers_of(Carried::Electricity) {
        let order = order(&stop(&json!({"electricity": area.id, "delivery": "60 km", "visit": "30 km"})));
        let comparison = compare(tables(), &order, Per::M2Year, Boundary::Face).unwrap_or_else(|fault| panic!("{}: {fault:?}", area.id));
        for model in &comparison.models {
            for indicator in [Indicator::Energy, Indicator::Co2e] {
                let load = model.load(indicator, Per::M2Year).value;
                assert!(load.is_finite() && load > 0.0, "{}, {}: {load}", area.id, model.alternative.id);
            }
        }
        seen += 1;
    }
    assert!(seen >= 200, "{seen} areas");
}

#[test]
fn of_two_areas_the_dirtier_grid_loads_more() {
    let co2e = |area: &str| {
        let comparison = compare(tables(), &order(&stop(&json!({"electricity": area, "heat": "us.natural-gas"}))), Per::M2, Boundary::Face);
        comparison.unwrap_or_else(|fault| panic!("{fault:?}")).models[0].load(Indicator::Co2e, Per::M2).value
    };
    assert!(co2e("us.nyup") < co2e("us.rfcw") && co2e("us.rfcw") < co2e("us.mroe"));
    assert!(co2e("no") < co2e("de") && co2e("de") < co2e("in"));
}

#[test]
fn a_site_moved_to_another_area_is_as_if_it_had_been_ordered_there() {
    let site = |area: &str, freight: Option<&str>| {
        let mut site = json!({"electricity": area, "delivery": "60 km"});
        if let Some(freight) = freight {
            site["freight"] = json!(freight);
        }
        order(&stop(&site)).site
    };
    for (from, to) in [("us.rfcw", "us.average"), ("us.rfcw", "de"), ("de", "us.rfcw"), ("uk", "uk.life-cycle")] {
        assert_eq!(site(from, None).in_area(tables(), to).as_ref(), Some(&site(to, None)), "{from} to {to}");
    }
    // What the order states stays; where it does not fit, there is no such site.
    let stated = site("us.rfcw", Some("us.truck-2021"));
    assert_eq!(stated.in_area(tables(), "us.average"), Some(site("us.average", Some("us.truck-2021"))));
    assert_eq!(stated.in_area(tables(), "de"), None);
    assert_eq!(stated.in_area(tables(), "atlantis"), None);
}
