//! Global warming potentials over 100 years, as the IPCC reports print them: AR4 (2007), AR5 (2013,
//! Table 8.7, without feedback), AR6 (2021, Table 7.15, methane from burning: not fossil).

use crate::shop::{compared, factor, input, near, tables};
use faceload_core::factors::Input;
use faceload_core::load::Indicator;
use faceload_core::quantity::ln;

const POUND_PER_MWH: f64 = 0.453_592_37e-3;

#[test]
fn potentials_are_those_of_the_reports() {
    for (id, published) in [
        ("gwp.ar4.ch4", 25.0),
        ("gwp.ar4.ch4-fugitive", 25.0),
        ("gwp.ar4.n2o", 298.0),
        ("gwp.ar5.ch4", 28.0),
        ("gwp.ar5.ch4-fugitive", 30.0),
        ("gwp.ar5.n2o", 265.0),
        ("gwp.ar6.ch4", 27.0),
        ("gwp.ar6.ch4-fugitive", 29.8),
        ("gwp.ar6.n2o", 273.0),
    ] {
        near(id, row(id).value, published, 1e-9);
    }
    for set in ["ar4", "ar5", "ar6"] {
        near(set, row(&format!("gwp.{set}.common")).value, 1.0, 0.0);
    }
}

fn row(id: &str) -> &'static Input {
    &tables().inputs[tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"))]
}

/// The logarithm of high over low.
fn width(id: &str) -> f64 {
    ln(row(id).high / row(id).low)
}

#[test]
fn own_and_shared_spread_together_are_the_published_range() {
    // AR6 prints 27.0, 29.8 and 273 with 5 to 95 % ranges of -+ 11, 11 and 130; of it 26 % is of CO2.
    near("shared", width("gwp.ar6.common"), 2.0 * ln(1.26), 1e-3);
    for (id, from, to) in [("gwp.ar6.ch4", 16.0, 38.0), ("gwp.ar6.ch4-fugitive", 18.8, 40.8), ("gwp.ar6.n2o", 143.0, 403.0)] {
        let (own, shared) = (width(id), width("gwp.ar6.common"));
        near(id, (own * own + shared * shared).sqrt(), ln(to / from), 1e-3);
    }
}

#[test]
fn an_order_is_weighed_with_the_set_it_names() {
    let per_kwh = |gwp: &str| {
        let comparison =
            compared(&format!(r#"{{"schema_version":1,"gwp":"{gwp}","line":[{{"code":"R1-1","size":"30 in","quantity":10}}]}}"#));
        let model = comparison.model("screen").expect("a default alternative");
        let gases = ["ch4", "n2o"].map(|gas| input(model, &format!("electricity.us-rfcw.co2e.{gas}")));
        let generated = factor(model, Indicator::Co2e, "press") * (1.0 - input(model, "grid-loss.us-2023"));
        (generated / POUND_PER_MWH, gases)
    };
    let (ar4, [ch4, n2o]) = per_kwh("AR4");
    let ((ar5, _), (ar6, _)) = (per_kwh("AR5"), per_kwh("AR6"));
    near("AR5 - AR4, lb/MWh", ar5 - ar4, ch4 * (28.0 - 25.0) + n2o * (265.0 - 298.0), 1e-9);
    near("AR6 - AR5, lb/MWh", ar6 - ar5, ch4 * (27.0 - 28.0) + n2o * (273.0 - 265.0), 1e-9);
}
