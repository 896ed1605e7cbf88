//! The page of the tables, `factors/README.md`: written anew from the tables; the tests only compare it.

use crate::{Chore, Outcome, program};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "tables", help: "write anew factors/README.md, the page of the tables", run };

fn run() -> Outcome {
    let mut tests = program::cargo(&["test", "--package", "faceload", "--test", "faceload", "tables_page"]);
    program::run(tests.env("FACELOAD_BLESS", "1"))
}
