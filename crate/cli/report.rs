//! `faceload report`: the report as one HTML file, for a board and for a critical reviewer.

use faceload_report::document::{self, Asked};

use crate::{Failure, asked, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// Look closely at these two alternatives; without it, at the first of the order's pairs.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// Look closely at this indicator.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: asked::IndicatorArgument,
    #[command(flatten)]
    draws: asked::DrawArguments,
    /// Where the report goes; `-` is standard output.
    #[arg(short, long, value_name = "FILE")]
    output: String,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let settings = arguments.draws.settings(10_000)?;
    let (tables, comparison) = input::compared(&arguments.order)?;
    let pair = arguments.between.as_deref().map(|text| asked::sharing_pair(&comparison, Some(text))).transpose()?;
    let wanted = Asked { pair, indicator: arguments.indicator.indicator(), settings };
    let html = document::report(&tables, &comparison, &wanted, asked::progress("report")).html();
    if arguments.output == "-" {
        return Ok(html);
    }
    asked::write(&arguments.output, &html, "the report")?;
    Ok(String::new())
}
