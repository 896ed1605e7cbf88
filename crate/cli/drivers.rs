//! `faceload drivers`: which inputs move the difference of a pair, and whose its variance is.

use faceload_core::analysis::{drivers, swings};
use faceload_report::drivers as report;
use faceload_report::swings::Swings;

use crate::asked::{self, Looked};
use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    looked: asked::PairArguments,
    /// How many inputs, those that matter most first.
    #[arg(long, value_name = "N", default_value_t = 15)]
    most: usize,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let Looked { comparison, pair: (a, b), indicator, .. } = arguments.looked.looked_at()?;
    let Some(found) = drivers(&comparison, a, b, indicator) else { return Err(Failure::Input(Vec::new())) };
    let figure = report::figure(&comparison, (a, b), indicator, &found, arguments.most);
    arguments.form.show(&figure, &comparison.order, || {
        let mut list = swings(&comparison, a, b, indicator);
        list.truncate(arguments.most);
        Swings { comparison: &comparison, pair: (a, b), indicator, list: &list }.file()
    })
}
