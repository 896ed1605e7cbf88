//! How sure a difference is, in words: intervals, findings, frequencies.
//!
//! Digits follow the interval; shares of draws are said as "in N of 100 draws of our input ranges", never as a
//! probability, and never as none or all of them.

use faceload_core::analysis::{Draws, Finding, Interval, PairSpread, wilson};
use faceload_core::comparison::{Comparison, SMALL_SHARE};
use faceload_core::in_order;
use faceload_core::load::Indicator;
use faceload_core::quantity::{group, last_place, write_number, write_to_place};

use crate::figure::{Cell, Figure, Table};
use crate::shares::{fine_percent, percent};
use crate::words::{count, join, number, part_of};

/// A number of an interval, as precise as the interval allows.
pub fn by_interval(value: f64, interval: &Interval) -> String {
    let written = last_place(interval.half_width(), 2).map_or_else(|| number(value), |place| write_to_place(value, place));
    // On which side of zero it lies is what a finding hangs on, so it is not written as zero; but for what is nothing beside
    // the interval.
    let hidden = !written.contains(|c: char| matches!(c, '1'..='9')) && value.abs() > 1e-4 * interval.half_width();
    if hidden { write_number(value, 1) } else { written }
}

/// `3.1 to 5.8`: the middle 90 %.
pub fn range(interval: &Interval) -> String {
    if interval.p5 == interval.p95 {
        return number(interval.median);
    }
    format!("{} to {}", by_interval(interval.p5, interval), by_interval(interval.p95, interval))
}

/// In how many of 100 draws, never none nor all unless it is so by construction.
pub fn of_hundred(share: f64, draws: usize) -> String {
    if share == 0.5 {
        return "50 of 100".to_owned();
    }
    let least = 3.0 / draws.max(1) as f64;
    if share >= 1.0 - least.max(0.005) {
        return "more than 99 of 100".to_owned();
    }
    if share <= least.max(0.005) {
        return "fewer than 1 of 100".to_owned();
    }
    format!("{} of 100", (share * 100.0).round())
}

/// How the draws were made, in a line.
pub fn drawn(draws: &Draws) -> String {
    let settings = draws.settings;
    let made = count(settings.number as u64, "draw");
    let cut = if settings.number < draws.asked { format!(" of {} asked for", group(&draws.asked.to_string())) } else { String::new() };
    format!(
        "ranges are the middle 90 % of {made}{cut} of {} inputs; what the alternatives share takes one value in a draw; {}, seed {}",
        draws.inputs,
        match settings.design {
            faceload_core::analysis::Design::LatinHypercube => "a Latin hypercube in blocks of 1\u{202f}000",
            faceload_core::analysis::Design::Plain => "plain draws",
        },
        settings.seed
    )
}

/// What the draws say of a pair in one indicator, in a sentence's part.
pub fn finding(spread: &PairSpread, draws: usize, [first, second]: [&str; 2]) -> String {
    let less = |lower: &str, share: f64| format!("{lower} loads less in {} draws of our input ranges", of_hundred(share, draws));
    match spread.finding {
        Finding::FirstLess => less(first, spread.first_less),
        Finding::SecondLess => less(second, 1.0 - spread.first_less),
        Finding::AboutTheSame => "about the same".to_owned(),
        Finding::NoClearDifference => {
            let (lower, share) = if spread.first_less >= 0.5 { (first, spread.first_less) } else { (second, 1.0 - spread.first_less) };
            format!("no clear difference ({lower} loads less in {} draws)", of_hundred(share, draws))
        }
    }
}

/// A pair in one indicator: loads with their ranges, the difference with its, and what follows.
pub fn difference(spread: &PairSpread, draws: usize, ids: [&str; 2], singles: (f64, f64)) -> String {
    let [first, second] = ids;
    let one = |id: &str, value: f64, interval: &Interval| {
        let value = by_interval(value, interval);
        if interval.p5 == interval.p95 { format!("{id} {value}") } else { format!("{id} {value} ({})", range(interval)) }
    };
    let loads = format!("{}, {} {}", one(first, singles.0, &spread.first), one(second, singles.1, &spread.second), spread.indicator.unit());
    if spread.difference.p5 == 0.0 && spread.difference.p95 == 0.0 {
        return format!("{loads}: no difference");
    }
    format!(
        "{loads}; {second} minus {first}: {} ({}): {}",
        by_interval(spread.headline, &spread.difference),
        range(&spread.difference),
        finding(spread, draws, ids)
    )
}

/// The same, from the draws.
pub fn difference_of(comparison: &Comparison, draws: &Draws, a: usize, b: usize, indicator: Indicator) -> String {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    match (draws.spread(comparison, a, b, indicator), comparison.difference(a, b, indicator)) {
        (Some(spread), Some(single)) => difference(&spread, draws.settings.number, ids, (single.first, single.second)),
        _ => format!("{} and {} share no line", ids[0], ids[1]),
    }
}

