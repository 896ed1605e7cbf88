//! The record: one JSON text with what a result was made from, what came out, and hashes of both.

use faceload_core::analysis::Draws;
use faceload_core::comparison::Comparison;
use faceload_core::factors::Tables;
use serde_json::{Map, Value, json};

use super::canonical::{canonical, sha_256};
use super::made_from::{self, Looked};
use super::manifest::Manifest;
use super::sheet::Sheet;
use super::{inputs, jobs, pairs, results, sources};
use crate::result;

/// The name of its file in a folder of data.
pub const RECORD: &str = "data.json";

/// The version of its form.
pub(super) const SCHEMA_VERSION: u32 = 1;

/// A record.
#[derive(Debug)]
pub struct Record {
    /// The tree.
    pub tree: Value,
    /// Its hashes.
    pub manifest: Manifest,
    pub(super) sheets: Vec<Sheet>,
}

impl Record {
    /// Of a comparison with draws of all its pairs (`drawn`).
    pub fn of(tables: &Tables, comparison: &Comparison, draws: &Draws, looked: Looked) -> Self {
        let sheets = vec![
            results::sheet(comparison, draws),
            pairs::sheet(comparison, draws, looked.pair),
            jobs::sheet(comparison),
            inputs::sheet(tables, comparison),
            sources::sheet(tables, comparison),
        ];
        let made_from = made_from::tree(tables, comparison, draws, looked);
        let result: Value = serde_json::from_str(&result::json(comparison, draws, None)).unwrap_or_default();
        let rows: Map<String, Value> = sheets.iter().map(|sheet| (sheet.name.to_owned(), sheet.json())).collect();
        let orders: Vec<&Value> = made_from["orders"].as_array().into_iter().flatten().map(|one| &one["order"]).collect();
        let hash = |tree: &Value| sha_256(canonical(tree).as_bytes());
        let manifest = Manifest {
            order: hash(&json!(orders)),
            made_from: hash(&made_from),
            tables: comparison.order.tables.to_string(),
            result: hash(&json!({ "result": result, "rows": rows })),
            draws: draws.settings.number,
            seed: draws.settings.seed,
        };
        let tree = json!({
            "schema_version": SCHEMA_VERSION,
            "program": { "name": Manifest::PROGRAM, "version": Manifest::VERSION },
            "sha_256": manifest.tree(),
            "made_from": made_from,
            "result": result,
            "rows": rows,
        });
        Self { tree, manifest, sheets }
    }

    /// Its text.
    pub fn json(&self) -> String {
        let mut text = serde_json::to_string_pretty(&self.tree).unwrap_or_default();
        text.push('\n');
        text
    }
}
