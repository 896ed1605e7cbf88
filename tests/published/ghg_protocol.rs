//! GHG Protocol, Technical Guidance for Calculating Scope 3 Emissions (2013): illustrative examples.
//!
//! Amounts are put in the place of a contribution's own, so that what runs is the product's: rows
//! replaced by an order, units read, gases weighed, the flow's factor, amount x factor, divided by
//! the functional unit. Left out: examples 3.1, 4.1, 4.3 and 4.5 (allocation, refrigerants, several
//! countries in one sum) and 1.1 to 1.3 and 8.1, which the program does not compute or whose prints
//! do not follow from their inputs.

use crate::shop::{compared, near};
use faceload_core::inventory::{Formula, Stage, Terms};
use faceload_core::load::{Contribution, Indicator, Per};
use faceload_core::quantity::{Electricity, FuelHeat, Kind, Length, Mass, Water, of};

const SIGNS: &str = r#""code":"R1-1","size":"30 in","quantity":10"#;
const PRINTED: &str = r#""route":"screen-printing""#;

/// kg CO2e of so much of a flow, with these rows of the tables replaced.
fn load(with: &str, stage: Stage, label: &str, amount: Terms) -> f64 {
    load_of(SIGNS, PRINTED, "", with, stage, label, amount, Per::Order)
}

#[expect(clippy::too_many_arguments, reason = "an order has these parts")]
fn load_of(line: &str, route: &str, head: &str, with: &str, stage: Stage, label: &str, amount: Terms, per: Per) -> f64 {
    let comparison = compared(&format!(
        r#"{{"schema_version":1,{head}"site":{{"delivery":"1 km"}},"line":[{{{line}}}],"alternative":[{{"id":"only",{route},"with":{{{with}}}}}]}}"#
    ));
    let model = comparison.model("only").expect("the order has one alternative");
    let found = model.contributions_to(Indicator::Co2e, Per::M2Year).find(|one| one.label == label && one.stage == stage);
    let one = found.unwrap_or_else(|| panic!("nothing of {label} in {}", stage.name()));
    model.value_of(&model.parts[0], &Contribution { amount: amount.into(), ..one.clone() }, per)
}

fn fixed<Q: Kind>(number: f64) -> Terms {
    Formula::fixed(of::<Q>(number)).into_terms()
}

/// Waste that a landfill takes, at so many kg per kg.
fn waste(kg: f64, per_kg: f64) -> f64 {
    load(&format!(r#""waste.plastics-landfill.co2e":"{per_kg} kg/kg""#), Stage::Waste, "film positive", fixed::<Mass>(kg))
}

#[test]
fn freight_by_distance_example_4_2() {
    let truck = |tonnes: f64, km: f64, per_tonne_km: f64| {
        let with = format!(
            r#""freight.us-truck.co2e.co2":"{per_tonne_km} kg/t/km","freight.us-truck.co2e.ch4":"1e-15 kg/t/km","freight.us-truck.co2e.n2o":"1e-15 kg/t/km""#
        );
        let freight = Formula::fixed(of::<Mass>(tonnes * 1_000.0)) * Formula::fixed(of::<Length>(km * 1_000.0));
        load(&with, Stage::Delivery, "delivery of the faces", freight.into_terms())
    };
    let three = [truck(2.0, 2_000.0, 0.2), truck(1.0, 3_000.0, 1.0), truck(6.0, 4_000.0, 0.05)];
    for (load, published) in three.into_iter().zip([800.0, 3_000.0, 1_200.0]) {
        near("kg CO2e", load, published, 1e-6);
    }
    near("kg CO2e", three.iter().sum(), 5_000.0, 1e-6);
}

#[test]
fn waste_and_wastewater_example_5_1() {
    // Factors are per tonne there, per kg here; per m3 there, by electricity per litre here.
    let water = r#""water.sewer.electricity":"0.001 kW.h/L","grid-loss.us-2023":"1e-12","electricity.us-rfcw.co2e.co2":"0.5 kg/kW.h",
        "electricity.us-rfcw.co2e.ch4":"1e-15 kg/kW.h","electricity.us-rfcw.co2e.n2o":"1e-15 kg/kW.h""#;
    let water = load(water, Stage::Prepress, "developing water, to sewer", fixed::<Water>(5_000.0 * 1_000.0));
    let solid = waste(2_000e3, 0.040) + waste(5_000e3, 0.002) + waste(4_000e3, 0.010);
    near("wastewater, kg CO2e", water, 2_500.0, 1e-6);
    near("kg CO2e", solid + water, 132_500.0, 1e-6);
}

#[test]
fn average_waste_example_5_2() {
    // 40 t; two of the five kinds count nothing.
    let kinds = [(0.25, 300.0), (0.20, 10.0), (0.20, 30.0)];
    near("kg CO2e", kinds.into_iter().map(|(share, per_tonne)| waste(40e3 * share, per_tonne / 1_000.0)).sum(), 3_320.0, 1e-6);
}

#[test]
fn a_processing_site_example_10_1() {
    let gas = r#""heat.us-natural-gas.co2e.co2":"0.2 kg/kW.h","heat.us-natural-gas.co2e.ch4":"1e-15 kg/kW.h","heat.us-natural-gas.co2e.n2o":"1e-15 kg/kW.h""#;
    let power = r#""grid-loss.us-2023":"1e-12","electricity.us-rfcw.co2e.co2":"0.5 kg/kW.h",
        "electricity.us-rfcw.co2e.ch4":"1e-15 kg/kW.h","electricity.us-rfcw.co2e.n2o":"1e-15 kg/kW.h""#;
    let gas = load(gas, Stage::Air, "warming the air of the screen room", fixed::<FuelHeat>(3_500.0 * 3.6));
    let power = load(power, Stage::Imaging, "press", fixed::<Electricity>(2_000.0));
    near("gas", gas, 700.0, 1e-6);
    near("power", power, 1_000.0, 1e-6);
    near("kg CO2e", gas + power + waste(50.0, 0.5), 1_725.0, 1e-6);
}

#[test]
fn end_of_life_example_12_1() {
    // Nine tenths landfilled, one tenth burnt, as ink on a face whose blank is melted again.
    let with = r#""face.burnt-with-blank":"0.1","waste.plastics-landfill.co2e":"0.3 kg/kg","waste.ink-burnt.co2e":"1.0 kg/kg""#;
    near("kg CO2e", load(with, Stage::EndOfLife, "solvent screen ink, at the end", fixed::<Mass>(10_000.0)), 3_700.0, 1e-6);
}

#[test]
fn a_load_per_functional_unit_appendix_c_1() {
    // 1,500 articles used 2,000 times are 3,000,000 uses; so are 60,000 m2 kept in service for 50 years.
    let squares = r#""shape":"square","size":"1 m","quantity":60000,"stock":false,"colours":{"red":"50 %"}"#;
    let with = r#""waste.plastics-landfill.co2e":"1 kg/kg""#;
    let per_use =
        load_of(squares, PRINTED, r#""life":"50 years","#, with, Stage::Waste, "film positive", fixed::<Mass>(500_000.0), Per::M2Year);
    near("kg CO2e per use", per_use, 0.1667, 0.00005);
}
