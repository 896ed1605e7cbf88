//! The interval of a load: where the middle half of the draws lies, a thick line, and where the
//! middle ninety of a hundred lie, a thin one. Both are drawn over the bar, each in an edge of
//! the ground, so that they read on every colour, on dark, on paper and in grey.
use crate::look::{Colour, Theme};
use crate::refused::{Refused, placeable};
use crate::sheet::Sheet;
use plotters_backend::DrawingBackend;

/// Two intervals of one load, the inner within the outer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// 25 % and 75 % points.
    pub half: (f64, f64),
    /// 5 % and 95 % points.
    pub ninety: (f64, f64),
}

/// Strokes of the two lines.
const THICK: f64 = 5.0;
const THIN: f64 = 1.5;
/// The edge of ground around them.
const EDGE: f64 = 1.25;

impl Interval {
    /// The four points, rising.
    pub(crate) fn points(&self) -> [f64; 4] {
        [self.ninety.0, self.half.0, self.half.1, self.ninety.1]
    }

    /// Refuses points that cannot be placed or do not rise.
    pub(crate) fn checked(&self, label: &str) -> Result<(), Refused> {
        let points = self.points();
        for point in points {
            placeable(label, point)?;
        }
        match points.windows(2).find(|p| p[0] > p[1]) {
            Some(p) => Err(Refused::Turned { label: label.to_owned(), low: p[0], high: p[1] }),
            None => Ok(()),
        }
    }
}

/// Draws the four points, given as px, at height `y`.
pub(crate) fn draw<DB: DrawingBackend>(sheet: &Sheet<DB>, [low, from, to, high]: [f64; 4], y: f64, theme: Theme) -> Result<(), Refused> {
    let line = |a: f64, b: f64, stroke: f64, colour: Colour, edge: f64| {
        // The narrowest interval is still seen.
        let wider = edge + (1.0 - (b - a) / 2.0).max(0.0);
        sheet.line(&[(a - wider, y), (b + wider, y)], stroke + 2.0 * edge, colour)
    };
    for (colour, edge) in [(theme.ground(), EDGE), (theme.text(), 0.0)] {
        line(low, high, THIN, colour, edge)?;
        line(from, to, THICK, colour, edge)?;
    }
    Ok(())
}
