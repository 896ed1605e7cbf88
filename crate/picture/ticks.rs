//! Round ticks: steps of 1, 2 or 5 times a power of ten, as whole numbers of steps, so that the
//! printed number is exact and no float is rounded for print.

/// One tick of an axis.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Tick {
    /// Where it stands.
    pub value: f64,
    /// Its number as printed.
    pub text: String,
}

/// An axis that starts and ends at a tick or half a step beyond one.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Scale {
    pub low: f64,
    pub high: f64,
    pub ticks: Vec<Tick>,
}

impl Scale {
    /// The share of the axis left of `value`: 0 at its start, 1 at its end.
    pub fn share(&self, value: f64) -> f64 {
        (value - self.low) / (self.high - self.low)
    }
}

/// Spans below this are drawn as nothing.
const SMALLEST: f64 = 1e-200;

/// The scale that holds `low`, `high` and zero, with at most `most` steps and at least three
/// ticks (`most` is two or more). Its ends are the half steps around the data, or the whole ones
/// where the half ones hold too few ticks. A span of nothing gets the single tick `0`.
pub(crate) fn scale(low: f64, high: f64, most: i64) -> Scale {
    let (low, high) = (low.min(0.0), high.max(0.0));
    let span = high - low;
    if span < SMALLEST {
        let ticks = vec![Tick { value: 0.0, text: "0".to_owned() }];
        return Scale { low: 0.0, high: 1.0, ticks };
    }
    // Start below any step that could do, then go up 1, 2, 5, 10 ...
    let mut power = exponent(span) - 2;
    loop {
        for digit in [1, 2, 5] {
            let half = number(5 * digit, power - 1);
            // Ends in half steps.
            let (from, to) = ((low / half).floor() as i64, (high / half).ceil() as i64);
            let inside = (-(-from).div_euclid(2), to.div_euclid(2));
            let around = (from.div_euclid(2), -(-to).div_euclid(2));
            let ends = if inside.1 - inside.0 >= 2 { (from, to) } else { (2 * around.0, 2 * around.1) };
            let (first, last) = (-(-ends.0).div_euclid(2), ends.1.div_euclid(2));
            if last - first <= most {
                let longest = first.abs().max(last.abs()) * digit;
                let plain = power >= -6 && number(longest, power) < 1e9;
                let tick = |k| Tick { value: number(k * digit, power), text: text(k * digit, power, plain) };
                return Scale {
                    low: number(ends.0 * 5 * digit, power - 1),
                    high: number(ends.1 * 5 * digit, power - 1),
                    ticks: (first..=last).map(tick).collect(),
                };
            }
        }
        power += 1;
    }
}

/// The power of ten of the first digit of a positive number.
fn exponent(x: f64) -> i32 {
    let written = format!("{x:e}");
    written.rsplit('e').next().and_then(|e| e.parse().ok()).unwrap_or(0)
}

/// `digits * 10^power`, the nearest float while digits and power of ten are exact (2^53, 10^22), else one beside it.
fn number(digits: i64, power: i32) -> f64 {
    let size = (0..power.unsigned_abs()).fold(1.0, |size, _| size * 10.0);
    if power < 0 { digits as f64 / size } else { digits as f64 * size }
}

/// `digits * 10^power` as printed: a true minus, and groups of three parted by a narrow space, or
/// a power of ten on an axis whose plain numbers would be long.
fn text(digits: i64, power: i32, plain: bool) -> String {
    if digits == 0 {
        return "0".to_owned();
    }
    let minus = if digits < 0 { "\u{2212}" } else { "" };
    let mut figures = digits.unsigned_abs().to_string();
    let mut power = power;
    while figures.ends_with('0') {
        figures.pop();
        power += 1;
    }
    if !plain {
        let top = power + figures.len() as i32 - 1;
        return format!("{minus}{}", with_power(&figures, top));
    }
    if power >= 0 {
        figures.push_str(&"0".repeat(power as usize));
        return format!("{minus}{}", grouped(&figures));
    }
    let after = -power as usize;
    let filled = format!("{figures:0>width$}", width = after + 1);
    let (whole, part) = filled.split_at(filled.len() - after);
    format!("{minus}{}.{part}", grouped(whole))
}

/// Groups of three from the right.
fn grouped(figures: &str) -> String {
    if figures.len() <= 3 {
        return figures.to_owned();
    }
    let mut out = String::new();
    for (i, c) in figures.chars().enumerate() {
        if i > 0 && (figures.len() - i).is_multiple_of(3) {
            out.push('\u{202F}');
        }
        out.push(c);
    }
    out
}

