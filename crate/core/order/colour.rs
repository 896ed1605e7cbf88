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

impl Colour {
    /// Every colour with its name.
    pub const ALL: [(&'static str, Self); 13] = [
        ("white", White),
        ("yellow", Yellow),
        ("orange", Orange),
        ("fluorescent yellow", FluorescentYellow),
        ("fluorescent yellow-green", FluorescentYellowGreen),
        ("fluorescent orange", FluorescentOrange),
        ("fluorescent pink", FluorescentPink),
        ("red", Red),
        ("green", Green),
        ("blue", Blue),
        ("brown", Brown),
        ("purple", Purple),
        ("black", Black),
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
