//! How good the evidence behind a number is.

use std::fmt;

/// From the shop's own meter down to memory. The order of the variants is the order of worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// This shop's meter, bill or scale.
    Own,
    /// Government, standard or peer-reviewed; the document or its data file was read.
    A,
    /// The same, through an excerpt or a transcription.
    B,
    /// Trade page, data sheet; or common practice without a source.
    C,
    /// From memory, a stand-in, a judgement.
    D,
}

impl Grade {
    /// Reads `A`, `B`, `C`, `D` or `own`.
    pub fn read(text: &str) -> Option<Self> {
        Some(match text {
            "own" => Self::Own,
            "A" => Self::A,
            "B" => Self::B,
            "C" => Self::C,
            "D" => Self::D,
            _ => return None,
        })
    }

    /// What the grade means, in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Own => "this shop's own reading",
            Self::A => "published, document read",
            Self::B => "published, seen through an excerpt or transcription",
            Self::C => "trade source or common practice",
            Self::D => "memory, stand-in or judgement",
        }
    }
}

impl fmt::Display for Grade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Own => "own",
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
            Self::D => "D",
        })
    }
}
