//! Where a comparison flips, in words and as tables: break-even, map, switches, mixed plan.

use faceload_core::analysis::{Axis, BreakEven, Crossing, Finding, Map, Mixed, Over, PALETTE, Switched};
use faceload_core::comparison::Comparison;
use faceload_core::inventory::Terms;
use faceload_core::load::Indicator;
use faceload_core::quantity::{group, write_number};

use crate::figure::{Cell, Figure, Table};
use crate::sureness::{finding_word, of_hundred, range};
use crate::words::{capital, join, number};

/// Areas of electricity set beside the order's own.
pub const OTHER_AREAS: [&str; 1] = ["us.average"];

/// A value on an axis, with its unit.
pub fn value(axis: &Axis, value: f64) -> String {
    let written = if axis.whole { whole(value) } else { number(value) };
    format!("{written} {}", axis.unit).trim_end().to_owned()
}

/// A whole number, its groups set apart.
fn whole(value: f64) -> String {
    group(&format!("{value:.0}"))
}

fn plain(value: f64) -> Cell {
    Cell::number(value, number(value))
}

/// The stretch in which an axis is crossed: nearby crossings of a stepped axis are one stretch.
pub fn stretches(found: &[Crossing]) -> Vec<(f64, f64, bool)> {
    let mut list: Vec<(f64, f64, bool)> = Vec::new();
    for crossing in found {
        match list.last_mut() {
            Some(last) if crossing.from <= 1.6 * last.1 && crossing.from != crossing.to => {
                last.1 = crossing.to;
                last.2 = crossing.second_less_after;
            }
            _ => list.push((crossing.from, crossing.to, crossing.second_less_after)),
        }
    }
    list
}

/// The sentences of a break-even.
pub fn break_even_sentences(found: &BreakEven, [first, second]: [&str; 2], indicator: Indicator) -> Vec<String> {
    let axis = &found.axis;
    let (Some(from), Some(to)) = (found.points.first(), found.points.last()) else {
        return vec![format!("{first} and {second} share no line at any value tried, so there is nothing to cross.")];
    };
    let lower_at = |point: &faceload_core::analysis::Point| if point.second < point.first { second } else { first };
    let mut sentences = Vec::new();
    let tried = format!("from {} to {}", value(axis, from.at), value(axis, to.at));
    match stretches(&found.crossings).as_slice() {
        [] => sentences.push(format!(
            "No crossing {tried} ({}): {} loads less in {} throughout.",
            axis.item,
            lower_at(from),
            indicator.label()
        )),
        some => {
            for (begins, ends, second_after) in some {
                let (before, after) = if *second_after { (first, second) } else { (second, first) };
                let at = if begins == ends {
                    format!("at {} ({})", value(axis, *begins), axis.item)
                } else if ends - begins <= 1.0 {
                    format!("between {} and {} ({})", value(axis, *begins), value(axis, *ends), axis.item)
                } else {
                    format!(
                        "from {} to {} ({}), changing more than once there because a roll holds whole rows",
                        value(axis, *begins),
                        value(axis, *ends),
                        axis.item
                    )
                };
                sentences.push(format!("The lesser load in {} passes from {before} to {after} {at}.", indicator.label()));
            }
            if some.len() > 1 {
                sentences.push("It crosses more than once: read the table, not one number.".to_owned());
            }
        }
    }
    if let Some(spread) = &found.spread {
        sentences.push(format!(
            "Under the draws: a crossing in {}, the middle 90 % of them from {} to {}, median {}; none {tried} in {}{}.",
            of_hundred(1.0 - found.without, found.draws),
            value(axis, rounded(axis, spread.p5)),
            value(axis, rounded(axis, spread.p95)),
            value(axis, rounded(axis, spread.median)),
            of_hundred(found.without, found.draws),
            if found.several > 0.005 { format!("; more than one in {} of 100", (found.several * 100.0).round()) } else { String::new() }
        ));
    } else {
        sentences.push(format!("None of {} draws has a crossing {tried}.", whole(found.draws as f64)));
    }
    sentences.extend(colours_given(&axis.over));
    sentences
}

/// What a face looks like where its number of colours is varied; nothing where something else is.
fn colours_given(over: &Over) -> Option<String> {
    (*over == Over::Colours).then(|| {
        let names: Vec<&str> = PALETTE.iter().map(|colour| colour.name()).collect();
        format!(
            "A face keeps the largest of its colours that is sold as sheeting; as many others as are tried share the rest evenly, in this order without the one kept: {}.",
            join(&names)
        )
    })
}

