//! `faceload compare`: the answer, or the result as JSON.

use std::io::IsTerminal;

use faceload_report::{result, terminal};

use crate::{BoundaryArgument, Failure, PerArgument, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    /// The order.
    order: Option<String>,
    /// Per what loads are given.
    #[arg(long, value_enum, default_value = "m2")]
    per: PerArgument,
    /// What is counted; without it, as the order says, else the face.
    #[arg(long, value_enum)]
    boundary: Option<BoundaryArgument>,
    /// Print the result as JSON.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables()?;
    let comparison =
        input::compared(&tables, arguments.order.as_deref(), arguments.per.per(), arguments.boundary.map(BoundaryArgument::boundary))?;
    if arguments.json {
        return Ok(result::json(&comparison));
    }
    let bold = std::io::stdout().is_terminal() && std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    Ok(terminal::comparison(&comparison, bold))
}
