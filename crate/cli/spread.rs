//! `faceload spread`: intervals, the paired difference, the ratio, and who takes which rank.

use faceload_core::analysis::{Draws, Kept};
use faceload_report::{flip_panels, shares, sureness};

use crate::asked::{self, Looked};
use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    looked: asked::PairArguments,
    #[command(flatten)]
    draws: asked::DrawArguments,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let Looked { comparison, pair: (a, b), indicator, .. } = arguments.looked.looked_at()?;
    let settings = arguments.draws.settings(10_000)?;
    let mut progress = asked::progress("draws");
    let draws = Draws::make(&comparison, &[(a, b)], settings, &mut Kept::default(), |done| progress(done as f64 / settings.number as f64));
    let mut figure = sureness::figure(&comparison, &draws, a, b);
    figure.tables.extend(shares::ranks(&comparison, &draws, indicator));
    arguments.form.show(&figure, &comparison.order, || flip_panels::dots_file(&comparison, &draws, (a, b), indicator))
}
