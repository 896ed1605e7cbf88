//! Every label, and where its word comes from: the trade, a standard, or us. They stand in `labels/`, by what they are of.

mod answer;
mod files;
mod order;
mod own;
mod report;
mod spreadsheet;
mod terms;

/// Where a label's word comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// Sign shops and printers say it.
    Trade,
    /// A standard defines it.
    Standard(&'static str),
    /// Plain words of ours.
    Ours,
}

/// A label.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Label {
    /// What the program calls it.
    pub id: &'static str,
    /// What a reader sees.
    pub text: &'static str,
    /// Where the word comes from.
    pub origin: Origin,
}

const fn label_of(id: &'static str, text: &'static str, origin: Origin) -> Label {
    Label { id, text, origin }
}

/// The groups of labels.
const GROUPS: [&[Label]; 7] =
    [terms::LABELS, order::LABELS, files::LABELS, spreadsheet::LABELS, own::LABELS, answer::LABELS, report::LABELS];

/// All labels.
pub fn all() -> impl Iterator<Item = &'static Label> {
    GROUPS.into_iter().flatten()
}

/// The text of a label.
pub fn label(id: &str) -> &'static str {
    all().find(|label| label.id == id).map_or("", |label| label.text)
}
