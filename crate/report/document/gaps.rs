//! Cut-offs, coverage, and how gaps in the evidence were filled.

use std::collections::BTreeSet;

use faceload_core::factors::{Grade, Input};
use faceload_core::in_order;
use faceload_core::inventory::What;
use faceload_core::load::{Indicator, Per};

use super::found::Found;
use super::node::{Node, list};
use crate::words::{count, join};

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
    super::section("report-gaps", list(said))
}
