//! The statement of a pair: the one text about it that may be sent, or why none may.

use faceload_core::analysis::{Draws, Finding, PairSpread};
use faceload_core::comparison::Comparison;
use faceload_core::in_order;
use faceload_core::load::{Indicator, Model, Per};
use faceload_core::order::{Alternative, Boundary};
use faceload_core::quantity::Kind;
use serde::Serialize;

use super::{Around, check, reviewers, standing_words};
use crate::sureness::{by_interval, drawn, of_hundred, off_headline, range, spreads};
use crate::words::{self, join, years};
use crate::{cautions, sureness};

/// With fewer draws than this no share of them is sent: it could be off by more than 3 of 100.
pub const FEWEST_DRAWS: usize = 1_000;

/// The statement of a pair in an indicator, and what must be known beside it.
#[derive(Debug, Serialize)]
pub struct Statement {
    schema_version: u32,
    /// The pair.
    pub between: [String; 2],
    /// The indicator that it begins with.
    pub indicator: &'static str,
    /// The text; none where none may be sent.
    pub text: Option<String>,
    /// Why none may be sent, each with the way out.
    pub why_none: Vec<String>,
    /// What kind of statement it is.
    pub standing: &'static str,
    /// The tables that it rests on.
    pub tables_sha_256: String,
}

/// The statement of a pair.
pub fn statement(comparison: &Comparison, draws: &Draws, (a, b): (usize, usize), indicator: Indicator) -> Statement {
    let between = [a, b].map(|place| comparison.models[place].alternative.id.clone());
    let made = withheld(comparison, draws, (a, b)).and_then(|()| {
        let text = text(comparison, draws, (a, b), indicator).ok_or_else(|| vec![sureness::pair(comparison, draws, a, b)])?;
        let refused = check(&text, Around::Alone(&[&between[0], &between[1]]));
        if refused.is_empty() {
            Ok(text)
        } else {
            Err(refused.iter().map(|one| format!("{one} (a name or note of the order may hold it)")).collect())
        }
    });
    let (text, why_none) = match made {
        Ok(text) => (Some(text), Vec::new()),
        Err(why) => (None, why),
    };
    Statement {
        schema_version: 1,
        between,
        indicator: indicator.id(),
        text,
        why_none,
        standing: standing_words(),
        tables_sha_256: comparison.order.tables.to_string(),
    }
}

impl Statement {
    /// As JSON text.
    pub fn json(&self) -> String {
        let mut text = serde_json::to_string_pretty(self).unwrap_or_default();
        text.push('\n');
        text
    }
}

/// The alternatives that make anything for a pair: the two, and those that help them out.
fn makers(models: [&Model; 2]) -> Vec<&Alternative> {
    let mut list: Vec<&Alternative> = Vec::new();
    for (at, part) in models.iter().flat_map(|model| model.parts.iter().enumerate()) {
        let one = &part.plan.alternative;
        if (at == 0 || part.m2.base() > 0.0) && !list.iter().any(|known| known.id == one.id) {
            list.push(one);
        }
    }
    list
}

/// Reasons of the order and the draws that forbid a statement.
fn withheld(comparison: &Comparison, draws: &Draws, (a, b): (usize, usize)) -> Result<(), Vec<String>> {
    let [first, second] = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let Some((one, other)) = comparison.of_pair(a, b) else {
        return Err(vec![format!(
            "{first} and {second} share no line, so nothing compares them; `faceload lines` says who makes what, and `otherwise` lets another make the rest"
        )]);
    };
    let mut why = Vec::new();
    if one.life != other.life && comparison.per != Per::M2Year {
        why.push(format!(
            "{first} is kept in service {}, {second} {}: that is not the same function; compare them per m2 and year (`--per m2-year`)",
            years(one.life),
            years(other.life)
        ));
    }
    for model in [&one, &other].into_iter().filter(|model| model.parts[0].m2.base() == 0.0) {
        let id = &model.alternative.id;
        why.push(format!("{id} makes none of these lines itself, others make them for it; compare those that do"));
    }
    for alternative in makers([&one, &other]) {
        for own in alternative.with.iter().filter(|own| own.note.trim().is_empty()) {
            why.push(format!(
                "{} states {} for `{}` without a note: nobody can tell where it comes from; write `{{ value = \"{}\", note = \"meter, week 14\" }}`",
                alternative.id, own.text, own.id, own.text
            ));
        }
    }
    for (id, _) in &comparison.order.moved {
        why.push(format!("`{id}` was moved by hand and stands in no order; put it back, or state it in the order with a note"));
    }
    if draws.settings.number < FEWEST_DRAWS {
        why.push(format!(
            "{} are too few to say how sure it is; make at least 1\u{202f}000",
            words::count(draws.settings.number as u64, "draw")
        ));
    }
    if why.is_empty() { Ok(()) } else { Err(why) }
}

