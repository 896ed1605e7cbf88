//! A dot with its mark: filled, slanting lines in a ring, or a ring in four parts; and a hollow
//! one that belongs to nobody.
use crate::look::{Colour, Look, Mark, Theme};
use crate::refused::Refused;
use crate::sheet::Sheet;
use plotters_backend::DrawingBackend;
use std::f64::consts::FRAC_1_SQRT_2;

/// Stroke of rings and slants, px.
const RING: f64 = 1.5;
/// From the middle to each slant, as shares of the radius.
const SLANTS: [f64; 3] = [-0.5, 0.0, 0.5];

/// Draws a dot of an alternative.
pub(crate) fn draw<DB: DrawingBackend>(sheet: &Sheet<DB>, at: (f64, f64), radius: f64, look: Look, theme: Theme) -> Result<(), Refused> {
    if look.mark == Mark::Plain {
        return sheet.disc(at, radius, look.colour);
    }
    ring(sheet, at, radius, look.colour, theme)?;
    if look.mark == Mark::Hatched {
        let all = slants(at, radius - RING / 2.0);
        // A small dot has room for one.
        for [from, to] in if radius < 4.5 { &all[1..2] } else { &all[..] } {
            sheet.line(&[*from, *to], 1.0, look.colour)?;
        }
        return Ok(());
    }
    let (x, y) = at;
    sheet.line(&[(x - radius, y), (x + radius, y)], 2.0, theme.ground())?;
    sheet.line(&[(x, y - radius), (x, y + radius)], 2.0, theme.ground())
}

/// Draws a hollow dot.
pub(crate) fn hollow<DB: DrawingBackend>(sheet: &Sheet<DB>, at: (f64, f64), radius: f64, theme: Theme) -> Result<(), Refused> {
    ring(sheet, at, radius, theme.text(), theme)
}

fn ring<DB: DrawingBackend>(sheet: &Sheet<DB>, at: (f64, f64), radius: f64, colour: Colour, theme: Theme) -> Result<(), Refused> {
    sheet.disc(at, radius, colour)?;
    sheet.disc(at, radius - RING, theme.ground())
}

/// Chords rising to the right.
fn slants((x, y): (f64, f64), radius: f64) -> [[(f64, f64); 2]; 3] {
    SLANTS.map(|share| {
        let aside = share * radius * FRAC_1_SQRT_2;
        let half = (1.0 - share * share).sqrt() * radius * FRAC_1_SQRT_2;
        [(x + aside - half, y + aside + half), (x + aside + half, y + aside - half)]
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slants_end_on_the_ring() {
        for (x, y) in slants((10.0, 20.0), 5.0).into_iter().flatten() {
            let distance = ((x - 10.0) * (x - 10.0) + (y - 20.0) * (y - 20.0)).sqrt();
            assert!((distance - 5.0).abs() < 1e-9, "{x} {y}");
        }
    }
}
