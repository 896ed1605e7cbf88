//! The manifest: what tells two results apart at a glance, and whether one was changed.

use serde_json::{Value, json};

/// Digits of the short form.
const SHORT: usize = 12;

/// Hashes (SHA-256, hexadecimal) and settings of a result.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Manifest {
    /// Of the orders: the canonical bytes of the list of orders without their names.
    pub order: String,
    /// Of everything that it was made from: orders, own tables, what was asked, draws.
    pub made_from: String,
    /// The fingerprint of the tables.
    pub tables: String,
    /// Of what came out: the result and the rows beside it.
    pub result: String,
    /// How many draws.
    pub draws: usize,
    /// What they began with.
    pub seed: u64,
}

impl Manifest {
    /// The program's name.
    pub const PROGRAM: &str = "faceload";
    /// Its version.
    pub const VERSION: &str = env!("CARGO_PKG_VERSION");

    /// For the head of a sheet: `result 0a1b2c3d4e5f`.
    pub fn mark(&self) -> String {
        format!("result {}", self.result.get(..SHORT).unwrap_or_default())
    }

    /// In a sentence: `order 0a1b2c3d4e5f, tables ..., result ...`.
    pub fn short(&self) -> String {
        let part = |hash: &str| hash.get(..SHORT).unwrap_or_default().to_owned();
        format!("order {}, tables {}, result {}", part(&self.order), part(&self.tables), part(&self.result))
    }

    /// Everything, with what each is.
    pub fn marks(&self) -> Vec<(&'static str, String)> {
        vec![
            ("program", format!("{} {}", Self::PROGRAM, Self::VERSION)),
            ("order, SHA-256", self.order.clone()),
            ("all it was made from, SHA-256", self.made_from.clone()),
            ("tables, SHA-256", self.tables.clone()),
            ("result, SHA-256", self.result.clone()),
            ("draws, seed", format!("{}, {}", self.draws, self.seed)),
        ]
    }

    /// The hashes as a record carries them.
    pub(super) fn tree(&self) -> Value {
        json!({ "order": self.order, "made_from": self.made_from, "tables": self.tables, "result": self.result })
    }
}
