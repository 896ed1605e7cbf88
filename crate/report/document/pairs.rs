//! Every pair, on the lines both can make.

use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, list, paragraph, table};
use crate::figure::{Cell, Table};
use crate::{sureness, words};

/// All pairs.
pub fn section(found: &Found<'_>) -> Node {
    let (comparison, draws) = (found.comparison, &found.draws);
    let rows = comparison.pairs().into_iter().map(|(a, b)| {
        let ids = found.ids((a, b));
        let spreads = found.spreads_of((a, b));
        let cell = |indicator: Indicator| {
            let said = spreads.iter().find(|one| one.indicator == indicator).map(|one| sureness::finding(one, draws.settings.number, ids));
            Cell::from(
                said.unwrap_or_else(|| "they share no line".to_owned()).replace(" draws of our input ranges", "").replace(" draws)", ")"),
            )
        };
        let on = words::part_of(comparison, &comparison.shared(a, b));
        let on = if on.is_empty() { "all lines".to_owned() } else { on };
        [Cell::from(format!("{} and {}", ids[0], ids[1])), Cell::from(on)].into_iter().chain(Indicator::ALL.map(cell)).collect()
    });
    let all = Table {
        caption: "What the draws say of each pair; shares are of draws of our input ranges".to_owned(),
        columns: ["pair", "on"].into_iter().map(str::to_owned).chain(Indicator::ALL.map(|one| one.label().to_owned())).collect(),
        rows: rows.collect(),
        ..Table::default()
    };
    let mut inside = vec![paragraph(format!("{} Pairs are not independent, and their order need not be transitive.", sureness::meaning()))];
    if !all.rows.is_empty() {
        inside.push(table(&all));
    }
    inside.extend(list(sureness::off_in(comparison, &found.spreads)));
    super::section("report-pairs", inside)
}
