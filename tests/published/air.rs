//! Warming and moving air: the handbook constant of 1.08 Btu/(h cfm F), and heat and fan energy of
//! rooms worked out from degree-days outside the program.

use crate::shop::{book, near, one_at, order};
use faceload_core::inventory::{Activity, Flows, Formula, What};
use faceload_core::quantity::{Volume, of};
use faceload_core::step::air::ventilate;

/// MJ of heat and kWh of the fan for so many m3 of fresh air.
fn energy(degree_days: &str, heater: &str, m3: f64) -> (f64, f64) {
    let site = format!(r#""degree_days":"{degree_days} K.d""#);
    let with = format!(r#""route":"screen-printing","with":{{"air.heater-efficiency":"{heater}"}}"#);
    let order = order(&one_at(&site, r#""code":"R1-1","size":"30 in","quantity":10"#, &with));
    let (book, mut flows) = (book(&order), Flows::default());
    ventilate(&book, &mut flows, "room", Formula::fixed(of::<Volume>(m3)));
    let (mut heat, mut fan) = (0.0, 0.0);
    for flow in &flows.list {
        let value = flow.what.terms().value(&Activity::default(), &book.values());
        match flow.what {
            What::Heat(_) => heat += value,
            What::Electricity(_) => fan += value,
            _ => panic!("neither heat nor fan: {}", flow.label),
        }
    }
    (heat, fan)
}

#[test]
fn a_cubic_metre_a_second_takes_1_207_2_w_per_kelvin() {
    // 365 K d are one kelvin all the year; 3600 m3 are one m3/s for an hour; 3.6 MJ are a kWh.
    let watts = energy("365", "1", 3_600.0).0 / 3.6 * 1_000.0;
    near("W per m3/s and K", watts, 1_207.2, 0.05);
    let handbook = 1.08 * 1_055.055_852_62 / 3_600.0 / (28.316_846_592e-3 / 60.0) * 1.8;
    near("1.08 Btu/(h cfm F) in SI", watts, handbook, 0.05);
}

#[test]
fn a_room_of_400_m3_at_ten_changes_takes_21_461_kwh_of_heat_and_2_889_kwh_for_its_fan() {
    // Heat for 40 of the 168 hours of every week, the fan for 52 weeks of 40 hours.
    let weeks = 365.0 * 24.0 / 168.0;
    near("heat, kWh", energy("2800", "1", 4_000.0 * 40.0 * weeks).0 / 3.6, 21_461.0, 0.5);
    near("fan, kWh", energy("2800", "1", 4_000.0 * 2_080.0).1, 2_889.0, 0.5);
}

#[test]
fn a_plant_of_10_000_cfm_takes_188_6_mwh() {
    // 60 hours a week at 6,950 F d, as an industrial-hygiene handbook works it out in its own units.
    let m3_an_hour = 10_000.0 * 60.0 * 28.316_846_592e-3;
    let hours = 365.0 * 24.0 * 60.0 / 168.0;
    let degree_days = 6_950.0 / 1.8;
    near("MWh", energy(&degree_days.to_string(), "1", m3_an_hour * hours).0 / 3_600.0, 188.6, 0.05);
}

#[test]
fn warming_the_least_air_of_a_litre_of_solvent_by_40_k_takes_1_00_kwh() {
    // The order holds 12,000 K d at most, so by 30 K and then in proportion.
    near("kWh per L", energy("10950", "1", 74.8).0 / 3.6 * 40.0 / 30.0, 1.00, 0.005);
}

#[test]
fn a_heater_of_80_percent_burns_a_quarter_more() {
    near("ratio", energy("2800", "0.8", 1e4).0 / energy("2800", "1", 1e4).0, 1.25, 1e-12);
}

#[test]
fn the_air_of_the_tables_is_that_of_20_degrees_within_half_a_percent() {
    // Dry air at 101,325 Pa and 20 C by an equation of state: 1.2046 kg/m3; 1.0057 to 1.0062 kJ/kgK from 0 to 21 C.
    let row = |id: &str| {
        let row = &crate::shop::tables().inputs[crate::shop::tables().find(id).expect("a row")];
        row.value * row.unit.base()
    };
    near("kg/m3", row("air.density"), 1.2046, 1.2046 * 0.005);
    near("kJ/kgK", row("air.heat-capacity") * 1_000.0, 1.00595, 0.00025);
}

#[test]
fn the_same_plant_by_the_handbooks_constant_takes_642_2_mmbtu() {
    // 0.154 x cfm x F d x hours a week; 0.154 was cut off from 0.1543, and 1.08 Btu/(h cfm F) from 1.0802.
    let m3_an_hour = 10_000.0 * 60.0 * 28.316_846_592e-3;
    let hours = 365.0 * 24.0 * 60.0 / 168.0;
    let mmbtu = energy(&(6_950.0_f64 / 1.8).to_string(), "1", m3_an_hour * hours).0 / 1_055.055_852_62;
    near("mmBtu", mmbtu, 642.2, 642.2 * 0.0022);
    // Heating oil of 106,000 Btu net a gallon at 3.50: 21,204 a year.
    near("a year's oil at 3.50", mmbtu * 1e6 / 106_000.0 * 3.50, 21_204.0, 21_204.0 * 0.0022);
}

#[test]
fn heat_recovered_from_exhaust_air_need_not_be_bought() {
    let order = order(&one_at(
        r#""degree_days":"365 K.d""#,
        r#""code":"R1-1","size":"30 in","quantity":10"#,
        r#""route":"screen-printing","with":{"air.heater-efficiency":"1","air.heat-recovery":"70 %"}"#,
    ));
    let (book, mut flows) = (book(&order), Flows::default());
    ventilate(&book, &mut flows, "room", Formula::fixed(of::<Volume>(3_600.0)));
    let value = |is: fn(&What) -> bool| -> f64 {
        flows.list.iter().filter(|flow| is(&flow.what)).map(|flow| flow.what.terms().value(&Activity::default(), &book.values())).sum()
    };
    near("MJ of heat", value(|what| matches!(what, What::Heat(_))), 0.3 * energy("365", "1", 3_600.0).0, 1e-9);
    near("kWh of the fan", value(|what| matches!(what, What::Electricity(_))), energy("365", "1", 3_600.0).1, 1e-12);
}
