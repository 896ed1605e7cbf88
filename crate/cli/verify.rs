//! `faceload verify`: makes a report, a folder of data or a record again from what it carries, and says what differs.

use faceload_core::factors::Tables;
use faceload_report::data::verify::{Again, Given, verify};
use faceload_report::document::{self, Asked};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
pub struct Arguments {
    /// A report, a folder of data, or its data.json.
    file: String,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(None)?;
    let path = std::path::Path::new(&arguments.file);
    if path.is_dir() {
        return verified(&arguments.file, &Given::Folder(&|name| std::fs::read(path.join(name)).ok()), &tables);
    }
    let text = std::fs::read_to_string(path).map_err(|error| {
        let reason = input::reason(&error);
        Failure::Input(vec![format!(
            "{}: cannot be read ({reason}) where a report or its data was wanted; give the file as it was made",
            arguments.file
        )])
    })?;
    let is_record = text.trim_start_matches('\u{feff}').trim_start().starts_with(['{', '[']);
    verified(&arguments.file, &if is_record { Given::Record(&text) } else { Given::Page(&text) }, &tables)
}

fn verified(name: &str, given: &Given<'_>, tables: &Tables) -> Result<String, Failure> {
    verify(name, given, tables, &page, asked::progress("draws")).map_err(Failure::Input)
}

/// The report of a record, made again.
fn page(again: &Again) -> Option<String> {
    let from = &again.made_from;
    let wanted = Asked { pair: from.looked.pair, indicator: from.looked.indicator, settings: from.settings };
    Some(document::report(&from.tables, &from.comparison, &wanted, |_| true).html())
}
