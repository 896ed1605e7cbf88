//! Where things lie: the repository, cargo's target folder, and what the page chore writes into it.

use std::path::{Path, PathBuf};

/// The repository's root folder.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// Cargo's target folder: `target`, or where `CARGO_TARGET_DIR` says.
pub fn target() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => std::path::absolute(&folder).unwrap_or_else(|_| PathBuf::from(folder)),
        None => root().join("target"),
    }
}

/// The folder of the page chore.
pub fn page_folder() -> PathBuf {
    target().join("page")
}

/// The page: one file.
pub fn page_file() -> PathBuf {
    page_folder().join("faceload.html")
}

/// The same wasm with glue for Node, for the check that native and wasm give the same bytes.
pub fn node_folder() -> PathBuf {
    page_folder().join("node")
}

/// The release build of the command line.
pub fn command_line() -> PathBuf {
    target().join("release").join(format!("faceload{}", std::env::consts::EXE_SUFFIX))
}

/// A path as a reader types it: from the root where it lies inside.
pub fn shown(path: &Path) -> String {
    path.strip_prefix(root()).unwrap_or(path).display().to_string()
}
