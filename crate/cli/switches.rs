//! `faceload switches`: choices of method side by side.

use faceload_core::analysis::switches;
use faceload_report::{flips, panel};

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
    let Looked { tables, comparison, pair, indicator } = arguments.looked.looked_at()?;
    let settings = arguments.draws.scan(10_000)?;
    let list = switches(&tables, &comparison, pair, indicator, &flips::OTHER_AREAS, settings);
    let figure = flips::switches(&comparison, pair, indicator, &list);
    arguments.form.show(&figure, &comparison.order, || panel::no_picture("the choices"))
}
