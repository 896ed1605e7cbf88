//! How sure a difference is: as many dots as values, each standing for the same share of the
//! draws (fifty dots, two draws of a hundred each), stacked over an axis with a strong zero line.
//! Left of zero one alternative loads less, right of it the other; a dot within the band called
//! about the same is hollow and counts for neither. The values are the difference's quantiles at
//! equal steps, so that the dots have its shape and no draw decides by luck.
use crate::axis::{Axis, FOOT, LINE};
use crate::behind::{Behind, BehindRow, Column};
use crate::dot;
use crate::fine::Fine;
use crate::key::Key;
use crate::look::{Look, Theme};
use crate::refused::{Refused, placeable, roomy};
use crate::rising::rising;
use crate::rows::Rows;
use crate::sheet::{LABEL, MARGIN, Place, SMALL, Sheet, Side, Type, small};
use crate::svg::svg;
use crate::text_width::{fitted, lines};
use plotters_backend::DrawingBackend;

/// What the picture shows: one difference.
#[derive(Clone, Debug, PartialEq)]
pub struct DotsPanel {
    /// The indicator and the two alternatives.
    pub title: String,
    /// The unit of the difference.
    pub unit: String,
    /// One value a dot, in any order.
    pub values: Vec<f64>,
    /// What it means to be left of zero.
    pub less: DotsSide,
    /// What it means to be right of zero.
    pub more: DotsSide,
    /// The word between a count and all: `46 of 50`.
    pub of_label: String,
    /// Differences too small to matter, where such a band was chosen.
    pub same: Option<DotsBand>,
}

/// One side of zero.
#[derive(Clone, Debug, PartialEq)]
pub struct DotsSide {
    /// What it means to be there.
    pub label: String,
    /// Colour and mark of the alternative that loads less there.
    pub look: Look,
}

/// Differences called about the same.
#[derive(Clone, Debug, PartialEq)]
pub struct DotsBand {
    /// Its ends, the first at or below zero, the second at or above.
    pub ends: (f64, f64),
    /// What it means to be within.
    pub label: String,
}

/// How many dots a side has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct DotsCount {
    /// Left of zero.
    pub less: usize,
    /// Within the band, or exactly zero.
    pub same: usize,
    /// Right of zero.
    pub more: usize,
}

/// More dots than this cannot be counted by eye.
const MOST: usize = 200;
/// Px from dot to dot, the widest that keeps the stack low; the last one always serves.
const PITCHES: [f64; 4] = [13.0, 11.0, 9.0, 7.0];
/// A stack lower than this is low.
const LOW: usize = 16;
/// Px left free beside the axis, for the dots at its ends.
const INSET: f64 = 20.0;
/// Radius of a dot in the words above.
const SAMPLE: f64 = 5.5;
/// Lines of words above a side, at most.
const MOST_LINES: usize = 4;

impl DotsPanel {
    fn band(&self) -> (f64, f64) {
        self.same.as_ref().map_or((0.0, 0.0), |band| band.ends)
    }

    /// How many dots lie on either side.
    pub fn count(&self) -> DotsCount {
        let (low, high) = self.band();
        let less = self.values.iter().filter(|v| **v < low).count();
        let more = self.values.iter().filter(|v| **v > high).count();
        DotsCount { less, same: self.values.len() - less - more, more }
    }

    /// The table behind the picture: the values, rising.
    pub fn behind(&self) -> Behind {
        let row = |(i, value): (usize, &f64)| BehindRow::numbers(&(i + 1).to_string(), [Some(*value)]);
        Behind {
            title: self.title.clone(),
            unit: self.unit.clone(),
            columns: vec![Column::Value],
            rows: self.rising().iter().enumerate().map(row).collect(),
        }
    }

    fn rising(&self) -> Vec<f64> {
        rising(&self.values).into_iter().map(|place| self.values[place]).collect()
    }

    fn checked(&self) -> Result<(), Refused> {
        let (low, high) = self.band();
        for number in self.values.iter().chain([&low, &high]) {
            placeable(&self.title, *number)?;
        }
        if low > 0.0 || high < 0.0 {
            return Err(Refused::Turned { label: self.title.clone(), low, high });
        }
        match self.values.len() {
            0 => Err(Refused::Empty(self.title.clone())),
            came if came > MOST => Err(Refused::Count { label: self.title.clone(), came, wanted: MOST }),
            _ => Ok(()),
        }
    }
}

/// The picture laid out.
struct Laid {
    title: Rows,
    /// Words above the dots, left and right of zero.
    words: [Vec<String>; 2],
    axis: Axis,
    pitch: f64,
    /// Each dot: the middle of its column, how many lie under it, its value.
    dots: Vec<(f64, usize, f64)>,
    /// Where the dots begin, and where they end at the axis.
    top: f64,
    bottom: f64,
    key: Key,
}

