//! The page's door.
use wasm_bindgen::prelude::*;
/// Placeholder until the core stands.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}
