//! Cut-offs, coverage, and how gaps in the evidence were filled.

use std::collections::BTreeSet;

use faceload_core::factors::{Grade, Input};
use faceload_core::in_order;
use faceload_core::inventory::What;
use faceload_core::load::{Indicator, Model, Part, Per};

use super::found::Found;
use super::node::{Node, list, table};
use crate::figure::{Cell, Table};
use crate::shares::percent;
use crate::words::{count, join, number};

/// Every input that the alternatives asked for, each id once.
pub fn used<'a>(found: &'a Found<'_>) -> Vec<&'a Input> {
    let plans = found.models().iter().flat_map(|model| model.parts.iter().map(|part| &part.plan));
    let mut all: Vec<&Input> = plans.flat_map(|plan| plan.book.used().into_iter().map(|id| plan.book.input(id))).collect();
    in_order(&mut all, |x, y| x.id.cmp(&y.id));
    all.dedup_by(|x, y| x.id == y.id);
    all
}

/// The flows of an indicator that stand on a factor of it, and the names of those that have none.
fn without_factor(found: &Found<'_>, indicator: Indicator) -> Vec<String> {
    let mut names = BTreeSet::new();
    for part in found.models().iter().flat_map(|model| &model.parts) {
        let with: Vec<usize> = part.plan.contributions_to(indicator, Per::M2Year).map(|one| one.flow).collect();
        for (place, flow) in found.flows(part) {
            if !matches!(flow.what, What::Attended(_) | What::OnFace(..)) && !with.contains(&place) && part.value(flow.what.terms()) != 0.0
            {
                names.insert(flow.label.clone());
            }
        }
    }
    names.into_iter().collect()
}

/// The worst grade among the inputs of a flow's factors in an indicator; none where it has no factor.
fn worst(part: &Part, flow: usize, indicator: Indicator) -> Option<Grade> {
    let factors = part.plan.contributions_to(indicator, Per::M2Year).filter(|one| one.flow == flow).flat_map(|one| &one.factor.0);
    let counted = factors.filter(|term| term.value(&part.activity, part.plan.values()) != 0.0);
    counted.flat_map(|term| &term.inputs).map(|(id, _)| part.plan.book.input(*id).grade).max()
}

/// How much of the mass bought stands on a factor of CO2e, and of which grade its factor is at worst.
fn coverage(found: &Found<'_>) -> Table {
    let model = |model: &Model| {
        let (mut all, mut known, mut weak) = (0.0, 0.0, 0.0);
        for part in &model.parts {
            for (place, flow) in found.flows(part) {
                let What::Bought(_, terms) = &flow.what else { continue };
                let mass = part.value(terms);
                all += mass;
                match worst(part, place, Indicator::Co2e) {
                    None => {}
                    Some(Grade::D) => weak += mass,
                    Some(_) => known += mass,
                }
            }
        }
        (all, known, weak)
    };
    let masses: Vec<(f64, f64, f64)> = found.models().iter().map(model).collect();
    let row =
        |name: &str, cell: &dyn Fn(&(f64, f64, f64)) -> Cell| std::iter::once(Cell::from(name)).chain(masses.iter().map(cell)).collect();
    let share = |part: f64, all: f64| {
        let share = if all > 0.0 { part / all } else { 0.0 };
        Cell::number(share, percent(share))
    };
    Table {
        caption: "Coverage of what is bought for the whole order, by mass".to_owned(),
        columns: found.columns(&[""]),
        rows: vec![
            row("bought, kg", &|(all, ..)| Cell::number(*all, number(*all))),
            row("has a factor of CO2e", &|(all, known, weak)| share(known + weak, *all)),
            row("some input of that factor is of grade D", &|(all, _, weak)| share(*weak, *all)),
        ],
        ..Table::default()
    }
}

/// Cut-offs, coverage and filled gaps.
pub fn section(found: &Found<'_>) -> Node {
    let inputs = used(found);
    let of = |wanted: &[&str]| inputs.iter().filter(|row| wanted.contains(&row.source.as_str())).count() as u64;
    let graded = |grade: Grade| inputs.iter().filter(|row| row.grade == grade).count() as u64;
    let none = without_factor(found, Indicator::Co2e);
    let none: Vec<&str> = none.iter().map(String::as_str).collect();
    let none = if none.is_empty() { "no flow".to_owned() } else { join(&none) };
    let said = [
        "Cut-offs: no flow of the inventory was cut off by mass, energy or price. Machines, buildings, office and travel of staff are not in the inventory.".to_owned(),
        format!("Coverage: a flow without a factor is never counted as zero in silence: a missing row stops the comparison. What stays on the face counts when it is discarded; in CO2e no factor is asked for what dries, is rinsed away or is melted again, here {none}."),
        "Water counts what the shop draws; water used upstream is not in it. Solvent counts what evaporates in the shop. Zero there is a boundary, not a finding.".to_owned(),
        format!(
            "Of {}, {} stand on grade D ({} from memory, {} by judgement), {} on C, {} on B, {} on A, {} the order's or the shop's own.",
            count(inputs.len() as u64, "input"),
            graded(Grade::D),
            of(&["memory"]),
            of(&["judgement"]),
            graded(Grade::C),
            graded(Grade::B),
            graded(Grade::A),
            graded(Grade::Own)
        ),
        "Gaps were filled by one rule for all routes: the nearest published value, or a stand-in of grade D with a wide range, named in the list of inputs.".to_owned(),
    ];
    let mut inside: Vec<Node> = found.own_lines().into_iter().collect();
    inside.push(table(&coverage(found)));
    inside.splice(0..0, list(said));
    super::section("report-gaps", inside)
}
