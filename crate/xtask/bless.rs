//! Generated texts (source list, demo numbers, sample report) are written anew; the tests only
//! compare them.

use crate::{Chore, Outcome, program};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "bless", help: "write anew the generated texts that the tests compare", run };

fn run() -> Outcome {
    let mut tests = program::cargo(&["test", "--package", "faceload", "--test", "faceload"]);
    program::run(tests.env("FACELOAD_BLESS", "1"))
}
