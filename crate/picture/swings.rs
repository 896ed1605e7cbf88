//! What moves the difference between two alternatives: a row per input, from the difference at
//! the input's low value (open dot) to the difference at its high value (filled dot). Left of
//! zero one alternative loads less, right of zero the other: a bar that crosses zero is marked,
//! since the input alone can turn the ranking.
use crate::axis::{Axis, FOOT, LINE};
use crate::behind::{Behind, BehindRow, Column};
use crate::fine::Fine;
use crate::key::Key;
use crate::look::Theme;
use crate::refused::{Refused, placeable, roomy};
use crate::rows::{Form, Rows};
use crate::sheet::{LABEL, MARGIN, Place, SMALL, Sheet, Side, plain, small};
use crate::svg::svg;
use crate::text_width::{fitted, width};
use plotters_backend::DrawingBackend;

/// What the picture shows: one difference, moved by one input a row.
#[derive(Clone, Debug, PartialEq)]
pub struct SwingsPanel {
    /// The indicator and the two alternatives.
    pub title: String,
    /// The unit of the difference.
    pub unit: String,
    /// The difference with every input at its own value.
    pub centre: f64,
    /// What it means to be left of zero.
    pub less_label: String,
    /// What it means to be right of zero.
    pub more_label: String,
    /// The word beside a row that crosses zero.
    pub turns_label: String,
    /// Key: the open dot, the filled dot, the thin line. An empty word leaves its mark out.
    pub key: SwingsKey,
    /// The inputs, in the order shown.
    pub rows: Vec<Swing>,
}

/// The words of the key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SwingsKey {
    /// The open dot: the input at its low value.
    pub low: String,
    /// The filled dot: the input at its high value.
    pub high: String,
    /// The thin line: every input at its own value.
    pub centre: String,
}

/// One input.
#[derive(Clone, Debug, PartialEq)]
pub struct Swing {
    /// The input's name, with the values it swings between.
    pub label: String,
    /// The difference at the input's low value.
    pub low: f64,
    /// The difference at the input's high value.
    pub high: f64,
    /// Whether the ranking turns within the swing.
    pub crosses: bool,
}

/// Radius of a dot.
const DOT: f64 = 4.5;
/// Thickness of a bar.
const THICK: f64 = 5.0;
/// Width of the mark and the space after it.
const MARK: f64 = 14.0;

/// The word beside a row that turns the ranking, and the px it takes with its mark.
fn turns(panel: &SwingsPanel, width_css: u32) -> (String, f64) {
    if !panel.rows.iter().any(|s| s.crosses) {
        return (String::new(), 0.0);
    }
    let text = fitted(&panel.turns_label, LABEL, false, 0.3 * f64::from(width_css));
    let taken = MARK + width(&text, LABEL, false);
    (text, taken)
}

fn rows(panel: &SwingsPanel, width_css: u32) -> Rows {
    let aside = turns(panel, width_css).1 + 10.0;
    let form = Form { wide: 36.0, bar: 26.0, aside };
    Rows::new(&panel.title, panel.rows.iter().map(|s| s.label.as_str()), width_css, form)
}

/// The key: open dot, filled dot, thin line.
fn key(panel: &SwingsPanel, rows: &Rows) -> Key {
    let words = [&panel.key.low, &panel.key.high, &panel.key.centre];
    Key::new(words.map(String::as_str), 2.0 * DOT, (MARGIN, rows.right))
}

/// The height of the picture at a width, in CSS px.
pub fn swings_height(panel: &SwingsPanel, width: u32) -> u32 {
    let rows = rows(panel, width);
    (rows.bottom + FOOT + LINE + key(panel, &rows).height() + 4.0).ceil() as u32
}

/// Where the rows are: for what lies over the picture.
pub fn swings_rows(panel: &SwingsPanel, width: u32) -> Vec<Place> {
    rows(panel, width).places
}

impl SwingsPanel {
    /// The table behind the picture.
    pub fn behind(&self) -> Behind {
        let row = |s: &Swing| BehindRow::numbers(&s.label, [Some(s.low), Some(s.high)]);
        Behind {
            title: self.title.clone(),
            unit: self.unit.clone(),
            columns: vec![Column::AtLow, Column::AtHigh],
            rows: self.rows.iter().map(row).collect(),
        }
    }

