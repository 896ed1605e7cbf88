//! `faceload map`: what the draws say of a pair over two things varied at once.

use faceload_core::analysis::{Kept, Over, Pairing, map};
use faceload_report::{flip_panels, flips};

use crate::asked::{self, Looked};
use crate::{Failure, input};

/// Values along each side of a map.
const SIDE: usize = 9;

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    looked: asked::PairArguments,
    /// The two that vary, across and down: quantity, batch, colours, designs, life, or ids of inputs.
    #[arg(long, value_name = "X,Y", default_value = "quantity,colours")]
    over: String,
    #[command(flatten)]
    draws: asked::DrawArguments,
    #[command(flatten)]
    form: asked::FormArguments,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let Looked { tables, comparison, pair, indicator } = arguments.looked.looked_at()?;
    let axis = |name: &str| {
        Over::read(name, &tables)
            .and_then(|over| over.axis(&comparison.order, &tables, None, SIDE))
            .map_err(|fault| asked::unvaried("--over", &fault))
    };
    let (across, down) = match arguments.over.split(',').map(str::trim).collect::<Vec<_>>()[..] {
        [x, y] if x != y => (axis(x)?, axis(y)?),
        _ => {
            return Err(Failure::Input(vec![format!(
                "--over: `{}` where two different things were wanted; write `quantity,colours`",
                arguments.over
            )]));
        }
    };
    let settings = arguments.draws.scan(500)?;
    let pairing = Pairing::of(&tables, &comparison, pair.0, pair.1, indicator);
    let Some(found) = map(&pairing, across, down, settings, &mut Kept::default(), asked::progress("map")) else {
        return Err(Failure::Input(Vec::new()));
    };
    let figure = flips::map(&comparison, pair, indicator, &found);
    arguments.form.show(&figure, &comparison.order, || flip_panels::map_file(&comparison, pair, indicator, &found))
}
