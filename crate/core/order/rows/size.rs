//! Sizes as people write them: `12" X 18"`, `30"`, `24x30`, `2' x 3'`, `750 mm`, `8 1/2 x 11 in`, two in a cell.

use super::cell;
use super::field::unit;

/// One size, its lengths as an order writes them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct FaceSize {
    pub width: Length,
    pub height: Option<Length>,
    /// Whether the cell says which is which.
    pub stated: bool,
}

/// A number and its unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Length {
    pub number: String,
    pub unit: String,
}

impl Length {
    /// As an order writes it.
    pub fn text(&self) -> String {
        format!("{} {}", self.number, self.unit)
    }
}

impl FaceSize {
    /// As an order writes it.
    pub fn text(&self) -> String {
        match &self.height {
            None => self.width.text(),
            Some(height) if height.unit == self.width.unit => format!("{} x {}", self.width.number, height.text()),
            Some(height) => format!("{} x {}", self.width.text(), height.text()),
        }
    }
}

/// Why a cell is no size: what was wanted, and the way out.
pub(super) type Unread = (&'static str, &'static str);

const SIZE: &str = "a size such as `30 in` or `24 x 30 in`";
const WRITE: &str = "write width x height with their unit, one sign a row";
const UNIT: Unread = (
    "a size with its unit",
    "write `24 x 30 in`, put the unit into the column's name, such as `size (in)`, or say which unit holds where it is missing",
);

