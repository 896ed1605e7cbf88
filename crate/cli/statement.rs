//! `faceload statement`: the text about a pair that may be sent, or why none may; and whether a sentence of one's own may.

use faceload_core::analysis::{Draws, Kept};
use faceload_report::claims::{Around, check, statement::statement};
use faceload_report::terminal;

use crate::asked::{self, IndicatorArgument};
use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// These two alternatives; without it, the first of the order's pairs.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// The indicator that the statement begins with; the others follow in it.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: IndicatorArgument,
    #[command(flatten)]
    draws: asked::DrawArguments,
    /// Print it as JSON.
    #[arg(long)]
    json: bool,
    /// Instead, look through a sentence of your own for what may not be claimed.
    #[arg(long, value_name = "SENTENCE", conflicts_with_all = ["between", "json"])]
    wording: Option<String>,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let settings = arguments.draws.settings(10_000)?;
    let (_, comparison) = input::compared(&arguments.order)?;
    if let Some(sentence) = &arguments.wording {
        let ids: Vec<&str> = comparison.order.alternatives.iter().map(|alternative| alternative.id.as_str()).collect();
        return looked_through(sentence, &ids);
    }
    let (a, b) = asked::pair(&comparison, arguments.between.as_deref())?;
    let mut progress = asked::progress("draws");
    let draws = Draws::make(&comparison, &[(a, b)], settings, &mut Kept::default(), |done| progress(done as f64 / settings.number as f64));
    let statement = statement(&comparison, &draws, (a, b), arguments.indicator.indicator());
    let Some(text) = &statement.text else {
        let [first, second] = &statement.between;
        let lead = format!("no statement about {first} and {second} may be sent:");
        return Err(Failure::Input(std::iter::once(lead).chain(statement.why_none).collect()));
    };
    if arguments.json {
        return Ok(statement.json());
    }
    Ok(terminal::paragraph(text))
}

/// What the guard says of a sentence that may name these alternatives.
fn looked_through(sentence: &str, ids: &[&str]) -> Result<String, Failure> {
    let refused = check(sentence, Around::Alone(ids));
    if refused.is_empty() {
        return Ok(
            "No rule here speaks against it. That is no clearance and no legal advice: whoever sends it answers for it.\n".to_owned()
        );
    }
    Err(Failure::Input(refused.iter().map(ToString::to_string).collect()))
}
