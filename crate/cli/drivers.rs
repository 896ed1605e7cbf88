//! `faceload drivers`: which inputs move the difference of a pair, and whose its variance is.

use faceload_core::analysis::{drivers, swings};
use faceload_report::{drivers as report, panel};

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
    /// How many inputs, those that matter most first.
    #[arg(long, value_name = "N", default_value_t = 15)]
    most: usize,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (_, comparison) = input::compared(&arguments.order)?;
    let (a, b) = asked::sharing_pair(&comparison, arguments.between.as_deref())?;
    let indicator = arguments.indicator.indicator();
    let Some(found) = drivers(&comparison, a, b, indicator) else { return Err(Failure::Input(Vec::new())) };
    let figure = report::figure(&comparison, (a, b), indicator, &found, arguments.most);
    arguments.form.show(&figure, &comparison.order, || {
        let mut swings = swings(&comparison, a, b, indicator);
        swings.truncate(arguments.most);
        panel::swings_svg(&comparison, (a, b), indicator, &swings)
    })
}
