//! A rule of the wording guard: which clause it follows, what it looks for, why that is refused, the way out.

use super::tokens::Token;

/// How the clause was seen when its row was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seen {
    /// Its text, or somebody's account of it, was read in part.
    Excerpt,
    /// Written from memory: check the document before quoting it (grade D).
    Memory,
    /// No clause of others: this program's own rule.
    Ours,
}

impl Seen {
    /// In words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Excerpt => "seen through an excerpt",
            Self::Memory => "from memory",
            Self::Ours => "a rule of our own",
        }
    }
}

/// What stands around a text.
#[derive(Debug, Clone, Copy)]
pub enum Around<'a> {
    /// Nothing: it is sent as it is. The alternatives that it may name.
    Alone(&'a [&'a str]),
    /// A result: a heading says per what, ranges and shares of draws stand beside it, its limits below.
    Result,
}

/// What a rule looks for.
pub(super) enum Finds {
    /// One of these phrases, apart by commas; `certif*` is every word that begins so.
    Words(&'static str),
    /// The same, unless they are denied: `not verified by a third party`.
    Undenied(&'static str),
    /// A shape of the whole text; the words at fault, or what is missing.
    Shape(fn(&[Token], Around<'_>) -> Option<String>),
}

/// One clause, and what follows from it for a sentence.
pub struct Rule {
    /// The document with its edition and dates.
    pub document: &'static str,
    /// The clause.
    pub place: &'static str,
    /// What it asks, in our words.
    pub asks: &'static str,
    /// How it was seen.
    pub seen: Seen,
    pub(super) finds: Finds,
    /// Why a sentence is refused.
    pub reason: &'static str,
    /// The way out.
    pub way_out: &'static str,
    /// A sentence that passes, sent alone.
    pub allowed: &'static str,
    /// A sentence that this rule refuses.
    pub refused: &'static str,
}

/// A sentence refused by a rule.
pub struct Refused {
    /// Which.
    pub rule: &'static Rule,
    /// The words at fault, or what is missing.
    pub words: String,
}

impl std::fmt::Display for Refused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Rule { reason, way_out, document, place, seen, .. } = self.rule;
        write!(f, "{}: {reason} ({document}, {place}; {}); {way_out}", self.words, seen.words())
    }
}
