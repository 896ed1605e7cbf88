//! Why a picture is not drawn: facts, made into words here.
use std::fmt;

/// What stands against a drawing.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// A row's number is NaN, infinite or too far from zero to place on an axis.
    Number {
        /// The row's label, or the panel's title for a number of the panel.
        label: String,
        /// What came.
        value: f64,
    },
    /// A panel that needs rows has none; its title.
    Empty(String),
    /// A number that is never below zero is.
    Negative {
        /// The row's label.
        label: String,
        /// What came.
        value: f64,
    },
    /// Two ends that should rise do not.
    Turned {
        /// The row's label.
        label: String,
        /// What came first.
        low: f64,
        /// What came second.
        high: f64,
    },
    /// A position along an axis is not from 0 to 1.
    Position {
        /// The label of what should stand there.
        label: String,
        /// What came.
        value: f64,
    },
    /// A row holds too few or too many.
    Count {
        /// The row's label.
        label: String,
        /// How many came.
        came: usize,
        /// How many fit.
        wanted: usize,
    },
    /// The ground is narrower or wider than pictures are made for, in CSS px.
    Width(u32),
    /// The ground is lower than the picture needs, in CSS px.
    Height {
        /// What came.
        given: u32,
        /// What is needed.
        needed: u32,
    },
    /// The backend failed; its own words.
    Backend(String),
}

/// Widths a picture is made for, in CSS px.
pub(crate) const WIDTHS: std::ops::RangeInclusive<u32> = 280..=4000;

/// Numbers farther from zero than this have no place on an axis.
const FARTHEST: f64 = 1e100;

/// Refuses a number that cannot be placed.
pub(crate) fn placeable(label: &str, value: f64) -> Result<(), Refused> {
    if value.is_finite() && value.abs() <= FARTHEST { Ok(()) } else { Err(Refused::Number { label: label.to_owned(), value }) }
}

/// Refuses a position that is not on the axis.
pub(crate) fn on_axis(label: &str, value: f64) -> Result<(), Refused> {
    if (0.0..=1.0).contains(&value) { Ok(()) } else { Err(Refused::Position { label: label.to_owned(), value }) }
}

/// Refuses a row that holds another number of things than it should.
pub(crate) fn counted(label: &str, came: usize, wanted: usize) -> Result<(), Refused> {
    if came == wanted { Ok(()) } else { Err(Refused::Count { label: label.to_owned(), came, wanted }) }
}

/// Refuses a ground of the wrong size.
pub(crate) fn roomy((width, height): (u32, u32), needed: u32) -> Result<(), Refused> {
    if !WIDTHS.contains(&width) {
        return Err(Refused::Width(width));
    }
    if height < needed {
        return Err(Refused::Height { given: height, needed });
    }
    Ok(())
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Number { label, value } => {
                write!(f, "cannot draw `{label}`: `{value}` has no place on an axis")
            }
            Self::Empty(title) => write!(f, "cannot draw `{title}`: it holds nothing"),
            Self::Negative { label, value } => write!(f, "cannot draw `{label}`: `{value}` is below zero"),
            Self::Turned { label, low, high } => write!(f, "cannot draw `{label}`: `{low}` should not lie above `{high}`"),
            Self::Position { label, value } => write!(f, "cannot draw `{label}`: `{value}` is no position from 0 to 1"),
            Self::Count { label, came, wanted } => write!(f, "cannot draw `{label}`: it holds `{came}`, and `{wanted}` fit"),
            Self::Width(width) => write!(f, "cannot draw at width `{width}`: pictures are {} to {} px wide", WIDTHS.start(), WIDTHS.end()),
            Self::Height { given, needed } => {
                write!(f, "cannot draw at height `{given}`: this picture needs {needed} px")
            }
            Self::Backend(words) => write!(f, "cannot draw: {words}"),
        }
    }
}

impl std::error::Error for Refused {}
