//! The answer: who loads least in what, in sentences and in one picture for each indicator.

use faceload_core::analysis::Interval;
use faceload_core::load::Indicator;
use faceload_core::quantity::group;
use faceload_picture::{Theme, loads_height, loads_svg};

use super::found::Found;
use super::node::{Node, aside, element, paragraph, paragraphs, picture, terms};
use crate::{panel, sureness, words};

/// Said where no line is made by all.
const NOTHING_COMMON: &str =
    "No line can be made by every alternative, so they have no common answer; each pair is compared on the lines both can make.";

/// The answer in sentences.
pub fn section(found: &Found<'_>) -> Node {
    let (comparison, draws) = (found.comparison, &found.draws);
    let mut inside = Vec::new();
    match sureness::answer(comparison, draws) {
        Some(answer) => {
            inside.push(paragraph(format!("{}: {answer}", words::capital(comparison.per.words()))).with("class", "lead"));
            let ranked = Indicator::ALL.map(|one| (one.label().to_owned(), sureness::ranked(comparison, draws, one)));
            inside.push(terms(ranked).with("class", "ranked"));
        }
        None if found.models().len() > 1 => {
            inside.push(paragraph(NOTHING_COMMON));
            inside.extend(paragraphs(comparison.first_pairs().into_iter().map(|(a, b)| sureness::pair(comparison, draws, a, b))));
        }
        None => inside.push(paragraph("One alternative alone can make these lines, so there is nothing to compare it with.")),
    }
    inside.push(aside(format!(
        "Many numbers behind this are known only as a range. So the whole is computed {} times, each time with other values from these ranges; one such run is a draw. \
         In brackets stands what holds the middle 90 of 100 draws. Two alternatives are told apart only where the middle 90 of 100 draws of their difference lie on one side and it is large enough to matter.",
        group(&draws.settings.number.to_string())
    )));
    super::section("report-answer", inside)
}

/// How wide a small picture is drawn, in CSS px.
const SMALL: u32 = 300;

/// One picture for each indicator, the alternatives always in the same order.
pub fn pictures(found: &Found<'_>) -> Node {
    let comparison = found.comparison;
    // Loads on different lines never stand beside each other.
    if comparison.common.is_empty() {
        return element("div", Vec::new());
    }
    let each = Indicator::ALL.map(|indicator| {
        let points = |at: usize| {
            let one = Interval::of(found.draws.load(comparison, at, indicator));
            [one.p5, one.p25, one.median, one.p75, one.p95]
        };
        let intervals: Vec<[f64; 5]> = (0..found.models().len()).map(points).collect();
        let mut panel = panel::loads(comparison, indicator, Some(&intervals));
        panel.title = indicator.label().to_owned();
        panel.range_label.clear();
        panel.close = true;
        let said = format!("{}, {}: {}", indicator.label(), found.unit(indicator), sureness::ranked(comparison, &found.draws, indicator));
        picture(loads_svg(&panel, (SMALL, loads_height(&panel, SMALL)), Theme::Paper).map_err(|refused| refused.to_string()), &said)
    });
    let key = aside(
        "A bar is the load with every number at its middle value. The thick line over it holds the middle 50 of 100 draws, the thin line the middle 90. Each picture has its own scale from zero.",
    );
    element("div", each.into_iter().chain([key]).collect()).with("class", "panels")
}
