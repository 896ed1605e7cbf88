//! eGRID2023, summary table 1 (US EPA, 2025), as copied: lb CO2e per MWh generated, weighed with AR5;
//! grid gross loss 4.2 %. Three values of the CO2e column were seen printed.

use crate::shop::{at_the_meter, near};

const POUND: f64 = 0.453_592_37;

#[test]
fn electricity_generated_loads_what_the_table_prints() {
    let rounding = 0.05 + 0.0005 * (1.0 + 28.0 + 265.0);
    for (area, published) in [("us.average", 770.9), ("us.camx", 430.0), ("us.rfcm", 976.0)] {
        let (per_kwh, loss) = at_the_meter(area, "AR5");
        near(area, per_kwh * (1.0 - loss) / POUND * 1000.0, published, rounding);
        near(area, loss, 0.042, 1e-12);
    }
    // The gases of AR4 do not give Michigan's value: the set of the edition has changed.
    let (per_kwh, loss) = at_the_meter("us.rfcm", "AR4");
    assert!(per_kwh * (1.0 - loss) / POUND * 1000.0 > 976.05);
}

#[test]
fn the_us_average_at_the_meter_is_365_0_g_per_kwh() {
    near("g/kWh", at_the_meter("us.average", "AR5").0 * 1000.0, 365.0, 0.05);
}