#[derive(Debug, Clone, Copy, PartialEq)]
enum Mark {
    Number(f64),
    Unit(&'static str),
    By,
    /// `W` or `wide`.
    Wide,
    /// `H` or `high`.
    High,
    /// Between two sizes; a slash may mean something else.
    Apart {
        slash: bool,
    },
    /// Between feet and inches.
    Dash,
}

/// The sizes of a cell.
pub(super) fn read(text: &str, usual: Option<&str>, decimal_comma: bool) -> Result<Vec<FaceSize>, Unread> {
    let marks = marks(text, decimal_comma)?;
    let mut sizes = Vec::new();
    let mut bare = false;
    let mut slash = false;
    for part in marks.split(|mark| matches!(mark, Mark::Apart { .. })) {
        if part.is_empty() {
            continue;
        }
        let (size, without_unit) = one(part, usual)?;
        bare |= without_unit && size.height.is_none();
        sizes.push(size);
    }
    slash |= marks.contains(&Mark::Apart { slash: true });
    if bare && slash && sizes.len() > 1 {
        return Err(("one size, or sizes with their units", "a slash may mean `by` or `and`: write `24 x 30 in`, or a row for each sign"));
    }
    if sizes.is_empty() { Err((SIZE, WRITE)) } else { Ok(sizes) }
}

/// One size, and whether it came without any unit.
fn one(marks: &[Mark], usual: Option<&str>) -> Result<(FaceSize, bool), Unread> {
    let mut sides = Vec::new();
    for part in marks.split(|mark| *mark == Mark::By) {
        sides.push(side(part)?);
    }
    if sides.len() > 2 {
        return Err(("width and height alone", "leave the thickness out: it belongs to the blank"));
    }
    let given = sides.iter().find_map(|(_, unit, _)| *unit);
    let Some(unit) = given.or(usual) else { return Err(UNIT) };
    let length = |(number, own, _): &(String, Option<&'static str>, Option<Mark>)| Length {
        number: number.clone(),
        unit: own.unwrap_or(unit).to_owned(),
    };
    let feet_by_inches = |a: &Length, b: &Length| {
        let inches = |length: &Length| length.number.parse::<f64>().unwrap_or(0.0) * if length.unit == "ft" { 12.0 } else { 1.0 };
        [a, b].iter().all(|length| matches!(length.unit.as_str(), "ft" | "in"))
            && a.unit != b.unit
            && inches(a).max(inches(b)) > 12.0 * inches(a).min(inches(b))
    };
    let mut lengths = sides.iter().map(length);
    let (Some(mut width), mut height) = (lengths.next(), lengths.next()) else { return Err((SIZE, WRITE)) };
    if height.as_ref().is_some_and(|height| feet_by_inches(&width, height)) {
        return Err((
            "width and height of one face",
            "feet by inches, and more than twelve times as long as high: write both in inches if those were meant",
        ));
    }
    let marked = (sides[0].2, sides.get(1).and_then(|side| side.2));
    if let (Some(Mark::High), _) | (_, Some(Mark::Wide)) = marked
        && let Some(other) = height.take()
    {
        height = Some(std::mem::replace(&mut width, other));
    }
    let stated = height.is_some() && (marked.0.is_some() || marked.1.is_some());
    Ok((FaceSize { width, height, stated }, given.is_none()))
}

/// One length: its number, its unit where it has one, and whether it is marked as width or height.
fn side(marks: &[Mark]) -> Result<(String, Option<&'static str>, Option<Mark>), Unread> {
    let (marks, marked) = match marks {
        [first @ .., last @ (Mark::Wide | Mark::High)] => (first, Some(*last)),
        all => (all, None),
    };
    let number = |number: f64| format!("{number}");
    match marks {
        [Mark::Number(one)] => Ok((number(*one), None, marked)),
        [Mark::Number(one), Mark::Unit(unit)] => Ok((number(*one), Some(unit), marked)),
        [Mark::Number(feet), Mark::Unit("ft"), Mark::Number(inches), Mark::Unit("in")]
        | [Mark::Number(feet), Mark::Unit("ft"), Mark::Dash, Mark::Number(inches), Mark::Unit("in")]
            if feet.fract() == 0.0 && *inches < 12.0 =>
        {
            Ok((number(feet * 12.0 + inches), Some("in"), marked))
        }
        _ => Err((SIZE, WRITE)),
    }
}

/// The marks of a text.
fn marks(text: &str, decimal_comma: bool) -> Result<Vec<Mark>, Unread> {
    let text = plain(text);
    let mut rest = text.as_str();
    let mut marks = Vec::new();
    while let Some(first) = rest.chars().next() {
        let (mark, length) = match first {
            '0'..='9' | '.' => {
                let end = rest.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','))).unwrap_or(rest.len());
                // A comma at the end stands between sizes; a point ends a shortened word.
                let digits = rest[..end].trim_end_matches(',').strip_suffix('.').unwrap_or(rest[..end].trim_end_matches(','));
                if digits.is_empty() {
                    (None, 1)
                } else {
                    let whole = cell::number(digits, decimal_comma)
                        .map_err(|_| if digits.contains([',', '.']) { (SIZE, cell::mark_help(decimal_comma)) } else { (SIZE, WRITE) })?;
                    let (number, further) = with_fraction(whole, &rest[digits.len()..]);
                    (Some(Mark::Number(number)), digits.len() + further)
                }
            }
            'a'..='z' => {
                let end = rest.find(|c: char| !c.is_ascii_lowercase()).unwrap_or(rest.len());
                // `24inx30in`
                let word = &rest[..end];
                let word = if word.len() > 1 && unit(word).is_none() { word.strip_suffix('x').unwrap_or(word) } else { word };
                (Some(named(word).ok_or((SIZE, WRITE))?), word.len())
            }
            '"' => (Some(Mark::Unit("in")), 1),
            '\'' => (Some(Mark::Unit("ft")), 1),
            '/' => (Some(Mark::Apart { slash: true }), 1),
            ';' | ',' | '&' | '+' | '\n' => (Some(Mark::Apart { slash: false }), 1),
            '-' => (Some(Mark::Dash), 1),
            c if c.is_whitespace() => (None, c.len_utf8()),
            _ => return Err((SIZE, WRITE)),
        };
        marks.extend(mark);
        rest = rest.get(length..).unwrap_or_default();
    }
    Ok(marks)
}

/// In lower case, with the signs that word processors put in place of marks of inches and feet.
fn plain(text: &str) -> String {
    let signs = |c: char| match c {
        '\u{201c}' | '\u{201d}' | '\u{201e}' | '\u{2033}' => '"',
        '\u{2018}' | '\u{2019}' | '\u{2032}' | '`' => '\'',
        '\u{d7}' | '*' => 'x',
        '\u{2013}' => '-',
        other => other.to_ascii_lowercase(),
    };
    text.chars().map(signs).collect::<String>().replace("''", "\"")
}

