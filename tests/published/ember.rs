//! Carbon intensity of electricity generation over its life cycle (Ember and Energy Institute, chart
//! data of December 2025 and April 2026): g CO2e per kWh generated. No gases are published, so no
//! set of warming potentials moves it; no grid loss is in it, so one is added.

use crate::shop::{at_the_meter, near};

#[test]
fn areas_load_what_is_printed_whatever_the_set() {
    for (area, published) in [
        ("world", 458.3),
        ("eu", 209.9),
        ("us.life-cycle", 384.4),
        ("us.life-cycle-2024", 383.5),
        ("uk.life-cycle", 217.4),
        ("ca", 190.7),
        ("ca-2024", 174.8),
        ("de", 329.6),
        ("de-2024", 344.1),
        ("is", 27.8),
        ("id", 680.2),
        ("in", 670.1),
        ("za-2024", 708.9),
    ] {
        for gwp in ["AR4", "AR5", "AR6"] {
            let (per_kwh, loss) = at_the_meter(area, gwp);
            near(&format!("{area}, {gwp}"), per_kwh * (1.0 - loss) * 1000.0, published, 1e-9);
            assert!(loss > 0.0, "{area}: nothing is lost");
        }
    }
}
