//! A bar with its mark: filled, hatched or with a dashed frame.
use crate::dash;
use crate::look::{Look, Mark};
use crate::refused::Refused;
use crate::sheet::{Place, Sheet};
use plotters_backend::DrawingBackend;

/// Stroke of frames, px.
const FRAME: f64 = 1.5;
/// Px between slanting lines, level.
const HATCH: f64 = 6.0;
/// Px drawn and px left open in a dashed frame.
const DASH: [f64; 2] = [5.0, 3.0];

/// Draws a bar. One too short to show its mark is filled.
pub(crate) fn draw<DB: DrawingBackend>(sheet: &Sheet<DB>, at: Place, look: Look) -> Result<(), Refused> {
    let in_frame = Place { x: at.x + FRAME / 2.0, y: at.y + FRAME / 2.0, width: at.width - FRAME, height: at.height - FRAME };
    match look.mark {
        _ if at.width < 2.0 * FRAME => sheet.filled(at, look.colour),
        Mark::Plain => sheet.filled(at, look.colour),
        Mark::Hatched => {
            for line in slants(in_frame) {
                sheet.line(&line, FRAME, look.colour)?;
            }
            sheet.line(&corners(in_frame), FRAME, look.colour)
        }
        Mark::Dashed => {
            let corners = corners(in_frame);
            corners[..5].windows(2).try_for_each(|side| dash::draw(sheet, side, &DASH, FRAME, look.colour))
        }
    }
}

/// The frame as a closed path; its first side comes twice so that the last corner is whole.
fn corners(at: Place) -> [(f64, f64); 6] {
    let (right, bottom) = (at.x + at.width, at.y + at.height);
    [(at.x, at.y), (right, at.y), (right, bottom), (at.x, bottom), (at.x, at.y), (right, at.y)]
}

/// Lines rising to the right, cut at the frame; they start from the left edge, so that they stand
/// still while the bar grows.
fn slants(at: Place) -> Vec<[(f64, f64); 2]> {
    let (right, bottom) = (at.x + at.width, at.y + at.height);
    let mut foot = at.x - at.height + HATCH / 2.0;
    let mut out = Vec::new();
    while foot < right {
        let (from, to) = (foot.max(at.x), (foot + at.height).min(right));
        if from < to {
            out.push([(from, bottom - (from - foot)), (to, bottom - (to - foot))]);
        }
        foot += HATCH;
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slants_stay_inside_the_frame() {
        for width in [4.0, 17.0, 333.3] {
            let at = Place { x: 10.0, y: 20.0, width, height: 15.0 };
            let lines = slants(at);
            assert!(!lines.is_empty());
            for (x, y) in lines.into_iter().flatten() {
                assert!((10.0..=10.0 + width).contains(&x) && (20.0..=35.0).contains(&y), "{x} {y}");
            }
        }
    }

    #[test]
    fn a_growing_bar_keeps_its_slants() {
        let bar = |width| slants(Place { x: 0.0, y: 0.0, width, height: 12.0 });
        let (short, long) = (bar(30.0), bar(60.0));
        assert_eq!(short[..3], long[..3]);
        assert!(long.len() > short.len());
    }
}
