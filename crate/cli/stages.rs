//! `faceload stages`: where a load comes from, stage by stage.

use faceload_report::stages;

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// The indicator.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: asked::IndicatorArgument,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (_, comparison) = input::compared(&arguments.order)?;
    let indicator = arguments.indicator.indicator();
    let figure = stages::figure(&comparison, indicator);
    arguments.form.show(&figure, &comparison.order, || stages::file(&comparison, indicator))
}
