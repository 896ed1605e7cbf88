//! `faceload report`: the report as one HTML file, for a board and for a critical reviewer, and its data as a folder of tables.

use std::path::Path;

use faceload_report::data::{self, Record};
use faceload_report::document::{self, Asked};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
#[group(id = "outputs", multiple = true, required = true, args = ["output", "data"])]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Look closely at these two alternatives; without it, at the first of the order's pairs.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// Look closely at this indicator.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: asked::IndicatorArgument,
    #[command(flatten)]
    draws: asked::DrawArguments,
    /// Where the report goes; `-` is standard output.
    #[arg(short, long, value_name = "FILE")]
    output: Option<String>,
    /// The folder that takes its data: tables as CSV with their description, and one record; files of the same name are written over.
    #[arg(long, value_name = "DIR")]
    data: Option<String>,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let settings = arguments.draws.settings(10_000)?;
    let (tables, comparison) = input::compared(&arguments.order)?;
    let pair = arguments.between.as_deref().map(|text| asked::sharing_pair(&comparison, Some(text))).transpose()?;
    let wanted = Asked { pair, indicator: arguments.indicator.indicator(), settings };
    let report = document::report(&tables, &comparison, &wanted, asked::progress("report"));
    let written = arguments.data.as_deref().map_or(Ok(String::new()), |folder| folder_of(folder, &report.record))?;
    match arguments.output.as_deref() {
        Some("-") => return Ok(report.html()),
        Some(file) => asked::write(file, &report.html(), "the report")?,
        None => {}
    }
    Ok(written)
}

/// Writes the data; the names of the files, one a line.
fn folder_of(name: &str, record: &Record) -> Result<String, Failure> {
    let unwritten = |error: &std::io::Error| {
        let reason = input::reason(error);
        Failure::Input(vec![format!("{name}: cannot be written ({reason}) where a folder for the data was wanted; give another place")])
    };
    let folder = Path::new(name);
    std::fs::create_dir_all(folder).map_err(|error| unwritten(&error))?;
    let mut out = String::new();
    for (file, bytes) in data::files(record) {
        std::fs::write(folder.join(&file), &bytes).map_err(|error| unwritten(&error))?;
        out.push_str(&format!("{}/{file}\n", name.trim_end_matches('/')));
    }
    Ok(out)
}
