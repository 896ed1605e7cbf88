//! The axis under the rows, and the line of its unit.
use crate::look::Theme;
use crate::refused::Refused;
use crate::sheet::{MARGIN, SMALL, Sheet, Side, small};
use crate::text_width::{fitted, width};
use crate::ticks::{Scale, Tick, scale};
use plotters_backend::DrawingBackend;

/// Height of a line of small text.
pub(crate) const LINE: f64 = 17.0;
/// Height from the axis line to the end of the unit.
pub(crate) const FOOT: f64 = 42.0;
/// Length of a tick.
pub(crate) const TICK: f64 = 4.0;

/// Those of the texts under an axis that do not touch one before them, each pushed inwards where
/// it would leave the sheet: its middle, and the text.
pub(crate) fn apart<'a>(texts: impl Iterator<Item = (f64, &'a str)>, sheet: f64) -> Vec<(f64, String)> {
    let mut kept: Vec<(f64, String)> = Vec::new();
    for (x, text) in texts {
        let half = width(text, SMALL, false) / 2.0;
        let x = x.clamp(MARGIN + half, (sheet - MARGIN - half).max(MARGIN + half));
        let free = |(at, text): &(f64, String)| (x - at).abs() >= half + width(text, SMALL, false) / 2.0 + 8.0;
        if kept.iter().all(free) {
            kept.push((x, text.to_owned()));
        }
    }
    kept
}

/// An axis laid on the sheet.
pub(crate) struct Axis {
    scale: Scale,
    pub left: f64,
    pub width: f64,
    /// The tick numbers that have room: middle of the text, and the text.
    numbers: Vec<(f64, String)>,
}

impl Axis {
    /// The axis from `left` over `width` px; its numbers stay within `sheet` px.
    pub fn new((low, high): (f64, f64), left: f64, width: f64, sheet: f64) -> Self {
        let lay = |most| {
            let mut axis = Self { scale: scale(low, high, most), left, width, numbers: Vec::new() };
            axis.numbers = axis.with_room(sheet);
            axis
        };
        let whole = |axis: &Self| axis.numbers.len() == axis.scale.ticks.len();
        [4, 3].into_iter().map(lay).find(whole).unwrap_or_else(|| lay(2))
    }

    /// Where a value stands.
    pub fn x(&self, value: f64) -> f64 {
        self.left + self.width * self.scale.share(value)
    }

    /// The numbers that have room; zero comes first, then from left to right.
    fn with_room(&self, sheet: f64) -> Vec<(f64, String)> {
        let zero = |t: &&Tick| t.value == 0.0;
        let others = self.scale.ticks.iter().filter(|t| !zero(t));
        apart(self.scale.ticks.iter().filter(zero).chain(others).map(|t| (self.x(t.value), t.text.as_str())), sheet)
    }

    /// Draws line, ticks and numbers at height `y`, the unit under them as far as `right`.
    pub fn draw<DB: DrawingBackend>(&self, sheet: &Sheet<DB>, y: f64, (unit, right): (&str, f64), theme: Theme) -> Result<(), Refused> {
        sheet.level(y, self.left, self.left + self.width, 1.0, theme.rule())?;
        for tick in &self.scale.ticks {
            sheet.upright(self.x(tick.value), y, y + TICK, 1.0, theme.rule())?;
        }
        for (x, text) in &self.numbers {
            sheet.text(text, (*x, y + TICK + 10.0), Side::Middle, small(theme))?;
        }
        let unit = fitted(unit, SMALL, false, right - self.left);
        sheet.text(&unit, (self.left, y + TICK + 10.0 + LINE), Side::Right, small(theme))
    }
}
