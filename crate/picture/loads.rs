//! The loads of the alternatives under one indicator: a bar from zero for each, its value as
//! printed at its end, its interval as a thin line under it. Alternatives keep one order in every
//! panel.
use crate::axis::{Axis, FOOT, LINE};
use crate::bar;
use crate::behind::{Behind, BehindRow};
use crate::fine::Fine;
use crate::look::{Look, Theme};
use crate::refused::{Refused, placeable, roomy};
use crate::rows::{Form, Rows};
use crate::sheet::{LABEL, Place, SMALL, Sheet, Side, plain, small};
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
    /// What the thin line under a bar means; an empty word leaves the key out.
    pub range_label: String,
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
    pub range: Option<(f64, f64)>,
    /// Colour and mark.
    pub look: Look,
}

/// Px between value and bar.
const GAP: f64 = 6.0;
/// Thickness of a bar.
const THICK: f64 = 17.0;
/// Heights of a row.
const FORM: Form = Form { wide: 42.0, bar: 38.0, aside: 0.0 };
/// From the middle of a bar to the interval under it.
const UNDER: f64 = 13.5;

fn rows(panel: &LoadsPanel, width: u32) -> Rows {
    Rows::new(&panel.title, panel.bars.iter().map(|b| b.label.as_str()), width, FORM)
}

/// The height of the picture at a width, in CSS px.
pub fn loads_height(panel: &LoadsPanel, width: u32) -> u32 {
    let key = if panel.keyed() { LINE } else { 0.0 };
    (rows(panel, width).bottom + FOOT + key + 2.0).ceil() as u32
}

/// Where the rows are: for what lies over the picture.
pub fn loads_rows(panel: &LoadsPanel, width: u32) -> Vec<Place> {
    rows(panel, width).places
}

impl LoadsPanel {
    /// Whether the thin line needs its key.
    fn keyed(&self) -> bool {
        !self.range_label.is_empty() && self.bars.iter().any(|b| b.range.is_some())
    }

    /// The numbers behind the picture.
    pub fn behind(&self) -> Behind {
        let numbers = |b: &Bar| match b.range {
            Some((low, high)) => vec![b.value, low, high],
            None => vec![b.value],
        };
        let rows = self.bars.iter().map(|b| BehindRow { label: b.label.clone(), numbers: numbers(b) });
        Behind { title: self.title.clone(), unit: self.unit.clone(), rows: rows.collect() }
    }

    /// Smallest and largest number shown, once all can be placed.
    fn extent(&self) -> Result<(f64, f64), Refused> {
        let mut extent = (0.0_f64, 0.0_f64);
        for row in self.behind().rows {
            for number in row.numbers {
                placeable(&row.label, number)?;
                extent = (extent.0.min(number), extent.1.max(number));
            }
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
        if let Some((low, high)) = b.range {
            interval(&sheet, (axis.x(low), axis.x(high)), y + UNDER, theme)?;
        }
        sheet.text(&texts[i], (to + GAP, y), Side::Right, plain(theme))?;
    }
    rows.upright(&sheet, axis.x(0.0), 1.0, theme.text())?;
    axis.draw(&sheet, rows.bottom, (&panel.unit, rows.right), theme)?;
    if panel.keyed() {
        let (from, to, y) = (rows.left, rows.left + 24.0, rows.bottom + FOOT + 7.0);
        interval(&sheet, (from, to), y, theme)?;
        let text = fitted(&panel.range_label, SMALL, false, rows.right - to - GAP);
        sheet.text(&text, (to + GAP, y), Side::Right, small(theme))?;
    }
    sheet.done()
}

/// An interval: a thin line with short ends.
fn interval<DB: DrawingBackend>(sheet: &Sheet<DB>, (low, high): (f64, f64), y: f64, theme: Theme) -> Result<(), Refused> {
    sheet.line(&[(low, y), (high, y)], 1.25, theme.text())?;
    for end in [low, high] {
        sheet.line(&[(end, y - 2.5), (end, y + 2.5)], 1.25, theme.text())?;
    }
    Ok(())
}

/// The panel as SVG text.
pub fn loads_svg(panel: &LoadsPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_loads(backend, panel, theme))
}
