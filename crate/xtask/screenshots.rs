//! The page as it looks, for those who look at it: widths, themes, forced colours, dialogs, paper.

use crate::{Chore, Outcome, page, program, test::install};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "screenshots", help: "build the page and write how it looks to target/screenshots", run };

fn run() -> Outcome {
    install::all_of_the_page()?;
    page::build()?;
    program::run(&mut program::program("node", &["tests/page/screenshots.mjs"]))
}
