//! `faceload check`: whether the tables hold together, and every demo runs on them.

use faceload_core::load::Per;
use faceload_core::order::{Boundary, demo};

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
pub struct Arguments {
    /// A folder of own tables, checked together with the built-in ones.
    folder: Option<String>,
    /// Print the fingerprint of the tables as they are read (SHA-256).
    #[arg(long)]
    fingerprint: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(arguments.folder.as_deref())?;
    for demo in demo::DEMOS {
        input::compared_with(&tables, &[demo.name.to_owned()], Per::M2, Some(Boundary::FaceWithBlank))?;
    }
    Ok(if arguments.fingerprint { format!("{}\n", tables.fingerprint) } else { String::new() })
}
