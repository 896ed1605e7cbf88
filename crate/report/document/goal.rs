//! Goal and scope: function, functional unit, what is compared and under which conditions.

use super::found::Found;
use super::node::{Node, list, paragraph, terms};
use crate::words;

/// Goal and scope.
pub fn section(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    let lives: Vec<String> = {
        let mut seen: Vec<(f64, Vec<&str>)> = Vec::new();
        for model in found.models() {
            match seen.iter_mut().find(|(life, _)| *life == model.life) {
                Some((_, ids)) => ids.push(&model.alternative.id),
                None => seen.push((model.life, vec![&model.alternative.id])),
            }
        }
        match seen.as_slice() {
            [(life, _)] => vec![format!("{life} years, equal for all")],
            many => many.iter().map(|(life, ids)| format!("{life} years for {}", words::join(ids))).collect(),
        }
    };
    let facts = [
        ("Goal", "to tell a shop or its customer which way of making the faces of one order loads less, indicator by indicator, and what that rests on".to_owned()),
        ("For whom", "an internal decision on this order; whoever is given it outside needs the whole report".to_owned()),
        ("Kind of study", "a comparison of inventory-based indicators on one functional unit. It is no life cycle assessment as ISO 14040 means it: its five indicators are not a comprehensive set of impact categories, nothing is weighted or added up, and no panel has reviewed it".to_owned()),
        ("Function", "a traffic-sign face of a stated legend, colour and class of retroreflective sheeting, kept in service".to_owned()),
        ("Functional unit", format!("one square metre of such face kept in service for its life ({}); loads are given {}", lives.join("; "), comparison.per.words())),
        ("Taken as equal", "legend, sheeting class and life for all alternatives unless the order documents a difference; equality of performance was not tested here".to_owned()),
        ("Conditions", words::conditions(comparison)),
        ("Counted", words::boundary(comparison.boundary).to_owned()),
        ("Method", "attributional; single values are medians; every difference is taken draw by draw with the same values for what the alternatives share".to_owned()),
    ];
    let mut inside = vec![terms(facts.map(|(term, text)| (term.to_owned(), text))), paragraph("What each alternative is made of:")];
    inside.extend(list(words::bases(comparison)));
    super::section("report-goal", inside)
}
