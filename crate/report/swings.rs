//! The swings of a pair's difference as a figure: its table, its picture, its spots.

use faceload_core::analysis::Swing;
use faceload_core::comparison::Comparison;
use faceload_core::factors::{Input, Spread};
use faceload_core::load::Indicator;
use faceload_picture::{SwingsPanel, Theme, swings_height, swings_rows, swings_svg};

use crate::figure::{Cell, Figure, Table};
use crate::labels::label;
use crate::panel::{WIDE, swings as panel};
use crate::spot::{Picture, Spot};
use crate::words::{capital, number};

/// A pair's difference in an indicator, and the swings of it that are shown.
pub struct Swings<'a> {
    /// The comparison.
    pub comparison: &'a Comparison,
    /// The pair.
    pub pair: (usize, usize),
    /// The indicator.
    pub indicator: Indicator,
    /// The swings.
    pub list: &'a [Swing],
}

impl Swings<'_> {
    fn ids(&self) -> [&str; 2] {
        [self.pair.0, self.pair.1].map(|at| self.comparison.models[at].alternative.id.as_str())
    }

    /// What the picture shows.
    pub fn panel(&self) -> SwingsPanel {
        panel(self.comparison, self.pair.0, self.pair.1, self.indicator, self.list)
    }

    /// The row of an input, as the alternative has it that did not state a value of its own.
    fn row(&self, swing: &Swing) -> &Input {
        let [first, second] = [self.pair.0, self.pair.1].map(|at| self.comparison.models[at].book.input(swing.input));
        if first.spread == Spread::Fixed { second } else { first }
    }

    fn heading(&self) -> String {
        let [first, second] = self.ids();
        format!("What moves {second} minus {first} in {}, {}", self.indicator.label(), self.comparison.per.words())
    }

    /// The figure.
    pub fn figure(&self) -> Figure {
        let plain = |value: f64| Cell::number(value, number(value));
        let rows = self.list.iter().map(|swing| {
            let row = self.row(swing);
            vec![
                Cell::from(row.id.as_str()),
                Cell::from(row.item.as_str()),
                Cell::from(row.grade.to_string()),
                Cell::from(row.unit.words()),
                plain(swing.ends.0),
                plain(swing.ends.1),
                plain(swing.at_low),
                plain(swing.at_high),
                Cell::from(if swing.turns() { label("turns") } else { "" }),
            ]
        });
        let columns = ["id", "input", "grade", "unit", "at-5", "at-95", "difference-at-5", "difference-at-95", "ranking"].map(label);
        Figure {
            heading: self.heading(),
            sentences: Vec::new(),
            tables: vec![Table {
                caption: format!("{}: {}", self.heading(), self.panel().unit),
                columns: columns.map(str::to_owned).to_vec(),
                rows: rows.collect(),
                ..Table::default()
            }],
        }
    }

    /// The spots of the picture at a width: an input leads to its evidence in the arithmetic of the alternative it
    /// stands in.
    pub fn spots(&self, width: u32) -> Vec<Spot> {
        let panel = self.panel();
        let [first, second] = self.ids();
        let holds = |at: usize| self.comparison.models[at].inputs_of(self.indicator, self.comparison.per);
        let in_second = holds(self.pair.1);
        let holder = |swing: &Swing| if in_second.contains(&swing.input) { second } else { first };
        let each = swings_rows(&panel, width).into_iter().zip(self.list).zip(&panel.rows).map(|((place, swing), row)| {
            let turns = if swing.turns() { format!("; {}", label("turns-ranking")) } else { String::new() };
            let (low, high) = (number(swing.at_low), number(swing.at_high));
            let words = format!("{}: {} {low}, {} {high} {}{turns}", row.label, label("difference-at-5"), label("at-95"), panel.unit);
            Spot::saying(place, words).leading(holder(swing), self.indicator.id()).at_input(&self.row(swing).id)
        });
        each.collect()
    }

    /// The picture at a width, with a title of its own where it stands alone: on paper and in files.
    pub fn picture(&self, width: u32, theme: Theme) -> Result<Picture, String> {
        let title = if theme == Theme::Paper { capital(&self.heading()) } else { String::new() };
        let panel = SwingsPanel { title, ..self.panel() };
        let size = (width, swings_height(&panel, width));
        let svg = swings_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
        Ok(Picture { svg, size, spots: self.spots(width) })
    }

    /// The picture for a file.
    pub fn file(&self) -> Result<String, String> {
        self.picture(WIDE, Theme::Paper).map(|picture| picture.svg)
    }
}
