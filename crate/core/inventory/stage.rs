//! Stages of a sign face's life, with their EN 15804 module.

/// A stage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Stage {
    Materials,
    Prepress,
    Imaging,
    Drying,
    Finishing,
    CleanUp,
    Air,
    Waste,
    Delivery,
    Service,
    EndOfLife,
}

impl Stage {
    /// Every stage with its name and module.
    pub const ALL: [(Self, &'static str, &'static str); 11] = [
        (Self::Materials, "materials", "A1-A2"),
        (Self::Prepress, "prepress", "A3"),
        (Self::Imaging, "imaging", "A3"),
        (Self::Drying, "drying", "A3"),
        (Self::Finishing, "finishing", "A3"),
        (Self::CleanUp, "clean-up", "A3"),
        (Self::Air, "air", "A3"),
        (Self::Waste, "waste", "A3"),
        (Self::Delivery, "delivery", "A4"),
        (Self::Service, "service", "B4"),
        (Self::EndOfLife, "end of life", "C1-C4"),
    ];

    /// Its name.
    pub fn name(self) -> &'static str {
        Self::ALL[self as usize].1
    }

    /// Its module.
    pub fn module(self) -> &'static str {
        Self::ALL[self as usize].2
    }
}
