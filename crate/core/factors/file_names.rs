//! The names of the tables' files.

/// How a shop works.
pub(super) const PRACTICE: &str = "practice.csv";
/// What a unit of something loads.
pub(super) const FACTORS: &str = "factors.csv";
/// What electricity, fuels, freight and vehicles emit.
pub(super) const CARRIERS: &str = "carriers.csv";
/// Where the numbers were published.
pub(super) const SOURCES: &str = "sources.csv";
/// The standard signs.
pub(super) const SIGNS: &str = "sign-codes.csv";

/// All of them, as a folder of own tables may hold them.
pub const FILES: [&str; 5] = [PRACTICE, FACTORS, CARRIERS, SOURCES, SIGNS];
