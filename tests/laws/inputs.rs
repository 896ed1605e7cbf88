//! Inputs: within their ranges, in any unit that measures them, and refused where they make no sense.

use faceload_core::inventory::{Book, InputId};
use faceload_core::quantity::Kind;

use super::bits;
use crate::shop::{self, tables};

#[test]
fn every_input_lies_within_its_range_and_its_ends_enclose_it() {
    for input in &tables().inputs {
        let (low, high) = input.ends();
        assert!(input.low <= input.value && input.value <= input.high, "{}", input.id);
        assert!(low <= input.value && input.value <= high, "{}: {low} to {high} without {}", input.id, input.value);
        assert!(low >= 0.0 && low.is_finite() && high.is_finite(), "{}", input.id);
        assert!(input.unit.text() != "1" || input.high > 1.0 || high <= 1.0, "{}: a share of {high}", input.id);
    }
}

#[test]
fn a_value_may_be_stated_in_any_unit_that_measures_it() {
    let made = |site: &str, with: &str| {
        let text = shop::one_at(
            site,
            r#""code":"R1-1","size":"30 in","quantity":100,"rim":"red""#,
            &format!(r#""route":"digital-printing","with":{{{with}}}"#),
        );
        bits(&text).expect("a good order").0
    };
    for (id, one, other) in [
        ("layout.bleed", "0.25 in", "6.35 mm"),
        ("layout.roll.36", "3 ft", "36 in"),
        ("layout.leader", "0.5 m", "50 cm"),
        ("printer.power.solvent", "1.5 kW", "1500 W"),
        ("sheeting.prismatic.mass", "0.25 kg/m2", "250 g/m2"),
        ("printer.misprint", "0.25", "25 %"),
        ("freight.inbound", "500 mi", "804.672 km"),
        ("overlay.mass", "0.5 lb/ft2", "2.441213818181 kg/m2"),
    ] {
        let (one, other) = (made("", &format!(r#""{id}":"{one}""#)), made("", &format!(r#""{id}":"{other}""#)));
        let same = one.iter().flatten().zip(other.iter().flatten()).all(|(a, b)| {
            let (a, b) = (f64::from_bits(*a), f64::from_bits(*b));
            (a - b).abs() <= 1e-9 * a
        });
        assert!(same, "{id}");
    }
    for (one, other) in
        [(r#""delivery":"60 mi""#, r#""delivery":"96.56064 km""#), (r#""degree_days":"2800 K.d""#, r#""degree_days":"67200 K.h""#)]
    {
        assert_eq!(made(one, ""), made(other, ""), "{one}");
    }
}

#[test]
fn what_a_message_offers_for_a_row_is_taken() {
    let mut refused = Vec::new();
    for row in &tables().inputs {
        let read = |text: &str| {
            let with = format!(r#""route":"screen-printing","with":{{"{}":"{text}"}}"#, row.id);
            let order = shop::order(&shop::one(r#""code":"R1-1","size":"30 in","quantity":10"#, &with));
            Book::open(tables(), &order, &order.alternatives[0])
        };
        let fault = read("1 furlong").expect_err("a furlong measures nothing here").remove(0);
        let offered = fault.help.split('`').nth(1).unwrap_or_default().to_owned();
        let taken = read(offered.trim()).is_ok_and(|book| {
            let place = tables().find(&row.id).expect("its place");
            (book.input(InputId::at(place)).value - row.value).abs() <= 1e-12 * row.value
        });
        if !taken {
            refused.push(format!("{}: {}", row.id, fault.help));
        }
    }
    assert!(refused.is_empty(), "{} of {} rows:\n{}", refused.len(), tables().inputs.len(), refused.join("\n"));
}

#[test]
fn a_corner_that_does_not_fit_its_face_is_refused() {
    for (shape, size, corner) in [("square", "6 in", "4 in"), ("triangle", "6 in", "3 in"), ("diamond", "12 in", "7 in")] {
        let line = format!(r#""shape":"{shape}","size":"{size}","corner":"{corner}","quantity":10,"colours":{{"red":"50 %"}}"#);
        let read = shop::read(&shop::one(&line, r#""route":"screen-printing""#));
        assert!(
            read.is_err(),
            "a {shape} of {size} with corners of {corner} was taken: {:?} m2",
            read.map(|order| order.lines[0].face().base())
        );
    }
}
