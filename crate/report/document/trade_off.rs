//! What got worse beside what got better: one pair closely.

use faceload_core::analysis::Finding;

use super::found::Found;
use super::node::{Node, element, list, paragraph, words};
use crate::sureness;

/// The pair, its indicators in three columns.
pub fn section(found: &Found<'_>) -> Node {
    let Some(pair) = found.pair else {
        return super::section("report-trade-off", vec![paragraph("No two alternatives share a line, so no pair is looked at closely.")]);
    };
    let ids = found.ids(pair);
    let [first, second] = ids;
    let spreads = found.spreads_of(pair);
    let column = |heading: String, wanted: &[Finding]| {
        let of = spreads.iter().filter(|one| wanted.contains(&one.finding));
        let said = of.filter_map(|one| {
            let single = found.comparison.difference(pair.0, pair.1, one.indicator)?;
            let [a, b] = [(single.first, &one.first), (single.second, &one.second)].map(|(load, draws)| sureness::by_interval(load, draws));
            Some(format!("{}: {a} against {b} {}", one.indicator.label(), found.unit(one.indicator)))
        });
        let said: Vec<String> = said.collect();
        let said = if said.is_empty() { vec![paragraph("nothing")] } else { list(said) };
        element("div", std::iter::once(words("h3", heading)).chain(said).collect())
    };
    let columns = vec![
        column(format!("{first} clearly less than {second}"), &[Finding::FirstLess]),
        column(format!("{first} clearly more than {second}"), &[Finding::SecondLess]),
        column("not told apart".to_owned(), &[Finding::AboutTheSame, Finding::NoClearDifference]),
    ];
    super::section(
        "report-trade-off",
        vec![
            paragraph(format!(
                "One pair closely: {first} against {second}. The draws say what is told apart; the loads are the single values of the answer."
            )),
            element("div", columns).with("class", "three"),
        ],
    )
}
