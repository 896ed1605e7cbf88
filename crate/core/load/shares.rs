//! The shares of a material's parts: whoever changes one must change another, or mass would be made
//! of nothing. Prismatic sheeting with an acrylic front: polycarbonate 0, acrylic 0.75, adhesive 0.25.

use super::PlanFault;
use crate::factors::{Origin, TableFault};
use crate::inventory::{Book, Flow, Material, Part, What};
use crate::order::Order;

/// How far from one the shares may sum.
const NEARLY: f64 = 1e-6;

/// The rows of a material's shares, where it is made of shares alone.
fn rows(material: &Material) -> Option<Vec<&'static str>> {
    let share = |part: &Part| if let Part::Share(_, row) = part { Some(*row) } else { None };
    material.parts.iter().map(share).collect()
}

/// Refuses a material whose shares don't sum to one: in the order where it changes one of them, else in
/// the tables.
pub(super) fn whole(order: &Order, book: &Book, flows: &[Flow]) -> Result<(), PlanFault> {
    for flow in flows {
        let What::Bought(material, _) = &flow.what else { continue };
        let inputs: Vec<_> = rows(material).into_iter().flatten().filter_map(|row| book.row(row)).collect();
        let sum: f64 = inputs.iter().map(|input| input.value).sum();
        if inputs.is_empty() || (sum - 1.0).abs() <= NEARLY {
            continue;
        }
        let came = format!("shares of {} that sum to {}", material.name, (sum * 1e6).round() / 1e6);
        let each: Vec<String> = inputs.iter().map(|input| format!("`{}` {}", input.id, input.value)).collect();
        let help = format!("give all of them: {}", each.join(", "));
        return Err(match inputs.iter().find(|input| input.origin == Origin::Override) {
            Some(own) => PlanFault::Order(vec![order.fault(&own.place, &came, "a sum of 1", &help)]),
            None => PlanFault::Table(vec![TableFault {
                folder: "factors".to_owned(),
                file: "practice.csv",
                line: 0,
                column: "default".to_owned(),
                came,
                wanted: "a sum of 1".to_owned(),
                help,
            }]),
        });
    }
    Ok(())
}
