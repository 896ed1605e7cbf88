//! How large the page is: the wasm as it runs, the wasm as a server would send it, the one file.

use super::read;
use crate::{Outcome, place, program};

/// A size of the page that was built last.
pub struct Size {
    /// What it is of.
    pub what: &'static str,
    /// In bytes.
    pub bytes: usize,
}

/// The wasm as a server would send it, packed by brotli at its strongest.
pub const PACKED: &str = "wasm, brotli";
/// The page.
pub const ONE_FILE: &str = "one-file page";

/// The sizes of the page that was built last.
pub fn sizes() -> Result<Vec<Size>, String> {
    let path = place::page_folder().join("faceload.wasm");
    let wasm = read(&path)?;
    let packed = if program::is_there("node") {
        let script = "const z = require('zlib'), f = require('fs');\
            console.log(z.brotliCompressSync(f.readFileSync(process.argv[1])).length)";
        let mut node = program::program("node", &["-e", script]);
        let answer = program::read(node.arg(&path))?;
        let bytes = String::from_utf8_lossy(&answer).trim().parse();
        Size { what: PACKED, bytes: bytes.map_err(|_| "node gave no size".to_owned())? }
    } else {
        Size { what: "wasm, deflated", bytes: miniz_oxide::deflate::compress_to_vec(&wasm, 10).len() }
    };
    let one_file = Size { what: ONE_FILE, bytes: read(&place::page_file())?.len() };
    Ok(vec![Size { what: "wasm", bytes: wasm.len() }, packed, one_file])
}

/// Prints them.
pub fn show() -> Outcome {
    for Size { what, bytes } in sizes()? {
        println!("{what:<14} {bytes:>9} bytes");
    }
    Ok(())
}