/// `2.5·10¹²` from figures `25` and power 12.
fn with_power(figures: &str, power: i32) -> String {
    let (first, rest) = figures.split_at(1);
    let point = if rest.is_empty() { "" } else { "." };
    let raised: String = power
        .to_string()
        .chars()
        .map(|c| match c {
            '-' => '\u{207B}',
            '1' => '\u{B9}',
            '2' => '\u{B2}',
            '3' => '\u{B3}',
            c => c.to_digit(10).and_then(|d| char::from_u32(0x2070 + d)).unwrap_or(c),
        })
        .collect();
    format!("{first}{point}{rest}\u{B7}10{raised}")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(low: f64, high: f64) -> Vec<String> {
        scale(low, high, 4).ticks.into_iter().map(|t| t.text).collect()
    }

    #[test]
    fn steps_are_one_two_or_five() {
        assert_eq!(texts(0.0, 4.0), ["0", "1", "2", "3", "4"]);
        assert_eq!(texts(0.0, 4.1), ["0", "1", "2", "3", "4"]);
        assert_eq!(texts(0.0, 4.6), ["0", "2", "4"]);
        assert_eq!(texts(0.0, 11.0), ["0", "5", "10"]);
        assert_eq!(texts(0.0, 0.3), ["0", "0.1", "0.2", "0.3"]);
        assert_eq!(texts(0.0, 0.007), ["0", "0.002", "0.004", "0.006"]);
        assert_eq!(texts(0.0, 2_700.0), ["0", "1\u{202F}000", "2\u{202F}000", "3\u{202F}000"]);
        assert_eq!(texts(-3.0, 12.0), ["\u{2212}5", "0", "5", "10"]);
        assert_eq!(texts(-2.0, -1.0), ["\u{2212}2", "\u{2212}1.5", "\u{2212}1", "\u{2212}0.5", "0"]);
    }

    #[test]
    fn ends_are_half_steps_unless_too_few_ticks_remain() {
        let ends = |low, high| (scale(low, high, 4).low, scale(low, high, 4).high);
        assert_eq!(ends(0.0, 2_050.0), (0.0, 2_250.0));
        assert_eq!(ends(-120.0, 48.0), (-125.0, 50.0));
        // Half steps of 5 would hold 0 and 5 only.
        assert_eq!(ends(-4.9, 8.1), (-5.0, 10.0));
    }

    #[test]
    fn long_numbers_get_a_power_of_ten_all_along_the_axis() {
        assert_eq!(texts(0.0, 5e8)[1], "200\u{202F}000\u{202F}000");
        let powers = ["0", "5\u{B7}10\u{2078}", "1\u{B7}10\u{2079}", "1.5\u{B7}10\u{2079}"];
        assert_eq!(texts(0.0, 1.6e9), powers);
        assert_eq!(text(25, 11, false), "2.5\u{B7}10\u{B9}\u{B2}");
        assert_eq!(text(-2, -7, false), "\u{2212}2\u{B7}10\u{207B}\u{2077}");
        assert_eq!(text(15, -4, true), "0.0015");
        assert_eq!(text(125, 1, true), "1\u{202F}250");
    }

    #[test]
    fn nothing_has_the_single_tick_zero() {
        assert_eq!(texts(0.0, 0.0), ["0"]);
        assert_eq!(texts(-0.0, 1e-310), ["0"]);
        assert_eq!(scale(0.0, 0.0, 4).share(0.0), 0.0);
    }

    /// Over 8,000 spans of one and of both signs, from 1e-90 to 1e90: three to five ticks, zero
    /// among them, the ends outside the data, equal steps.
    #[test]
    fn always_three_to_five_ticks_that_hold_the_data() {
        let mut state = 7_u64;
        let mut next = || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 11) as f64 / 9_007_199_254_740_992.0
        };
        for turn in 0..8_000 {
            let unit = number(1, turn % 181 - 90);
            let high = next() * unit;
            let low = if turn % 2 == 0 { 0.0 } else { -next() * unit };
            let s = scale(low, high, 4);
            assert!((3..=5).contains(&s.ticks.len()), "{low} {high}: {:?}", s.ticks);
            assert!(s.low <= low && s.high >= high, "{low} {high}: {s:?}");
            assert!(s.ticks.iter().any(|t| t.value == 0.0 && t.text == "0"), "{s:?}");
            let step = s.ticks[1].value - s.ticks[0].value;
            for pair in s.ticks.windows(2) {
                assert!(((pair[1].value - pair[0].value) / step - 1.0).abs() < 1e-9, "{s:?}");
            }
        }
    }
}
