//! The report: the file that the command line writes, and the same parts for the page to show.

use faceload_core::factors::Tables;
use faceload_report::document;
use serde::Serialize;

use crate::door::{Fault, plain, with_tables};
use crate::sure::{Asked, Looked, settings};

/// The report with the file it is saved as.
#[derive(Serialize)]
struct Whole {
    #[serde(flatten)]
    report: document::Report,
    html: String,
}

/// The report of an order; `go_on` hears the share that is done.
pub fn report(order: &str, asked: &Asked, go_on: impl FnMut(f64) -> bool) -> Result<String, Vec<Fault>> {
    with_tables(|tables: &Tables| {
        let looked = Looked::at(tables, order, asked)?;
        let wanted = document::Asked {
            pair: Some(looked.pair).filter(|_| looked.shares_a_line()),
            indicator: looked.indicator,
            settings: settings(asked, 10_000),
        };
        let report = document::report(tables, &looked.comparison, &wanted, go_on);
        let html = report.html();
        serde_json::to_string(&Whole { report, html }).map_err(|error| vec![plain(error.to_string())])
    })
}
