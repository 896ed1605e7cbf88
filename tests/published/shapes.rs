//! Areas of sign faces: textbook geometry in inches and millimetres, and faces measured on the
//! federal artwork of 2024 (Standard Highway Signs), in square inches.

use crate::shop::{near, order};
use faceload_core::order::Shape;
use faceload_core::quantity::{Kind, Span};

const SQUARE_INCH: f64 = 0.0254 * 0.0254;

fn face(shape: Shape, width: &str, height: &str, corner: &str) -> f64 {
    let span = |text| Span::read(text).expect("a length");
    shape.face(span(width), span(height), span(corner)).base()
}

#[test]
fn faces_in_square_inches() {
    for (shape, width, height, corner, square_inches, within) in [
        (Shape::Rectangle, "24 in", "30 in", "1.5 in", 718.07, 0.005),
        (Shape::Diamond, "30 in", "30 in", "1.875 in", 896.98, 0.005),
        (Shape::Triangle, "36 in", "36 in", "2 in", 552.97, 0.005),
        (Shape::Octagon, "30 in", "30 in", "0 in", 745.6, 0.05),
        (Shape::Pentagon, "36 in", "36 in", "0 in", 0.75 * 36.0 * 36.0, 1e-9),
    ] {
        near(shape.name(), face(shape, width, height, corner) / SQUARE_INCH, square_inches, within);
    }
    near("octagon of 30 in, m2", face(Shape::Octagon, "30 in", "30 in", "0 in"), 0.4810, 0.00005);
}

#[test]
fn a_face_rounded_as_far_as_it_goes_is_a_disc() {
    // Corners of half the width leave a circle; of a triangle, the one that touches its three sides.
    for shape in [Shape::Square, Shape::Diamond, Shape::Octagon] {
        near(shape.name(), face(shape, "600 mm", "600 mm", "300 mm"), face(Shape::Disc, "600 mm", "600 mm", "0 mm"), 1e-9);
    }
    let inscribed = 0.6 / 3.0_f64.sqrt();
    let circle = face(Shape::Disc, &format!("{inscribed} m"), &format!("{inscribed} m"), "0 mm");
    near("triangle", face(Shape::Triangle, "600 mm", "600 mm", &format!("{} m", inscribed / 2.0)), circle, 1e-9);
}

#[test]
fn metric_faces_in_square_metres() {
    for (shape, areas) in [
        (Shape::Triangle, [0.1559, 0.2436, 0.3507, 0.6235]),
        (Shape::Disc, [0.2827, 0.4418, 0.6362, 1.1310]),
        (Shape::Octagon, [0.2982, 0.4660, 0.6710, 1.1929]),
    ] {
        for (size, area) in ["600 mm", "750 mm", "900 mm", "1200 mm"].into_iter().zip(areas) {
            near(&format!("{} of {size}", shape.name()), face(shape, size, size, "0 mm"), area, 0.00005);
        }
    }
}

#[test]
fn faces_of_codes_are_those_measured_on_the_artwork() {
    // Measured at 40 dots an inch, with a hairline at the edge: within 0.02 %.
    for (code, size, square_inches) in [
        ("R1-1", "30 in", 745.6),
        ("R2-1", "24 in", 718.0),
        ("R5-1", "30 in", 896.9),
        ("R7-1", "12 in", 214.1),
        ("W1-2", "30 in", 896.9),
        ("W11-2", "30 in", 896.9),
    ] {
        let order = order(&format!(r#"{{"schema_version":1,"line":[{{"code":"{code}","size":"{size}","quantity":1}}]}}"#));
        near(code, order.lines[0].face().base() / SQUARE_INCH, square_inches, square_inches * 2e-4);
    }
}
