//! Panels: which numbers a picture shows, in which order, under which words.

use faceload_core::analysis::Swing;
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::order::RouteName;
use faceload_picture::{Bar, Colour, Interval, LoadsPanel, Look, Mark, SwingsKey, SwingsPanel};

use crate::labels::label;
use crate::words::number;

/// How an alternative is drawn: its route's colour, and a mark by its place among that route's.
pub fn look(comparison: &Comparison, index: usize) -> Look {
    let route = comparison.models[index].alternative.route;
    let before = comparison.models[..index].iter().filter(|model| model.alternative.route == route).count();
    let colour = match route {
        RouteName::ScreenPrinting => Colour::SCREEN_PRINTING,
        RouteName::OverlayFilm => Colour::FILM,
        RouteName::DirectApplied => Colour::DIRECT_APPLIED,
        RouteName::DigitalPrinting => Colour::DIGITAL,
    };
    Look { colour, mark: [Mark::Plain, Mark::Hatched, Mark::Dashed][before % 3] }
}

/// One indicator's loads, the alternatives in the order's order; with their 5, 25, 50, 75 and 95 % points where
/// they are known.
pub fn loads(comparison: &Comparison, indicator: Indicator, intervals: Option<&Vec<[f64; 5]>>) -> LoadsPanel {
    let bars = comparison.models.iter().enumerate().map(|(index, model)| {
        let value = model.load(indicator, comparison.per).value;
        Bar {
            label: model.alternative.id.clone(),
            value,
            text: number(value),
            range: intervals.and_then(|known| known.get(index)).map(range),
            look: look(comparison, index),
        }
    });
    LoadsPanel {
        title: String::new(),
        unit: format!("{}{}", indicator.unit(), comparison.per.suffix()),
        close: false,
        range_label: if intervals.is_some() { label("draws-range").to_owned() } else { String::new() },
        bars: bars.collect(),
    }
}

/// The two intervals of five points.
fn range(&[p5, p25, _, p75, p95]: &[f64; 5]) -> Interval {
    Interval { half: (p25, p75), ninety: (p5, p95) }
}

/// The swings of the difference b - a.
pub fn swings(comparison: &Comparison, a: usize, b: usize, indicator: Indicator, swings: &[Swing]) -> SwingsPanel {
    let (first, second) = (&comparison.models[a], &comparison.models[b]);
    let rows = swings.iter().map(|swing| faceload_picture::Swing {
        label: first.book.input(swing.input).item.clone(),
        low: swing.at_low,
        high: swing.at_high,
        crosses: swing.turns(),
    });
    SwingsPanel {
        title: String::new(),
        unit: format!("{}{}", indicator.unit(), comparison.per.suffix()),
        centre: comparison.difference(a, b, indicator).map_or(0.0, |difference| difference.value()),
        less_label: format!("{} loads less", second.alternative.id),
        more_label: format!("{} loads more", second.alternative.id),
        turns_label: label("turns").to_owned(),
        key: SwingsKey {
            low: label("moves-low").to_owned(),
            high: label("moves-high").to_owned(),
            centre: label("moves-centre").to_owned(),
        },
        rows: rows.collect(),
    }
}

/// The width of a picture in a file, in CSS px.
pub const WIDE: u32 = 720;

/// Said of what has a table only.
pub fn no_picture(what: &str) -> Result<String, String> {
    Err(format!("{what} have no picture where one was wanted; take their table as CSV: `--csv`"))
}
