//! Values rounded to their uncertainty, half to even (ISO 80000-1:2009, Annex B, rule A; the digits kept by GUM 7.2.6),
//! worked out with decimal arithmetic.

use faceload_core::quantity::{last_place, write_to_place};

#[test]
fn a_value_is_given_to_the_digits_of_its_uncertainty() {
    for (value, uncertainty, two, one) in [
        (1234.567, 38.4, ["1\u{202f}235", "38"], ["1\u{202f}230", "40"]),
        (0.0123456, 0.00098765, ["0.01235", "0.00099"], ["0.012", "0.001"]),
        (99.96, 0.995, ["100.0", "1.0"], ["100", "1"]),
        (2.5, 0.25, ["2.50", "0.25"], ["2.5", "0.2"]),
        (12.345, 1.05, ["12.3", "1.0"], ["12", "1"]),
        (0.5, 0.0996, ["0.50", "0.10"], ["0.5", "0.1"]),
        (-3.14187, 0.02718, ["\u{2212}3.142", "0.027"], ["\u{2212}3.14", "0.03"]),
        (1e6, 12345.0, ["1\u{202f}000\u{202f}000", "12\u{202f}000"], ["1\u{202f}000\u{202f}000", "10\u{202f}000"]),
        (50.000838, 0.000032, ["50.000838", "0.000032"], ["50.00084", "0.00003"]),
    ] {
        for (digits, written) in [(2, two), (1, one)] {
            let place = last_place(uncertainty, digits).expect("an uncertainty");
            assert_eq!(
                [write_to_place(value, place), write_to_place(uncertainty, place)],
                written,
                "{value} with {uncertainty} to {digits}"
            );
        }
    }
}

#[test]
fn nothing_is_lost_or_made_up_in_rounding() {
    for n in 0..100_000_i32 {
        let value = f64::from(n * 7919 % 1_000_003) / 997.0 - 300.0;
        for place in [-3, -1, 0, 1] {
            let written: f64 = write_to_place(value, place).replace('\u{202f}', "").replace('\u{2212}', "-").parse().expect("a number");
            let step = [0.001, 0.01, 0.1, 1.0, 10.0][(place + 3) as usize];
            assert!((written - value).abs() <= 0.5 * step * (1.0 + 1e-9), "{value} as {written}");
        }
    }
}
