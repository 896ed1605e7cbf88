//! Root finding: the worked example of the ITP method (Oliveira and Takahashi, ACM Trans. Math. Softw. 47 (2020) 5)
//! and crossings known to all digits; and the two-part load, whose break-even is a fraction.

use faceload_core::analysis::{Itp, itp};

fn cubic(x: f64) -> f64 {
    x * x * x - x - 2.0
}

#[test]
fn itp_takes_the_published_steps() {
    let (found, tried) = itp(&mut cubic, (1.0, 2.0), (-2.0, 4.0), Itp { within: 5e-4, k1: 0.1, slack: 1 });
    let published = [1.4333333333333333, 1.5271314505696607, 1.5200928115097818, 1.5213789911605158, 1.5213830127326777];
    assert_eq!(tried.len(), published.len(), "{tried:?}");
    for (tried, published) in tried.iter().zip(published) {
        assert!((tried - published).abs() < 1e-14, "{tried} where {published} is published");
    }
    assert!((found - 1.5213810019465968).abs() < 1e-14);
}

#[test]
fn crossings_known_to_all_digits_are_found() {
    let how = Itp { within: 1e-13, k1: 0.2, slack: 1 };
    let (x, _) = itp(&mut cubic, (1.0, 2.0), (-2.0, 4.0), how);
    assert!((x - 1.5213797068045676).abs() < 1e-12, "{x}");
    let mut falling = |x: f64| faceload_core::quantity::exp(-x) - x;
    let (x, tried) = itp(&mut falling, (0.0, 1.0), (1.0, -0.63), how);
    assert!((x - 0.5671432904097838).abs() < 1e-12, "{x}");
    assert!(tried.len() < 15, "{} points", tried.len());
    // Fixed and running load of two ways: 12 + 0.8 q against 0.5 + 1.6 q.
    let mut two_part = |q: f64| (0.5 + 1.6 * q) - (12.0 + 0.8 * q);
    let (q, _) = itp(&mut two_part, (1.0, 100.0), (-10.7, 68.5), how);
    assert!((q - 14.375).abs() < 1e-11, "{q}");
}

#[test]
fn a_bag_is_used_as_often_as_was_published_until_it_loads_no_more_than_a_light_one() {
    // Paper, non-woven plastic and cotton against a light bag of which 40 % line a bin, 1.578 kg CO2e: numbers of uses
    // as the Environment Agency's report SC030148 (2011) is quoted; the loads to three decimals are from memory.
    for (of_one, published) in [(5.53, 4.0), (21.51, 14.0), (271.533, 173.0)] {
        let mut less = |uses: f64| 1.578 * uses - of_one;
        let ends = (less(0.0), less(300.0));
        let (uses, _) = itp(&mut less, (0.0, 300.0), ends, Itp { within: 1e-9, k1: 0.001, slack: 1 });
        assert_eq!(uses.ceil(), published, "{uses}");
    }
}
