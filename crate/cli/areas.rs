//! `faceload areas`: the electricity areas, fuels, freight and vehicles that an order may name.

use faceload_report::carrier_list;

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
pub struct Arguments {
    /// Only those whose id, name, country or year holds this word.
    word: Option<String>,
    /// A folder of own tables: rows in place of or beside the built-in ones.
    #[arg(long, value_name = "DIR")]
    factors: Option<String>,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(arguments.factors.as_deref())?;
    let word = arguments.word.as_deref().unwrap_or_default();
    let text = carrier_list::text(&tables, word);
    if text.is_empty() {
        return Err(Failure::Input(vec![format!(
            "`{word}` is in no area, fuel or vehicle where a word of an id, a name, a country or a year was wanted; leave it out to see all"
        )]));
    }
    Ok(text)
}
