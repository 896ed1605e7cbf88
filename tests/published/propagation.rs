//! Propagation of spread with exact answers: a product of lognormal variates, a sum of two, and paired differences
//! with a shared input (elementary algebra of normal variates; digits from an independent library), through the
//! program's own streams, columns and program.

use faceload_core::analysis::{ColumnId, Design, Interval, Moments, Shape, Stream, Sum, elasticity_of, mean, share_above_zero};
use faceload_core::inventory::Form;
use faceload_core::quantity::ln;

const DRAWS: usize = 200_000;

/// The sigma of a squared geometric standard deviation.
fn sigma(gsd2: f64) -> f64 {
    0.5 * ln(gsd2)
}

/// Draws of a lognormal variate of median 1.
fn drawn(name: &str, gsd2: f64) -> Vec<f64> {
    let mut values = vec![0.0; DRAWS];
    for (block, values) in values.chunks_mut(1000).enumerate() {
        Stream::new(7, name, Design::LatinHypercube).fill(block, values);
    }
    Shape::Lognormal { median: 1.0, sigma: sigma(gsd2) }.fill(&mut values);
    values
}

#[test]
fn a_product_of_three_lognormal_variates() {
    // a b^2/c with squared geometric standard deviations 1.2, 1.5 and 1.1.
    let gsd2 = [1.2, 1.5, 1.1];
    let product = vec![(0, Form::Power(1)), (1, Form::Power(2)), (2, Form::Power(-1))];
    let sum = Sum([(product, 1.0)].into());
    let of = |column: ColumnId| Shape::Lognormal { median: 1.0, sigma: sigma(gsd2[usize::from(column)]) };
    let found = Moments::with(&sum, |column, ways| mean(of(column), ways)).variance();
    assert!((found.mean - 1.0914331231091077).abs() < 1e-12);
    assert!((found.variance.sqrt() - 0.4772774304136098).abs() < 1e-12);
    // Elasticities squared times sigma squared: whose the spread of the logarithm is.
    let elasticities = elasticity_of(&sum, &[1.0; 3]);
    let parts: Vec<f64> = (0..3).map(|column| elasticities[&(column as ColumnId)] * sigma(gsd2[column])).map(|part| part * part).collect();
    let whole: f64 = parts.iter().sum();
    for (part, published) in parts.iter().zip([0.047491903, 0.939529668, 0.012978429]) {
        assert!((part / whole - published).abs() < 1e-9);
    }
    let [a, b, c] = [drawn("a", 1.2), drawn("b", 1.5), drawn("c", 1.1)];
    let values: Vec<f64> = (0..DRAWS).map(|draw| a[draw] * b[draw] * b[draw] / c[draw]).collect();
    let [low, high] = faceload_core::analysis::quantiles(&values, [0.025, 0.975]);
    assert!((low / 0.4404878053030401 - 1.0).abs() < 0.01 && (high / 2.27021040755495 - 1.0).abs() < 0.01, "{low} {high}");
}

#[test]
fn a_sum_of_two_lognormal_variates() {
    let sum = Sum([(vec![(0, Form::Power(1))], 1.0), (vec![(1, Form::Power(1))], 2.0)].into());
    let found = Moments::with(&sum, |_, ways| mean(Shape::Lognormal { median: 1.0, sigma: sigma(1.5) }, ways)).variance();
    assert!((found.mean - 3.062288563215545).abs() < 1e-12);
    assert!((found.variance - 0.21858589206817172).abs() < 1e-12);
    let (x, y) = (drawn("x", 1.5), drawn("y", 1.5));
    let values: Vec<f64> = x.iter().zip(&y).map(|(x, y)| x + 2.0 * y).collect();
    let [low, middle, high] = faceload_core::analysis::quantiles(&values, [0.025, 0.5, 0.975]);
    for (found, published) in [(low, 2.2553888033), (middle, 3.0247367190), (high, 4.0835559156)] {
        assert!((found / published - 1.0_f64).abs() < 0.004, "{found} where {published} is exact");
    }
}

