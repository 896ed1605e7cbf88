//! What the build machine runs.

use crate::{Chore, test};

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "ci", help: "what the build machine runs: the same as test", run: test::run };
