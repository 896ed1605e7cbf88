//! Where a number was published, and how it was seen.

use super::Grade;

/// One publication, data file or admitted lack of one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// The key that rows cite.
    pub key: String,
    /// Its title.
    pub title: String,
    /// Who published it.
    pub publisher: String,
    /// When.
    pub year: String,
    /// What sort of source: `government`, `trade`, `memory` …
    pub kind: String,
    /// How it was seen.
    pub seen: Seen,
    /// Under which licence.
    pub licence: String,
    /// The credit that the licence asks for.
    pub attribution: String,
    /// Where it can be found.
    pub locator: String,
}

/// How a source was seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seen {
    /// The document or its data file was read.
    Document,
    /// An excerpt of it.
    Excerpt,
    /// Somebody else's transcription.
    Transcription,
    /// Not seen: from memory, or judged.
    Memory,
}

impl Seen {
    /// Reads the word of the table.
    pub fn read(text: &str) -> Option<Self> {
        Some(match text {
            "document" => Self::Document,
            "excerpt" => Self::Excerpt,
            "transcription" => Self::Transcription,
            "memory" => Self::Memory,
            _ => return None,
        })
    }
}

impl Seen {
    /// The word of the table.
    pub fn word(self) -> &'static str {
        match self {
            Self::Document => "document",
            Self::Excerpt => "excerpt",
            Self::Transcription => "transcription",
            Self::Memory => "memory",
        }
    }
}

/// The kinds of source, with the best grade a row may take from them.
pub(super) const KINDS: [(&str, Grade); 10] = [
    ("government", Grade::A),
    ("standard", Grade::A),
    ("peer-reviewed", Grade::A),
    ("statistics", Grade::A),
    ("trade", Grade::C),
    ("data sheet", Grade::C),
    ("newspaper", Grade::C),
    ("practice", Grade::C),
    ("judgement", Grade::D),
    ("memory", Grade::D),
];

impl Source {
    /// The best grade that a row citing this source may carry.
    pub fn best_grade(&self) -> Grade {
        let by_kind = KINDS.iter().find(|(kind, _)| *kind == self.kind).map_or(Grade::D, |(_, grade)| *grade);
        let by_sight = match self.seen {
            Seen::Document => Grade::A,
            Seen::Excerpt | Seen::Transcription => Grade::B,
            Seen::Memory if self.kind == "practice" => Grade::C,
            Seen::Memory => Grade::D,
        };
        by_kind.max(by_sight)
    }
}
