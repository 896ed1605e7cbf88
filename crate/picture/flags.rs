//! Words over upright lines, like flags on poles: each starts at its pole, and goes higher where
//! it would touch the one at its right.
use crate::axis::LINE;
use crate::look::Theme;
use crate::refused::Refused;
use crate::rising::rising;
use crate::sheet::{SMALL, Sheet, Side, Type, small};
use crate::text_width::{lines, width};
use plotters_backend::DrawingBackend;

/// Words of more lines than this are cut.
const MOST_LINES: usize = 4;
/// Px between words side by side.
const APART: f64 = 8.0;

/// Px between the lowest words and the ground under them.
pub(crate) const OVER: f64 = 8.0;

/// One flag; heights are px over the foot of all.
struct Flag {
    pole: f64,
    left: f64,
    right: f64,
    low: f64,
    words: Vec<String>,
}

impl Flag {
    fn high(&self) -> f64 {
        self.low + LINE * self.words.len() as f64
    }
}

/// Flags laid out.
pub(crate) struct Flags(Vec<Flag>);

impl Flags {
    /// Words over poles, within `left` and `right`.
    pub fn new<'a>(poles: impl Iterator<Item = (f64, &'a str)>, (left, right): (f64, f64)) -> Self {
        Self::of(&poles.collect::<Vec<_>>(), (left, right))
    }

    fn of(poles: &[(f64, &str)], (left, right): (f64, f64)) -> Self {
        let from_right = rising(&poles.iter().map(|(pole, _)| -pole).collect::<Vec<_>>());
        let mut laid: Vec<Flag> = Vec::new();
        for (pole, text) in from_right.into_iter().map(|place| poles[place]) {
            let words = lines(text, SMALL, false, right - left, MOST_LINES);
            let wide = words.iter().map(|l| width(l, SMALL, false)).fold(0.0, f64::max);
            let start = (pole - 3.0).min(right - wide).max(left);
            let end = start + wide;
            let under = laid.iter().filter(|f| start < f.right + APART && f.left < end + APART);
            let low = under.map(Flag::high).fold(0.0, f64::max);
            laid.push(Flag { pole, left: start, right: end, low, words });
        }
        Self(laid)
    }

    /// A sentence without a pole.
    pub fn sentence(text: &str, (left, right): (f64, f64)) -> Self {
        Self::new([(left, text)].into_iter(), (left, right))
    }

    /// Px they take.
    pub fn height(&self) -> f64 {
        self.0.iter().map(Flag::high).fold(0.0, f64::max)
    }

    /// Where the pole at `x` ends, over a ground that starts at `top`: under its flag, or lower
    /// where it would run through another.
    pub fn pole(&self, x: f64, top: f64) -> f64 {
        let own = self.0.iter().filter(|f| f.pole == x).map(|f| f.low).fold(0.0, f64::max);
        let through = |f: &&Flag| f.pole != x && f.left - 2.0 < x && x < f.right + 2.0 && f.low < own;
        let free = self.0.iter().filter(through).map(|f| f.low).fold(own, f64::min);
        top - OVER - free
    }

    /// Draws them over a ground that starts at `top`.
    pub fn draw<DB: DrawingBackend>(&self, sheet: &Sheet<DB>, top: f64, theme: Theme) -> Result<(), Refused> {
        for flag in &self.0 {
            for (i, line) in flag.words.iter().enumerate() {
                let y = top - OVER - flag.high() + LINE * (i as f64 + 0.5);
                sheet.text(line, (flag.left, y), Side::Right, Type { colour: theme.text(), ..small(theme) })?;
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn flags_go_higher_where_they_would_touch() {
        let flags = Flags::new([(50.0, "38 signs"), (70.0, "41 signs"), (300.0, "220 signs")].into_iter(), (4.0, 400.0));
        let heights: Vec<f64> = flags.0.iter().map(|f| f.low).collect();
        assert_eq!(heights, [0.0, 0.0, LINE], "from right to left");
        assert_eq!(flags.height(), 2.0 * LINE);
        assert_eq!((flags.pole(70.0, 100.0), flags.pole(50.0, 100.0)), (92.0, 92.0 - LINE));
    }

    #[test]
    fn a_pole_runs_through_no_flag() {
        // The right one is pushed inwards over the pole of the left one.
        let flags = Flags::new([(385.0, "38 signs"), (395.0, "41 signs")].into_iter(), (4.0, 400.0));
        assert_eq!(flags.pole(385.0, 100.0), 92.0);
        assert!(flags.0.iter().all(|f| f.left >= 4.0 && f.right <= 400.0));
    }
}