    /// Smallest and largest number shown, once all can be placed.
    fn extent(&self) -> Result<(f64, f64), Refused> {
        placeable(&self.title, self.centre)?;
        let mut extent = (self.centre.min(0.0), self.centre.max(0.0));
        for s in &self.rows {
            for number in [s.low, s.high] {
                placeable(&s.label, number)?;
                extent = (extent.0.min(number), extent.1.max(number));
            }
        }
        Ok(extent)
    }
}

/// Draws the panel; the backend is as high as [`swings_height`] says, or higher.
pub fn draw_swings<DB: DrawingBackend>(backend: Fine<DB>, panel: &SwingsPanel, theme: Theme) -> Result<(), Refused> {
    let extent = panel.extent()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), swings_height(panel, wide))?;
    let rows = rows(panel, wide);
    let sheet = rows.sheet(backend, theme)?;

    let (turns, taken) = turns(panel, wide);
    let beside = if rows.narrow || taken == 0.0 { 0.0 } else { taken + 10.0 };
    let left = rows.left + DOT;
    let axis = Axis::new(extent, left, rows.right - beside - DOT - left, rows.right);
    for (i, s) in panel.rows.iter().enumerate() {
        let (y, low, high) = (rows.bar_middle(i), axis.x(s.low), axis.x(s.high));
        let at = Place { x: low.min(high), y: y - THICK / 2.0, width: (high - low).abs(), height: THICK };
        sheet.filled(at, theme.rule())?;
        if s.crosses {
            let y = if rows.narrow { rows.label_middle(i) } else { y };
            diamond(&sheet, (rows.right - taken + 4.5, y), theme)?;
            sheet.text(&turns, (rows.right - taken + MARK, y), Side::Right, plain(theme))?;
        }
    }
    rows.upright(&sheet, axis.x(panel.centre), 1.0, theme.quiet())?;
    rows.upright(&sheet, axis.x(0.0), 2.0, theme.text())?;
    for (i, s) in panel.rows.iter().enumerate() {
        open_dot(&sheet, (axis.x(s.low), rows.bar_middle(i)), theme)?;
        sheet.disc((axis.x(s.high), rows.bar_middle(i)), DOT, theme.text())?;
    }
    axis.draw(&sheet, rows.bottom, (&panel.unit, rows.right), theme)?;
    let y = rows.bottom + FOOT;
    sides(&sheet, panel, (axis.x(0.0), rows.right), y + 7.0, theme)?;
    key(panel, &rows).draw(&sheet, y + LINE, theme, |i, x, y| match i {
        0 => open_dot(&sheet, (x + DOT, y), theme),
        1 => sheet.disc((x + DOT, y), DOT, theme.text()),
        _ => sheet.upright(x + DOT, y - 6.0, y + 6.0, 1.0, theme.quiet()),
    })?;
    sheet.done()
}

fn open_dot<DB: DrawingBackend>(sheet: &Sheet<DB>, at: (f64, f64), theme: Theme) -> Result<(), Refused> {
    sheet.disc(at, DOT, theme.text())?;
    sheet.disc(at, DOT - 1.5, theme.ground())
}

fn diamond<DB: DrawingBackend>(sheet: &Sheet<DB>, (x, y): (f64, f64), theme: Theme) -> Result<(), Refused> {
    sheet.polygon(&[(x - 4.5, y), (x, y - 4.5), (x + 4.5, y), (x, y + 4.5)], theme.text())
}

/// What each side of zero means, each on its side as far as there is room.
fn sides<DB: DrawingBackend>(
    sheet: &Sheet<DB>,
    panel: &SwingsPanel,
    (zero, right): (f64, f64),
    y: f64,
    theme: Theme,
) -> Result<(), Refused> {
    const APART: f64 = 16.0;
    let half = (right - MARGIN - APART) / 2.0;
    let less = fitted(&format!("\u{2190} {}", panel.less_label), SMALL, false, half);
    let more = fitted(&format!("{} \u{2192}", panel.more_label), SMALL, false, half);
    let (less_width, more_width) = (width(&less, SMALL, false), width(&more, SMALL, false));
    // The gap sits at zero, pushed inwards where a text would leave the sheet.
    let gap = zero.clamp(MARGIN + less_width + APART / 2.0, right - more_width - APART / 2.0);
    sheet.text(&less, (gap - APART / 2.0, y), Side::Left, small(theme))?;
    sheet.text(&more, (gap + APART / 2.0, y), Side::Right, small(theme))
}

/// The panel as SVG text.
pub fn swings_svg(panel: &SwingsPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_swings(backend, panel, theme))
}
