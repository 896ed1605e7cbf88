//! `faceload check`: whether the tables hold together, and every demo runs on them.

use faceload_core::load::Per;
use faceload_core::order::{Boundary, demo};

use crate::{Failure, input};

/// Runs it.
pub fn run() -> Result<String, Failure> {
    let tables = input::tables()?;
    for demo in demo::DEMOS {
        input::compared(&tables, Some(demo.name), Per::M2, Some(Boundary::FaceWithBlank))?;
    }
    Ok(String::new())
}
