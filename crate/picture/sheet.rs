//! The sheet a picture is drawn on: lengths in CSS px, turned into units here and only here.
use crate::fine::{Fine, UNITS_PER_PX};
use crate::look::{Colour, Theme};
use crate::refused::Refused;
use crate::text_width::printable;
use plotters::coord::Shift;
use plotters::prelude::{
    Circle, DrawingArea, DrawingBackend, FontFamily, FontStyle, IntoDrawingArea, PathElement, Polygon, RGBColor, Rectangle, ShapeStyle,
};
use plotters::style::text_anchor::{HPos, Pos, VPos};
use plotters::style::{Color, FontDesc, TextStyle};

/// Free px at each edge.
pub(crate) const MARGIN: f64 = 4.0;
/// Letter size of the title.
pub(crate) const TITLE: f64 = 14.0;
/// Letter size of labels and values.
pub(crate) const LABEL: f64 = 13.0;
/// Letter size of tick numbers, unit and key.
pub(crate) const SMALL: f64 = 12.0;

/// Where something is, in CSS px from the upper left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

/// Side of its point on which a text stands.
#[derive(Clone, Copy)]
pub(crate) enum Side {
    /// The text ends at the point.
    Left,
    /// The text is centred on it.
    Middle,
    /// The text starts at it.
    Right,
}

/// How a text is set.
#[derive(Clone, Copy)]
pub(crate) struct Type {
    pub size: f64,
    pub bold: bool,
    pub colour: Colour,
}

/// Label and value text.
pub(crate) fn plain(theme: Theme) -> Type {
    Type { size: LABEL, bold: false, colour: theme.text() }
}

/// Small quiet text.
pub(crate) fn small(theme: Theme) -> Type {
    Type { size: SMALL, bold: false, colour: theme.quiet() }
}

/// The sheet.
pub(crate) struct Sheet<DB: DrawingBackend> {
    area: DrawingArea<Fine<DB>, Shift>,
}

/// A length in CSS px as units.
fn unit(px: f64) -> i32 {
    (px * f64::from(UNITS_PER_PX)).round() as i32
}

fn point((x, y): (f64, f64)) -> (i32, i32) {
    (unit(x), unit(y))
}

fn style(colour: Colour, stroke: f64, filled: bool) -> ShapeStyle {
    let color = RGBColor(colour.0, colour.1, colour.2).to_rgba();
    ShapeStyle { color, filled, stroke_width: unit(stroke).unsigned_abs() }
}

fn words(e: impl std::fmt::Display) -> Refused {
    Refused::Backend(e.to_string())
}

impl<DB: DrawingBackend> Sheet<DB> {
    /// A sheet covered with the theme's ground.
    pub fn new(backend: Fine<DB>, theme: Theme) -> Result<Self, Refused> {
        let area = backend.into_drawing_area();
        let Colour(r, g, b) = theme.ground();
        area.fill(&RGBColor(r, g, b)).map_err(words)?;
        Ok(Self { area })
    }

    /// Ends the drawing.
    pub fn done(self) -> Result<(), Refused> {
        self.area.present().map_err(words)
    }

    /// A filled box; nothing where it has no extent.
    pub fn filled(&self, at: Place, colour: Colour) -> Result<(), Refused> {
        let (a, b) = (point((at.x, at.y)), point((at.x + at.width, at.y + at.height)));
        if a.0 >= b.0 || a.1 >= b.1 {
            return Ok(());
        }
        self.area.draw(&Rectangle::new([a, b], style(colour, 1.0, true))).map_err(words)
    }

    /// An upright rule on whole px, so that it is sharp.
    pub fn upright(&self, x: f64, top: f64, bottom: f64, stroke: f64, colour: Colour) -> Result<(), Refused> {
        let x = (x - stroke / 2.0).round();
        self.filled(Place { x, y: top, width: stroke, height: bottom - top }, colour)
    }

    /// A level rule on whole px.
    pub fn level(&self, y: f64, left: f64, right: f64, stroke: f64, colour: Colour) -> Result<(), Refused> {
        let y = (y - stroke / 2.0).round();
        self.filled(Place { x: left, y, width: right - left, height: stroke }, colour)
    }

    /// A line through points.
    pub fn line(&self, points: &[(f64, f64)], stroke: f64, colour: Colour) -> Result<(), Refused> {
        let path: Vec<_> = points.iter().map(|p| point(*p)).collect();
        self.area.draw(&PathElement::new(path, style(colour, stroke, false))).map_err(words)
    }

    /// A filled shape.
    pub fn polygon(&self, points: &[(f64, f64)], colour: Colour) -> Result<(), Refused> {
        let path: Vec<_> = points.iter().map(|p| point(*p)).collect();
        self.area.draw(&Polygon::new(path, style(colour, 1.0, true))).map_err(words)
    }

    /// A filled disc.
    pub fn disc(&self, centre: (f64, f64), radius: f64, colour: Colour) -> Result<(), Refused> {
        let size = unit(radius).unsigned_abs();
        self.area.draw(&Circle::new(point(centre), size, style(colour, 1.0, true))).map_err(words)
    }

    /// A text, vertically centred on its point.
    pub fn text(&self, text: &str, at: (f64, f64), side: Side, set: Type) -> Result<(), Refused> {
        let weight = if set.bold { FontStyle::Bold } else { FontStyle::Normal };
        let font = FontDesc::new(FontFamily::SansSerif, set.size * f64::from(UNITS_PER_PX), weight);
        let side = match side {
            Side::Left => HPos::Right,
            Side::Middle => HPos::Center,
            Side::Right => HPos::Left,
        };
        let Colour(r, g, b) = set.colour;
        let colour = RGBColor(r, g, b);
        let style = TextStyle::from(font).color(&colour).pos(Pos::new(side, VPos::Center));
        self.area.draw_text(&printable(text), &style, point(at)).map_err(words)
    }
}
