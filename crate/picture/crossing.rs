//! Where it flips: the loads of two or more alternatives against one input or against the
//! quantity, a line each in its route's colour, told apart by its dashes and named at its end.
//! Where two lines cross, an upright line with the value written over it, the band of ninety in a
//! hundred draws shaded behind the lines; where none cross, a sentence says so. The axis of the
//! input is linear or logarithmic as the caller has it: a place along it is a position from 0 to 1.
use crate::axis::{LINE, TICK, apart};
use crate::behind::{Behind, BehindRow, Column};
use crate::dash;
use crate::end_labels::EndLabels;
use crate::fine::Fine;
use crate::flags::{self, Flags};
use crate::look::{Colour, Look, Theme};
use crate::refused::{Refused, on_axis, placeable, roomy};
use crate::rows::Rows;
use crate::sheet::{MARGIN, Place, SMALL, Sheet, Side, Type, small};
use crate::svg::svg;
use crate::text_width::{fitted, lines, width};
use crate::ticks::{Scale, scale};
use plotters_backend::DrawingBackend;

/// What the picture shows: one indicator against one input.
#[derive(Clone, Debug, PartialEq)]
pub struct CrossingPanel {
    /// The indicator and the input.
    pub title: String,
    /// The unit of the loads.
    pub unit: String,
    /// The input.
    pub input: InputAxis,
    /// The alternatives.
    pub curves: Vec<Curve>,
    /// Where the order of two alternatives turns.
    pub crossings: Vec<Crossing>,
    /// What is said where it turns nowhere.
    pub none_label: String,
    /// The order's own value, where it lies on the axis.
    pub own: Option<OwnMark>,
}

/// The axis of the input.
#[derive(Clone, Debug, PartialEq)]
pub struct InputAxis {
    /// The input and its unit.
    pub title: String,
    /// Its ticks; one without text is a tick only.
    pub ticks: Vec<InputTick>,
}

/// A tick of the input.
#[derive(Clone, Debug, PartialEq)]
pub struct InputTick {
    /// Its number as printed.
    pub text: String,
    /// Its position, from 0 to 1.
    pub at: f64,
}

/// A value of the input and its position, from 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Along {
    /// The value.
    pub value: f64,
    /// Where it stands.
    pub at: f64,
}

/// One alternative.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Its name.
    pub label: String,
    /// Its colour; the dashes follow from its place in the panel.
    pub look: Look,
    /// Its loads, rising along the axis; two at one place are a step.
    pub points: Vec<CrossingPoint>,
}

/// A load at a value of the input.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossingPoint {
    /// Where.
    pub input: Along,
    /// How much.
    pub load: f64,
}

/// Where the order of two alternatives turns.
#[derive(Clone, Debug, PartialEq)]
pub struct Crossing {
    /// The value and its band as printed.
    pub text: String,
    /// Where the lines cross.
    pub input: Along,
    /// 5 % and 95 % points of where they cross, cut at the ends of the axis.
    pub band: Option<(Along, Along)>,
}

/// The order's own value.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnMark {
    /// Its words.
    pub label: String,
    /// Where it stands.
    pub input: Along,
}

/// Px drawn and left open, by an alternative's place in the panel.
const DASHES: [&[f64]; 6] = [&[], &[9.0, 4.0], &[2.5, 3.0], &[12.0, 3.0, 2.5, 3.0], &[5.0, 2.5], &[12.0, 3.0, 2.5, 3.0, 2.5, 3.0]];
/// Stroke of a line, and of the ground around it.
const STROKE: f64 = 2.25;
const EDGE: f64 = 1.5;
/// Height of the ground the lines run over, wide and narrow.
const HEIGHTS: (f64, f64) = (260.0, 210.0);

/// From the axis down to the middle of its numbers.
const NUMBERS: f64 = TICK + 12.0;

impl CrossingPanel {
    /// The table behind the picture: the lines point by point, then the crossings.
    pub fn behind(&self) -> Behind {
        let points = self.curves.iter().flat_map(|curve| {
            let row = |p: &CrossingPoint| BehindRow::numbers(&curve.label, [Some(p.input.value), Some(p.load), None, None]);
            curve.points.iter().map(row)
        });
        let crossings = self.crossings.iter().map(|c| {
            let ends = [c.band.map(|band| band.0.value), c.band.map(|band| band.1.value)];
            BehindRow::numbers(&c.text, [Some(c.input.value), None, ends[0], ends[1]])
        });
        Behind {
            title: self.title.clone(),
            unit: self.unit.clone(),
            columns: vec![Column::Input, Column::Value, Column::Percentile(5), Column::Percentile(95)],
            rows: points.chain(crossings).collect(),
        }
    }

