//! The inventory: what enters and leaves, stage by stage, each alternative beside the others.

use faceload_core::inventory::Stage;
use faceload_core::load::{Per, Plan};

use super::found::Found;
use super::node::{Node, aside, table};
use super::rows::Rows;
use crate::figure::Table;

/// The inventory of the whole order.
pub fn section(found: &Found<'_>) -> Node {
    let models = found.models();
    let mut rows = Rows::new(models.len());
    for (stage, name, module) in Stage::ALL {
        for (at, model) in models.iter().enumerate() {
            for part in &model.parts {
                for (_, flow) in found.flows(part).filter(|(_, flow)| flow.stage == stage && Plan::counts(stage, Per::Order)) {
                    rows.add(&[&format!("{name} ({module})"), &flow.label, flow.what.unit()], at, part.value(flow.what.terms()));
                }
            }
        }
    }
    let all = Table {
        caption: "Flows for the whole order, every input at its median".to_owned(),
        columns: found.columns(&["stage", "flow", "unit"]),
        rows: rows.table_rows(false),
        ..Table::default()
    };
    super::section(
        "report-inventory",
        found.own_lines().into_iter().chain([
            aside("kWh of electricity at the meter, MJ of fuel heat (gross), kg of material, L of water, kg\u{b7}m carried, m driven, h attended. What stays on the face and time attended load nothing."),
            table(&all),
        ]).collect(),
    )
}
