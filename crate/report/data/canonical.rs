//! The canonical bytes of a JSON tree, and their SHA-256 (FIPS 180-4).
//!
//! Members stand in the order of the bytes of their names; no white space; numbers and texts as `serde_json`
//! writes them; UTF-8. So neither the order of members nor the layout of a file counts, and any value does.

use faceload_core::in_order;
use serde_json::{Map, Value};
use sha2::{Digest, Sha256};

/// The canonical text of a tree.
///
/// ```
/// use faceload_report::data::canonical;
/// let tree = serde_json::json!({ "b": [1, 2.5], "a": { "d": null, "c": "x" } });
/// assert_eq!(canonical(&tree), r#"{"a":{"c":"x","d":null},"b":[1,2.5]}"#);
/// ```
pub fn canonical(tree: &Value) -> String {
    sorted(tree).to_string()
}

fn sorted(tree: &Value) -> Value {
    match tree {
        Value::Object(map) => {
            let mut members: Vec<(&String, &Value)> = map.iter().collect();
            in_order(&mut members, |a, b| a.0.cmp(b.0));
            Value::Object(members.into_iter().map(|(name, value)| (name.clone(), sorted(value))).collect::<Map<_, _>>())
        }
        Value::Array(list) => Value::Array(list.iter().map(sorted).collect()),
        other => other.clone(),
    }
}

/// SHA-256 in hexadecimal.
///
/// ```
/// use faceload_report::data::sha_256;
/// // FIPS 180-4, example of one block.
/// assert_eq!(sha_256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
/// ```
pub fn sha_256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
