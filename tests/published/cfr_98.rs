//! 40 CFR 98, Tables C-1 and C-2: heat of combustion (HHV), CO2, CH4 and N2O of fuels.
//!
//! Weighed with the potentials of each IPCC report, and read off the heat of an order's flows.

use crate::shop::{burnt, compared, factor, near};
use faceload_core::load::Indicator;

/// MJ in a mmBtu, Btu of the International Table.
const MMBTU: f64 = 1_055.055_852_62;

#[test]
fn natural_gas_loads_53_1145_kg_co2e_per_mmbtu() {
    for (gwp, published) in [("AR4", 53.1148), ("AR5", 53.1145), ("AR6", 53.1143)] {
        let text = format!(r#"{{"schema_version":1,"gwp":"{gwp}","line":[{{"code":"R1-1","size":"30 in","quantity":10}}]}}"#);
        let comparison = compared(&text);
        for (id, room) in [("screen", "screen room"), ("digital", "printer room")] {
            let model = comparison.model(id).expect("a default alternative");
            let per_mmbtu = factor(model, Indicator::Co2e, &format!("warming the air of the {room}")) * MMBTU;
            near(&format!("{gwp}, {room}"), per_mmbtu, published, 0.00005);
        }
    }
}

#[test]
fn heat_of_combustion_times_a_factor_is_the_printed_factor_per_gallon_or_cubic_foot() {
    // mmBtu, kg CO2, g CH4 and g N2O of a unit: US gallons, of gas standard cubic feet.
    for (fuel, hhv, co2, ch4, n2o) in [
        ("us.natural-gas", 0.001026, 0.05444, 0.00103, 0.00010),
        ("us.propane", 0.091, 5.72, 0.27, 0.05),
        ("us.lpg", 0.092, 5.68, 0.28, 0.06),
        ("us.butane", 0.103, 6.67, 0.31, 0.06),
        ("us.kerosene", 0.135, 10.15, 0.41, 0.08),
        ("us.oil-2", 0.138, 10.21, 0.41, 0.08),
        ("us.oil-4", 0.146, 10.96, 0.44, 0.09),
        ("us.oil-6", 0.150, 11.27, 0.45, 0.09),
    ] {
        let printed = co2 + (28.0 * ch4 + 265.0 * n2o) / 1000.0;
        near(fuel, burnt(fuel, "us.rfcw", "AR5") * MMBTU * hhv / printed, 1.0, 0.0012);
    }
}
