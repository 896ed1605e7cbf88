//! `faceload compare`: the answer with how sure it is, or the result as JSON.

use std::io::IsTerminal;

use faceload_core::analysis::{Draws, Kept};
use faceload_report::{result, terminal};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Only these two alternatives, on the lines both can make.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    #[command(flatten)]
    draws: asked::DrawArguments,
    /// Print the result as JSON.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let settings = arguments.draws.settings(10_000)?;
    let (_, comparison) = input::compared(&arguments.order)?;
    let pair = arguments.between.as_deref().map(|text| asked::pair(&comparison, Some(text))).transpose()?;
    let pairs = pair.map_or_else(|| comparison.first_pairs(), |pair| vec![pair]);
    let mut progress = asked::progress("draws");
    let draws = Draws::make(&comparison, &pairs, settings, &mut Kept::default(), |done| progress(done as f64 / settings.number as f64));
    if arguments.json {
        let text = result::json(&comparison, &draws, pair);
        // The process ends next: a long order need not be taken apart first.
        std::mem::forget(comparison);
        return Ok(text);
    }
    let bold = std::io::stdout().is_terminal() && std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    Ok(terminal::comparison(&comparison, &draws, pair, bold))
}
