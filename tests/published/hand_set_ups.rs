//! Set-ups counted by hand: 40 street-name blades of 40 designs. Four designs lie on one screen, so
//! a colour takes 10 screens; a colour whose artwork all designs share takes one.

use crate::shop::{compared, near, one};
use faceload_core::inventory::Measure;
use faceload_core::quantity::Piece;

const NEW: Measure<Piece> = Measure::new("screens made new", "pieces");
const IMPRESSIONS: Measure<Piece> = Measure::new("impressions", "pieces");

/// Screens and impressions of the blades, with these fields and values of the shop.
fn counted(size: &str, sides: u32, more: &str, with: &str) -> [f64; 2] {
    let blades = format!(
        r#""shape":"rectangle","size":"{size}","quantity":40,"designs":40,"sides":{sides},"stock":false,"colours":{{"green":"70 %","blue":"5 %"}}{more}"#
    );
    let comparison = compared(&one(&blades, &format!(r#""route":"screen-printing","with":{{{with}}}"#)));
    let model = comparison.model("only").expect("the order has one alternative");
    [model.count(NEW), model.count(IMPRESSIONS)]
}

#[test]
fn four_designs_on_a_screen_take_a_quarter_of_the_screens_and_impressions() {
    // Two colours on 40 faces of 0.209 m2.
    assert_eq!(counted("36 x 9 in", 1, "", ""), [2.0 * 10.0, 2.0 * 10.0]);
    assert_eq!(counted("36 x 9 in", 1, "", r#""screen.n-up-most":"1 {piece}""#), [2.0 * 40.0, 2.0 * 40.0]);
    // Thirteen sets of three and one of one.
    assert_eq!(counted("36 x 9 in", 1, "", r#""screen.n-up-most":"3 {piece}""#), [2.0 * 14.0, 2.0 * 14.0]);
}

#[test]
fn a_colour_that_all_designs_share_takes_one_screen() {
    let shared = r#","shared_colours":["blue"]"#;
    assert_eq!(counted("36 x 9 in", 1, shared, ""), [10.0 + 1.0, 2.0 * 10.0]);
    assert_eq!(counted("36 x 9 in", 1, r#","shared_colours":["blue","green"]"#, "")[0], 2.0);
    // A colour that is not on the face changes nothing.
    assert_eq!(counted("36 x 9 in", 1, r#","shared_colours":["red"]"#, "")[0], 20.0);
}

#[test]
fn faces_of_a_quarter_of_a_square_metre_have_screens_of_their_own() {
    // 0.2508 m2 and 0.2439 m2; the limit is a choice of the shop.
    assert_eq!(counted("36 x 10.8 in", 1, "", "")[0], 80.0);
    assert_eq!(counted("36 x 10.5 in", 1, "", "")[0], 20.0);
}

#[test]
fn both_sides_of_a_blade_are_printed_from_one_screen() {
    let ([screens, once], [same, twice]) = (counted("36 x 9 in", 1, "", ""), counted("36 x 9 in", 2, "", ""));
    near("screens", same, screens, 1e-9);
    near("impressions", twice, 2.0 * once, 1e-9);
}
