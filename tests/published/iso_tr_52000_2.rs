//! ISO/TR 52000-2:2016, worked example of 100 kWh from the grid: factors 0.5 renewable, 2.0
//! non-renewable and 0.42 kg CO2 per kWh give 50 + 200 kWh primary and 42 kg.
//!
//! The other examples hold electricity made on site and exported, which the program does not model.

use crate::shop::{compared, factor, near, one};
use faceload_core::load::Indicator;

#[test]
fn a_hundred_kilowatt_hours_take_250_kwh_primary_and_42_kg() {
    // At the meter: no grid loss, and of the gases CO2 alone.
    let with = r#""primary.us-electricity.energy":"2.5 kW.h/kW.h","grid-loss.us-2023":"1e-12","electricity.us-rfcw.co2e.co2":"0.42 kg/kW.h",
        "electricity.us-rfcw.co2e.ch4":"1e-15 kg/kW.h","electricity.us-rfcw.co2e.n2o":"1e-15 kg/kW.h""#;
    let signs = r#""code":"R1-1","size":"30 in","quantity":10"#;
    for (route, machine) in [("screen-printing", "press"), ("overlay-film", "plotter"), ("digital-printing", "printer")] {
        let comparison = compared(&one(signs, &format!(r#""route":"{route}","with":{{{with}}}"#)));
        let model = comparison.model("only").expect("the order has one alternative");
        near(&format!("{machine}, kWh primary"), 100.0 * factor(model, Indicator::Energy, machine) / 3.6, 50.0 + 200.0, 1e-9);
        near(&format!("{machine}, kg CO2"), 100.0 * factor(model, Indicator::Co2e, machine), 42.0, 1e-9);
    }
}
