//! A dashed line: lengths drawn and left open by turns, along a line through points.
use crate::look::Colour;
use crate::refused::Refused;
use crate::sheet::Sheet;
use plotters_backend::DrawingBackend;

/// The pieces of a line that are drawn; a pattern of fewer than two lengths leaves it whole.
pub(crate) fn pieces(points: &[(f64, f64)], pattern: &[f64]) -> Vec<Vec<(f64, f64)>> {
    if pattern.len() < 2 {
        return vec![points.to_vec()];
    }
    let mut out: Vec<Vec<(f64, f64)>> = Vec::new();
    let (mut turn, mut left) = (0, pattern[0]);
    for side in points.windows(2) {
        let ((x0, y0), (x1, y1)) = (side[0], side[1]);
        let (dx, dy) = (x1 - x0, y1 - y0);
        let length = (dx * dx + dy * dy).sqrt();
        let on = |d: f64| (x0 + dx * d / length, y0 + dy * d / length);
        if length == 0.0 {
            continue;
        }
        let mut from = 0.0;
        loop {
            let to = from + left;
            if turn % 2 == 0 {
                // A dash that began on the side before goes on around the corner.
                let end = on(to.min(length));
                match out.last_mut().filter(|_| from == 0.0 && left < pattern[turn]) {
                    Some(piece) => piece.push(end),
                    None => out.push(vec![on(from), end]),
                }
            }
            if to >= length {
                left = (to - length).max(0.0);
                break;
            }
            turn = (turn + 1) % pattern.len();
            (from, left) = (to, pattern[turn]);
        }
    }
    out
}

/// Draws a line in a pattern.
pub(crate) fn draw<DB: DrawingBackend>(
    sheet: &Sheet<DB>,
    points: &[(f64, f64)],
    pattern: &[f64],
    stroke: f64,
    colour: Colour,
) -> Result<(), Refused> {
    pieces(points, pattern).iter().try_for_each(|piece| sheet.line(piece, stroke, colour))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_alternate() {
        let drawn = pieces(&[(0.0, 0.0), (20.0, 0.0)], &[5.0, 3.0]);
        assert_eq!(drawn, [vec![(0.0, 0.0), (5.0, 0.0)], vec![(8.0, 0.0), (13.0, 0.0)], vec![(16.0, 0.0), (20.0, 0.0)]]);
    }

    #[test]
    fn a_dash_goes_around_a_corner() {
        let drawn = pieces(&[(0.0, 0.0), (3.0, 0.0), (3.0, 10.0)], &[5.0, 3.0]);
        assert_eq!(drawn, [vec![(0.0, 0.0), (3.0, 0.0), (3.0, 2.0)], vec![(3.0, 5.0), (3.0, 10.0)]]);
    }

    /// Many short sides of lengths that are no whole numbers: as much is drawn as of one long side.
    #[test]
    fn short_sides_end() {
        let points: Vec<_> = (0..400).map(|i| (0.37 * f64::from(i), 0.11 * f64::from(i))).collect();
        let length = |pieces: Vec<Vec<(f64, f64)>>| -> f64 {
            let sides = pieces.iter().flat_map(|piece| piece.windows(2));
            sides.map(|s| ((s[1].0 - s[0].0) * (s[1].0 - s[0].0) + (s[1].1 - s[0].1) * (s[1].1 - s[0].1)).sqrt()).sum()
        };
        let whole = [points[0], points[399]];
        assert!((length(pieces(&points, &[5.0, 2.5])) - length(pieces(&whole, &[5.0, 2.5]))).abs() < 1e-6);
    }

    #[test]
    fn a_line_without_a_pattern_is_whole_and_one_of_no_length_ends() {
        let points = [(0.0, 0.0), (3.0, 0.0), (3.0, 10.0)];
        assert_eq!(pieces(&points, &[]), [points.to_vec()]);
        assert!(pieces(&[(1.0, 1.0), (1.0, 1.0)], &[5.0, 3.0]).is_empty());
    }
}
