//! The page's policy (Content Security Policy Level 3, Trusted Types): only the scripts and styles
//! that were put in run, nothing is fetched, text never becomes script.

use base64::prelude::{BASE64_STANDARD, Engine};
use sha2::{Digest, Sha256};

/// The hash of an inline script or style as the policy names it.
pub fn hash(text: &str) -> String {
    format!("'sha256-{}'", BASE64_STANDARD.encode(Sha256::digest(text)))
}

/// The policy that lets exactly these scripts and styles in.
pub fn policy(scripts: &[&str], styles: &[&str]) -> String {
    let hashes = |texts: &[&str]| -> String {
        let hashes: Vec<String> = texts.iter().map(|text| hash(text)).collect();
        if hashes.is_empty() { "'none'".to_owned() } else { hashes.join(" ") }
    };
    format!(
        "default-src 'none'; script-src {} 'wasm-unsafe-eval'; style-src {}; img-src data: blob:; \
         worker-src blob:; base-uri 'none'; form-action 'none'; \
         require-trusted-types-for 'script'; trusted-types faceload-scripts faceload-worker",
        hashes(scripts),
        hashes(styles),
    )
}

#[cfg(test)]
mod tests {
    use super::{hash, policy};

    /// The example of W3C CSP Level 3, section 8.3: `alert('Hello, world.');`.
    #[test]
    fn hash_is_that_of_the_standard() {
        let standard = "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='";
        assert_eq!(hash("alert('Hello, world.');"), standard);
    }

    #[test]
    fn each_script_and_style_is_named() {
        let text = policy(&["a", "b"], &["c"]);
        for part in ["a", "b", "c"] {
            assert!(text.contains(&hash(part)), "{part} in {text}");
        }
        assert!(!text.contains("unsafe-inline"));
    }
}
