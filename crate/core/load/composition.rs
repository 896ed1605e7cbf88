//! What a material is made of holds together: the shares of its parts sum to one, and no ink holds more
//! VOC and water than it weighs. Whoever changes one must change another, or mass would be made of
//! nothing. Prismatic sheeting with an acrylic front: polycarbonate 0, acrylic 0.75, adhesive 0.25.

use super::PlanFault;
use crate::factors::{Input, Origin, TableFault};
use crate::inventory::{Book, Flow, Material, Part, Terms, What};
use crate::order::Order;

/// How far from one the shares may sum.
const NEARLY: f64 = 1e-6;

/// Refuses a material that does not hold together: in the order where it changes one of the rows, else in
/// the tables.
pub(super) fn check(order: &Order, book: &Book, flows: &[Flow]) -> Result<(), PlanFault> {
    let values = book.values();
    for flow in flows {
        match &flow.what {
            What::Bought(material, _) => {
                let inputs: Vec<&Input> = share_rows(material).iter().filter_map(|row| book.row(row)).collect();
                let sum: f64 = inputs.iter().map(|input| input.value).sum();
                if !inputs.is_empty() && (sum - 1.0).abs() > NEARLY {
                    let came = format!("shares of {} that sum to {}", material.name, (sum * 1e6).round() / 1e6);
                    let each: Vec<String> = inputs.iter().map(|input| format!("`{}` {}", input.id, input.value)).collect();
                    return Err(fault(order, &inputs, &came, "a sum of 1", &format!("give all of them: {}", each.join(", "))));
                }
            }
            What::OnFace(material, left) if for_one(left, &values) < 0.0 => {
                let inputs: Vec<&Input> = left.0.iter().flat_map(|term| &term.inputs).map(|(id, _)| book.input(*id)).collect();
                let came = format!("{} with more VOC and water than it weighs", material.name);
                return Err(fault(order, &inputs, &came, "something left on the face", "lower its VOC or its water"));
            }
            _ => {}
        }
    }
    Ok(())
}

/// The rows of a material's shares, where it is made of shares alone; else none.
fn share_rows(material: &Material) -> Vec<&'static str> {
    let share = |part: &Part| if let Part::Share(_, row) = part { Some(*row) } else { None };
    material.parts.iter().map(share).collect::<Option<Vec<_>>>().unwrap_or_default()
}

/// A formula's value where every measure counts one: negative only where its inputs are at odds.
fn for_one(terms: &Terms, values: &[f64]) -> f64 {
    terms.0.iter().map(|term| term.rate(values)).sum()
}

fn fault(order: &Order, inputs: &[&Input], came: &str, wanted: &str, help: &str) -> PlanFault {
    match inputs.iter().find(|input| input.origin == Origin::Override) {
        Some(own) => PlanFault::Order(vec![order.fault(&own.place, came, wanted, help)]),
        None => PlanFault::Table(vec![TableFault {
            folder: "factors".to_owned(),
            file: "practice.csv",
            line: 0,
            column: "default".to_owned(),
            came: came.to_owned(),
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        }]),
    }
}
