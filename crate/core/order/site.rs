//! Where the faces are made, and what the shop runs on.

/// The set of global warming potentials used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GwpSet {
    /// IPCC AR4 (2007).
    Ar4,
    /// IPCC AR5 (2013).
    Ar5,
    /// IPCC AR6 (2021).
    Ar6,
}

impl GwpSet {
    /// As orders write it.
    pub const ALL: [(&'static str, Self); 3] = [("AR4", Self::Ar4), ("AR5", Self::Ar5), ("AR6", Self::Ar6)];

    /// The beginning of the ids of its rows.
    pub fn stem(self) -> &'static str {
        match self {
            Self::Ar4 => "gwp.ar4",
            Self::Ar5 => "gwp.ar5",
            Self::Ar6 => "gwp.ar6",
        }
    }
}

/// The shop's site.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// The electricity area, such as `us.rfcw`.
    pub electricity: String,
    /// The heating fuel, such as `us.natural-gas`.
    pub heat: String,
    /// Heating degree-days a year, K d.
    pub degree_days: f64,
    /// Whether screen ink is bound by a VOC limit of 396 g/L as applied.
    pub voc_rule: bool,
    /// How far the finished faces travel, km; absent: left out.
    pub delivery: Option<f64>,
    /// The round trip to a sign at replacement, km; absent: left out.
    pub visit: Option<f64>,
}

impl Site {
    /// The area id as the factor rows write it: `us.rfcw` is `us-rfcw` there.
    pub fn electricity_stem(&self) -> String {
        format!("electricity.{}", self.electricity.replace('.', "-"))
    }

    /// The fuel id as the factor rows write it.
    pub fn heat_stem(&self) -> String {
        format!("heat.{}", self.heat.replace('.', "-"))
    }
}
