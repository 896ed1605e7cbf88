//! GHG emission factors hub of the US EPA, edition of 2024: purchased steam (Table 7) is natural gas
//! burnt at 80 %; freight by weight (Table 8) and vehicles by way (Tables 8 and 10), turned into
//! tonne-kilometres and kilometres, weighed with AR5.

use crate::shop::{amount, carried, compared, near, one, part};
use faceload_core::load::Indicator;

const MMBTU: f64 = 1_055.055_852_62;

#[test]
fn steam_of_table_7_is_natural_gas_burnt_at_80_percent() {
    // 66.33 kg CO2, 1.25 g CH4, 0.125 g N2O per mmBtu of steam.
    let printed = 66.33 + (28.0 * 1.25 + 265.0 * 0.125) / 1000.0;
    let burnt_for = |efficiency: &str| {
        let with = format!(r#""route":"screen-printing","with":{{"air.heater-efficiency":"{efficiency}"}}"#);
        let text = one(r#""code":"R1-1","size":"30 in","quantity":10"#, &with).replacen('{', r#"{"gwp":"AR5","#, 1);
        let comparison = compared(&text);
        let model = comparison.model("only").expect("the order has one alternative");
        let warming = part(model, Indicator::Co2e, "warming the air of the screen room");
        let fuel = amount(model, &warming.amount);
        (fuel, fuel * amount(model, &warming.factor))
    };
    let (useful, _) = burnt_for("1");
    let (_, load) = burnt_for("0.80");
    near("kg CO2e per mmBtu of useful heat", load / useful * MMBTU, printed, 0.0055);
}

#[test]
fn trucks_load_0_115975_kg_co2e_per_tonne_kilometre() {
    let (freight, _) = carried(r#""electricity":"us.rfcw""#, "");
    near("kg CO2e/t km", freight * 1e6, 0.115975, 5e-7);
}

#[test]
fn vehicles_load_what_their_mile_does() {
    // kg CO2, g CH4 and g N2O of a mile.
    for (vehicle, co2, ch4, n2o) in [
        ("us.passenger-car", 0.306131, 0.008986, 0.006013),
        ("us.light-truck", 0.405456, 0.011071, 0.009826),
        ("us.heavy-truck", 1.359787, 0.011909, 0.037748),
        // The edition of 2021.
        ("us.light-truck-2021", 0.464, 0.012, 0.010),
    ] {
        let (_, driven) = carried(&format!(r#""electricity":"us.rfcw","vehicle":"{vehicle}""#), "");
        near(vehicle, driven * 1609.344, co2 + (28.0 * ch4 + 265.0 * n2o) / 1000.0, 1e-9);
    }
}