/// The spread of every indicator of a pair.
pub fn spreads(comparison: &Comparison, draws: &Draws, a: usize, b: usize) -> Vec<PairSpread> {
    Indicator::ALL.into_iter().filter_map(|indicator| draws.spread(comparison, a, b, indicator)).collect()
}

/// The answer for a pair: what is clearly lower, what got worse, what is the same, what is not clear.
pub fn pair(comparison: &Comparison, draws: &Draws, a: usize, b: usize) -> String {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let spreads = spreads(comparison, draws, a, b);
    if spreads.is_empty() {
        return format!("{first} and {second} share no line, so they are not ranked.");
    }
    let having = |finding: Finding| spreads.iter().filter(|one| one.finding == finding).map(said).collect::<Vec<_>>();
    let (less, more) = (having(Finding::FirstLess), having(Finding::SecondLess));
    let (same, unclear) = (having(Finding::AboutTheSame), having(Finding::NoClearDifference));
    let labels = |list: &[(&'static str, f64)], first_less: bool| {
        let each: Vec<String> = list
            .iter()
            .map(|(label, share)| {
                format!("{label} (in {})", of_hundred(if first_less { *share } else { 1.0 - share }, draws.settings.number))
            })
            .collect();
        join(&each.iter().map(String::as_str).collect::<Vec<_>>())
    };
    let plain = |list: &[(&'static str, f64)]| join(&list.iter().map(|(label, _)| *label).collect::<Vec<_>>());
    let mut parts = Vec::new();
    match (less.is_empty(), more.is_empty()) {
        (false, false) => {
            parts.push(format!("{first} loads clearly less than {second} in {}, but more in {}", labels(&less, true), labels(&more, false)))
        }
        (false, true) => parts.push(format!("{first} loads clearly less than {second} in {}", labels(&less, true))),
        (true, false) => parts.push(format!("{second} loads clearly less than {first} in {}", labels(&more, false))),
        (true, true) => {}
    }
    let whose = if parts.is_empty() { format!(" between {first} and {second}") } else { String::new() };
    if !unclear.is_empty() {
        parts.push(format!("no clear difference{whose} in {}", plain(&unclear)));
    }
    if !same.is_empty() {
        parts.push(format!("{} about the same", plain(&same)));
    }
    let on = part_of(comparison, &comparison.shared(a, b));
    let on = if on.is_empty() { String::new() } else { format!(" ({on})") };
    let all = if less.is_empty() && more.is_empty() { "" } else { " draws of our input ranges" };
    let sentence = parts.join("; ").replacen(" of 100)", &format!(" of 100{all})"), 1);
    format!("{}{on}.", crate::words::capital_unless(&sentence, ids))
}

fn said(spread: &PairSpread) -> (&'static str, f64) {
    (spread.indicator.label(), spread.first_less)
}

/// The least of an indicator, and how the others stand to it: about the same, not clearly more, or clearly more.
struct Standing {
    least: usize,
    same: Vec<usize>,
    unclear: Vec<usize>,
    clear: Vec<usize>,
}

fn standing(comparison: &Comparison, draws: &Draws, indicator: Indicator) -> Option<Standing> {
    let loads: Vec<f64> = comparison.models.iter().map(|model| model.load(indicator, comparison.per).value).collect();
    let least = (0..loads.len()).min_by(|a, b| loads[*a].total_cmp(&loads[*b]))?;
    let mut standing = Standing { least, same: Vec::new(), unclear: Vec::new(), clear: Vec::new() };
    let mut others: Vec<usize> = (0..loads.len()).filter(|at| *at != least).collect();
    in_order(&mut others, |a, b| loads[*a].total_cmp(&loads[*b]));
    for at in others {
        let difference = draws.difference(comparison, least, at, indicator);
        let matters = comparison.matters(indicator, &comparison.models[least]);
        match faceload_core::analysis::finding(&difference, loads[least], matters) {
            Finding::AboutTheSame => standing.same.push(at),
            Finding::NoClearDifference => standing.unclear.push(at),
            Finding::FirstLess | Finding::SecondLess => standing.clear.push(at),
        }
    }
    Some(standing)
}

/// The answer for all alternatives: who loads least in what, and from whom it is not clearly told. None where they
/// share no line.
pub fn answer(comparison: &Comparison, draws: &Draws) -> Option<String> {
    if comparison.common.is_empty() || comparison.models.len() < 2 {
        return None;
    }
    let named = |places: &[usize]| join(&places.iter().map(|place| comparison.models[*place].alternative.id.as_str()).collect::<Vec<_>>());
    let mut groups: Vec<(String, Vec<&str>)> = Vec::new();
    for indicator in Indicator::ALL {
        let standing = standing(comparison, draws, indicator)?;
        let mut near = [standing.same.as_slice(), &standing.unclear].concat();
        in_order(&mut near, Ord::cmp);
        let words = if standing.clear.is_empty() && standing.unclear.is_empty() {
            "all are about the same".to_owned()
        } else if standing.clear.is_empty() {
            "no alternative is clearly least".to_owned()
        } else if near.is_empty() {
            format!("{} clearly loads least", named(&[standing.least]))
        } else {
            let unclear = if standing.unclear.is_empty() { "about the same as" } else { "not clearly less than" };
            format!("{} loads least, {unclear} {}", named(&[standing.least]), named(&near))
        };
        match groups.iter_mut().find(|(known, _)| *known == words) {
            Some((_, labels)) => labels.push(indicator.label()),
            None => groups.push((words, vec![indicator.label()])),
        }
    }
    let parts: Vec<String> = groups.iter().map(|(words, labels)| format!("in {} {words}", join(labels))).collect();
    let on = part_of(comparison, &comparison.common);
    let on = if on.is_empty() { String::new() } else { format!(" ({on} that all can make)") };
    Some(format!("{}{on}.", parts.join("; ")))
}

/// One indicator for all alternatives: the least, who is not clearly more, and the most.
pub fn ranked(comparison: &Comparison, draws: &Draws, indicator: Indicator) -> String {
    let Some(standing) = standing(comparison, draws, indicator) else { return String::new() };
    let said = |at: &usize| {
        let value = comparison.models[*at].load(indicator, comparison.per).value;
        let interval = draws.interval(comparison, *at, indicator);
        (
            format!("{} {}", comparison.models[*at].alternative.id, by_interval(value, &interval)),
            range(&interval),
            interval.p5 == interval.p95,
        )
    };
    let with_range = |at: &usize| {
        let (words, range, fixed) = said(at);
        if fixed { words } else { format!("{words} ({range})") }
    };
    let list =
        |places: &[usize]| join(&places.iter().map(|at| said(at).0).collect::<Vec<_>>().iter().map(String::as_str).collect::<Vec<_>>());
    let mut parts = vec![format!("least {}", with_range(&standing.least))];
    if !standing.same.is_empty() {
        parts.push(format!("about the same: {}", list(&standing.same)));
    }
    if !standing.unclear.is_empty() {
        parts.push(format!("not clearly more: {}", list(&standing.unclear)));
    }
    if let Some((most, rest)) = standing.clear.split_last() {
        let mut more: Vec<String> = rest.iter().map(|at| said(at).0).collect();
        more.push(with_range(most));
        parts.push(format!("clearly more: {}", join(&more.iter().map(String::as_str).collect::<Vec<_>>())));
    }
    format!("{}; {}", parts.join("; "), indicator.unit())
}

/// Where a pair's headline does not stand for its draws, a warning.
pub fn off_headline(spread: &PairSpread) -> Option<String> {
    (!spread.headline_stands()).then(|| {
        format!(
            "In {} the single value of the difference lies at {} % of the draws, outside their middle: read the draws' median, {}.",
            spread.indicator.label(),
            (spread.headline_at * 100.0).round(),
            by_interval(spread.difference.median, &spread.difference)
        )
    })
}

/// The pairs and indicators whose single value does not stand for its draws, in a line; none where all do.
pub fn off_headlines(comparison: &Comparison, draws: &Draws, pairs: &[(usize, usize)]) -> Option<String> {
    let pairs: Vec<Spreads> = pairs.iter().map(|(a, b)| ((*a, *b), spreads(comparison, draws, *a, *b))).collect();
    off_in(comparison, &pairs)
}

/// A pair with its spread in every indicator.
pub type Spreads = ((usize, usize), Vec<PairSpread>);

/// The same, of spreads that are known.
pub fn off_in(comparison: &Comparison, pairs: &[Spreads]) -> Option<String> {
    let off: Vec<String> = pairs
        .iter()
        .filter_map(|((a, b), spreads)| {
            let labels: Vec<&str> = spreads.iter().filter(|one| !one.headline_stands()).map(|one| one.indicator.label()).collect();
            let id = |place: &usize| comparison.models[*place].alternative.id.as_str();
            (!labels.is_empty()).then(|| format!("{} and {} in {}", id(a), id(b), join(&labels)))
        })
        .collect();
    (!off.is_empty()).then(|| {
        format!(
            "The single value of a difference lies outside the middle 60 % of its draws for {}: there read the draws' median (`faceload spread`).",
            off.join("; ")
        )
    })
}

/// The figure of a pair's spread.
pub fn figure(comparison: &Comparison, draws: &Draws, a: usize, b: usize) -> Figure {
    let ids = [a, b].map(|place| comparison.models[place].alternative.id.as_str());
    let [first, second] = ids;
    let spreads = spreads(comparison, draws, a, b);
    let number_of = draws.settings.number;
    let mut sentences = vec![pair(comparison, draws, a, b)];
    sentences.extend(spreads.iter().filter_map(off_headline));
    sentences.push(format!("{}.", crate::words::capital(&drawn(draws))));
    sentences.push(meaning());
    let suffix = comparison.per.suffix();
    let cell = |value: f64, interval: &Interval| Cell::number(value, by_interval(value, interval));
    let intervals = |who: &str, value: Option<f64>, interval: &Interval, label: &str, unit: &str| -> Vec<Cell> {
        let headline = value.map_or_else(|| Cell::from(""), |value| cell(value, interval));
        let points = [interval.p5, interval.p25, interval.median, interval.p75, interval.p95].map(|point| cell(point, interval));
        [vec![label.into(), unit.into(), who.into(), headline], points.to_vec()].concat()
    };
    let mut rows = Vec::new();
    let mut shares = Vec::new();
    for one in &spreads {
        let (label, unit) = (one.indicator.label(), format!("{}{suffix}", one.indicator.unit()));
        let single = comparison.difference(a, b, one.indicator);
        rows.push(intervals(first, single.map(|single| single.first), &one.first, label, &unit));
        rows.push(intervals(second, single.map(|single| single.second), &one.second, label, &unit));
        rows.push(intervals(&format!("{second} minus {first}"), Some(one.headline), &one.difference, label, &unit));
        if let Some(ratios) = draws.pair(comparison, a, b, one.indicator).and_then(|pair| pair.ratios()) {
            rows.push(intervals(&format!("{second} over {first}"), None, &Interval::of(&ratios), label, ""));
        }
        let (low, high) = wilson(one.first_less, number_of);
        let share = |share: f64| Cell::number(share, fine_percent(share));
        shares.push(vec![
            label.into(),
            share(one.first_less),
            share(low),
            share(high),
            share(one.headline_at),
            Cell::from(finding_word(one.finding, ids)),
        ]);
    }
    Figure {
        heading: format!("How sure: {first} and {second}, {}", comparison.per.words()),
        sentences,
        tables: vec![
            Table {
                caption: "Middle 50 and 90 % of the draws".to_owned(),
                columns: ["", "unit", "of", "single value", "5 %", "25 %", "median", "75 %", "95 %"].map(str::to_owned).to_vec(),
                rows,
                ..Table::default()
            },
            Table {
                caption: format!(
                    "Draws in which {first} loads less, a tie counted half, from and to by the sampling error of {} draws (95 %); and draws whose difference lies below its single value",
                    group(&number_of.to_string())
                ),
                columns: ["", "share", "from", "to", "below single value", "finding"].map(str::to_owned).to_vec(),
                rows: shares,
                ..Table::default()
            },
        ],
    }
}

/// What the words of a finding mean.
pub fn meaning() -> String {
    let share = percent(SMALL_SHARE);
    format!(
        "Clearly: the middle 90 % of the paired difference excludes zero, and its median is at least {share} of the smaller load and not too small to matter. \
         About the same: the whole of that range lies within {share} of the smaller load or within what is too small to matter, or it excludes zero by too little to matter. \
         No clear difference: neither. These limits are our judgement, grade D."
    )
}

/// A finding in few words.
pub fn finding_word(finding: Finding, [first, second]: [&str; 2]) -> String {
    match finding {
        Finding::FirstLess => format!("{first} clearly less"),
        Finding::SecondLess => format!("{second} clearly less"),
        Finding::AboutTheSame => "about the same".to_owned(),
        Finding::NoClearDifference => "no clear difference".to_owned(),
    }
}

/// A range of numbers of draws, in words.
pub fn numbers(range: &std::ops::RangeInclusive<usize>) -> String {
    format!("a whole number from {} to {}", range.start(), range.end())
}

#[cfg(test)]
mod tests {
    use super::{Interval, by_interval, range};

    #[test]
    fn an_end_beside_zero_is_not_written_as_zero() {
        let beside = |p5: f64| Interval { p5, p25: 1.2, median: 1.6, p75: 2.0, p95: 2.7 };
        assert_eq!([0.006, -0.006, 0.0].map(|p5| range(&beside(p5))), ["0.006 to 2.7", "\u{2212}0.006 to 2.7", "0.0 to 2.7"]);
        // Less than what sums of floats differ by.
        assert_eq!(by_interval(1e-15, &beside(0.006)), "0.0");
    }
}