    /// The largest load, once everything can be placed.
    fn checked(&self) -> Result<f64, Refused> {
        let mut most = 0.0_f64;
        let along = |label: &str, along: Along| placeable(label, along.value).and_then(|()| on_axis(label, along.at));
        for curve in &self.curves {
            if curve.points.len() < 2 {
                return Err(Refused::Empty(curve.label.clone()));
            }
            for point in &curve.points {
                along(&curve.label, point.input)?;
                placeable(&curve.label, point.load)?;
                if point.load < 0.0 {
                    return Err(Refused::Negative { label: curve.label.clone(), value: point.load });
                }
                most = most.max(point.load);
            }
            rising(&curve.label, curve.points.iter().map(|p| p.input.at))?;
        }
        for crossing in &self.crossings {
            along(&crossing.text, crossing.input)?;
            if let Some((low, high)) = crossing.band {
                along(&crossing.text, low)?;
                along(&crossing.text, high)?;
                rising(&crossing.text, [low.at, high.at].into_iter())?;
            }
        }
        self.input.ticks.iter().try_for_each(|tick| on_axis(&tick.text, tick.at))?;
        if let Some(own) = &self.own {
            along(&own.label, own.input)?;
        }
        if self.curves.is_empty() { Err(Refused::Empty(self.title.clone())) } else { Ok(most) }
    }
}

/// Refuses positions that fall.
fn rising(label: &str, positions: impl Iterator<Item = f64>) -> Result<(), Refused> {
    let mut last = 0.0;
    for at in positions {
        if at < last {
            return Err(Refused::Turned { label: label.to_owned(), low: last, high: at });
        }
        last = at;
    }
    Ok(())
}

/// The picture laid out.
struct Laid {
    title: Rows,
    scale: Scale,
    /// The ground the lines run over.
    ground: Place,
    /// What stands over it: the crossings' words, or the sentence that there is none.
    flags: Flags,
    ends: EndLabels,
    /// The words under the axis.
    input: Vec<String>,
}

impl Laid {
    fn new(panel: &CrossingPanel, sheet: u32) -> Self {
        let title = Rows::title(&panel.title, sheet);
        let most = panel.curves.iter().flat_map(|c| &c.points).map(|p| p.load).fold(0.0, f64::max);
        let scale = scale(0.0, most, if title.narrow { 4 } else { 5 });
        let numbers = scale.ticks.iter().map(|t| width(&t.text, SMALL, false)).fold(0.0, f64::max);
        let left = (MARGIN + numbers + 10.0).ceil();
        let share = if title.narrow { 0.34 } else { 0.28 };
        let mut ends = EndLabels::new(panel.curves.iter().map(|c| c.label.as_str()), (share * title.right).floor());
        let right = (title.right - ends.width()).floor();
        let x = |at: f64| left + (right - left) * at;
        let flags = match panel.crossings[..] {
            [] => Flags::sentence(&panel.none_label, (MARGIN, title.right)),
            _ => Flags::new(panel.crossings.iter().map(|c| (x(c.input.at), c.text.as_str())), (MARGIN, title.right)),
        };
        let height = if title.narrow { HEIGHTS.1 } else { HEIGHTS.0 };
        // Title, unit, flags, ground.
        let y = (title.bottom + LINE + flags.height() + flags::OVER + 2.0).ceil();
        let ground = Place { x: left, y, width: right - left, height: ends.height().max(height).ceil() };
        let height_of = |load: f64| y + ground.height * (1.0 - scale.share(load));
        ends.stand(panel.curves.iter().map(|c| c.points.last().map_or(y, |p| height_of(p.load))), (y, y + ground.height));
        let input = lines(&panel.input.title, SMALL, false, title.right - left, 3);
        Self { title, scale, ground, flags, ends, input }
    }

    fn x(&self, at: f64) -> f64 {
        self.ground.x + self.ground.width * at
    }

    fn y(&self, load: f64) -> f64 {
        self.bottom() - self.ground.height * self.scale.share(load)
    }

    fn bottom(&self) -> f64 {
        self.ground.y + self.ground.height
    }
}

/// The height of the picture at a width, in CSS px.
pub fn crossing_height(panel: &CrossingPanel, width: u32) -> u32 {
    let laid = Laid::new(panel, width);
    let own = if panel.own.is_some() { 1 } else { 0 };
    (laid.bottom() + NUMBERS + LINE * (own + laid.input.len()) as f64 + 12.0).ceil() as u32
}

/// Where the names of the lines are, then the crossings over the full height: for what lies over
/// the picture.
pub fn crossing_places(panel: &CrossingPanel, width: u32) -> Vec<Place> {
    let laid = Laid::new(panel, width);
    let (top, bottom) = (laid.title.bottom, laid.bottom());
    let strip = |crossing: &Crossing| {
        let at = |along: Along| laid.x(along.at);
        let (from, to) = crossing.band.map_or((at(crossing.input), at(crossing.input)), |band| (at(band.0), at(band.1)));
        let (x, end) = (from.min(at(crossing.input) - 12.0).max(0.0), to.max(at(crossing.input) + 12.0));
        Place { x, y: top, width: end - x, height: bottom - top }
    };
    laid.ends.places(laid.ground.x + laid.ground.width).chain(panel.crossings.iter().map(strip)).collect()
}

