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
/// The solvents by name.
pub(super) const SOLVENTS: &str = "solvents.csv";
/// What was published of a thing, value by value; only for people and tests.
pub(super) const PUBLISHED: &str = "published.csv";

/// All of them, as a folder of own tables may hold them.
pub const FILES: [&str; 6] = [PRACTICE, FACTORS, CARRIERS, SOURCES, SIGNS, SOLVENTS];
