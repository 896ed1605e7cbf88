//! `faceload data`: an order's comparison as a folder of tables and one record that can be verified.

use faceload_report::data::{self, Looked, Record};

use crate::asked::{self, IndicatorArgument};
use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Look closely at these two alternatives.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// Look closely at this indicator.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: IndicatorArgument,
    #[command(flatten)]
    draws: asked::DrawArguments,
    /// The folder that takes the files; files of the same name are written over.
    #[arg(short, long, value_name = "DIR")]
    output: String,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let settings = arguments.draws.settings(10_000)?;
    let (tables, comparison) = input::compared(&arguments.order)?;
    let pair = arguments.between.as_deref().map(|text| asked::pair(&comparison, Some(text))).transpose()?;
    let looked = Looked { pair, indicator: arguments.indicator.indicator() };
    let mut progress = asked::progress("draws");
    let draws = data::drawn(&comparison, looked, settings, |done| progress(done as f64 / settings.number as f64));
    let record = Record::of(&tables, &comparison, &draws, looked);
    let folder = std::path::Path::new(&arguments.output);
    let unwritten = |error: &std::io::Error| {
        let reason = input::reason(error);
        Failure::Input(vec![format!(
            "{}: cannot be written ({reason}) where a folder for the data was wanted; give another place",
            arguments.output
        )])
    };
    std::fs::create_dir_all(folder).map_err(|error| unwritten(&error))?;
    let mut out = String::new();
    for (name, bytes) in data::files(&record) {
        std::fs::write(folder.join(&name), &bytes).map_err(|error| unwritten(&error))?;
        out.push_str(&format!("{}/{name}\n", arguments.output.trim_end_matches('/')));
    }
    Ok(out)
}
