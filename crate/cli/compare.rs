//! `faceload compare`: the answer, or the result as JSON.

use std::io::IsTerminal;

use faceload_report::{result, terminal};

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Only these two alternatives, on the lines both can make.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// Print the result as JSON.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (_, comparison) = input::compared(&arguments.order)?;
    let pair = match &arguments.between {
        None => None,
        Some(text) => match text.split(',').map(str::trim).collect::<Vec<_>>()[..] {
            [first, second] if first != second => Some((input::alternative(&comparison, first)?, input::alternative(&comparison, second)?)),
            _ => {
                return Err(Failure::Input(vec![format!("`{text}` where two different alternatives were wanted; write `screen,digital`")]));
            }
        },
    };
    if arguments.json {
        let text = result::json(&comparison, pair);
        // The process ends next: a long order need not be taken apart first.
        std::mem::forget(comparison);
        return Ok(text);
    }
    let bold = std::io::stdout().is_terminal() && std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    Ok(terminal::comparison(&comparison, pair, bold))
}
