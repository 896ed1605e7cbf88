//! Mass closure: what is bought is found again, material by material.

use std::collections::BTreeMap;

use faceload_core::inventory::What;
use faceload_core::load::Model;

use super::found::Found;
use super::node::{Node, paragraph, table};
use crate::figure::{Cell, Table};
use crate::words::number;

/// Where a material goes: bought, on the faces, solid waste, liquid waste, air, sewer, melted again.
type Ways = [f64; 7];

/// The balance of every material of an alternative, for the whole order; water by the litre.
fn balance(found: &Found<'_>, model: &Model) -> BTreeMap<String, Ways> {
    let mut all: BTreeMap<String, Ways> = BTreeMap::new();
    for part in &model.parts {
        for (_, flow) in found.flows(part) {
            let (name, way) = match &flow.what {
                What::Bought(material, _) => (format!("{}, kg", material.name), 0),
                What::OnFace(material, _) => (format!("{}, kg", material.name), 1),
                What::SolidWaste(material, _) => (format!("{}, kg", material.name), 2),
                What::LiquidWaste(material, _) => (format!("{}, kg", material.name), 3),
                What::Evaporated(material, _) | What::Dried(material, _) => (format!("{}, kg", material.name), 4),
                What::ToSewer(material, _) => (format!("{}, kg", material.name), 5),
                What::Recycled(material, _) => (format!("{}, kg", material.name), 6),
                What::WaterDrawn(_) => ("water, L".to_owned(), 0),
                What::WaterToSewer(_) => ("water, L".to_owned(), 5),
                _ => continue,
            };
            all.entry(name).or_default()[way] += part.value(flow.what.terms());
        }
    }
    all
}

/// What is bought less what is found again, as a share of what is bought.
fn gap(ways: &Ways) -> f64 {
    let found_again: f64 = ways[1..].iter().sum();
    (ways[0] - found_again).abs() / ways[0].abs().max(f64::MIN_POSITIVE)
}

/// The largest gap of all.
pub fn largest(found: &Found<'_>) -> f64 {
    let all = found.models().iter().flat_map(|model| balance(found, model));
    all.fold(0.0, |largest, (_, ways)| largest.max(gap(&ways)))
}

/// Mass closure of every alternative.
pub fn section(found: &Found<'_>) -> Node {
    let rows = found.models().iter().flat_map(|model| {
        let holding = balance(found, model).into_iter().filter(|(_, ways)| ways.iter().any(|way| *way != 0.0));
        holding.map(|(name, ways)| {
            let numbers = ways.into_iter().map(|way| if way == 0.0 { Cell::from("") } else { Cell::number(way, number(way)) });
            let closes = if gap(&ways) <= 1e-9 { "closes" } else { "does not close" };
            [Cell::from(model.alternative.id.as_str()), Cell::from(name)].into_iter().chain(numbers).chain([Cell::from(closes)]).collect()
        })
    });
    let all = Table {
        caption: "What enters and where it goes, for the whole order, every input at its median".to_owned(),
        columns: [
            "alternative",
            "material",
            "bought",
            "on the face",
            "solid waste",
            "liquid waste",
            "to air",
            "to sewer",
            "melted again",
            "",
        ]
        .map(str::to_owned)
        .to_vec(),
        rows: rows.collect(),
        ..Table::default()
    };
    super::section(
        "report-closure",
        vec![
            paragraph(
                "In equals out for every material, to a share of 1e-9; on the coefficients of the formulas too, so for every value of every input.",
            ),
            table(&all),
        ],
    )
}