fn named(word: &str) -> Option<Mark> {
    Some(match word {
        "x" | "by" => Mark::By,
        "w" | "wide" | "width" => Mark::Wide,
        "h" | "high" | "height" | "tall" => Mark::High,
        "and" => Mark::Apart { slash: false },
        other => Mark::Unit(unit(other)?),
    })
}

/// A number with the fraction behind it, such as `8 1/2` or `8-1/2`, and how long that was.
fn with_fraction(whole: f64, rest: &str) -> (f64, usize) {
    let inside = rest.strip_prefix([' ', '-']).unwrap_or_default();
    let digits = |text: &str| text.bytes().take_while(u8::is_ascii_digit).count();
    let above = digits(inside);
    let Some(under) = inside.get(above..).and_then(|rest| rest.strip_prefix('/')) else { return (whole, 0) };
    let below = digits(under);
    match (inside[..above].parse::<f64>(), under[..below].parse::<f64>()) {
        (Ok(a), Ok(b)) if whole.fract() == 0.0 && [2.0, 4.0, 8.0, 16.0].contains(&b) && a < b => (whole + a / b, 2 + above + below),
        _ => (whole, 0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sizes(text: &str) -> Vec<String> {
        read(text, None, false).map(|sizes| sizes.iter().map(FaceSize::text).collect()).unwrap_or_default()
    }

    #[test]
    fn sizes_are_read_as_people_write_them() {
        for (text, wanted) in [
            ("12\" X 18\"", "12 x 18 in"),
            ("30\"", "30 in"),
            ("24''X18''", "24 x 18 in"),
            ("24 in x 30 in", "24 x 30 in"),
            ("24inx30in", "24 x 30 in"),
            ("24 x 30 in.", "24 x 30 in"),
            ("24 by 30 inches", "24 x 30 in"),
            ("2' x 3'", "2 x 3 ft"),
            ("2'-6\" x 3'", "30 in x 3 ft"),
            ("10' X 48\"", "10 ft x 48 in"),
            ("750 mm", "750 mm"),
            ("1200×900 mm", "1200 x 900 mm"),
            ("8 1/2\" x 11\"", "8.5 x 11 in"),
            ("8-1/2 x 11 in", "8.5 x 11 in"),
            ("18\" X 60\"\n", "18 x 60 in"),
            ("8\" X 36", "8 x 36 in"),
            ("18”H x 24”W", "24 x 18 in"),
            (".75 m", "0.75 m"),
        ] {
            assert_eq!(sizes(text), [wanted], "{text}");
        }
    }

    #[test]
    fn two_sizes_in_a_cell_are_two_signs() {
        for text in ["6\" X 30\"/ 8\" X 36\"", "6\" X 30\"\n8\" X 36\"", "6x30 in, 8x36 in", "6x30in & 8x36in", "6x30 in and 8x36 in"] {
            assert_eq!(sizes(text), ["6 x 30 in", "8 x 36 in"], "{text}");
        }
    }

    #[test]
    fn what_may_mean_two_things_is_refused() {
        let why = |text: &str, usual: Option<&str>, comma: bool| read(text, usual, comma).unwrap_err().1;
        assert!(why("12x18", None, false).starts_with("write `24 x 30 in`, put the unit"));
        assert!(why("8\" X 36'", None, false).starts_with("feet by inches"));
        assert!(why("1,200 mm", None, false).starts_with("a comma may mean"));
        assert!(why("1.200 mm", None, true).starts_with("where a comma is the decimal mark"));
        assert!(why("24/30", Some("in"), false).starts_with("a slash may mean"));
        assert!(why("24 x 30 x .080 in", None, false).starts_with("leave the thickness out"));
        for text in ["large", "24 x", "x 30 in", "30 in 24", "-30 in", "30 furlong", "24 x 30 sq", "nan in", "1e5 in", "..", "🛑"] {
            assert!(read(text, None, false).is_err(), "{text}");
        }
    }

    #[test]
    fn a_unit_and_a_decimal_comma_are_choices() {
        assert_eq!(read("24x30", Some("in"), false).unwrap()[0].text(), "24 x 30 in");
        assert_eq!(read("24x30 cm", Some("in"), false).unwrap()[0].text(), "24 x 30 cm");
        assert_eq!(read("12,5 x 18 cm", None, true).unwrap()[0].text(), "12.5 x 18 cm");
    }
}
