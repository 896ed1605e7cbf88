//! `faceload switches`: choices of method side by side.

use faceload_core::analysis::switches;
use faceload_report::{flips, panel};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// These two alternatives; without it, the first of the order's pairs.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
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
    let (tables, comparison) = input::compared(&arguments.order)?;
    let pair = asked::sharing_pair(&comparison, arguments.between.as_deref())?;
    let indicator = arguments.indicator.indicator();
    let settings = arguments.draws.settings(2_000)?;
    let list = switches(&tables, &comparison, pair, indicator, &flips::OTHER_AREAS, settings);
    let figure = flips::switches(&comparison, pair, indicator, &list);
    arguments.form.show(&figure, &comparison.order, || panel::no_picture("the choices"))
}
