//! `faceload plan`: each job by whoever clearly loads least.

use faceload_core::analysis::mixed;
use faceload_report::{flips, panel};

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
    draws: asked::DrawArguments,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (_, comparison) = input::compared(&arguments.order)?;
    let indicator = arguments.indicator.indicator();
    let plan = mixed(&comparison, indicator, arguments.draws.scan(2_000)?);
    let figure = flips::mixed(&comparison, indicator, &plan);
    arguments.form.show(&figure, &comparison.order, || panel::no_picture("the plan"))
}