impl Laid {
    fn new(panel: &DotsPanel, width: u32) -> Self {
        let title = Rows::title(&panel.title, width);
        let (left, right) = (MARGIN + INSET, title.right - INSET);
        let half = (title.right - MARGIN) / 2.0 - 12.0;
        let arrows = [format!("\u{2190} {}", panel.less.label), format!("{} \u{2192}", panel.more.label)];
        let words = arrows.map(|text| lines(&text, SMALL, false, half, MOST_LINES));
        let values = panel.rising();
        let band = panel.band();
        let ends = (values.first().map_or(0.0, |v| v.min(band.0)), values.last().map_or(0.0, |v| v.max(band.1)));
        let axis = Axis::new(ends, left, right - left, title.right);
        let stacked = |pitch| stacks(&values, &axis, pitch);
        let highest = |dots: &Vec<(f64, usize, f64)>| dots.iter().map(|d| d.1 + 1).max().unwrap_or(0);
        let fits = PITCHES.iter().find(|pitch| highest(&stacked(**pitch)) <= LOW);
        let pitch = *fits.unwrap_or(&PITCHES[PITCHES.len() - 1]);
        let dots = stacked(pitch);
        let top = title.bottom + 18.0 + LINE * words.iter().map(Vec::len).max().unwrap_or(0) as f64 + 4.0;
        let bottom = top + (highest(&dots).max(4) as f64) * pitch + 6.0;
        let same = panel.same.iter().map(|band| band.label.as_str()).filter(|_| panel.count().same > 0);
        let key = Key::new(same, (2.0 * SAMPLE, 2.0 * SAMPLE), (MARGIN, title.right));
        Self { title, words, axis, pitch, dots, top, bottom, key }
    }
}

/// Dots in columns of `pitch` px. No column crosses zero; where values are exactly zero they have
/// a column of their own on it.
fn stacks(rising: &[f64], axis: &Axis, pitch: f64) -> Vec<(f64, usize, f64)> {
    let zero = axis.x(0.0);
    let first = if rising.contains(&0.0) { 1.0 } else { 0.5 };
    let mut dots: Vec<(f64, usize, f64)> = Vec::new();
    for &value in rising {
        let steps = (((axis.x(value) - zero) / pitch).abs().floor() + first) * pitch;
        let x = match value {
            v if v < 0.0 => zero - steps,
            v if v > 0.0 => zero + steps,
            _ => zero,
        };
        let under = dots.iter().filter(|dot| dot.0 == x).count();
        dots.push((x, under, value));
    }
    dots
}

/// The height of the picture at a width, in CSS px.
pub fn dots_height(panel: &DotsPanel, width: u32) -> u32 {
    let laid = Laid::new(panel, width);
    (laid.bottom + FOOT + laid.key.height() + 2.0).ceil() as u32
}

/// Where the dots left and right of zero are: for what lies over the picture.
pub fn dots_places(panel: &DotsPanel, width: u32) -> Vec<Place> {
    let laid = Laid::new(panel, width);
    let (zero, y) = (laid.axis.x(0.0), laid.title.bottom);
    let side = |x: f64, end: f64| Place { x, y, width: end - x, height: laid.bottom - y };
    vec![side(0.0, zero), side(zero, f64::from(width))]
}

/// Draws the panel; the backend is as high as [`dots_height`] says, or higher.
pub fn draw_dots<DB: DrawingBackend>(backend: Fine<DB>, panel: &DotsPanel, theme: Theme) -> Result<(), Refused> {
    panel.checked()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), dots_height(panel, wide))?;
    let laid = Laid::new(panel, wide);
    let sheet = laid.title.sheet(backend, theme)?;
    let (axis, band) = (&laid.axis, panel.band());
    sides(&sheet, panel, &laid, theme)?;

    let radius = laid.pitch / 2.0 - 0.75;
    sheet.upright(axis.x(0.0), laid.top - 2.0, laid.bottom, 2.0, theme.text())?;
    for (x, under, value) in &laid.dots {
        let at = (*x, laid.bottom - 3.0 - laid.pitch * (*under as f64 + 0.5));
        match value {
            v if *v < band.0 => dot::draw(&sheet, at, radius, panel.less.look, theme)?,
            v if *v > band.1 => dot::draw(&sheet, at, radius, panel.more.look, theme)?,
            _ => dot::hollow(&sheet, at, radius, theme)?,
        }
    }
    axis.draw(&sheet, laid.bottom, (&panel.unit, laid.title.right), theme)?;
    sheet.level(laid.bottom, axis.x(band.0), axis.x(band.1), 3.0, theme.text())?;
    laid.key.draw(&sheet, laid.bottom + FOOT, theme, |_, x, y| dot::hollow(&sheet, (x + SAMPLE, y), SAMPLE, theme))?;
    sheet.done()
}

/// Count and words of each side, at its edge.
fn sides<DB: DrawingBackend>(sheet: &Sheet<DB>, panel: &DotsPanel, laid: &Laid, theme: Theme) -> Result<(), Refused> {
    let count = panel.count();
    let ends = [(count.less, &panel.less, MARGIN, 1.0, Side::Right), (count.more, &panel.more, laid.title.right, -1.0, Side::Left)];
    for ((n, side, edge, inwards, stands), words) in ends.into_iter().zip(&laid.words) {
        let y = laid.title.bottom + 9.0;
        dot::draw(sheet, (edge + inwards * SAMPLE, y), SAMPLE, side.look, theme)?;
        let text = format!("{n} {} {}", panel.of_label, panel.values.len());
        let beside = edge + inwards * (2.0 * SAMPLE + 6.0);
        let set = Type { size: LABEL, bold: true, colour: theme.text() };
        sheet.text(&fitted(&text, LABEL, true, laid.title.right / 2.0 - 30.0), (beside, y), stands, set)?;
        for (i, line) in words.iter().enumerate() {
            sheet.text(line, (edge, y + 18.0 + LINE * i as f64), stands, small(theme))?;
        }
    }
    Ok(())
}

/// The panel as SVG text.
pub fn dots_svg(panel: &DotsPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_dots(backend, panel, theme))
}
