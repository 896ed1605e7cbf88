//! Water from the main and to the sewer: 1,500 kWh per million US gallons supplied (EPA
//! 816-F-13-004, 2013) and 2,000 treated, 0.9246 kWh/m3. With the US average grid of the EPA's
//! emission factors hub of January 2026 (747.9, 0.054 and 0.007 lb of CO2, CH4 and N2O per MWh, AR6)
//! that is 0.3151 kg CO2e/m3.

use crate::shop::{compared, factor, input, near, one_at};
use faceload_core::load::Indicator;

#[test]
fn a_cubic_metre_through_the_shop_takes_0_9246_kwh_and_loads_0_3151_kg_co2e() {
    let with = r#""electricity.us-average.co2e.co2":"747.9 [lb_av]/MW.h","electricity.us-average.co2e.ch4":"0.054 [lb_av]/MW.h",
        "electricity.us-average.co2e.n2o":"0.007 [lb_av]/MW.h","grid-loss.us-2023":"1e-12""#;
    let comparison = compared(&one_at(
        r#""electricity":"us.average""#,
        r#""code":"R1-1","size":"30 in","quantity":10"#,
        &format!(r#""route":"screen-printing","with":{{{with}}}"#),
    ));
    let model = comparison.model("only").expect("the order has one alternative");
    let kwh = 1_000.0 * (input(model, "water.supply.electricity") + input(model, "water.sewer.electricity"));
    near("kWh/m3", kwh, 0.9246, 0.00005);
    near("kg CO2e/kWh", factor(model, Indicator::Co2e, "press"), 0.34077, 0.000005);
    for water in ["developing water", "reclaim water"] {
        let both = factor(model, Indicator::Co2e, water) + factor(model, Indicator::Co2e, &format!("{water}, to sewer"));
        near(&format!("{water}, kg CO2e/m3"), 1_000.0 * both, 0.3151, 0.00005);
    }
}
