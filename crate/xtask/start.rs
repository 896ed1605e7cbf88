//! The first minute: the command line compares the demo order, and the page lies ready to be opened.

use crate::{Chore, Outcome, page, place, program};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "start", help: "build all, compare the demo order, and say where the page lies", run };

fn run() -> Outcome {
    build_command_line()?;
    page::build()?;
    println!();
    let faceload = place::command_line().display().to_string();
    program::run(&mut program::program(&faceload, &["compare"]))?;
    println!("\nthe page, to open in a browser:");
    println!("{}", place::shown(&place::page_file()));
    Ok(())
}

/// Builds the command line as a user gets it.
pub fn build_command_line() -> Outcome {
    program::run(&mut program::cargo(&["build", "--release", "--package", "faceload"]))
}
