//! `faceload sources`: the publications behind the tables, with licence and credit.

use faceload_report::source_list;

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
pub struct Arguments {
    /// Only sources, or rows citing them, that hold this word.
    word: Option<String>,
    /// A folder of own tables: rows in place of or beside the built-in ones.
    #[arg(long, value_name = "DIR")]
    factors: Option<String>,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(arguments.factors.as_deref())?;
    let word = arguments.word.as_deref().unwrap_or_default();
    let published = input::published_values(&tables)?;
    let text = source_list::text(&tables, &published, word);
    if text.is_empty() {
        return Err(Failure::Input(vec![format!(
            "`{word}` is in no source and no row where a word of the tables was wanted; leave it out to see all"
        )]));
    }
    Ok(text)
}