/// How lines are made where their number of signs is varied, and what the mark of the order then is; nothing where
/// something else is varied.
fn made_in_one_go(comparison: &Comparison, over: &Over) -> Option<String> {
    (*over == Over::Quantity).then(|| {
        let lines = &comparison.order.lines;
        let stocked = lines.iter().filter(|line| line.stock).count();
        let tried = "All lines change in proportion and are made to order in one go, with new screens.";
        if stocked == 0 {
            return tried.to_owned();
        }
        format!(
            "{tried} This order is not: {} made for stock, where quantity moves little. For it the answer holds, not this line; the mark shows only how many signs it has.",
            if lines.len() == 1 { "its line is".to_owned() } else { format!("{stocked} of its {} lines are", whole(lines.len() as f64)) }
        )
    })
}

fn rounded(axis: &Axis, value: f64) -> f64 {
    if axis.whole { value.round() } else { value }
}

/// The figure of a break-even.
pub fn break_even(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, found: &BreakEven) -> Figure {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let per = found.axis.over.per(comparison.per);
    let unit = format!("{}{}", indicator.unit(), per.suffix());
    let rows = found.points.iter().map(|point| {
        vec![
            Cell::number(point.at, value(&found.axis, point.at)),
            plain(point.first),
            plain(point.second),
            plain(point.second - point.first),
            plain(point.difference.0),
            plain(point.difference.1),
        ]
    });
    Figure {
        heading: format!("Where it flips: {first} and {second} in {}, {}, over {}", indicator.label(), per.words(), found.axis.over.name()),
        sentences: break_even_sentences(found, ids, indicator).into_iter().chain(made_in_one_go(comparison, &found.axis.over)).collect(),
        tables: vec![Table {
            caption: format!("{unit} over {}", found.axis.item),
            columns: vec![
                found.axis.item.clone(),
                first.to_owned(),
                second.to_owned(),
                format!("{second} minus {first}"),
                "5 %".to_owned(),
                "95 %".to_owned(),
            ],
            rows: rows.collect(),
            ..Table::default()
        }],
    }
}

/// The figure of a map.
pub fn map(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, map: &Map) -> Figure {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let cells: Vec<Option<Finding>> = map.rows.iter().flatten().map(|cell| cell.map(|cell| cell.finding)).collect();
    let count = |finding: Option<Finding>| cells.iter().filter(|one| **one == finding).count();
    let sentence = format!(
        "Of {} places, {first} is clearly less in {}, {second} in {}; about the same in {}, no clear difference in {}{}.",
        cells.len(),
        count(Some(Finding::FirstLess)),
        count(Some(Finding::SecondLess)),
        count(Some(Finding::AboutTheSame)),
        count(Some(Finding::NoClearDifference)),
        match count(None) {
            0 => String::new(),
            none => format!("; in {none} the two share no line"),
        }
    );
    let rows = map.down.values.iter().zip(&map.rows).map(|(y, row)| {
        let cells = row.iter().map(|cell| Cell::from(cell.map_or_else(|| "\u{2013}".to_owned(), |cell| short(cell.finding, ids))));
        std::iter::once(Cell::number(*y, value(&map.down, *y))).chain(cells).collect()
    });
    Figure {
        heading: format!("Where it flips: {first} and {second} in {}, {}", indicator.label(), comparison.per.words()),
        sentences: [sentence, format!("{} draws in each place.", whole(map.draws as f64))]
            .into_iter()
            .chain([&map.across, &map.down].into_iter().find_map(|axis| colours_given(&axis.over)))
            .chain([&map.across, &map.down].into_iter().find_map(|axis| made_in_one_go(comparison, &axis.over)))
            .collect(),
        tables: vec![Table {
            caption: format!(
                "Across: {}; down: {}. A name: it loads clearly less; = about the same; ? no clear difference",
                map.across.item, map.down.item
            ),
            columns: std::iter::once(String::new()).chain(map.across.values.iter().map(|x| value(&map.across, *x))).collect(),
            rows: rows.collect(),
            ..Table::default()
        }],
    }
}

fn short(finding: Finding, [first, second]: [&str; 2]) -> String {
    match finding {
        Finding::FirstLess => first.to_owned(),
        Finding::SecondLess => second.to_owned(),
        Finding::AboutTheSame => "=".to_owned(),
        Finding::NoClearDifference => "?".to_owned(),
    }
}

