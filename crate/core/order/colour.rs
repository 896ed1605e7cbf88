//! Colours of a sign face.

/// A colour, by the name an order uses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Colour {
    White,
    Yellow,
    Orange,
    FluorescentYellow,
    FluorescentYellowGreen,
    FluorescentOrange,
    FluorescentPink,
    Red,
    Green,
    Blue,
    Brown,
    Purple,
    Black,
}

use Colour::*;

use crate::factors::COLOURS;

impl Colour {
    /// Every colour with its name.
    pub const ALL: [(&'static str, Self); 13] = [
        (COLOURS[0], White),
        (COLOURS[1], Yellow),
        (COLOURS[2], Orange),
        (COLOURS[3], FluorescentYellow),
        (COLOURS[4], FluorescentYellowGreen),
        (COLOURS[5], FluorescentOrange),
        (COLOURS[6], FluorescentPink),
        (COLOURS[7], Red),
        (COLOURS[8], Green),
        (COLOURS[9], Blue),
        (COLOURS[10], Brown),
        (COLOURS[11], Purple),
        (COLOURS[12], Black),
    ];

    /// The colour of that name.
    pub fn read(text: &str) -> Option<Self> {
        Self::ALL.iter().find(|(name, _)| *name == text).map(|(_, colour)| *colour)
    }

    /// Its name.
    pub fn name(self) -> &'static str {
        Self::ALL.iter().find(|(_, colour)| *colour == self).map_or("", |(name, _)| name)
    }

    /// Whether it exists as sheeting only: no ink glows by day.
    pub fn is_fluorescent(self) -> bool {
        matches!(self, FluorescentYellow | FluorescentYellowGreen | FluorescentOrange | FluorescentPink)
    }

    /// Whether a shop buys warning-sign sheeting in this colour instead of printing it.
    pub fn is_sold_as_base(self) -> bool {
        self.is_fluorescent() || matches!(self, White | Yellow | Orange)
    }

    /// Whether its ink is opaque: a thinner film than a transparent one.
    pub fn is_opaque(self) -> bool {
        self == Black
    }
}
