//! What may be said of a comparison: the wording guard, and the statement that may be sent.

mod rule;
mod shape;
pub mod statement;
pub mod tokens;
mod wording;

pub use rule::{Around, Refused, Rule, Seen};
pub use wording::{RULES, check};

/// What kind of statement a comparison is; it stands under every result and in every statement.
pub fn standing_words() -> &'static str {
    crate::words::STANDING
}

/// The reviewers that an order names, where it does.
pub fn reviewers(order: &faceload_core::order::Order) -> Option<String> {
    let names: Vec<&str> = order.reviewers.iter().map(String::as_str).collect();
    (!names.is_empty()).then(|| format!("Reviewers, as stated by the user and not checked here: {}.", crate::words::join(&names)))
}
