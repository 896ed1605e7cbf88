//! What would change the answer: quantity, choices of method, single inputs, and all weak data at once.

use faceload_core::load::Indicator;

use super::found::Found;
use super::node::{Node, list, paragraph, words};
use crate::{drivers, flips};

/// What would turn the pair.
pub fn section(found: &Found<'_>) -> Node {
    let Some(pair) = found.pair else {
        return super::section("report-change", vec![paragraph("Nothing is compared, so nothing can turn.")]);
    };
    let comparison = found.comparison;
    let mut inside = vec![words("h3", "More or fewer signs, made to order in one go, with new screens")];
    let flips_at = Indicator::ALL.into_iter().zip(&found.break_even).filter_map(|(indicator, one)| {
        let mut sentences = flips::break_even_sentences(one.as_ref()?, found.ids(pair), indicator);
        // How far the draws spread it is said of the one that is looked at; of the others in the reviewer's part.
        if indicator != found.indicator && sentences.len() > 1 {
            sentences.pop();
        }
        Some(sentences.join(" "))
    });
    inside.extend(list(flips_at));
    inside.push(words("h3", "A choice of method, or one number"));
    let chosen = Indicator::ALL.into_iter().zip(&found.switches).filter_map(|(indicator, list)| {
        let sentence = flips::switches(comparison, pair, indicator, list).sentences.into_iter().next()?;
        Some((indicator.label(), sentence))
    });
    let mut by_sentence: Vec<(String, Vec<&str>)> = Vec::new();
    for (label, sentence) in chosen {
        match by_sentence.iter_mut().find(|(known, _)| *known == sentence) {
            Some((_, labels)) => labels.push(label),
            None => by_sentence.push((sentence, vec![label])),
        }
    }
    let mut said: Vec<String> =
        by_sentence.into_iter().map(|(sentence, labels)| format!("{}: {sentence}", crate::words::join(&labels))).collect();
    if let Some(found_drivers) = &found.drivers[found.indicator as usize] {
        let sentences = drivers::figure(comparison, pair, found.indicator, found_drivers, 0).sentences;
        let turning = sentences.get(1).into_iter().chain(sentences.last());
        said.extend(turning.map(|sentence| format!("{}: {sentence}", found.indicator.label())));
    }
    inside.extend(list(said));
    super::section("report-change", inside)
}
