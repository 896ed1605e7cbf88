//! `faceload spread`: intervals, the paired difference, the ratio, and who takes which rank.

use faceload_core::analysis::{Draws, Kept};
use faceload_core::load::Indicator;
use faceload_report::{flip_panels, sureness};

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
    /// The indicator of the picture and of the ranks.
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
    let (a, b) = asked::sharing_pair(&comparison, arguments.between.as_deref())?;
    let settings = arguments.draws.settings(10_000)?;
    let mut progress = asked::progress("draws");
    let draws = Draws::make(&comparison, &[(a, b)], settings, &mut Kept::default(), |done| progress(done as f64 / settings.number as f64));
    let indicator: Indicator = arguments.indicator.indicator();
    let mut figure = sureness::figure(&comparison, &draws, a, b);
    figure.tables.extend(sureness::ranks(&comparison, &draws, indicator));
    arguments.form.show(&figure, &comparison.order, || flip_panels::dots_file(&comparison, &draws, (a, b), indicator))
}
