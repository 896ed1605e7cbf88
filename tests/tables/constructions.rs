//! Layers: shares of sheeting and film sum to one; another construction is another set of shares;
//! liners of paper and of PET load what their published masses and factors say.

use faceload_core::load::Indicator;

use super::{row, value};
use crate::shop::{compared, factor, flow, near, one, tables};
use faceload_core::inventory::What;

const LINE: &str = r#""shape":"square","size":"30 in","quantity":100,"colours":{"red":"50 %"}"#;

/// Freight adds to every kilogram alike: left out.
const NO_FREIGHT: &str = r#""freight.inbound":"0.000001 km""#;

/// The load of a kilogram of a layer, and the kilograms bought.
fn layer(line: &str, alternative: &str, with: &str, label: &str) -> (f64, f64) {
    let comparison = compared(&one(line, &format!(r#"{alternative},"with":{{{NO_FREIGHT}{with}}}"#)));
    let model = comparison.model("only").expect("the order has one alternative");
    (factor(model, Indicator::Co2e, label), flow(model, label, |what| matches!(what, What::Bought(..))))
}

#[test]
fn the_shares_of_every_construction_sum_to_one() {
    for (stem, parts) in [("sheeting.prismatic.", 5), ("sheeting.beaded.", 4), ("overlay.", 2), ("film.", 3)] {
        let shares: Vec<f64> = tables()
            .inputs
            .iter()
            .filter(|row| row.id.starts_with(stem) && row.item.contains(" share of ") && row.item.ends_with("by mass"))
            .map(|row| row.value)
            .collect();
        assert_eq!(shares.len(), parts, "{stem}");
        near(stem, shares.iter().sum(), 1.0, 1e-12);
    }
}

#[test]
fn prismatic_sheeting_with_an_acrylic_front_is_another_set_of_shares() {
    let screen = r#""route":"screen-printing""#;
    let (usual, kg) = layer(LINE, screen, "", "prismatic sheeting");
    let acrylic = r#","sheeting.prismatic.polycarbonate":"0","sheeting.prismatic.acrylic":"0.75""#;
    let (front, same) = layer(LINE, screen, acrylic, "prismatic sheeting");
    assert_eq!(kg, same);
    let expected = 0.60 * (row("material.acrylic.co2e").value - row("material.polycarbonate.co2e").value);
    near("kg CO2e/kg more", front - usual, expected, 1e-9);
}

#[test]
fn flexible_prismatic_sheeting_and_film_of_pvc_are_other_sets_of_shares() {
    // PVC and polyurethane in place of a stiff front, as customs texts describe it; the shares are made up here.
    let flexible = r#","sheeting.prismatic.polycarbonate":"0","sheeting.prismatic.acrylic":"0","sheeting.prismatic.pvc":"0.6",
        "sheeting.prismatic.polyurethane":"0.15""#;
    let (usual, _) = layer(LINE, r#""route":"screen-printing""#, "", "prismatic sheeting");
    let (soft, _) = layer(LINE, r#""route":"screen-printing""#, flexible, "prismatic sheeting");
    let of = |stuff: &str| row(&format!("material.{stuff}.co2e")).value;
    let expected = 0.6 * of("pvc") + 0.15 * of("polyurethane") - 0.60 * of("polycarbonate") - 0.15 * of("acrylic");
    near("sheeting, kg CO2e/kg more", soft - usual, expected, 1e-9);
    let (acrylic, _) = layer(LINE, r#""route":"overlay-film""#, "", "cut overlay film");
    let (pvc, _) = layer(LINE, r#""route":"overlay-film""#, r#","film.acrylic":"0","film.pvc":"0.70""#, "cut overlay film");
    near("film, kg CO2e/kg more", pvc - acrylic, 0.70 * (of("pvc") - of("acrylic")), 1e-9);
}

#[test]
fn a_kraft_liner_loads_0_147_kg_co2e_a_square_metre_at_the_swiss_factor() {
    // 89.5 g/m2 of kraft at 1.61 and 1 g/m2 of silicone at 2.72.
    let with = format!(r#","liner.paper.mass":"0.0895 kg/m2","material.kraft-paper.co2e":"{} kg/kg""#, value("paper.swiss-2022").value);
    let screen = r#""route":"screen-printing""#;
    let (paper, paper_kg) = layer(LINE, screen, &with, "paper liner of prismatic sheeting");
    let (silicone, silicone_kg) = layer(LINE, screen, &with, "liner silicone of prismatic sheeting");
    let (_, sheeting_kg) = layer(LINE, screen, &with, "prismatic sheeting");
    let area = sheeting_kg / row("sheeting.prismatic.mass").value;
    near("kg CO2e/m2", (paper * paper_kg + silicone * silicone_kg) / area, 0.147, 0.0005);
}

#[test]
fn a_pet_liner_of_2_mil_loads_0_27_kg_co2e_a_square_metre_at_the_uk_factor_and_more_than_paper() {
    let with = format!(r#","material.pet-film.co2e":"{} kg/kg""#, value("pet.uk-2025").value);
    let alternative = r#""route":"screen-printing","sheeting_liner":"pet""#;
    let (pet, pet_kg) = layer(LINE, alternative, &with, "PET liner of prismatic sheeting");
    let (_, sheeting_kg) = layer(LINE, alternative, &with, "prismatic sheeting");
    let area = sheeting_kg / row("sheeting.prismatic.mass").value;
    near("kg CO2e/m2", pet * pet_kg / area, 0.27, 0.005);
    let (paper, paper_kg) = layer(LINE, r#""route":"screen-printing""#, "", "paper liner of prismatic sheeting");
    assert!(pet * pet_kg > 1.5 * paper * paper_kg);
}

#[test]
fn a_ream_of_liner_is_3000_square_feet() {
    // Pounds a ream of 333.3 square yards, as the slides print them.
    for (id, pounds) in
        [("liner.kraft-55-lb", 55.0), ("liner.kraft-80-lb", 80.0), ("liner.kraft-coated-60-lb", 60.0), ("liner.kraft-coated-74-lb", 74.0)]
    {
        near(id, value(id).value, pounds * 0.453_592_37 / (1_000.0 / 3.0 * 0.836_127_36), 0.0001);
    }
    for (id, mil) in [("liner.pet-1-mil", 1.0), ("liner.pet-1-5-mil", 1.5), ("liner.pet-2-mil", 2.0), ("liner.pet-4-mil", 4.0)] {
        near(id, value(id).value, mil * 25.4e-6 * 1_390.0, 0.0006);
    }
}
