//! `faceload explain`: how a load is computed.

use faceload_report::explain::explain;
use faceload_report::{terminal, words};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// The id of the alternative.
    #[arg(long)]
    alternative: String,
    /// The indicator.
    #[arg(long, value_enum)]
    indicator: asked::IndicatorArgument,
    /// Print the explanation as JSON.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (tables, comparison) = input::compared(&arguments.order)?;
    let model = &comparison.models[input::alternative(&comparison, &arguments.alternative)?];
    let explained = explain(&tables, model, arguments.indicator.indicator(), comparison.per);
    if arguments.json {
        let text = serde_json::to_string_pretty(&explained).unwrap_or_default();
        return Ok(format!("{text}\n"));
    }
    Ok(format!("{}\n({})\n{}", explained.text(), words::HOW_SURE, terminal::standing(&comparison.order)))
}
