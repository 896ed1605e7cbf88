//! Licences that ask for credit wherever the numbers are shown.

/// One of them.
#[derive(Debug, PartialEq, Eq)]
pub struct Licence {
    /// How its name begins in `factors/sources.csv`; a version may follow.
    pub name: &'static str,
    /// Where its text can be read; nothing where it comes with the work.
    pub text: &'static str,
}

/// The ones we know. Public domain, facts alone and official texts ask for nothing.
const ASKING: [Licence; 4] = [
    Licence { name: "Open Government Licence v3.0", text: "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/" },
    Licence { name: "CC BY 4.0", text: "https://creativecommons.org/licenses/by/4.0/" },
    Licence { name: "ODC-By 1.0", text: "https://opendatacommons.org/licenses/by/1-0/" },
    Licence { name: "MIT", text: "" },
];

impl Licence {
    /// The licence of that name, where it asks for credit.
    ///
    /// ```
    /// use faceload_core::factors::Licence;
    /// assert!(Licence::asking("CC BY 4.0").is_some());
    /// assert!(Licence::asking("public domain (17 USC 105)").is_none());
    /// ```
    pub fn asking(name: &str) -> Option<&'static Self> {
        ASKING.iter().find(|licence| name.starts_with(licence.name))
    }
}
