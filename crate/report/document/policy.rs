//! The policy of the report's own file: it runs nothing, asks for nothing, and takes one style sheet, named by its hash.

use sha2::{Digest, Sha256};

/// The policy that lets exactly this style sheet in.
pub fn policy(style: &str) -> String {
    format!("default-src 'none'; style-src 'sha256-{}'; base-uri 'none'; form-action 'none'", base64(&Sha256::digest(style)))
}

/// Base64 with padding (RFC 4648, 4).
fn base64(bytes: &[u8]) -> String {
    const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let groups = bytes.chunks(3).flat_map(|group| {
        let whole = (0..3).fold(0_usize, |sum, at| sum << 8 | usize::from(group.get(at).copied().unwrap_or(0)));
        (0..4).map(move |at| if at > group.len() { '=' } else { char::from(LETTERS[whole >> (18 - 6 * at) & 63]) })
    });
    groups.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The example of W3C CSP Level 3, section 8.3, and those of RFC 4648, section 10.
    #[test]
    fn hash_and_letters_are_those_of_the_standards() {
        assert!(policy("alert('Hello, world.');").contains("style-src 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=';"));
        for (text, coded) in [("", ""), ("f", "Zg=="), ("fo", "Zm8="), ("foo", "Zm9v"), ("foobar", "Zm9vYmFy")] {
            assert_eq!(base64(text.as_bytes()), coded);
        }
    }
}
