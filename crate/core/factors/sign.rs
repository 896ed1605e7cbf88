//! Standard sign codes: shape and colours as measured on the published artwork.

use super::Grade;

/// The shapes, by the words of an order.
pub(crate) const SHAPES: [&str; 8] = ["rectangle", "square", "diamond", "octagon", "triangle", "disc", "pentagon", "shield"];

/// The colours, by the words of an order.
pub(crate) const COLOURS: [&str; 13] = [
    "white",
    "yellow",
    "orange",
    "fluorescent yellow",
    "fluorescent yellow-green",
    "fluorescent orange",
    "fluorescent pink",
    "red",
    "green",
    "blue",
    "brown",
    "purple",
    "black",
];

/// How many legends a code stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Legend {
    /// One: the code fixes it.
    One,
    /// A few, such as the speeds of a limit.
    Few,
    /// Every sign its own, such as street names.
    Each,
}

impl Legend {
    pub(super) fn read(text: &str) -> Option<Self> {
        Some(match text {
            "one" => Self::One,
            "few" => Self::Few,
            "each" => Self::Each,
            _ => return None,
        })
    }
}

/// One row of `factors/sign-codes.csv`.
#[derive(Debug, Clone, PartialEq)]
pub struct SignRow {
    /// The code, such as `R1-1`.
    pub code: String,
    /// Its everyday name.
    pub item: String,
    /// The shape, in the words of an order.
    pub shape: String,
    /// Height over width.
    pub height_over_width: f64,
    /// The corner radius over the width.
    pub corner_over_width: f64,
    /// Colour and share of the face, in per cent.
    pub colours: Vec<(String, f64)>,
    /// Metres cut round legend and border, and the width in metres they were measured at.
    pub cut: Option<(f64, f64)>,
    /// Characters, where the design has them.
    pub characters: Option<u32>,
    /// How many legends it stands for.
    pub legend: Legend,
    /// The colour at the edge.
    pub rim: String,
    /// The key of the source.
    pub source: String,
    /// The place in it.
    pub place: String,
    /// The grade.
    pub grade: Grade,
}