#[test]
fn what_two_alternatives_share_cancels_in_their_pair() {
    // A = c qA, B = m c qB, qA and qB with a squared geometric standard deviation of 1.1.
    for (median, shares) in [
        (1.05, [0.7654514852, 0.6313338920, 0.5392790584, 0.5249460248]),
        (1.10, [0.9213503965, 0.7438212710, 0.5763821539, 0.5486419891]),
        (1.20, [0.9965877546, 0.8949509749, 0.6437569716, 0.5924373638]),
    ] {
        let (qa, qb) = (drawn("qa", 1.1), drawn("qb", 1.1));
        for (gsd2, unpaired) in [1.2, 2.0, 3.0].into_iter().zip(&shares[1..]) {
            let (c, other) = (drawn("c", gsd2), drawn("other", gsd2));
            let less = |with: &[f64]| {
                let differences: Vec<f64> = (0..DRAWS).map(|draw| median * with[draw] * qb[draw] - c[draw] * qa[draw]).collect();
                share_above_zero(&differences)
            };
            assert!((less(&c) - shares[0]).abs() < 0.004, "paired {} at {median} and {gsd2}", less(&c));
            assert!((less(&other) - unpaired).abs() < 0.004, "unpaired at {median} and {gsd2}");
        }
        let ratios: Vec<f64> = qa.iter().zip(&qb).map(|(a, b)| median * b / a).collect();
        assert!((Interval::of(&ratios).median / median - 1.0).abs() < 0.002);
    }
}

#[test]
fn the_additive_case_of_the_guide_has_its_published_interval() {
    // JCGM 101:2008, 9.2.3: the sum of four rectangular variates of unit standard deviation, 95 % interval.
    let half = 3.0_f64.sqrt();
    let mut sums = vec![0.0; DRAWS];
    for name in ["x1", "x2", "x3", "x4"] {
        let mut values = vec![0.0; DRAWS];
        for (block, values) in values.chunks_mut(1000).enumerate() {
            Stream::new(3, name, Design::Plain).fill(block, values);
        }
        Shape::Uniform { low: -half, high: half }.fill(&mut values);
        sums.iter_mut().zip(values).for_each(|(sum, value)| *sum += value);
    }
    let [low, high] = faceload_core::analysis::quantiles(&sums, [0.025, 0.975]);
    let published = 3.879406741347821;
    assert!((low + published).abs() < 0.02 && (high - published).abs() < 0.02, "{low} {high}");
}

#[test]
fn the_mass_calibration_of_the_guide_has_its_published_spread() {
    // JCGM 101:2008, 9.3: dm = (mRc + dmRc)(1 + (ra - 1.2)(1/rW - 1/rR)) - 100 000 mg.
    let uniform = |low: f64, high: f64, name: &str| {
        let mut values = vec![0.0; DRAWS];
        for (block, values) in values.chunks_mut(1000).enumerate() {
            Stream::new(11, name, Design::LatinHypercube).fill(block, values);
        }
        Shape::Uniform { low, high }.fill(&mut values);
        values
    };
    let normal = |middle: f64, spread: f64, name: &str| -> Vec<f64> {
        uniform(0.0, 1.0, name).into_iter().map(|u| middle + spread * faceload_core::quantity::normal_quantile(u)).collect()
    };
    let (reference, small) = (normal(100_000.0, 0.05, "mRc"), normal(1.234, 0.02, "dmRc"));
    let (air, weight, standard) = (uniform(1.1, 1.3, "ra"), uniform(7000.0, 9000.0, "rW"), uniform(7950.0, 8050.0, "rR"));
    let values: Vec<f64> = (0..DRAWS)
        .map(|d| (reference[d] + small[d]) * (1.0 + (air[d] - 1.2) * (1.0 / weight[d] - 1.0 / standard[d])) - 100_000.0)
        .collect();
    let mean = values.iter().sum::<f64>() / DRAWS as f64;
    let spread = (values.iter().map(|value| (value - mean) * (value - mean)).sum::<f64>() / DRAWS as f64).sqrt();
    assert!((mean - 1.234).abs() < 0.001, "{mean}");
    assert!((spread - 0.0754797).abs() < 0.0005, "{spread}");
    let [low, high] = faceload_core::analysis::quantiles(&values, [0.025, 0.975]);
    assert!((low - 1.0844).abs() < 0.003 && (high - 1.3836).abs() < 0.003, "{low} {high}");
}
