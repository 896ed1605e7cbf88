//! A fingerprint of the tables as read: two results with the same one rest on the same rows.
//!
//! Every row is written as a line, the name of its file and its cells apart by tabs; the lines stand in the
//! order of their bytes, each ended by a line feed; SHA-256 (FIPS 180-4) of that text. So quotes around a cell,
//! the order of the rows and the ends of the lines do not count, and any cell does. No cell holds a tab or a
//! line end: the reader refuses them.

use std::collections::BTreeMap;
use std::fmt;

use sha2::{Digest, Sha256};

use crate::in_order;

/// Digits of the short form.
const SHORT: usize = 12;

/// The fingerprint, in hexadecimal.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Fingerprint(String);

impl Fingerprint {
    /// The first digits: enough to tell by eye that two differ.
    pub fn short(&self) -> &str {
        self.0.get(..SHORT).unwrap_or_default()
    }
}

impl fmt::Display for Fingerprint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// The kinds of row whose keys must differ from each other, but not from those of another kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Keyed {
    /// Rows of practice and of factors, by id.
    Input,
    /// Carriers, by id.
    Carrier,
    /// Sources, by key.
    Source,
    /// Sign codes, by code.
    Sign,
    /// Solvents, by name.
    Solvent,
}

/// The rows as they are written, by their keys.
#[derive(Debug, Clone, Default)]
pub(super) struct Written(BTreeMap<(Keyed, String), String>);

impl Written {
    /// Puts a row in place of the one with its key, or beside the others; whether anything is now other than before.
    pub fn put(&mut self, keyed: Keyed, key: &str, file: &str, cells: &[&str]) -> bool {
        let line = format!("{file}\t{}", cells.join("\t"));
        let known = self.0.entry((keyed, key.to_owned())).or_default();
        let changed = *known != line;
        *known = line;
        changed
    }

    /// The fingerprint of all of them.
    pub fn fingerprint(&self) -> Fingerprint {
        let mut lines: Vec<&str> = self.0.values().map(String::as_str).collect();
        in_order(&mut lines, Ord::cmp);
        let mut hash = Sha256::new();
        for line in lines {
            hash.update(line);
            hash.update("\n");
        }
        Fingerprint(hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_the_sha_256_of_the_sorted_lines() {
        let mut written = Written::default();
        assert!(written.put(Keyed::Source, "b", "b.csv", &["b", "2"]));
        assert!(written.put(Keyed::Input, "a", "a.csv", &["a", "1"]));
        // printf 'a.csv\ta\t1\nb.csv\tb\t2\n' | sha256sum
        assert_eq!(written.fingerprint().to_string(), "22eb9a2be1611e834695c4940d30848abab87289d151cb8b8bd9f90a6b79b03c");
        assert_eq!(written.fingerprint().short(), &"22eb9a2be1611e834695c4940d30848abab87289d151cb8b8bd9f90a6b79b03c"[..12]);
        assert!(!written.put(Keyed::Input, "a", "a.csv", &["a", "1"]));
        assert!(written.put(Keyed::Input, "a", "a.csv", &["a", "1.0"]));
    }
}