fn text(comparison: &Comparison, draws: &Draws, (a, b): (usize, usize), indicator: Indicator) -> Option<String> {
    let (one, other) = comparison.of_pair(a, b)?;
    let spreads = spreads(comparison, draws, a, b);
    let spread = spreads.iter().find(|spread| spread.indicator == indicator)?;
    let single = comparison.difference(a, b, indicator)?;
    let number = draws.settings.number;
    let [first, second] = [&one, &other].map(|model| model.alternative.id.as_str());
    let [first_words, second_words] = [&one, &other].map(|model| words::alternative(&model.alternative));
    let jobs = comparison.shared(a, b);
    let value = |value: f64, interval| {
        let range = range(interval);
        format!("{} {} (range {range})", by_interval(value, interval), indicator.unit())
    };
    let mut parts = vec![format!(
        "{}, {}, under the stated assumptions: estimated {} of {first} ({first_words}) {}, of {second} ({second_words}) {}; {}{}.",
        per(comparison, &one, &other),
        boundary(comparison.boundary),
        indicator.label(),
        value(single.first, &spread.first),
        value(single.second, &spread.second),
        found(spread, number, [first, second]),
        words::helped(comparison, a, b),
    )];
    let on = words::part_of(comparison, &jobs);
    if !on.is_empty() {
        parts.push(format!("This is {on}, which both can make."));
    }
    parts.push(others(&spreads, indicator, number, [first, second]));
    parts.extend(off_headline(spread));
    parts.extend(cautions_of(comparison, [first, second]));
    parts.push(format!("Assumptions: {}; {}.", words::conditions(comparison), drawn(draws)));
    parts.push(evidence(comparison, [&one, &other]));
    parts.push(format!("Left out: {}.", words::left_out(&comparison.order, comparison.boundary).join("; ")));
    parts.push(words::CAUTION.to_owned());
    parts.extend(reviewers(&comparison.order));
    parts.push(standing_words().to_owned());
    Some(parts.join(" "))
}

fn per(comparison: &Comparison, one: &Model, other: &Model) -> String {
    let [first, second] = [one, other].map(|model| years(model.life));
    let life = if first == second { first } else { format!("{first} ({}) and {second} ({})", one.alternative.id, other.alternative.id) };
    match comparison.per {
        Per::M2 => format!("Per m2 of sign face kept in service {life}"),
        Per::M2Year => format!("Per m2 of sign face and year, kept in service {life}"),
        Per::Order => format!("For the whole order, {} m2 of sign face kept in service {life}", words::number(one.m2.base())),
    }
}

fn boundary(boundary: Boundary) -> &'static str {
    match boundary {
        Boundary::Face => "face only",
        Boundary::FaceWithBlank => "face with its blank",
    }
}

/// Who was lower in how many draws; what is not clear is said first.
fn found(spread: &PairSpread, draws: usize, [first, second]: [&str; 2]) -> String {
    let (lower, share) = if spread.first_less >= 0.5 { (first, spread.first_less) } else { (second, 1.0 - spread.first_less) };
    let draws = format!("in {} draws of our input ranges {lower} was lower", of_hundred(share, draws));
    match spread.finding {
        Finding::FirstLess | Finding::SecondLess => draws,
        Finding::NoClearDifference => format!("no clear difference between them: {draws}"),
        Finding::AboutTheSame => "about the same, in the middle 90 % of the draws or by what is too small to matter".to_owned(),
    }
}

/// The other indicators: what got better, what got worse, what is not clear, what is the same.
fn others(spreads: &[PairSpread], indicator: Indicator, draws: usize, [first, second]: [&str; 2]) -> String {
    let having = |finding: Finding| spreads.iter().filter(move |one| one.indicator != indicator && one.finding == finding);
    let lower = |who: &str, finding: Finding| {
        let each: Vec<String> = having(finding)
            .map(|one| {
                let share = if finding == Finding::FirstLess { one.first_less } else { 1.0 - one.first_less };
                format!("{} (in {})", one.indicator.label(), of_hundred(share, draws))
            })
            .collect();
        let each: Vec<&str> = each.iter().map(String::as_str).collect();
        (!each.is_empty()).then(|| format!("{who} was lower in {}", join(&each)))
    };
    let plain = |words: &str, finding: Finding| {
        let labels: Vec<&str> = having(finding).map(|one| one.indicator.label()).collect();
        (!labels.is_empty()).then(|| format!("{words} in {}", join(&labels)))
    };
    let parts = [
        lower(first, Finding::FirstLess),
        lower(second, Finding::SecondLess),
        plain("no clear difference", Finding::NoClearDifference),
        plain("about the same", Finding::AboutTheSame),
    ];
    format!("Beside it: {}.", parts.into_iter().flatten().collect::<Vec<_>>().join("; "))
}

/// Where the air of one of them is short, and what no shop would do.
fn cautions_of(comparison: &Comparison, ids: [&str; 2]) -> Vec<String> {
    let air = comparison.cautions.iter().filter(|caution| ids.contains(&caution.alternative.as_str())).map(cautions::caution);
    air.chain(cautions::odd(comparison, |id| ids.contains(&id))).map(|line| format!("{}.", words::capital_unless(&line, ids))).collect()
}

/// Whose data it is: generic, or this shop's; and the tables behind it.
fn evidence(comparison: &Comparison, models: [&Model; 2]) -> String {
    let mut own: Vec<&str> = makers(models).iter().flat_map(|alternative| alternative.with.iter().map(|own| own.id.as_str())).collect();
    in_order(&mut own, Ord::cmp);
    own.dedup();
    let own =
        if own.is_empty() { "generic data, no value of the shop's own".to_owned() } else { format!("generic data but for {}", join(&own)) };
    let rows = if comparison.order.own_rows.is_empty() { String::new() } else { ", with rows of own tables".to_owned() };
    format!("Made with {own}; tables {}{rows}.", comparison.order.tables.short())
}
