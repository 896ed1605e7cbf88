//! Order statistics: the values that stand at some places of a list if it were sorted, without sorting it.
//!
//! The values are thrown into equal drawers from the least to the greatest; only the drawers that hold a wanted place
//! are sorted. Which drawer a value goes to never falls as the value rises, so rounding does no harm.

use crate::wide;

/// How many drawers, a power of two.
const DRAWERS: usize = 1024;
/// A list shorter than this is sorted.
const SHORT: usize = 256;

/// The values at places of the sorted list, the places rising and within it.
#[inline(never)]
pub fn order_statistics(values: &[f64], places: &[usize]) -> Vec<f64> {
    match Drawers::of(values) {
        Some(drawers) if values.len() >= SHORT => drawers.at(values, places),
        _ => {
            let sorted = sorted(values.to_vec());
            places.iter().map(|place| sorted[*place]).collect()
        }
    }
}

fn sorted(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_unstable_by(f64::total_cmp);
    values
}

/// Which drawer a value goes to.
struct Drawers {
    least: f64,
    per_unit: f64,
}

impl Drawers {
    /// Drawers over some values; none where these are all alike, or too far apart for a number.
    fn of(values: &[f64]) -> Option<Self> {
        let (least, greatest) = ends(values);
        let per_unit = DRAWERS as f64 / (greatest - least);
        (per_unit.is_finite() && per_unit > 0.0).then_some(Self { least, per_unit })
    }

    /// From 0 to `DRAWERS`; the mask is for what is no number.
    #[inline(always)]
    fn place(&self, value: f64) -> usize {
        // Added to a smaller number, 2^52 leaves it rounded in the low bits.
        let rounded = (value - self.least) * self.per_unit + 4_503_599_627_370_496.0;
        rounded.to_bits() as usize & (2 * DRAWERS - 1)
    }

    fn at(&self, values: &[f64], places: &[usize]) -> Vec<f64> {
        let mut count = [0_u32; 2 * DRAWERS];
        for value in values {
            count[self.place(*value)] += 1;
        }
        // Each wanted place less what lies in drawers that are not wanted.
        let mut wanted = [false; 2 * DRAWERS];
        let (mut drawer, mut passed, mut left_out) = (0, count[0] as usize, 0);
        let mut among_wanted = Vec::with_capacity(places.len());
        for place in places {
            while passed <= *place {
                if !wanted[drawer] {
                    left_out += count[drawer] as usize;
                }
                drawer += 1;
                passed += count[drawer] as usize;
            }
            wanted[drawer] = true;
            among_wanted.push(place - left_out);
        }
        let held = sorted(values.iter().copied().filter(|value| wanted[self.place(*value)]).collect());
        among_wanted.into_iter().map(|place| held[place]).collect()
    }
}

/// The least and the greatest.
fn ends(values: &[f64]) -> (f64, f64) {
    const LANES: usize = 16;
    let (mut least, mut greatest) = ([f64::INFINITY; LANES], [f64::NEG_INFINITY; LANES]);
    wide(
        #[inline(always)]
        || {
            for values in values.chunks(LANES) {
                for ((value, least), greatest) in values.iter().zip(&mut least).zip(&mut greatest) {
                    *least = if *value < *least { *value } else { *least };
                    *greatest = if *value > *greatest { *value } else { *greatest };
                }
            }
        },
    );
    (least.into_iter().fold(f64::INFINITY, f64::min), greatest.into_iter().fold(f64::NEG_INFINITY, f64::max))
}

#[cfg(test)]
mod tests {
    use super::{SHORT, order_statistics, sorted};

    #[test]
    fn they_are_those_of_the_sorted_list() {
        let places = [0, 1, 37, 37, 500, 998, 999];
        let far = |n: u64| (n * n * n * 2_654_435_761 % 100_003) as f64;
        let lists: [(&str, Vec<f64>); 6] = [
            ("spread", (0..1000).map(|n| far(n) - 40_000.0).collect()),
            ("alike", vec![3.5; 1000]),
            ("nearly alike", (0..1000).map(|n| 1.0 + (n % 3) as f64 * f64::EPSILON).collect()),
            ("one far off", (0..1000).map(|n| if n == 400 { 1e300 } else { far(n) }).collect()),
            ("too far apart", (0..1000).map(|n| if n % 2 == 0 { -1e308 } else { 1e308 } / (1.0 + far(n))).collect()),
            ("zeros", (0..1000).map(|n| if n % 7 == 0 { far(n) } else { 0.0 }).collect()),
        ];
        for (name, list) in lists {
            assert!(list.len() > SHORT);
            let whole = sorted(list.clone());
            assert_eq!(order_statistics(&list, &places), places.map(|place| whole[place]), "{name}");
        }
    }

    #[test]
    fn of_a_short_list_too() {
        assert_eq!(order_statistics(&[3.0, 1.0, 2.0], &[0, 2]), [1.0, 3.0]);
    }
}
