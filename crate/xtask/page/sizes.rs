//! How large the page is: the wasm as it runs, the wasm as a server would send it, the one file.

use super::read;
use crate::{Outcome, place, program};

/// Prints the sizes of the page that was built last.
pub fn show() -> Outcome {
    let path = place::page_folder().join("faceload.wasm");
    let wasm = read(&path)?;
    line("wasm", wasm.len());
    if program::is_there("node") {
        let script = "const z = require('zlib'), f = require('fs');\
            console.log(z.brotliCompressSync(f.readFileSync(process.argv[1])).length)";
        let mut node = program::program("node", &["-e", script]);
        let answer = program::read(node.arg(&path))?;
        let bytes = String::from_utf8_lossy(&answer).trim().parse();
        line("wasm, brotli", bytes.map_err(|_| "node gave no size".to_owned())?);
    } else {
        line("wasm, deflated", miniz_oxide::deflate::compress_to_vec(&wasm, 10).len());
    }
    line("one-file page", read(&place::page_file())?.len());
    Ok(())
}

fn line(what: &str, bytes: usize) {
    println!("{what:<14} {bytes:>9} bytes");
}
