//! Where the loads come from: a row for each stage, in it a thin bar for each alternative, all on
//! one axis from zero in the indicator's unit. Alternatives stand in one order in every row, each
//! with its letter; the key over the rows says whose they are.
use crate::axis::{Axis, FOOT};
use crate::bar;
use crate::behind::{Behind, BehindRow, Column};
use crate::fine::Fine;
use crate::key::Key;
use crate::look::{Look, Theme};
use crate::refused::{Refused, counted, placeable, roomy};
use crate::rows::{Form, Rows};
use crate::sheet::{MARGIN, Place, SMALL, Side, small};
use crate::svg::svg;
use crate::text_width::{fitted, width};
use plotters_backend::DrawingBackend;

/// What the picture shows: one indicator by stage.
#[derive(Clone, Debug, PartialEq)]
pub struct StagesPanel {
    /// The indicator and what it is counted for.
    pub title: String,
    /// The unit of every value.
    pub unit: String,
    /// The alternatives, in one order.
    pub alternatives: Vec<StagesAlternative>,
    /// The stages, in the order of the work.
    pub stages: Vec<Stage>,
}

/// One alternative.
#[derive(Clone, Debug, PartialEq)]
pub struct StagesAlternative {
    /// The letter beside its bars; an empty one is left out.
    pub letter: String,
    /// Its name.
    pub label: String,
    /// Colour and mark.
    pub look: Look,
}

/// One stage.
#[derive(Clone, Debug, PartialEq)]
pub struct Stage {
    /// Its name.
    pub label: String,
    /// What each alternative loads there.
    pub loads: Vec<StageLoad>,
}

/// The load of one alternative at one stage.
#[derive(Clone, Debug, PartialEq)]
pub struct StageLoad {
    /// The load, never below zero.
    pub value: f64,
    /// The load as printed.
    pub text: String,
}

/// From bar to bar, and the thickness of a bar.
const PITCH: f64 = 15.0;
const THICK: f64 = 10.0;
/// The shortest bar of a load that is not zero.
const HAIR: f64 = 1.0;
/// Px between bar, number and letter.
const GAP: f64 = 5.0;
/// Width of a bar in the key.
const SAMPLE: f64 = 22.0;
/// Px between key and rows.
const UNDER: f64 = 8.0;

impl StagesPanel {
    /// The table behind the picture: a column for each alternative.
    pub fn behind(&self) -> Behind {
        let row = |stage: &Stage| BehindRow::numbers(&stage.label, stage.loads.iter().map(|load| Some(load.value)));
        Behind {
            title: self.title.clone(),
            unit: self.unit.clone(),
            columns: self.alternatives.iter().map(|a| Column::Alternative(a.label.clone())).collect(),
            rows: self.stages.iter().map(row).collect(),
        }
    }

    /// The largest load, once all can be placed.
    fn checked(&self) -> Result<f64, Refused> {
        let mut most = 0.0_f64;
        for stage in &self.stages {
            counted(&stage.label, stage.loads.len(), self.alternatives.len())?;
            for load in &stage.loads {
                placeable(&stage.label, load.value)?;
                if load.value < 0.0 {
                    return Err(Refused::Negative { label: stage.label.clone(), value: load.value });
                }
                most = most.max(load.value);
            }
        }
        if self.stages.is_empty() || self.alternatives.is_empty() { Err(Refused::Empty(self.title.clone())) } else { Ok(most) }
    }

    /// An alternative as the key names it.
    fn named(alternative: &StagesAlternative) -> String {
        format!("{} {}", alternative.letter, alternative.label).trim_start().to_owned()
    }
}

