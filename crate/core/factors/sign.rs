//! Standard sign codes: shape and colours as measured on the published artwork.

use super::Grade;
use super::row::Row;
use crate::quantity::read_number;

/// The shapes, by the words of an order.
pub(crate) const SHAPES: [&str; 8] = ["rectangle", "square", "diamond", "octagon", "triangle", "disc", "pentagon", "shield"];

/// The colours, by the words of an order.
pub(crate) const COLOURS: [&str; 13] = [
    "white",
    "yellow",
    "orange",
    "fluorescent yellow",
    "fluorescent yellow-green",
    "fluorescent orange",
    "fluorescent pink",
    "red",
    "green",
    "blue",
    "brown",
    "purple",
    "black",
];

/// How many legends a code stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Legend {
    /// One: the code fixes it.
    One,
    /// A few, such as the speeds of a limit.
    Few,
    /// Every sign its own, such as street names.
    Each,
}

impl Legend {
    fn read(text: &str) -> Option<Self> {
        Some(match text {
            "one" => Self::One,
            "few" => Self::Few,
            "each" => Self::Each,
            _ => return None,
        })
    }
}

/// One row of `factors/sign-codes.csv`.
#[derive(Debug, Clone, PartialEq)]
pub struct SignRow {
    /// The code, such as `R1-1`.
    pub code: String,
    /// Its everyday name.
    pub item: String,
    /// The shape, in the words of an order.
    pub shape: String,
    /// Height over width.
    pub height_over_width: f64,
    /// The corner radius over the width.
    pub corner_over_width: f64,
    /// Colour and share of the face, in per cent.
    pub colours: Vec<(String, f64)>,
    /// Metres cut round legend and border, and the width in metres they were measured at.
    pub cut: Option<(f64, f64)>,
    /// Characters, where the design has them.
    pub characters: Option<u32>,
    /// How many legends it stands for.
    pub legend: Legend,
    /// The colour at the edge.
    pub rim: String,
    /// The key of the source.
    pub source: String,
    /// The place in it.
    pub place: String,
    /// The grade.
    pub grade: Grade,
}

impl SignRow {
    /// Reads a row, and refuses what no sign can be.
    pub(super) fn read(row: &mut Row<'_>) -> Self {
        let colour = |text: &str| COLOURS.contains(&text).then(|| text.to_owned());
        let shape = |text: &str| SHAPES.contains(&text).then(|| text.to_owned());
        let shares = row.text("colours");
        let colours = shares.split(';').map(|part| {
            let (colour, share) = part.trim().rsplit_once(' ')?;
            Some((colour.to_owned(), read_number(share).ok().filter(|share| *share > 0.0)?))
        });
        let colours: Option<Vec<(String, f64)>> = colours.collect();
        if colours.is_none() {
            row.refuse("colours", "colours with their shares above nothing", "write `red 76.2; white 23.8`");
        }
        let sign = Self {
            code: row.name("code", |c| c.is_ascii_alphanumeric() || c == '-', "a code of letters, digits and `-`"),
            item: row.filled("item"),
            shape: row.word("shape", shape, "a shape of sign faces", String::new()),
            height_over_width: row.number("height_over_width"),
            corner_over_width: row.number("corner_over_width"),
            colours: colours.unwrap_or_default(),
            cut: (!row.text("cut_length").is_empty()).then(|| (row.number("cut_length"), row.number("measured_width"))),
            characters: (!row.text("characters").is_empty()).then(|| row.number("characters") as u32),
            legend: row.word("legend", Legend::read, "one, few or each", Legend::One),
            rim: row.word("rim", colour, "a colour of sign faces", String::new()),
            source: row.filled("source"),
            place: row.filled("place"),
            grade: row.word("grade", |text| Grade::read(text).filter(|grade| *grade != Grade::Own), "A, B, C or D", Grade::D),
        };
        for (column, number, least) in
            [("height_over_width", sign.height_over_width, f64::MIN_POSITIVE), ("corner_over_width", sign.corner_over_width, 0.0)]
        {
            if number < least {
                row.refuse(column, "a number above nothing", "measure it on the artwork");
            }
        }
        if sign.cut.is_some_and(|(cut, at)| cut <= 0.0 || at <= 0.0) {
            let column = if row.number("cut_length") <= 0.0 { "cut_length" } else { "measured_width" };
            row.refuse(column, "a length above nothing", "give both in metres, or leave both out");
        }
        if sign.cut.is_none() && !row.text("measured_width").is_empty() {
            row.refuse("cut_length", "the length that was cut at this width", "give both in metres, or leave both out");
        }
        let characters = row.text("characters");
        if !characters.is_empty() && characters.parse::<u32>().is_err() {
            row.refuse("characters", "a whole number", "count the characters, or leave the cell empty");
        }
        if sign.colours.iter().any(|(name, _)| colour(name).is_none()) {
            row.refuse("colours", "colours of sign faces", "use the colours of an order");
        }
        if !sign.colours.is_empty() && !(99.0..=101.0).contains(&sign.colours.iter().map(|(_, share)| share).sum::<f64>()) {
            row.refuse("colours", "shares that sum to 100", "list every colour with its share, apart by `;`");
        }
        sign
    }
}
