//! Variance shares with exact values: the g-function of I. M. Sobol' and the function of Ishigami and Homma
//! (A. Saltelli et al., Global Sensitivity Analysis, 2008, chapters 1 and 4), through the closed form the program uses.

use faceload_core::analysis::{ColumnId, Moments, Shape, Sum, mean};
use faceload_core::inventory::Form;

/// prod (|4x - 2| + a)/(1 + a) with x even on (0, 1): |4x - 2| is even on (0, 2).
fn g_function(a: &[f64]) -> Sum {
    let scale = a.iter().fold(1.0, |product, a| product / (1.0 + a));
    let mut sum = Sum::default();
    for subset in 0..1_u32 << a.len() {
        let (mut product, mut coefficient) = (Vec::new(), scale);
        for (place, a) in a.iter().enumerate() {
            if subset >> place & 1 == 1 {
                product.push((place as ColumnId, Form::Power(1)));
            } else {
                coefficient *= a;
            }
        }
        if coefficient != 0.0 {
            *sum.0.entry(product).or_insert(0.0) += coefficient;
        }
    }
    sum
}

#[test]
fn the_g_function_has_its_published_shares() {
    let even = Shape::Uniform { low: 0.0, high: 2.0 };
    for (a, variance, first, total) in [
        (
            vec![0.0, 1.0, 4.5, 9.0, 99.0, 99.0, 99.0, 99.0],
            0.4654244319022063,
            vec![0.7161921689, 0.1790480422, 0.0236757742, 0.0071619217, 0.0000716192],
            vec![0.7871441267, 0.2421981928, 0.0343169102, 0.0104603871, 0.0001049491],
        ),
        (
            vec![0.0, 1.0, 4.5, 9.0],
            0.465229058259361,
            vec![0.7164929349, 0.1791232337, 0.0236857169, 0.0071649293],
            vec![0.7873697011, 0.2422676004, 0.0343267445, 0.0104633847],
        ),
        (
            vec![99.0, 0.0, 9.0, 0.0, 99.0, 4.5, 1.0, 99.0],
            0.9538341147324507,
            vec![0.0000349467, 0.3494667764, 0.0034946678, 0.3494667764, 0.0000349467, 0.0115526207, 0.0873666941, 0.0000349467],
            vec![0.0000682777, 0.5121000823, 0.0068053167, 0.5121000823, 0.0000682777, 0.0223258891, 0.1575692561, 0.0000682777],
        ),
    ] {
        let found = Moments::with(&g_function(&a), |_, ways| mean(even, ways)).variance();
        assert!((found.mean - 1.0).abs() < 1e-12);
        assert!((found.variance - variance).abs() < 1e-12, "{}", found.variance);
        for (place, (first, total)) in first.iter().zip(&total).enumerate() {
            let (own_first, own_total) = found.shares[&(place as ColumnId)];
            assert!((own_first - first).abs() < 1e-10 && (own_total - total).abs() < 1e-10, "input {place}: {own_first} {own_total}");
        }
    }
}

/// sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, x even on (-pi, pi), in y1 = sin x1, y2 = sin x2 and x3.
fn ishigami() -> Sum {
    let (y1, y2, x3) = (0, 1, 2);
    let mut sum = Sum::default();
    sum.0.insert(vec![(y1, Form::Power(1))], 1.0);
    sum.0.insert(vec![(y2, Form::Power(2))], 7.0);
    sum.0.insert(vec![(y1, Form::Power(1)), (x3, Form::Power(4))], 0.1);
    sum
}

/// The mean of powers of sin x: 0 for odd ones, else (n - 1)!!/n!!; of x: pi^n/(n + 1).
fn mean_of_powers(column: ColumnId, forms: &[Form]) -> f64 {
    let power: i8 = forms.iter().map(|form| if let Form::Power(power) = form { *power } else { 0 }).sum();
    if column == 2 {
        return (0..power).fold(1.0, |product, _| product * std::f64::consts::PI) / f64::from(power + 1);
    }
    if power % 2 == 1 { 0.0 } else { (1..=power / 2).fold(1.0, |product, n| product * f64::from(2 * n - 1) / f64::from(2 * n)) }
}

#[test]
fn the_function_of_ishigami_and_homma_has_its_published_shares() {
    let found = Moments::with(&ishigami(), mean_of_powers).variance();
    assert!((found.mean - 3.5).abs() < 1e-12);
    assert!((found.variance - 13.844587940719254).abs() < 1e-11);
    for (column, first, total) in
        [(0, 0.31390519114781146, 0.5575888552099592), (1, 0.4424111447900409, 0.4424111447900409), (2, 0.0, 0.2436836640621477)]
    {
        let (own_first, own_total) = found.shares[&column];
        assert!((own_first - first).abs() < 1e-12 && (own_total - total).abs() < 1e-12, "input {column}: {own_first} {own_total}");
    }
    // The two that act together: what stays while only they are unknown.
    let moments = Moments::with(&ishigami(), mean_of_powers);
    let together = moments.total_share_of(|column| column != 1);
    assert!((together - (1.0 - 0.4424111447900409)).abs() < 1e-12);
}
