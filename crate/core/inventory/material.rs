//! Materials: what a shop buys, what it is made of, and what becomes of it.

/// A share of a material.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// All of it is this stuff.
    Whole(&'static str),
    /// This stuff, by the share in that row.
    Share(&'static str, &'static str),
    /// This stuff, by what that row leaves.
    Rest(&'static str, &'static str),
}

impl Part {
    /// The stuff: the middle of the ids `material.STUFF.co2e` and `waste.plastics-burnt.STUFF.co2e`.
    pub fn stuff(self) -> &'static str {
        match self {
            Self::Whole(stuff) | Self::Share(stuff, _) | Self::Rest(stuff, _) => stuff,
        }
    }
}

/// A material. Rows that it does not need are empty.
#[derive(Debug, PartialEq, Eq)]
pub struct Material {
    /// What a reader calls it.
    pub name: &'static str,
    /// What it is made of.
    pub parts: &'static [Part],
    /// The row of its converting passes, where resin becomes film.
    pub passes: &'static str,
    /// The row of kg CO2 per kg once it is oxidised in air.
    pub oxidised: &'static str,
    /// The row for its treatment as solid waste.
    pub solid: &'static str,
    /// The row for its treatment as liquid waste.
    pub liquid: &'static str,
    /// The rows for burning it together with its blank; empty: by its parts, by `solid` if none.
    pub burnt: &'static str,
}

impl Material {
    /// A material of one stuff; the rest is filled in where it is declared.
    pub const fn of(name: &'static str, parts: &'static [Part]) -> Self {
        Self { name, parts, passes: "", oxidised: "", solid: "", liquid: "", burnt: "" }
    }
}
