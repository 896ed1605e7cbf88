//! Shapes of sign faces: area of the face, of the piece cut for it, and of its blank.
//!
//! - octagon 2(sqrt 2 - 1) W^2 - 8(sqrt 2 - 1 - pi/8) r^2; disc pi/4 W^2; triangle sqrt 3/4 a^2 - (3 sqrt 3 - pi) r^2;
//! - rectangle W H - (4 - pi) r^2; a diamond is a square turned, so cut as a square;
//! - pentagon (school, shoulder at half height) 0.75 W H; shield 0.8 of its square.

use std::f64::consts::PI;

use crate::factors::SHAPES;
use crate::quantity::{Area, FaceArea, Span, of};

/// A shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Shape {
    Rectangle,
    Square,
    Diamond,
    Octagon,
    Triangle,
    Disc,
    Pentagon,
    Shield,
}

impl Shape {
    /// Every shape with its name.
    pub const ALL: [(&'static str, Self); 8] = [
        (SHAPES[0], Self::Rectangle),
        (SHAPES[1], Self::Square),
        (SHAPES[2], Self::Diamond),
        (SHAPES[3], Self::Octagon),
        (SHAPES[4], Self::Triangle),
        (SHAPES[5], Self::Disc),
        (SHAPES[6], Self::Pentagon),
        (SHAPES[7], Self::Shield),
    ];

    /// Its name.
    pub fn name(self) -> &'static str {
        Self::ALL.iter().find(|(_, shape)| *shape == self).map_or("", |(name, _)| name)
    }

    /// Whether one size says both width and height.
    pub fn is_as_high_as_wide(self) -> bool {
        !matches!(self, Self::Rectangle | Self::Pentagon)
    }

    /// The largest corner radius that fits; none where corners are not rounded.
    pub fn largest_corner(self, width: Span, height: Span) -> Option<Span> {
        match self {
            Self::Rectangle | Self::Square | Self::Diamond | Self::Octagon => Some(Span::nanometres(width.count().min(height.count()) / 2)),
            // The circle that fits into the triangle: a/(2 sqrt 3).
            Self::Triangle => Some(Span::from_metres(width.metres() / (2.0 * 3.0_f64.sqrt()))),
            Self::Disc | Self::Pentagon | Self::Shield => None,
        }
    }

    /// The height of the piece that is cut: for a triangle, of its side's height.
    pub fn piece_height(self, width: Span, height: Span) -> Span {
        match self {
            Self::Triangle => Span::from_metres(width.metres() * 3.0_f64.sqrt() / 2.0),
            _ => height,
        }
    }

    /// The area of the face.
    ///
    /// ```
    /// use faceload_core::{order::Shape, quantity::{Kind, Span}};
    /// let inches = |n| Span::read(&format!("{n} in")).unwrap();
    /// let octagon = Shape::Octagon.face(inches(30), inches(30), Span::ZERO).base();
    /// assert!((octagon / 0.0254 / 0.0254 - 745.58).abs() < 0.01); // in2
    /// ```
    pub fn face(self, width: Span, height: Span, corner: Span) -> FaceArea {
        let (w, h, r) = (width.metres(), height.metres(), corner.metres());
        of(match self {
            Self::Rectangle | Self::Square | Self::Diamond => w * h - (4.0 - PI) * r * r,
            // Each of eight corners of 135 degrees loses (tan 22.5 - pi/8) r^2.
            Self::Octagon => 2.0 * (2.0_f64.sqrt() - 1.0) * w * w - 8.0 * (2.0_f64.sqrt() - 1.0 - PI / 8.0) * r * r,
            Self::Disc => PI / 4.0 * w * w,
            Self::Triangle => 3.0_f64.sqrt() / 4.0 * w * w - (3.0 * 3.0_f64.sqrt() - PI) * r * r,
            Self::Pentagon => 0.75 * w * h,
            Self::Shield => 0.8 * w * h,
        })
    }

    /// The area of blank bought for it: the bounding rectangle; a triangle's nests, face/0.9.
    pub fn blank(self, width: Span, height: Span) -> Area {
        let (w, h) = (width.metres(), height.metres());
        of(match self {
            Self::Triangle => 3.0_f64.sqrt() / 4.0 * w * w / 0.9,
            _ => w * h,
        })
    }
}
