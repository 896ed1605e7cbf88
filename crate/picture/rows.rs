//! The rows of a picture: title above, then a row for each alternative or input. Wide pictures
//! have the label left of its bar, narrow ones above it. Labels are broken into lines, and a row
//! is as high as its label needs.
use crate::fine::Fine;
use crate::look::{Colour, Theme};
use crate::refused::Refused;
use crate::sheet::{LABEL, MARGIN, Place, Sheet, Side, TITLE, Type, plain};
use crate::text_width::{lines, width};
use plotters_backend::DrawingBackend;

/// Px from one line of a label to the next.
const LEADING: f64 = 16.0;
/// A label or title of more lines than this is cut.
const MOST_LINES: usize = 4;
/// Px between label column and bars.
const GUTTER: f64 = 14.0;

/// Heights of a row, px.
#[derive(Clone, Copy)]
pub(crate) struct Form {
    /// A row of a wide picture, at least.
    pub wide: f64,
    /// What the bar of a narrow picture gets under its label; nothing where the label stands left of its bar at any width.
    pub bar: f64,
    /// What a narrow label leaves free at its right.
    pub aside: f64,
}

/// Rows laid out.
pub(crate) struct Rows {
    title: Vec<String>,
    labels: Vec<Vec<String>>,
    /// Whether labels stand above their bars.
    pub narrow: bool,
    /// Where bars may start.
    pub left: f64,
    /// Where everything ends.
    pub right: f64,
    /// Where each row is.
    pub places: Vec<Place>,
    /// Where the rows end.
    pub bottom: f64,
}

impl Rows {
    /// Lays the rows out at a width in CSS px.
    pub fn new<'a>(title: &str, labels: impl Iterator<Item = &'a str>, sheet: u32, form: Form) -> Self {
        let sheet = f64::from(sheet);
        let (narrow, room) = (sheet < 560.0 && form.bar > 0.0, sheet - 2.0 * MARGIN);
        let label_room = if narrow { room - form.aside } else { room * 0.36 };
        let labels: Vec<_> = labels.map(|l| lines(l, LABEL, false, label_room, MOST_LINES)).collect();
        let title = lines(title, TITLE, true, room, MOST_LINES);
        let column = labels.iter().flatten().map(|l| width(l, LABEL, false)).fold(0.0, f64::max);
        let mut rows = Self {
            left: if narrow { MARGIN } else { MARGIN + column.ceil() + GUTTER },
            right: MARGIN + room,
            bottom: if title.is_empty() { 8.0 } else { 14.0 + 18.0 * title.len() as f64 },
            title,
            labels,
            narrow,
            places: Vec::new(),
        };
        for i in 0..rows.labels.len() {
            let text = rows.text_height(i);
            let height = if narrow { text + form.bar } else { form.wide.max(text + 8.0) };
            rows.places.push(Place { x: 0.0, y: rows.bottom, width: sheet, height });
            rows.bottom += height;
        }
        rows.bottom += 4.0;
        rows
    }

    /// A title alone, over what is laid out otherwise.
    pub fn title(title: &str, sheet: u32) -> Self {
        let mut rows = Self::new(title, std::iter::empty(), sheet, Form { wide: 0.0, bar: 1.0, aside: 0.0 });
        rows.bottom -= 6.0;
        rows
    }

    /// Moves the rows down, so that something stands between title and rows.
    pub fn lower(&mut self, by: f64) {
        self.places.iter_mut().for_each(|place| place.y += by);
        self.bottom += by;
    }

    /// Where bars of this height together begin: under a label above, or beside one in the middle.
    pub fn bars_top(&self, i: usize, height: f64) -> f64 {
        let (top, bottom) = self.bar_part(i);
        if self.narrow { top } else { (top + bottom - height) / 2.0 }
    }

    fn text_height(&self, i: usize) -> f64 {
        LEADING * self.labels[i].len() as f64
    }

    /// Upper and lower end of the part of a row that belongs to its bar.
    pub fn bar_part(&self, i: usize) -> (f64, f64) {
        let row = self.places[i];
        let top = if self.narrow { row.y + self.text_height(i) } else { row.y };
        (top, row.y + row.height)
    }

    /// The middle of a row's bar.
    pub fn bar_middle(&self, i: usize) -> f64 {
        let (top, bottom) = self.bar_part(i);
        // Narrow bars stand nearer their own label than the next one.
        if self.narrow { (top + 0.375 * (bottom - top)).round() } else { (top + bottom) / 2.0 }
    }

    /// The middle of the first line of a row's label.
    pub fn label_middle(&self, i: usize) -> f64 {
        let row = self.places[i];
        let top = if self.narrow { row.y } else { row.y + (row.height - self.text_height(i)) / 2.0 };
        top + LEADING / 2.0
    }

    /// A sheet with title and labels.
    pub fn sheet<DB: DrawingBackend>(&self, backend: Fine<DB>, theme: Theme) -> Result<Sheet<DB>, Refused> {
        let sheet = Sheet::new(backend, theme)?;
        let set = Type { size: TITLE, bold: true, colour: theme.text() };
        for (i, line) in self.title.iter().enumerate() {
            sheet.text(line, (MARGIN, 12.0 + 18.0 * i as f64), Side::Right, set)?;
        }
        for (i, label) in self.labels.iter().enumerate() {
            for (j, line) in label.iter().enumerate() {
                let y = self.label_middle(i) + LEADING * j as f64;
                sheet.text(line, (MARGIN, y), Side::Right, plain(theme))?;
            }
        }
        Ok(sheet)
    }

    /// An upright line through all bars; it leaves out labels that stand above.
    pub fn upright<DB: DrawingBackend>(&self, sheet: &Sheet<DB>, x: f64, stroke: f64, colour: Colour) -> Result<(), Refused> {
        for i in 0..self.places.len() {
            let (top, bottom) = self.bar_part(i);
            sheet.upright(x, top, bottom, stroke, colour)?;
        }
        let last = self.places.last().map_or(self.bottom, |p| p.y + p.height);
        sheet.upright(x, last, self.bottom, stroke, colour)
    }
}
