//! `faceload lines`: job by job, which alternative can make it, why not, and its loads.

use faceload_report::{job_lines, terminal};

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Print the lines as JSON.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let (_, comparison) = input::compared(&arguments.order)?;
    let jobs = job_lines::jobs(&comparison);
    if arguments.json {
        let text = serde_json::to_string_pretty(&jobs).unwrap_or_default();
        return Ok(format!("{text}\n"));
    }
    Ok(format!("{}\n{}", job_lines::text(&comparison, &jobs), terminal::standing(&comparison.order)))
}
