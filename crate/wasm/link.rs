//! What crosses the page's edge: order files and links, read and checked before anything on the screen changes.

use faceload_report::link::{Linked, without_own};
use faceload_report::other_units::{Units, length};
use serde::{Deserialize, Serialize};
use serde_json::{Value, json};

use crate::door::{Fault, compared, indicator, plain, with_tables};

/// What is on the screen.
#[derive(Deserialize)]
pub struct Shared {
    per: String,
    boundary: String,
    pair: Option<(String, String)>,
    indicator: String,
    moved: Vec<(String, f64)>,
    /// Whether the shop's own values, and what was moved by hand, go with it.
    own: bool,
}

/// A link, and how many values of the shop's own it leaves out.
pub fn write(order: &str, shared: Shared) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let mut order: Value = serde_json::from_str(order).map_err(|error| vec![plain(error.to_string())])?;
        let left_out = if shared.own { 0 } else { without_own(&mut order) };
        let linked = Linked {
            order,
            per: shared.per,
            boundary: shared.boundary,
            pair: shared.pair,
            indicator: shared.indicator,
            moved: if shared.own { shared.moved } else { Vec::new() },
            tables: tables.fingerprint.short().to_owned(),
            left_out,
        };
        let link = linked.write().map_err(|fault| vec![plain(fault.to_string())])?;
        Ok(json!({ "link": link, "left_out": left_out }).to_string())
    })
}

/// What the page is told of a link.
#[derive(Serialize)]
struct Opened {
    #[serde(flatten)]
    linked: Linked,
    /// The order as its file would be.
    text: String,
    /// What its reader must know.
    told: Vec<String>,
}

/// A link, read; its order and all that is asked of it are checked.
pub fn read(address: &str) -> Result<String, Vec<Fault>> {
    let linked = Linked::read(address).map_err(|fault| vec![plain(fault.to_string())])?;
    let text = serde_json::to_string_pretty(&linked.order).map_err(|error| vec![plain(error.to_string())])?;
    with_tables(|tables| {
        indicator(&linked.indicator)?;
        compared(tables, "the order in the link", &text, &linked.per, &linked.boundary, &linked.moved)?;
        let opened = Opened { text: format!("{text}\n"), told: linked.told(tables.fingerprint.short()), linked };
        serde_json::to_string(&opened).map_err(|error| vec![plain(error.to_string())])
    })
}

/// Every fault of an order by the name of its file.
pub fn check(name: &str, text: &str) -> Result<(), Vec<Fault>> {
    with_tables(|tables| compared(tables, name, text, "m2", "face", &[]).map(|_| ()))
}

/// A length in other units, or nothing.
pub fn in_units(text: &str, units: &str) -> Option<String> {
    let (_, units) = Units::ALL.into_iter().find(|(word, _)| *word == units)?;
    length(text, units)
}
