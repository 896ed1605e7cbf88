//! The normal and lognormal distributions: values tabulated for the standard normal quantile, and quantiles, mean
//! and spread of lognormal variates of median 1 (any handbook of statistics; digits from an independent library).

use faceload_core::analysis::{Shape, mean};
use faceload_core::inventory::Form;
use faceload_core::quantity::{exp, ln, normal_quantile};

#[test]
fn the_quantile_function_gives_the_tabulated_values() {
    for (share, published) in [
        (0.75, 0.674_489_750_196_081_7),
        (0.90, 1.281_551_565_544_600_4),
        (0.95, 1.644_853_626_951_472_2),
        (0.975, 1.959_963_984_540_054),
        (0.99, 2.326_347_874_040_840_8),
        (0.995, 2.575_829_303_548_900_4),
        (0.999, 3.090_232_306_167_813),
        // The inverse of the tabulated distribution function.
        (0.001_349_898_031_630_093_3, -3.0),
        (0.158_655_253_931_457_07, -1.0),
        (0.691_462_461_274_013_1, 0.5),
        // Far out, where another rational function takes over: the 1e-12 and 1e-15 points.
        (1e-12, -7.034_483_825_301_131),
        (1e-15, -7.941_345_326_170_998),
    ] {
        let found = normal_quantile(share);
        assert!((found - published).abs() <= 1e-13 * published.abs().max(1.0), "{share}: {found} where {published} is published");
    }
    assert_eq!(normal_quantile(0.5), 0.0);
}

#[test]
fn exponential_and_logarithm_agree_with_each_other_and_with_published_constants() {
    for (x, published) in [(1.0, std::f64::consts::E), (-1.0, 0.367_879_441_171_442_33), (10.0, 22_026.465_794_806_718), (0.0, 1.0)] {
        assert!((exp(x) / published - 1.0).abs() < 4e-16, "e^{x}");
    }
    for (x, published) in [(2.0, std::f64::consts::LN_2), (10.0, std::f64::consts::LN_10), (1e-300, -690.775_527_898_213_7), (1.0, 0.0)] {
        assert!((ln(x) - published).abs() <= 3e-16 * published.abs(), "ln {x}");
    }
    for step in -600..600 {
        let x = f64::from(step) * 1.137;
        assert!((ln(exp(x)) - x).abs() <= 1e-15 * x.abs().max(1.0), "{x}");
    }
}

#[test]
fn lognormal_variates_have_the_published_quantiles_and_moments() {
    // Squared geometric standard deviation, sigma, mean, coefficient of variation, 2.5 %, 5 %, 95 % and 97.5 % points.
    for [gsd2, sigma, mean_published, variation, q025, q05, q95, q975] in [
        [1.05, 0.024395082085, 1.000297604290, 0.024398712035, 0.953311579993, 0.960668061406, 1.040942277749, 1.048974984661],
        [1.2, 0.091160778397, 1.004163788338, 0.091350499774, 0.836380318876, 0.860754338003, 1.161771664515, 1.195628325335],
        [1.5, 0.202732554054, 1.020762854405, 0.204833603038, 0.672099755064, 0.716436703515, 1.395796718808, 1.487874370531],
        [3.0, 0.549306144334, 1.162843873736, 0.593469354461, 0.340745212164, 0.405137726677, 2.468296419099, 2.934744097064],
    ] {
        assert!((0.5 * ln(gsd2) - sigma).abs() < 1e-12);
        let shape = Shape::Lognormal { median: 1.0, sigma };
        let (first, second) = (mean(shape, &[Form::Power(1)]), mean(shape, &[Form::Power(2)]));
        assert!((first - mean_published).abs() < 1e-10, "mean at {gsd2}");
        assert!(((second - first * first).sqrt() / first - variation).abs() < 1e-9, "variation at {gsd2}");
        for (share, published) in [(0.025, q025), (0.05, q05), (0.95, q95), (0.975, q975)] {
            assert!((shape.at(share) / published - 1.0).abs() < 1e-10, "{share} at {gsd2}");
        }
    }
}

#[test]
fn a_mean_without_closed_form_agrees_with_draws_at_evenly_spread_numbers() {
    // 1/(1 + x) of a lognormal x of median 0.1, and 1/(1 - x) of a split triangular one.
    let checked = [
        (Shape::Lognormal { median: 0.1, sigma: 0.42 }, Form::PerOnePlus),
        (Shape::Triangular { low: 0.0, median: 0.03, high: 0.2 }, Form::PerOneMinus),
        (Shape::Triangular { low: 0.2, median: 0.5, high: 1.0 }, Form::Power(3)),
        (Shape::Uniform { low: 0.2, high: 1.0 }, Form::Power(-1)),
    ];
    const N: u32 = 200_000;
    for (shape, way) in checked {
        let mut sum = 0.0;
        for n in 0..N {
            sum += way.at(shape.at((f64::from(n) + 0.5) / f64::from(N)));
        }
        let (drawn, exact) = (sum / f64::from(N), mean(shape, &[way]));
        assert!((drawn / exact - 1.0).abs() < 2e-6, "{shape:?}: {drawn} against {exact}");
    }
}
