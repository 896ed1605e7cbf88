//! Differences of a pair by single values, in words.

use faceload_core::comparison::{Comparison, Verdict};
use faceload_core::load::Indicator;
use faceload_core::quantity::write_number;

use crate::words::number;

/// How one indicator differs in a pair, by single values.
pub fn difference(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> String {
    let same = comparison.difference(a, b, indicator).is_some_and(|one| one.verdict == Verdict::AboutTheSame && one.value() != 0.0);
    let (loads, more) = loads_and_more(comparison, a, b, indicator);
    if same { format!("{loads}: about the same ({more})") } else { format!("{loads}: {more}") }
}

/// The same without a verdict: beside what the draws found, which may be another.
pub fn single_values(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> String {
    let (loads, more) = loads_and_more(comparison, a, b, indicator);
    format!("{loads}: {more}")
}

/// The loads of a pair, and how much more the one is.
fn loads_and_more(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> (String, String) {
    let (first, second) = (&comparison.models[a].alternative.id, &comparison.models[b].alternative.id);
    let Some(difference) = comparison.difference(a, b, indicator) else {
        return (format!("{first} and {second}"), "they share no line".to_owned());
    };
    let (lower, higher) = if difference.value() < 0.0 { (second, first) } else { (first, second) };
    let loads = format!("{first} {}, {second} {} {}", number(difference.first), number(difference.second), indicator.unit());
    if difference.value() == 0.0 {
        return (loads, "no difference".to_owned());
    }
    let share = difference.share_of_smaller().map(|share| format!(", {}", percent_more(share))).unwrap_or_default();
    (loads, format!("{higher} {} more than {lower}{share}", number(difference.value().abs())))
}

/// A share more, in words a reader can check: per cent up to a doubling, then times as much.
fn percent_more(share: f64) -> String {
    if share < 1.0 {
        format!("{} % more", write_number(share * 100.0, 2))
    } else {
        format!("{} times as much", write_number(1.0 + share, 2))
    }
}
