//! `faceload explain`: how a load is computed.

use clap::ValueEnum;
use faceload_core::load::Indicator;
use faceload_report::explain::explain;
use faceload_report::words;

use crate::{BoundaryArgument, Failure, PerArgument, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    /// The order.
    order: Option<String>,
    /// The id of the alternative.
    #[arg(long)]
    alternative: String,
    /// The indicator.
    #[arg(long, value_enum)]
    indicator: IndicatorArgument,
    /// Per what the load is given.
    #[arg(long, value_enum, default_value = "m2")]
    per: PerArgument,
    /// What is counted.
    #[arg(long, value_enum)]
    boundary: Option<BoundaryArgument>,
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
    let tables = input::tables()?;
    let per = arguments.per.per();
    let comparison = input::compared(&tables, arguments.order.as_deref(), per, arguments.boundary.map(BoundaryArgument::boundary))?;
    let Some(model) = comparison.model(&arguments.alternative) else {
        let ids: Vec<String> = comparison.models.iter().map(|model| format!("`{}`", model.alternative.id)).collect();
        let ids: Vec<&str> = ids.iter().map(String::as_str).collect();
        return Err(Failure::Input(vec![format!(
            "`{}` where the id of an alternative was wanted; this order has {}",
            arguments.alternative,
            words::join(&ids)
        )]));
    };
    let explained = explain(&tables, model, arguments.indicator.indicator(), per);
    if arguments.json {
        let text = serde_json::to_string_pretty(&explained).unwrap_or_default();
        return Ok(format!("{text}\n"));
    }
    Ok(format!("{}\n({})\n", explained.text(), words::HOW_SURE))
}
