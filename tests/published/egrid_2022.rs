//! eGRID2022, summary table 1 (US EPA, January 2024): lb CO2e per MWh generated, weighed with AR4.
//!
//! The gas rates are published to 0.001 lb/MWh and CO2e to 0.1, from rates that were not rounded;
//! so the two agree within half a digit of each.

use crate::shop::{compared, factor, input, near};
use faceload_core::load::Indicator;

const POUND: f64 = 0.453_592_37;

/// kg CO2e per kWh at the meter, and the grid loss, in that area.
fn at_the_meter(area: &str, gwp: &str) -> (f64, f64) {
    let text = format!(
        r#"{{"schema_version":1,"gwp":"{gwp}","site":{{"electricity":"{area}"}},"line":[{{"code":"R1-1","size":"30 in","quantity":10}}]}}"#
    );
    let comparison = compared(&text);
    let model = comparison.model("screen").expect("a default alternative");
    let loss = input(model, &format!("electricity.{}.loss", area.replace('.', "-")));
    (factor(model, Indicator::Co2e, "press"), loss)
}

#[test]
fn electricity_generated_loads_what_the_table_prints() {
    let rounding = 0.05 + 0.0005 * (1.0 + 25.0 + 298.0);
    for (area, published) in [("us.average-2022", 827.5), ("us.rfcw-2022", 1005.9)] {
        let (per_kwh, loss) = at_the_meter(area, "AR4");
        near(area, per_kwh * (1.0 - loss) / POUND * 1000.0, published, rounding);
    }
}

#[test]
fn a_kilowatt_hour_at_the_meter_bears_the_grid_loss_of_5_1_percent() {
    // US average with AR5: 375.3 g/kWh generated, 395.5 at the meter.
    let (per_kwh, loss) = at_the_meter("us.average-2022", "AR5");
    near("loss", loss, 0.051, 0.0005);
    near("generated, g/kWh", per_kwh * (1.0 - loss) * 1000.0, 375.3, 0.05);
    near("at the meter, g/kWh", per_kwh * 1000.0, 395.5, 0.05);
}
