//! `faceload explain`: how a load is computed.

use clap::ValueEnum;
use faceload_core::load::Indicator;
use faceload_report::explain::explain;
use faceload_report::{terminal, words};

use crate::{Failure, input};

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
    indicator: IndicatorArgument,
    /// Print the explanation as JSON.
    #[arg(long)]
    json: bool,
}

/// The indicators as an argument.
#[derive(Clone, Copy, ValueEnum)]
enum IndicatorArgument {
    Energy,
    Water,
    Solvent,
    Waste,
    Co2e,
}

impl IndicatorArgument {
    fn indicator(self) -> Indicator {
        match self {
            Self::Energy => Indicator::Energy,
            Self::Water => Indicator::Water,
            Self::Solvent => Indicator::Solvent,
            Self::Waste => Indicator::Waste,
            Self::Co2e => Indicator::Co2e,
        }
    }
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
