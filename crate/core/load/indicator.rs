//! The five indicators. They are never added up to one number.

/// What is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Indicator {
    Energy,
    Water,
    Solvent,
    Waste,
    Co2e,
}

impl Indicator {
    /// Every indicator, in the one order they are always shown in.
    pub const ALL: [Self; 5] = [Self::Energy, Self::Water, Self::Solvent, Self::Waste, Self::Co2e];

    /// Its id in commands and files.
    pub fn id(self) -> &'static str {
        match self {
            Self::Energy => "energy",
            Self::Water => "water",
            Self::Solvent => "solvent",
            Self::Waste => "waste",
            Self::Co2e => "co2e",
        }
    }

    /// The indicator of that id.
    pub fn read(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|indicator| indicator.id() == id)
    }

    /// What a reader calls it.
    pub fn label(self) -> &'static str {
        match self {
            Self::Co2e => "CO2e",
            other => other.id(),
        }
    }

    /// Its unit.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Energy => "MJ primary",
            Self::Water => "L",
            Self::Solvent => "kg VOC",
            Self::Waste => "kg",
            Self::Co2e => "kg CO2e",
        }
    }

    /// What it counts, in a line.
    pub fn counts(self) -> &'static str {
        match self {
            Self::Energy => "primary energy of electricity, fuel and materials, their feedstock included",
            Self::Water => "water drawn by the shop; upstream water is not in it",
            Self::Solvent => "volatile organic compounds to air in the shop",
            Self::Waste => "solid and liquid waste of making the face",
            Self::Co2e => {
                "greenhouse gases of energy carriers, materials, freight, solvent oxidised in air, waste treatment and end of life"
            }
        }
    }
}

/// A value of one indicator: lists and draws loop over them, so the kind is checked as it runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// Of which indicator.
    pub indicator: Indicator,
    /// In its unit.
    pub value: f64,
}
