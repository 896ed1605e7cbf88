//! The names of lines at their right ends, moved apart where lines end close together.
use crate::look::{Colour, Theme};
use crate::refused::Refused;
use crate::rising::rising;
use crate::sheet::{LABEL, Place, Sheet, Side, plain};
use crate::text_width::{lines, width};
use plotters_backend::DrawingBackend;

/// Px from one line of a name to the next.
const LEADING: f64 = 15.0;
/// Px between two names.
const APART: f64 = 4.0;
/// Px from the end of the ground to a name; a short line leads there.
const LEAD: f64 = 16.0;
/// Names of more lines than this are cut.
const MOST_LINES: usize = 4;

/// Names laid out.
pub(crate) struct EndLabels {
    names: Vec<Vec<String>>,
    /// The middle of each.
    middles: Vec<f64>,
}

impl EndLabels {
    /// Names broken into lines of at most `room` px.
    pub fn new<'a>(names: impl Iterator<Item = &'a str>, room: f64) -> Self {
        Self { names: names.map(|n| lines(n, LABEL, false, room - LEAD, MOST_LINES)).collect(), middles: Vec::new() }
    }

    /// Px they take right of the ground.
    pub fn width(&self) -> f64 {
        LEAD + self.names.iter().flatten().map(|n| width(n, LABEL, false)).fold(0.0, f64::max)
    }

    fn tall(&self, i: usize) -> f64 {
        LEADING * self.names[i].len() as f64 + APART
    }

    /// Px they take one under the other.
    pub fn height(&self) -> f64 {
        (0..self.names.len()).map(|i| self.tall(i)).sum()
    }

    /// Places each as near as there is room to where its line ends, within `top` and `bottom`:
    /// names that would touch stand one under the other around the middle of their ends.
    pub fn stand(&mut self, ends: impl Iterator<Item = f64>, (top, bottom): (f64, f64)) {
        let ends: Vec<f64> = ends.collect();
        let order = rising(&ends);
        // Stacks of names: which of the order, and the upper edge.
        let mut stacks: Vec<(std::ops::Range<usize>, f64)> = Vec::new();
        for i in 0..order.len() {
            let mut stack = (i..i + 1, 0.0);
            loop {
                let names = &order[stack.0.clone()];
                let tall: f64 = names.iter().map(|n| self.tall(*n)).sum();
                let middle = names.iter().map(|n| ends[*n]).sum::<f64>() / names.len() as f64;
                stack.1 = (middle - tall / 2.0).min(bottom - tall).max(top);
                let above =
                    stacks.last().map(|(names, y)| (names.start, y + order[names.clone()].iter().map(|n| self.tall(*n)).sum::<f64>()));
                match above {
                    Some((start, end)) if end > stack.1 => {
                        stacks.pop();
                        stack.0.start = start;
                    }
                    _ => break,
                }
            }
            stacks.push(stack);
        }
        self.middles = ends;
        for (names, mut y) in stacks {
            for i in &order[names] {
                self.middles[*i] = y + self.tall(*i) / 2.0;
                y += self.tall(*i);
            }
        }
    }

    /// Where they are, right of `x`.
    pub fn places(&self, x: f64) -> impl Iterator<Item = Place> {
        (0..self.names.len()).map(move |i| Place {
            x: x + LEAD - 2.0,
            y: self.middles[i] - self.tall(i) / 2.0,
            width: self.width() - LEAD + 4.0,
            height: self.tall(i),
        })
    }

    /// The short line from the end of a line to its name.
    pub fn lead<DB: DrawingBackend>(
        &self,
        sheet: &Sheet<DB>,
        i: usize,
        (end, x): ((f64, f64), f64),
        colour: Colour,
    ) -> Result<(), Refused> {
        sheet.line(&[(end.0 + 1.0, end.1), (x + LEAD - 4.0, self.middles[i])], 1.0, colour)
    }

    /// Draws the names right of `x`.
    pub fn draw<DB: DrawingBackend>(&self, sheet: &Sheet<DB>, x: f64, theme: Theme) -> Result<(), Refused> {
        for (i, name) in self.names.iter().enumerate() {
            let first = self.middles[i] - LEADING * (name.len() as f64 - 1.0) / 2.0;
            for (j, line) in name.iter().enumerate() {
                sheet.text(line, (x + LEAD, first + LEADING * j as f64), Side::Right, plain(theme))?;
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_stand_at_their_ends_or_move_apart() {
        let names = ["screen", "film", "digital printing with a long name"];
        let stood = |ends: [f64; 3]| {
            let mut labels = EndLabels::new(names.into_iter(), 120.0);
            labels.stand(ends.into_iter(), (100.0, 300.0));
            let places: Vec<Place> = labels.places(0.0).collect();
            (labels.middles, places)
        };
        assert_eq!(stood([120.0, 180.0, 240.0]).0, [120.0, 180.0, 240.0]);
        for ends in [[200.0; 3], [100.0; 3], [300.0; 3], [299.0, 150.0, 298.0]] {
            let mut places = stood(ends).1;
            places.sort_by(|a, b| a.y.total_cmp(&b.y));
            assert!(places[0].y >= 100.0 && places[2].y + places[2].height <= 300.0, "{places:?}");
            assert!(places.windows(2).all(|p| p[0].y + p[0].height <= p[1].y + 1e-9), "{places:?}");
        }
    }
}
