//! `faceload break-even`: where the difference of a pair crosses zero as one thing varies.

use faceload_core::analysis::{Kept, Over, POINTS, Pairing, break_even};
use faceload_report::{flip_panels, flips};

use crate::asked::{self, Looked};
use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    looked: asked::PairArguments,
    /// What varies: quantity, batch, colours, designs, life, or the id of an input.
    #[arg(long, default_value = "quantity")]
    over: String,
    /// The first value, in the unit of the input's row.
    #[arg(long, requires = "to", allow_negative_numbers = true)]
    from: Option<f64>,
    /// The last value.
    #[arg(long, requires = "from", allow_negative_numbers = true)]
    to: Option<f64>,
    #[command(flatten)]
    draws: asked::DrawArguments,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let Looked { tables, comparison, pair, indicator } = arguments.looked.looked_at()?;
    let given = arguments.from.zip(arguments.to);
    let axis = Over::read(&arguments.over, &tables)
        .and_then(|over| over.axis(&comparison.order, &tables, given, POINTS))
        .map_err(|fault| asked::unvaried("--over", &fault))?;
    let settings = arguments.draws.scan(1_000)?;
    let pairing = Pairing::of(&tables, &comparison, pair.0, pair.1, indicator);
    let found = break_even(&pairing, axis, settings, &mut Kept::default(), asked::progress("break-even"));
    let Some(found) = found else { return Err(Failure::Input(Vec::new())) };
    asked::progress("break-even")(1.0);
    let figure = flips::break_even(&comparison, pair, indicator, &found);
    arguments.form.show(&figure, &comparison.order, || flip_panels::crossing_file(&comparison, pair, indicator, &found))
}
