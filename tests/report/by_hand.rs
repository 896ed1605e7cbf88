//! Headline numbers worked out again from other tables of the printed report, as a reviewer would with a pencil.

use super::{number, report, rows, section};

/// Waste per m2: what leaves as waste in the mass closure, divided by the faces of the reference flows.
#[test]
fn waste_is_the_waste_of_the_mass_closure_over_the_faces() {
    let html = report(&["stop", "--draws", "100"]);
    let flows = rows(section(&html, "report-flows"));
    let faces = flows.iter().find(|row| row[0] == "sign face in service").expect("the faces");
    let names = flows[0].clone();
    let mut checked = 0;
    for load in rows(section(&html, "report-loads")).iter().filter(|row| row[0] == "waste" && row[1] == "kg/m2" && row.len() == 9) {
        let place = names.iter().position(|name| *name == load[2]).expect("a column");
        let closure = rows(section(&html, "report-closure"));
        let of_alternative = closure.iter().filter(|row| row[0] == load[2]);
        // Solid and liquid waste; an empty cell is none.
        let waste: f64 = of_alternative.map(|row| number(&row[4]).unwrap_or(0.0) + number(&row[5]).unwrap_or(0.0)).sum();
        let per_m2 = waste / number(&faces[place]).expect("m2");
        let printed = number(&load[3]).expect("a load");
        assert!((per_m2 / printed - 1.0).abs() < 0.01, "{}: {per_m2} by hand, {printed} printed", load[2]);
        checked += 1;
    }
    assert_eq!(checked, 6);
}

/// CO2e of the electricity at the meter, screen printing: 0.994 kWh/m2 x 48.1 m2 x 911 lb/MWh x 0.45359237 kg/lb, and of
/// CH4 and N2O under one in a hundred more, is scope 2.
#[test]
fn scope_2_is_the_meter_times_the_area() {
    let html = report(&["stop", "--draws", "100"]);
    let cell = |id: &str, row: &str, column: &str| {
        let all = rows(section(&html, id));
        let head = all
            .iter()
            .rfind(|head| head.iter().any(|name| name == column) && head.iter().any(|name| name == "unit" || name == "of the inventory"));
        let place = head.expect("a head").iter().position(|name| name == column).expect("a column");
        let found = all.iter().find(|cells| cells.iter().any(|cell| cell == row)).unwrap_or_else(|| panic!("no row {row}"));
        number(&found[place]).unwrap_or_else(|| panic!("{row}: {}", found[place]))
    };
    let kwh = cell("report-loads", "electricity at the meter", "screen") * cell("report-flows", "sign face in service", "screen");
    let inputs = section(&html, "report-inputs");
    let row = rows(inputs).into_iter().find(|row| row[0].ends_with("[electricity.us-rfcw.co2e.co2]")).expect("the area's CO2");
    let pounds: f64 = row[1].split(' ').next().and_then(number).expect("lb/MWh");
    let by_hand = kwh * pounds / 1_000.0 * 0.453_592_37;
    let printed = cell("report-scopes", "electricity at the meter", "screen");
    assert!(printed / by_hand > 1.0 && printed / by_hand < 1.01, "{by_hand} by hand, {printed} printed");
}