/// Draws the panel; the backend is as high as [`crossing_height`] says, or higher.
pub fn draw_crossing<DB: DrawingBackend>(backend: Fine<DB>, panel: &CrossingPanel, theme: Theme) -> Result<(), Refused> {
    panel.checked()?;
    let (wide, _) = backend.size_css();
    roomy(backend.size_css(), crossing_height(panel, wide))?;
    let laid = Laid::new(panel, wide);
    let sheet = laid.title.sheet(backend, theme)?;
    let unit = fitted(&panel.unit, SMALL, false, laid.title.right - MARGIN);
    sheet.text(&unit, (MARGIN, laid.title.bottom + LINE / 2.0), Side::Right, small(theme))?;

    under(&sheet, panel, &laid, theme)?;
    let curves: Vec<Vec<(f64, f64)>> =
        panel.curves.iter().map(|c| c.points.iter().map(|p| (laid.x(p.input.at), laid.y(p.load))).collect()).collect();
    // All the ground first, so that no line hides another.
    for points in &curves {
        sheet.line(points, STROKE + 2.0 * EDGE, theme.ground())?;
    }
    for crossing in &panel.crossings {
        let top = laid.flags.pole(laid.x(crossing.input.at), laid.ground.y);
        sheet.upright(laid.x(crossing.input.at), top, laid.bottom(), 1.0, theme.text())?;
    }
    for (i, (curve, points)) in panel.curves.iter().zip(&curves).enumerate() {
        dash::draw(&sheet, points, DASHES[i % DASHES.len()], STROKE, curve.look.colour)?;
        if let Some(end) = points.last() {
            laid.ends.lead(&sheet, i, (*end, laid.ground.x + laid.ground.width), curve.look.colour)?;
        }
    }
    laid.flags.draw(&sheet, laid.ground.y, theme)?;
    laid.ends.draw(&sheet, laid.ground.x + laid.ground.width, theme)?;
    axis(&sheet, panel, &laid, theme)?;
    sheet.done()
}

/// What lies behind the lines: bands, faint rules, numbers of the loads.
fn under<DB: DrawingBackend>(sheet: &Sheet<DB>, panel: &CrossingPanel, laid: &Laid, theme: Theme) -> Result<(), Refused> {
    let ground = laid.ground;
    for (low, high) in panel.crossings.iter().filter_map(|c| c.band) {
        let (from, to) = (laid.x(low.at), laid.x(high.at));
        sheet.filled(Place { x: from, width: to - from, ..ground }, theme.shade())?;
        for edge in [from, to] {
            sheet.upright(edge, ground.y, laid.bottom(), 1.0, theme.rule())?;
        }
    }
    for tick in &laid.scale.ticks {
        let y = laid.y(tick.value);
        sheet.level(y, ground.x - TICK, ground.x, 1.0, theme.rule())?;
        sheet.text(&tick.text, (ground.x - TICK - 4.0, y), Side::Left, small(theme))?;
    }
    sheet.upright(ground.x, ground.y, laid.bottom(), 1.0, theme.rule())
}

/// The axis of the input, the order's own value and the input's words.
fn axis<DB: DrawingBackend>(sheet: &Sheet<DB>, panel: &CrossingPanel, laid: &Laid, theme: Theme) -> Result<(), Refused> {
    let (bottom, right) = (laid.bottom(), laid.title.right);
    sheet.level(bottom, laid.ground.x, laid.ground.x + laid.ground.width, 1.0, theme.text())?;
    for tick in &panel.input.ticks {
        let length = if tick.text.is_empty() { TICK / 2.0 } else { TICK };
        sheet.upright(laid.x(tick.at), bottom, bottom + length, 1.0, theme.rule())?;
    }
    let mut y = bottom + NUMBERS;
    let numbers = panel.input.ticks.iter().filter(|t| !t.text.is_empty()).map(|t| (laid.x(t.at), t.text.as_str()));
    for (x, text) in apart(numbers, right + MARGIN) {
        sheet.text(&text, (x, y), Side::Middle, small(theme))?;
    }
    if let Some(own) = &panel.own {
        y += LINE;
        let text = fitted(&own.label, SMALL, false, right - MARGIN - 14.0);
        let x = laid.x(own.input.at);
        pointer(sheet, (x, bottom + 1.0), theme.text())?;
        let start = (x - 4.5).min(right - 14.0 - width(&text, SMALL, false));
        pointer(sheet, (start + 4.5, y - 3.0), theme.text())?;
        sheet.text(&text, (start + 14.0, y), Side::Right, Type { colour: theme.text(), ..small(theme) })?;
    }
    for line in &laid.input {
        y += LINE;
        sheet.text(line, (laid.ground.x, y), Side::Right, small(theme))?;
    }
    Ok(())
}

/// A small triangle that points up at the axis.
fn pointer<DB: DrawingBackend>(sheet: &Sheet<DB>, (x, y): (f64, f64), colour: Colour) -> Result<(), Refused> {
    sheet.polygon(&[(x, y), (x + 4.0, y + 6.0), (x - 4.0, y + 6.0)], colour)
}

/// The panel as SVG text.
pub fn crossing_svg(panel: &CrossingPanel, size_css: (u32, u32), theme: Theme) -> Result<String, Refused> {
    svg(&panel.title, size_css, |backend| draw_crossing(backend, panel, theme))
}
