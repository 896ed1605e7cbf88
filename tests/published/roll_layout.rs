//! Roll layouts worked out outside the program: sheeting from the roll, a start waste of 0.5 m, no
//! bleed. Lengths to 0.01 m, yields to 0.0001 of width x height.

use crate::shop::near;
use faceload_core::quantity::{Kind, Span};
use faceload_core::step::{Laid, LayoutPiece, lay};

fn span(text: &str) -> Span {
    Span::read(text).expect("a length")
}

/// Pieces of width x height on one roll.
fn laid(count: u64, width: &str, height: &str, roll: &str, turns: bool, trim: &str, gutter: &str) -> Laid {
    let piece = LayoutPiece { width: span(width), height: span(height), trim: span(trim), free: Span::ZERO, gutter: span(gutter), turns };
    lay(piece, count, &[span(roll)], span("45.72 m"), span("0.5 m")).expect("the roll is wide enough")
}

/// The area of the pieces over the area taken, were the roll's length so much shorter.
fn yield_of(laid: &Laid, count: f64, width: &str, height: &str, shorter: f64) -> f64 {
    count * span(width).metres() * span(height).metres() / (laid.roll.metres() * (laid.length.base() - shorter))
}

#[test]
fn lengths_and_yields_are_those_worked_out_by_hand() {
    for (count, width, height, roll, turns, across, length, share) in [
        (100, "30 in", "30 in", "30 in", false, 1, 76.70, 0.9935),
        (100, "30 in", "30 in", "36 in", false, 1, 76.70, 0.8279),
        (100, "24 in", "30 in", "24 in", false, 1, 76.70, 0.9935),
        (100, "24 in", "30 in", "30 in", false, 1, 76.70, 0.7948),
        (100, "24 in", "30 in", "30 in", true, 1, 61.46, 0.9919),
        (100, "24 in", "30 in", "48 in", false, 2, 38.60, 0.9870),
        (40, "48 in", "6 in", "24 in", true, 4, 12.69, 0.9606),
    ] {
        let laid = laid(count, width, height, roll, turns, "0 mm", "0 mm");
        let job = format!("{count} of {width} x {height} on {roll}, turned: {turns}");
        assert_eq!(laid.across, across, "{job}");
        near(&format!("{job}, length in m"), laid.length.base(), length, 0.005);
        near(&format!("{job}, yield"), yield_of(&laid, count as f64, width, height, 0.0), share, 0.00005);
        near(&format!("{job}, area in m2"), laid.area.base(), laid.roll.metres() * laid.length.base(), 1e-12);
    }
}

#[test]
fn edge_trim_and_gutters_cost_a_lane() {
    // By hand no gutter follows the last row; the program keeps one there, 6.35 mm a job.
    let last_gutter = span("0.25 in").metres();
    for (turns, length, share) in [(false, 77.33, 0.4927), (true, 62.09, 0.6136)] {
        let laid = laid(100, "24 in", "30 in", "48 in", turns, "0.125 in", "0.25 in");
        assert_eq!(laid.across, 1);
        // 77.335 and 62.095 were cut off at the second digit.
        near("length in m", laid.length.base() - last_gutter, length, 0.005 + 1e-9);
        near("yield", yield_of(&laid, 100.0, "24 in", "30 in", last_gutter), share, 0.00005);
    }
}

#[test]
fn an_octagon_uses_0_823_of_its_roll() {
    use faceload_core::order::Shape;
    let laid = laid(100, "30 in", "30 in", "30 in", false, "0 mm", "0 mm");
    let faces = 100.0 * Shape::Octagon.face(span("30 in"), span("30 in"), Span::ZERO).base();
    near("face yield", faces / laid.area.base(), 0.823, 0.0005);
}

#[test]
fn three_pieces_lie_across_a_roll_of_three_times_their_width_in_either_unit_system() {
    for (side, roll) in [("8 in", "24 in"), ("0.4 m", "1.2 m"), ("400 mm", "120 cm"), ("203.2 mm", "24 in")] {
        assert_eq!(laid(9, side, side, roll, false, "0 mm", "0 mm").across, 3, "{side} on {roll}");
    }
}

#[test]
fn a_face_wider_than_the_roll_is_not_laid() {
    let piece = LayoutPiece {
        width: span("36.001 in"),
        height: span("1 in"),
        trim: Span::ZERO,
        free: Span::ZERO,
        gutter: Span::ZERO,
        turns: false,
    };
    assert!(lay(piece, 1, &[span("24 in"), span("36 in")], span("45.72 m"), Span::ZERO).is_none());
}
