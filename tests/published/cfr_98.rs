//! 40 CFR 98, Tables C-1 and C-2: natural gas, 53.06 kg CO2, 1 g CH4 and 0.1 g N2O per mmBtu (HHV).
//!
//! Weighed with the potentials of each IPCC report, and read off the heat of an order's flows.

use crate::shop::{compared, factor, near};
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
