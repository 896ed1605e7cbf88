//! Colours and themes: one colour per route, one ground, text and rules that can be read on it.

/// A colour, red, green and blue from 0 to 255.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Colour(pub u8, pub u8, pub u8);

impl Colour {
    /// Screen printing.
    pub const SCREEN_PRINTING: Self = Self(0x00, 0x72, 0xB2);
    /// Overlay film.
    pub const FILM: Self = Self(0xD5, 0x5E, 0x00);
    /// Direct-applied sheeting.
    pub const DIRECT_APPLIED: Self = Self(0x6E, 0x6E, 0x6E);
    /// Digital printing.
    pub const DIGITAL: Self = Self(0xCC, 0x79, 0xA7);
}

/// How a bar is filled: alternatives of one route share its colour and differ by the mark.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Mark {
    /// Filled: the first alternative of a route.
    #[default]
    Plain,
    /// Slanting lines in a frame: the second.
    Hatched,
    /// A dashed frame: the third.
    Dashed,
}

/// The look of one alternative.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Look {
    /// The colour of its route.
    pub colour: Colour,
    /// The mark that tells it from others of its route.
    pub mark: Mark,
}

/// The ground a picture stands on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// White screen.
    #[default]
    Light,
    /// Dark screen.
    Dark,
    /// White paper: print and export.
    Paper,
}

impl Theme {
    /// The ground.
    pub fn ground(self) -> Colour {
        match self {
            Self::Light | Self::Paper => Colour(0xFF, 0xFF, 0xFF),
            Self::Dark => Colour(0x12, 0x12, 0x12),
        }
    }

    /// Text, zero line, dots.
    pub fn text(self) -> Colour {
        match self {
            Self::Light => Colour(0x1A, 0x1A, 0x1A),
            Self::Dark => Colour(0xEC, 0xEC, 0xEC),
            Self::Paper => Colour(0x00, 0x00, 0x00),
        }
    }

    /// Quiet text: tick numbers, unit, key.
    pub(crate) fn quiet(self) -> Colour {
        match self {
            Self::Light => Colour(0x4F, 0x4F, 0x4F),
            Self::Dark => Colour(0xB8, 0xB8, 0xB8),
            Self::Paper => Colour(0x30, 0x30, 0x30),
        }
    }

    /// Shaded ground and faint rules; nothing is told by them alone.
    pub(crate) fn shade(self) -> Colour {
        match self {
            Self::Light | Self::Paper => Colour(0xE6, 0xE6, 0xE6),
            Self::Dark => Colour(0x30, 0x30, 0x30),
        }
    }

    /// Axis, ticks, central line, grey bars.
    pub(crate) fn rule(self) -> Colour {
        match self {
            Self::Light => Colour(0x8C, 0x8C, 0x8C),
            Self::Dark => Colour(0x78, 0x78, 0x78),
            Self::Paper => Colour(0x80, 0x80, 0x80),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Fifth root by Newton's steps; enough for `x^2.4 = x^2 * (x^2)^(1/5)`.
    fn fifth_root(x: f64) -> f64 {
        let mut r = 1.0;
        for _ in 0..60 {
            r -= (r * r * r * r * r - x) / (5.0 * r * r * r * r);
        }
        r
    }

    /// Relative luminance as WCAG 2.2 defines it.
    fn luminance(c: Colour) -> f64 {
        let part = |v: u8| {
            let s = f64::from(v) / 255.0;
            if s <= 0.04045 {
                s / 12.92
            } else {
                let x = (s + 0.055) / 1.055;
                x * x * fifth_root(x * x)
            }
        };
        0.2126 * part(c.0) + 0.7152 * part(c.1) + 0.0722 * part(c.2)
    }

    fn contrast(a: Colour, b: Colour) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn contrast_is_known_at_its_ends() {
        let (black, white) = (Colour(0, 0, 0), Colour(255, 255, 255));
        assert!((contrast(black, white) - 21.0).abs() < 1e-9);
        // #767676 on white is the well-known 4.54 : 1.
        assert!((contrast(Colour(0x76, 0x76, 0x76), white) - 4.54).abs() < 0.005);
    }

    #[test]
    fn text_reads_and_rules_show_on_every_ground() {
        for theme in [Theme::Light, Theme::Dark, Theme::Paper] {
            let on = |c| contrast(c, theme.ground());
            assert!(on(theme.text()) >= 7.0, "{theme:?} text {}", on(theme.text()));
            assert!(on(theme.quiet()) >= 4.5, "{theme:?} quiet {}", on(theme.quiet()));
            assert!(on(theme.rule()) >= 3.0, "{theme:?} rule {}", on(theme.rule()));
            for c in [Colour::SCREEN_PRINTING, Colour::FILM, Colour::DIRECT_APPLIED, Colour::DIGITAL] {
                assert!(on(c) >= 3.0, "{theme:?} {c:?} {}", on(c));
            }
        }
    }
}
