//! Values that are printed somewhere and must stay out, each with its reason.

use faceload_core::factors::Role;
use faceload_core::load::{Indicator, Per};

use super::{row, values};
use crate::shop::{amount, compared_with_blank, near, tables};

const C: f64 = 12.011;
const CO2: f64 = 44.009;

/// kg CO2 of all the carbon of a polymer, by carbons and weight of its unit.
fn all_carbon(carbons: f64, weight: f64) -> f64 {
    carbons * CO2 / weight
}

/// Handling and other gases of the table that the polymers' rows follow, kg CO2e/kg.
const HANDLING: f64 = 0.011;

/// No row and no published value of waste has this value.
#[track_caller]
fn absent(value: f64, stem: &str) {
    let is = |one: f64| (one - value).abs() < 1e-9;
    let rows = tables().inputs.iter().filter(|row| row.id.starts_with(stem) && [row.value, row.low, row.high].into_iter().any(is));
    let published = values().into_iter().filter(|one| one.backs.starts_with(stem) && is(one.value)).map(|one| one.id);
    let found: Vec<String> = rows.map(|row| row.id.clone()).chain(published).collect();
    assert!(found.is_empty(), "{value} stands in {found:?}");
}

#[test]
fn a_polymer_burnt_gives_no_more_than_all_its_carbon() {
    // PMMA C5H8O2, PVC C2H3Cl, polycarbonate C16H14O3, poly(butyl acrylate) C7H12O2.
    for (stuff, carbon) in [
        ("acrylic", all_carbon(5.0, 100.117)),
        ("pvc", all_carbon(2.0, 62.496)),
        ("polycarbonate", all_carbon(16.0, 254.285)),
        ("adhesive", all_carbon(7.0, 128.171)),
    ] {
        let row = row(&format!("waste.plastics-burnt.{stuff}.co2e"));
        near(&row.id, row.value, 0.98 * carbon + HANDLING, 0.006);
        // The 95 % end is what a swing or a draw would take.
        assert!(row.ends().1 <= carbon + HANDLING + 0.0015, "{}: {} above {}", row.id, row.ends().1, carbon + HANDLING);
    }
    near("PMMA", all_carbon(5.0, 100.117), 2.198, 0.0005);
    near("PVC", all_carbon(2.0, 62.496), 1.408, 0.0005);
}

#[test]
fn no_waste_burnt_gives_more_than_pure_carbon_would() {
    for row in tables().inputs.iter().filter(|row| row.id.starts_with("waste.") || row.id.starts_with("oxidation.")) {
        assert!(row.ends().1 < CO2 / C, "{}: {}", row.id, row.ends().1);
    }
    // Polystyrene, C8H8, holds the most carbon of the plastics here.
    for id in ["waste.plastics-burnt.polyurethane.co2e", "waste.ink-burnt.co2e"] {
        assert!(row(id).ends().1 <= all_carbon(8.0, 104.152), "{id}");
    }
}

#[test]
fn pvc_burnt_is_not_the_slip_of_a_table_of_2011() {
    // 1.833 is above the carbon of PVC and stands in the row of PET as well.
    absent(1.833, "waste.");
    assert!(values().iter().all(|one| one.source != "defra-2011" || !one.boundary.contains("burning")), "net of energy recovery");
}

#[test]
fn pmma_burnt_is_not_the_generic_disposal_of_plastics() {
    // 2.92 is printed for every plastic without chlorine; PMMA holds carbon for 2.198.
    absent(2.92, "waste.");
    assert!(values().iter().all(|one| one.source != "swiss-2022" || !one.backs.starts_with("waste.")));
}

#[test]
fn an_ingot_is_never_used_as_sheet() {
    for one in values() {
        let of_metal = one.backs.starts_with("material.aluminium-primary") || one.backs.starts_with("material.aluminium-scrap");
        match one.boundary.as_str() {
            "cradle to ingot" => assert!(of_metal && one.times == 1.095, "{}: an ingot is metal, 1.095 kg to a kilogram of sheet", one.id),
            "cradle to sheet" => assert!(one.is(Role::Beside), "{}: rolling would count twice", one.id),
            _ => assert!(!of_metal && one.times == 1.0, "{}", one.id),
        }
    }
}

#[test]
fn scrap_that_enters_free_of_burden_takes_no_credit_when_it_leaves() {
    let comparison = compared_with_blank(r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":10}]}"#);
    for model in &comparison.models {
        for part in Indicator::ALL.iter().flat_map(|indicator| model.contributions_to(*indicator, Per::Order)) {
            let load = amount(model, &part.amount) * amount(model, &part.factor);
            assert!(load >= -1e-12, "{}, {}: {load}", model.alternative.id, part.label);
        }
        let melted =
            |part: &&faceload_core::load::Contribution| part.label.contains("melted again") || part.label.contains("blank, at the end");
        assert_eq!(model.contributions_to(Indicator::Co2e, Per::Order).filter(melted).count(), 0);
    }
    // Avoided burdens, as printed for ingot, cans, PET and office paper.
    for credit in [7.94, 10.06, 1.15, 3.15] {
        absent(credit, "waste.");
        absent(credit, "material.aluminium-scrap");
    }
}

#[test]
fn a_transport_leg_is_never_a_treatment() {
    // The UK table gives recycling and burning only the way there; the rest is the energy user's.
    for leg in [0.0047, 0.00469, 0.0038] {
        absent(leg, "waste.");
    }
    for row in tables().inputs.iter().filter(|row| row.id.starts_with("waste.plastics-burnt.") && !row.id.contains("glass")) {
        assert!(row.low > 1.0, "{}: {}", row.id, row.low);
    }
}

#[test]
fn water_with_cooling_is_never_mixed_with_water_drawn() {
    // Resins print 32 to 66 L/kg with cooling water, 6 to 8 without: neither stands in a table.
    assert!(tables().inputs.iter().all(|row| !(row.id.starts_with("material.") && row.unit.text().contains("{water}"))));
    assert!(values().iter().all(|one| !one.unit.text().contains("{water}")));
}

#[test]
fn office_paper_is_the_sum_of_its_parts() {
    // A copy prints 1.98 and 0.98 t per short ton; 0.93 + 0.02 + 0.03 is 0.98.
    near("kg CO2e/kg", super::value("paper.us-2023").value, 0.98 * 1.102_311_3, 0.0005);
    absent(1.98, "material.");
}

#[test]
fn vintages_of_one_table_count_once() {
    for backs in ["material.pvc.co2e", "material.pet-film.co2e", "material.glass-beads.co2e", "material.kraft-paper.co2e"] {
        let uk = values().into_iter().filter(|one| one.backs == backs && (one.source.starts_with("desnz") || one.source == "defra-2011"));
        let counting = uk.filter(|one| one.is(Role::Default) || one.is(Role::Mean) || one.is(Role::Also)).count();
        assert_eq!(counting, 1, "{backs}");
    }
}
