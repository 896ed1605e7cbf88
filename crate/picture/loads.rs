//! The loads of the alternatives under one indicator: a bar from zero for each, its value as
//! printed at its end, and over it the interval of its load where that is known. Alternatives keep
//! one order in every panel.
use crate::axis::{Axis, FOOT};
use crate::bar;
use crate::behind::{Behind, BehindRow, Column};
use crate::fine::Fine;
use crate::interval::{self, Interval};
use crate::key::Key;
use crate::look::{Look, Theme};
use crate::refused::{Refused, placeable, roomy};
use crate::rows::{Form, Rows};
use crate::sheet::{LABEL, MARGIN, Place, Side, plain};
use crate::svg::svg;
use crate::text_width::{fitted, width};
use plotters_backend::DrawingBackend;

/// What the picture shows: one indicator.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadsPanel {
    /// The indicator and what it is counted for.
    pub title: String,
    /// The unit of every value.
    pub unit: String,
    /// What the thick and the thin line over a bar mean; an empty word leaves the key out.
    pub range_label: String,
    /// Rows close together, labels left of their bars at any width: for several pictures on a sheet of paper.
    pub close: bool,
    /// The alternatives, one row each.
    pub bars: Vec<Bar>,
}

/// One alternative.
#[derive(Clone, Debug, PartialEq)]
pub struct Bar {
    /// Its name.
    pub label: String,
    /// Its load.
    pub value: f64,
    /// Its load as printed.
    pub text: String,
    /// The interval of its load, where it is known.
    pub range: Option<Interval>,
    /// Colour and mark.
    pub look: Look,
}

/// Px between value and bar.
const GAP: f64 = 6.0;
/// Thickness of a bar.
const THICK: f64 = 17.0;
/// Heights of a row.
const FORM: Form = Form { wide: 42.0, bar: 38.0, aside: 0.0 };
/// The same, close together.
const CLOSE: Form = Form { wide: 22.0, bar: 0.0, aside: 0.0 };
/// Width of the sample in the key.
const SAMPLE: f64 = 36.0;

fn rows(panel: &LoadsPanel, width: u32) -> Rows {
    Rows::new(&panel.title, panel.bars.iter().map(|b| b.label.as_str()), width, if panel.close { CLOSE } else { FORM })
}

/// The height of the picture at a width, in CSS px.
pub fn loads_height(panel: &LoadsPanel, width: u32) -> u32 {
    let rows = rows(panel, width);
    (rows.bottom + FOOT + key(panel, &rows).height() + 2.0).ceil() as u32
}

/// Where the rows are: for what lies over the picture.
pub fn loads_rows(panel: &LoadsPanel, width: u32) -> Vec<Place> {
    rows(panel, width).places
}

/// The key of the two lines, where a bar has them.
fn key(panel: &LoadsPanel, rows: &Rows) -> Key {
    let shown = panel.bars.iter().any(|b| b.range.is_some());
    Key::new([panel.range_label.as_str()].into_iter().filter(|_| shown), (SAMPLE, 8.0), (MARGIN, rows.right))
}

impl LoadsPanel {
    /// The table behind the picture.
    pub fn behind(&self) -> Behind {
        let row = |b: &Bar| {
            let points = b.range.map_or([None; 4], |range| range.points().map(Some));
            BehindRow::numbers(&b.label, [Some(b.value)].into_iter().chain(points))
        };
        let columns = [Column::Value].into_iter().chain([5, 25, 75, 95].map(Column::Percentile));
        Behind { title: self.title.clone(), unit: self.unit.clone(), columns: columns.collect(), rows: self.bars.iter().map(row).collect() }
    }

    /// Smallest and largest number shown, once all can be placed.
    fn extent(&self) -> Result<(f64, f64), Refused> {
        let mut extent = (0.0_f64, 0.0_f64);
        for b in &self.bars {
            placeable(&b.label, b.value)?;
            let (low, high) = b.range.map_or((b.value, b.value), |range| range.ninety);
            if let Some(range) = b.range {
                range.checked(&b.label)?;
            }
            extent = (extent.0.min(low).min(b.value), extent.1.max(high).max(b.value));
        }
        Ok(extent)
    }
}

/// Draws the panel; the backend is as high as [`loads_height`] says, or higher.
pub fn draw_loads<DB: DrawingBackend>(backend: Fine<DB>, panel: &LoadsPanel, theme: Theme) -> Result<(), Refused> {
    let extent = panel.extent()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), loads_height(panel, wide))?;
    let rows = rows(panel, wide);
    let sheet = rows.sheet(backend, theme)?;

    let room = 0.45 * rows.right;
    let texts: Vec<String> = panel.bars.iter().map(|b| fitted(&b.text, LABEL, false, room)).collect();
    let values = texts.iter().map(|t| width(t, LABEL, false)).fold(0.0, f64::max);
    let axis = Axis::new(extent, rows.left, rows.right - GAP - values - rows.left, rows.right);
    for (i, b) in panel.bars.iter().enumerate() {
        let y = rows.bar_middle(i);
        let (from, to) = (axis.x(b.value.min(0.0)), axis.x(b.value.max(0.0)));
        if b.value != 0.0 {
            let at = Place { x: from, y: y - THICK / 2.0, width: to - from, height: THICK };
            bar::draw(&sheet, at, b.look)?;
        }
        let mut end = to;
        if let Some(range) = b.range {
            let points = range.points().map(|point| axis.x(point));
            interval::draw(&sheet, points, y, theme)?;
            end = to.max(points[3]);
        }
        sheet.text(&texts[i], (end + GAP, y), Side::Right, plain(theme))?;
    }
    rows.upright(&sheet, axis.x(0.0), 1.0, theme.text())?;
    axis.draw(&sheet, rows.bottom, (&panel.unit, rows.right), theme)?;
    key(panel, &rows).draw(&sheet, rows.bottom + FOOT, theme, |_, x, y| {
        let at = [0.0, 0.25, 0.6, 1.0].map(|share| x + share * SAMPLE);
        interval::draw(&sheet, at, y, theme)
    })?;
    sheet.done()
}

/// The panel as SVG text.
pub fn loads_svg(panel: &LoadsPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_loads(backend, panel, theme))
}
