//! Rounding to an interval: a value is given to the place of the second digit of its interval's half width, half to
//! even on the decimal digits (ISO 80000-1, Annex B, rule A; GUM 7.2.6).

use super::group;

/// The digits of a number, its first place, and whether it is negative.
struct Digits {
    negative: bool,
    digits: Vec<u8>,
    /// The power of ten of the first digit.
    first: i32,
}

impl Digits {
    /// The shortest digits that give the number back.
    fn of(value: f64) -> Self {
        let text = format!("{value:e}");
        let (mantissa, exponent) = text.split_once('e').unwrap_or((&text, "0"));
        let digits = mantissa.bytes().filter(u8::is_ascii_digit).map(|digit| digit - b'0').collect();
        Self { negative: value < 0.0, digits, first: exponent.parse().unwrap_or(0) }
    }

    /// Rounds so that the last digit stands at a place.
    fn rounded(mut self, place: i32) -> Self {
        let keep = (self.first - place + 1).max(0) as usize;
        if place > self.first + 1 {
            return Self { digits: vec![0], first: place, ..self };
        }
        if keep >= self.digits.len() {
            return self;
        }
        let rest = self.digits.split_off(keep);
        let half = rest[0] == 5 && rest[1..].iter().all(|digit| *digit == 0);
        let odd = self.digits.last().is_some_and(|digit| digit % 2 == 1);
        if rest[0] > 5 || (rest[0] == 5 && (!half || odd)) {
            let mut at = keep;
            loop {
                if at == 0 {
                    self.digits.insert(0, 1);
                    self.first += 1;
                    break;
                }
                at -= 1;
                if self.digits[at] < 9 {
                    self.digits[at] += 1;
                    break;
                }
                self.digits[at] = 0;
            }
        }
        if self.digits.is_empty() {
            self.digits.push(0);
            self.first = place;
        }
        self
    }

    fn written(&self, place: i32) -> String {
        let at = |power: i32| usize::try_from(self.first - power).ok().and_then(|at| self.digits.get(at)).copied().unwrap_or(0);
        let mut text = String::new();
        for power in (0..=self.first.max(0)).rev() {
            text.push(char::from(b'0' + at(power)));
        }
        if place < 0 {
            text.push('.');
            for power in (place..0).rev() {
                text.push(char::from(b'0' + at(power)));
            }
        }
        let zero = text.bytes().all(|byte| matches!(byte, b'0' | b'.'));
        group(&if self.negative && !zero { format!("-{text}") } else { text })
    }
}

/// The place (a power of ten) of the last of so many significant digits of a width.
///
/// ```
/// use faceload_core::quantity::last_place;
/// assert_eq!(last_place(38.4, 2), Some(0));
/// assert_eq!(last_place(0.0996, 2), Some(-2)); // 0.10
/// assert_eq!(last_place(0.0, 2), None);
/// ```
pub fn last_place(width: f64, digits: i32) -> Option<i32> {
    if width == 0.0 || !width.is_finite() {
        return None;
    }
    let first = Digits::of(width).first;
    // A width such as 0.0996 is 0.10 with two digits: its first place is one higher.
    Some(Digits::of(width).rounded(first - digits + 1).first - digits + 1)
}

/// Writes a value with its last digit at a place.
///
/// ```
/// use faceload_core::quantity::write_to_place;
/// assert_eq!(write_to_place(1234.567, 0), "1\u{202f}235");
/// assert_eq!(write_to_place(12.345, -1), "12.3");
/// assert_eq!(write_to_place(-3.14159, -2), "\u{2212}3.14");
/// assert_eq!(write_to_place(0.004, -2), "0.00");
/// ```
pub fn write_to_place(value: f64, place: i32) -> String {
    Digits::of(value).rounded(place).written(place)
}
