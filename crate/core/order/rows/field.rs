//! What a column may be taken as, and the names that say so.

/// What a column gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Field {
    Code,
    Shape,
    Size,
    Width,
    Height,
    Quantity,
    Designs,
    Legend,
    Colours,
    Label,
    Sheeting,
    Base,
    Blank,
    Sides,
    Batch,
    Stock,
}

use Field::*;

/// Every field: as commands and orders write it, what it is called, and plain equivalents in lower case without signs.
const NAMES: [(Field, &str, &str, &[&str]); 16] = [
    (
        Code,
        "code",
        "sign code",
        &[
            "signcode",
            "mutcd",
            "mutcdcode",
            "mutcdsigncode",
            "mutcdno",
            "mutcdnumber",
            "signno",
            "signnumber",
            "designation",
            "signdesignation",
        ],
    ),
    (Shape, "shape", "shape", &["signshape", "form", "faceshape"]),
    (Size, "size", "size", &["signsize", "dimensions", "dimension", "facesize", "wxh", "sizewxh", "widthxheight", "signdimensions"]),
    (Width, "width", "width", &["w", "signwidth", "facewidth"]),
    (Height, "height", "height", &["h", "signheight", "faceheight"]),
    (
        Quantity,
        "quantity",
        "quantity",
        &["qty", "count", "pieces", "pcs", "numberofsigns", "noofsigns", "signs", "howmany", "ea", "orderquantity"],
    ),
    (Designs, "designs", "designs", &["numberofdesigns", "noofdesigns"]),
    (Legend, "legend", "legend", &["signtext", "text", "message", "wording", "copy", "inscription", "signlegend"]),
    (Colours, "colours", "colours", &["colors", "colour", "color", "signcolour", "signcolor", "signcolours", "signcolors", "facecolours"]),
    (Label, "label", "label", &["name", "description", "signtype", "signname", "item", "title", "signdescription"]),
    (Sheeting, "sheeting", "sheeting", &["sheetingtype", "reflectivesheeting", "sheetingconstruction"]),
    (Base, "base", "base", &["basecolour", "basecolor", "sheetingcolour", "sheetingcolor"]),
    (Blank, "blank", "blank", &["substrate", "signblank", "backing", "blankmaterial"]),
    (Sides, "sides", "sides", &["faces", "numberofsides", "sided"]),
    (Batch, "batch", "batch", &["batchsize", "lot", "lotsize"]),
    (Stock, "stock", "made for stock", &["forstock", "madeforstock", "stocked"]),
];

impl Field {
    /// Every field.
    pub fn all() -> impl Iterator<Item = Self> {
        NAMES.iter().map(|(field, ..)| *field)
    }

    fn row(self) -> &'static (Self, &'static str, &'static str, &'static [&'static str]) {
        NAMES.iter().find(|(field, ..)| *field == self).unwrap_or(&NAMES[0])
    }

    /// As commands and orders write it.
    pub fn word(self) -> &'static str {
        self.row().1
    }

    /// What a reader sees.
    pub fn label(self) -> &'static str {
        self.row().2
    }

    /// The field of that word.
    pub fn read(word: &str) -> Option<Self> {
        NAMES.iter().find(|(_, known, ..)| *known == word).map(|(field, ..)| *field)
    }

    /// The field that a column's name means, and whether by its own word.
    pub(super) fn named(header: &str) -> Option<(Self, bool)> {
        let (name, _) = apart(header);
        let exact = NAMES.iter().find(|(_, word, label, _)| plain(word) == name || plain(label) == name).map(|row| (row.0, true));
        exact.or_else(|| NAMES.iter().find(|row| row.3.contains(&name.as_str())).map(|row| (row.0, false)))
    }
}

/// Letters and digits alone, in lower case.
fn plain(text: &str) -> String {
    text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

/// A column's name, and the unit that stands behind it: `width (in)`, `Size, mm`.
pub(super) fn apart(header: &str) -> (String, Option<&'static str>) {
    let header = header.trim().trim_end_matches([')', ']']);
    if let Some((at, _)) = header.char_indices().rev().find(|(_, c)| matches!(c, ' ' | '(' | '[' | ',' | '_')) {
        let unit = unit(header[at..].trim_start_matches([' ', '(', '[', ',', '_']));
        if unit.is_some() && !plain(&header[..at]).is_empty() {
            return (plain(&header[..at]), unit);
        }
    }
    (plain(header), None)
}

/// A unit of length as people write it, as an order writes it.
pub(super) fn unit(text: &str) -> Option<&'static str> {
    Some(match text.trim_end_matches('.').to_lowercase().as_str() {
        "in" | "inch" | "inches" | "ins" | "\"" => "in",
        "ft" | "foot" | "feet" | "'" => "ft",
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => "mm",
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => "cm",
        "m" | "metre" | "metres" | "meter" | "meters" => "m",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_met_exactly_or_by_what_it_means() {
        assert_eq!(Field::named("Size_"), Some((Size, true)));
        assert_eq!(Field::named("Sign Code"), Some((Code, true)));
        assert_eq!(Field::named("MUTCD"), Some((Code, false)));
        assert_eq!(Field::named(" QTY. "), Some((Quantity, false)));
        assert_eq!(Field::named("width (in)"), Some((Width, true)));
        assert_eq!(Field::named("X"), None);
        assert_eq!(Field::named(""), None);
    }

    #[test]
    fn every_name_means_one_field() {
        let names: Vec<String> =
            NAMES.iter().flat_map(|row| row.3.iter().map(|name| (*name).to_owned()).chain([plain(row.1), plain(row.2)])).collect();
        for name in &names {
            let fields: Vec<Field> = NAMES
                .iter()
                .filter(|row| plain(row.1) == *name || plain(row.2) == *name || row.3.contains(&name.as_str()))
                .map(|row| row.0)
                .collect();
            assert_eq!(fields.len(), 1, "{name}");
        }
        assert!(names.iter().all(|name| plain(name) == *name));
    }

    #[test]
    fn a_unit_stands_behind_the_name() {
        assert_eq!(apart("width (in)"), ("width".to_owned(), Some("in")));
        assert_eq!(apart("Size [mm]"), ("size".to_owned(), Some("mm")));
        assert_eq!(apart("Height, cm"), ("height".to_owned(), Some("cm")));
        assert_eq!(apart("in"), ("in".to_owned(), None));
    }
}
