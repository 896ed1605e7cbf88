//! The functional unit: an order, a square metre of face, or that kept in service for a year.

/// Per what a load is given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Per {
    M2,
    Order,
    M2Year,
}

impl Per {
    /// Every choice with the name commands take.
    pub const ALL: [(&'static str, Self); 3] = [("m2", Self::M2), ("order", Self::Order), ("m2-year", Self::M2Year)];

    /// Its name.
    pub fn name(self) -> &'static str {
        Self::ALL.iter().find(|(_, per)| *per == self).map_or("", |(name, _)| name)
    }

    /// As a sentence says it.
    pub fn words(self) -> &'static str {
        match self {
            Self::M2 => "per m2 of face",
            Self::Order => "for the whole order",
            Self::M2Year => "per m2 of face and year in service",
        }
    }

    /// What a unit is followed by.
    pub fn suffix(self) -> &'static str {
        match self {
            Self::M2 => "/m2",
            Self::Order => "",
            Self::M2Year => "/(m2\u{b7}year)",
        }
    }
}
