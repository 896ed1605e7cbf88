//! The boundary by the modules of EN 15804: what is in, what is out, and why.

use faceload_core::order::Boundary;

use super::found::Found;
use super::node::{Node, paragraph, table};
use crate::figure::{Cell, Table};

/// The boundary.
pub fn section(found: &Found<'_>) -> Node {
    let order = &found.comparison.order;
    let with_blank = found.comparison.boundary == Boundary::FaceWithBlank;
    let delivery = if order.site.delivery.is_some() {
        ("in", "the faces carried to the customer over the distance the order gives")
    } else {
        ("out", "the order gives no distance; equal for all but for their mass")
    };
    let visit = if order.site.visit.is_some() {
        ("only per year", "the visit to the sign stands in loads per year in service; each set of faces is charged to its own life")
    } else {
        ("out", "a first set is compared; the order gives no distance for visits")
    };
    let blank = if with_blank {
        "sheeting, film, ink, overlay, liner, process materials and the blank"
    } else {
        "sheeting, film, ink, overlay, liner and process materials; the blank is out, being the same for all"
    };
    let rows = [
        ("A1", "raw materials", "in", blank),
        ("A2", "transport to the shop", "in", "everything bought, by one distance"),
        (
            "A3",
            "making",
            "in",
            "prepress, imaging, drying, finishing, clean-up, room air, treatment of process waste; machines and buildings are out, their share of one order being taken as small and alike",
        ),
        ("A4", "transport to the customer", delivery.0, delivery.1),
        ("A5", "installation", "out", "the same for all"),
        ("B1-B3", "use, upkeep, repair", "out", "a face in service draws nothing; washing is the same for all"),
        ("B4", "replacement", visit.0, visit.1),
        ("B5-B7", "refurbishment, energy and water in use", "out", "none"),
        ("C1-C4", "removal to disposal", "in", "disposal of the face; taking down is out, being the same for all"),
        (
            "D",
            "loads and benefits beyond",
            "not computed",
            "no credit for recycled metal or recovered energy is reckoned, so none can be netted into A to C",
        ),
    ];
    let all = Table {
        caption: "Modules of EN 15804".to_owned(),
        columns: ["module", "what", "in or out", "why"].map(str::to_owned).to_vec(),
        rows: rows.map(|(module, what, within, why)| [module, what, within, why].map(Cell::from).to_vec()).to_vec(),
        ..Table::default()
    };
    super::section("report-boundary", vec![paragraph("The same boundary, cut-offs and rules hold for all alternatives."), table(&all)])
}