/// The figure of the switches.
pub fn switches(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, list: &[Switched]) -> Figure {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let own = list.iter().find(|one| one.own).map(|one| one.finding);
    let mut turned: Vec<String> =
        list.iter().filter(|one| Some(one.finding) != own).map(|one| format!("{} {}", words_of(one.switch), one.set)).collect();
    turned.dedup();
    let sentence = if turned.is_empty() {
        "No choice of method changes the finding.".to_owned()
    } else {
        format!("The finding is another with {}.", join(&turned.iter().map(String::as_str).collect::<Vec<_>>()))
    };
    let rows = list.iter().map(|one| {
        vec![
            Cell::from(words_of(one.switch)),
            Cell::from(format!("{}{}", one.set, if one.own { " (as ordered)" } else { "" })),
            plain(one.first),
            plain(one.second),
            plain(one.second - one.first),
            Cell::from(range(&one.difference)),
            Cell::from(finding_word(one.finding, ids)),
        ]
    });
    Figure {
        heading: format!("Choices of method side by side: {first} and {second} in {}, {}", indicator.label(), comparison.per.words()),
        sentences: [
            vec![sentence, "Choices are set, never drawn: how likely one is has no answer.".to_owned()],
            if indicator == Indicator::Co2e { vec![as_published(comparison, (a, b))] } else { Vec::new() },
        ]
        .concat(),
        tables: vec![Table {
            caption: format!("{}{}", indicator.unit(), comparison.per.suffix()),
            columns: ["choice", "set to", first, second, &format!("{second} minus {first}"), "middle 90 %", "finding"]
                .map(str::to_owned)
                .to_vec(),
            rows: rows.collect(),
            ..Table::default()
        }],
    }
}

/// Whether any of these choices gives other loads than another.
pub fn moves<'a>(list: impl IntoIterator<Item = &'a Switched>) -> bool {
    let mut loads = list.into_iter().map(|one| (one.first, one.second));
    loads.next().is_some_and(|first| loads.any(|next| next != first))
}

/// How much of the CO2e of a pair was published as CO2e only, and so does not move with the GWP set.
fn as_published(comparison: &Comparison, (a, b): (usize, usize)) -> String {
    let share = |at: usize| {
        let model = &comparison.models[at];
        let fixed = model.contributions_of(Indicator::Co2e, comparison.per).fold(0.0, |sum, (part, one)| {
            let only = one.factor.0.iter().filter(|term| term.inputs.iter().any(|(id, _)| part.plan.book.input(*id).id.ends_with(".co2e")));
            let factor = Terms(only.cloned().collect());
            sum + part.value(&one.amount) * part.value(&factor) / model.divisor(part, comparison.per)
        });
        let whole = model.load(Indicator::Co2e, comparison.per).value;
        let share = if whole > 0.0 { 100.0 * fixed / whole } else { 0.0 };
        format!("{} % of {}'s", share.round(), model.alternative.id)
    };
    format!("Published as CO2e only, so that the GWP set cannot move it: {} and {} CO2e.", share(a), share(b))
}

fn words_of(switch: &str) -> &'static str {
    match switch {
        "gwp" => "GWP100 set",
        "voc_oxidised" => "solvent oxidised in air",
        "end_of_life" => "end of life",
        "electricity" => "electricity",
        _ => "life",
    }
}

/// The figure of the mixed plan.
pub fn mixed(comparison: &Comparison, indicator: Indicator, plan: &Mixed) -> Figure {
    let id = |at: usize| comparison.models[at].alternative.id.as_str();
    let moved = plan.jobs.iter().filter(|chosen| chosen.clear).count();
    let unit = indicator.unit();
    let sentence = if plan.jobs.is_empty() {
        "No job can be made.".to_owned()
    } else if moved == 0 {
        format!(
            "No job clearly loads less in {} by another alternative than by the first of the order's that can make it.",
            indicator.label()
        )
    } else {
        format!(
            "{moved} of {} jobs clearly load less in {} by another alternative than by the first of the order's that can make it: {} {unit} for the order instead of {}, {} % less. Another indicator may ask for another plan.",
            plan.jobs.len(),
            indicator.label(),
            number(plan.load),
            number(plan.first),
            write_number((1.0 - plan.load / plan.first) * 100.0, 2)
        )
    };
    let rows = plan.jobs.iter().map(|chosen| {
        let line = &comparison.jobs[chosen.job].line;
        vec![
            Cell::from(format!("{} {}", line.label, line.size)),
            Cell::number(f64::from(line.quantity), whole(f64::from(line.quantity))),
            Cell::from(id(chosen.by)),
            Cell::from(if chosen.clear { "loads clearly less" } else { "none clearly less: the first" }),
            plain(chosen.load),
            plain(chosen.first),
        ]
    });
    Figure {
        heading: format!("Each job by the alternative that clearly loads least in {}", indicator.label()),
        sentences: vec![capital(&sentence)],
        tables: vec![Table {
            caption: format!("{unit} for the whole job"),
            columns: ["job", "signs", "made by", "why", "load", "load by the first"].map(str::to_owned).to_vec(),
            rows: rows.collect(),
            ..Table::default()
        }],
    }
}