/// Key and rows.
fn laid(panel: &StagesPanel, width_css: u32) -> (Key, Rows) {
    let bars = PITCH * panel.alternatives.len() as f64;
    let names: Vec<String> = panel.alternatives.iter().map(StagesPanel::named).collect();
    let right = f64::from(width_css) - MARGIN;
    let key = Key::new(names.iter().map(String::as_str), (SAMPLE, THICK), (MARGIN, right));
    let form = Form { wide: bars + 12.0, bar: bars + 8.0, aside: 0.0 };
    let mut rows = Rows::new(&panel.title, panel.stages.iter().map(|s| s.label.as_str()), width_css, form);
    rows.lower(key.height() + UNDER);
    (key, rows)
}

/// The height of the picture at a width, in CSS px.
pub fn stages_height(panel: &StagesPanel, width: u32) -> u32 {
    (laid(panel, width).1.bottom + FOOT + 2.0).ceil() as u32
}

/// Where the bars are, stage by stage: for what lies over the picture.
pub fn stages_places(panel: &StagesPanel, width: u32) -> Vec<Place> {
    let rows = laid(panel, width).1;
    let bars = |(i, stage): (usize, &Stage)| {
        let first = rows.bars_top(i, PITCH * stage.loads.len() as f64);
        let left = if rows.narrow { 0.0 } else { rows.left };
        let at = move |j: usize| Place { x: left, y: first + PITCH * j as f64, width: f64::from(width) - left, height: PITCH };
        (0..stage.loads.len()).map(at).collect::<Vec<_>>()
    };
    panel.stages.iter().enumerate().flat_map(bars).collect()
}

/// Draws the panel; the backend is as high as [`stages_height`] says, or higher.
pub fn draw_stages<DB: DrawingBackend>(backend: Fine<DB>, panel: &StagesPanel, theme: Theme) -> Result<(), Refused> {
    let most = panel.checked()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), stages_height(panel, wide))?;
    let (key, rows) = laid(panel, wide);
    let sheet = rows.sheet(backend, theme)?;
    let top = rows.places.first().map_or(0.0, |row| row.y) - key.height() - UNDER;
    key.draw(&sheet, top, theme, |i, x, y| {
        bar::draw(&sheet, Place { x, y: y - THICK / 2.0, width: SAMPLE, height: THICK }, panel.alternatives[i].look)
    })?;

    let letters: Vec<String> = panel.alternatives.iter().map(|a| fitted(&a.letter, SMALL, false, 40.0)).collect();
    let letter = letters.iter().map(|l| width(l, SMALL, false)).fold(0.0, f64::max);
    let left = rows.left + if letter > 0.0 { letter + GAP } else { 0.0 };
    let numbers = panel.stages.iter().flat_map(|s| &s.loads).map(|load| width(&load.text, SMALL, false)).fold(0.0, f64::max);
    let axis = Axis::new((0.0, most), left, rows.right - left - GAP - numbers.min(0.2 * rows.right), rows.right);
    for (i, stage) in panel.stages.iter().enumerate() {
        let first = rows.bars_top(i, PITCH * stage.loads.len() as f64);
        for (j, load) in stage.loads.iter().enumerate() {
            let y = first + PITCH * (j as f64 + 0.5);
            if !letters[j].is_empty() {
                sheet.text(&letters[j], (left - GAP, y), Side::Left, small(theme))?;
            }
            let length = axis.x(load.value) - left;
            if load.value > 0.0 {
                let place = Place { x: left, y: y - THICK / 2.0, width: length.max(HAIR), height: THICK };
                bar::draw(&sheet, place, panel.alternatives[j].look)?;
            }
            let end = left + length + GAP;
            if end + width(&load.text, SMALL, false) <= rows.right {
                sheet.text(&load.text, (end, y), Side::Right, small(theme))?;
            }
        }
    }
    rows.upright(&sheet, left, 1.0, theme.text())?;
    axis.draw(&sheet, rows.bottom, (&panel.unit, rows.right), theme)?;
    sheet.done()
}

/// The panel as SVG text.
pub fn stages_svg(panel: &StagesPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_stages(backend, panel, theme))
}
