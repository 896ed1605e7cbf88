//! Where a number was published, and how it was seen.

use super::row::Row;
use super::{Grade, Licence};

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
    /// Reads a row, and refuses one that lacks the credit its licence asks for.
    pub(super) fn read(row: &mut Row<'_>) -> Self {
        let known = |text: &str| KINDS.iter().any(|(kind, _)| *kind == text).then(|| text.to_owned());
        let source = Self {
            key: row.name("key", |c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-', "a key of a-z, 0-9 and `-`"),
            title: row.filled("title"),
            publisher: row.text("publisher"),
            year: row.text("year"),
            kind: row.word("kind", known, "a kind of source", String::new()),
            seen: row.word("seen", Seen::read, "document, excerpt, transcription or memory", Seen::Memory),
            licence: row.text("licence"),
            attribution: row.text("attribution"),
            locator: row.text("locator"),
        };
        if source.attribution.trim().is_empty() && source.asks_for_credit().is_some() {
            row.refuse("attribution", "the credit that the licence asks for", "write it as the licence words it");
        }
        source
    }

    /// The licence, where it asks for credit.
    pub fn asks_for_credit(&self) -> Option<&'static Licence> {
        Licence::asking(&self.licence)
    }

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
