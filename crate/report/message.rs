//! The sentence that may be sent: one pair of one order, what loads less and what more, how sure, and what it is not.

use faceload_core::analysis::Draws;
use faceload_core::comparison::Comparison;
use faceload_core::factors::Origin;

use crate::{sureness, words};

/// The sentence for a pair.
pub fn message(comparison: &Comparison, draws: &Draws, a: usize, b: usize) -> String {
    let models = [a, b].map(|place| &comparison.models[place]);
    let who = models.map(|model| format!("{}: {}", model.alternative.id, words::alternative(&model.alternative)));
    let own = models
        .iter()
        .flat_map(|model| model.parts.iter())
        .flat_map(|part| part.plan.book.used().into_iter().map(|id| part.plan.book.input(id)))
        .filter(|row| row.origin == Origin::Override)
        .map(|row| (&row.id, &row.place))
        .collect::<std::collections::BTreeSet<_>>()
        .len();
    let own = match own {
        0 => String::new(),
        1 => " One value in it is stated by the order in place of the tables.".to_owned(),
        many => format!(" {many} values in it are stated by the order in place of the tables."),
    };
    let moved: String = words::moved(comparison).iter().map(|text| format!(" {text}.")).collect();
    format!(
        "For {} ({}; {}), {}, {}: {} ({}.){own}{moved} {}",
        words::order_line(comparison),
        words::extent(comparison),
        words::conditions(comparison),
        comparison.per.words(),
        words::boundary(comparison.boundary),
        sureness::pair(comparison, draws, a, b),
        who.join("; "),
        words::STANDING,
    )
}
