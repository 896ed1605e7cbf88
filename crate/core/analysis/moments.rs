//! Moments: the mean of a function of one drawn input, exact or to the last digits.
//!
//! - lognormal, x to the power p: m^p exp(p^2 sigma^2 / 2); other functions by the trapezoidal rule in z, which
//!   converges faster than any power for them;
//! - triangular and uniform: 20 points of Gauss and Legendre on each side of the median, exact for powers up to 38.

use super::column::Shape;
use crate::inventory::Form;
use crate::quantity::exp;

/// Points and weights of Gauss and Legendre on (0, 1).
const GAUSS: [(f64, f64); 20] = [
    (0.003435700407452502, 0.008807003569575447),
    (0.018014036361043095, 0.020300714900193223),
    (0.04388278587433703, 0.031336024167054395),
    (0.08044151408889061, 0.04163837078835236),
    (0.1268340467699246, 0.05096505990862035),
    (0.1819731596367425, 0.0590972659807593),
    (0.24456649902458644, 0.06584431922458844),
    (0.3131469556422902, 0.0710480546591912),
    (0.38610707442917747, 0.07458649323630212),
    (0.46173673943325133, 0.07637669356536314),
    (0.5382632605667487, 0.07637669356536314),
    (0.6138929255708225, 0.07458649323630212),
    (0.6868530443577098, 0.0710480546591912),
    (0.7554335009754136, 0.06584431922458844),
    (0.8180268403632576, 0.0590972659807593),
    (0.8731659532300754, 0.05096505990862035),
    (0.9195584859111094, 0.04163837078835236),
    (0.956117214125663, 0.031336024167054395),
    (0.981985963638957, 0.020300714900193223),
    (0.9965642995925474, 0.008807003569575447),
];

/// The mean of a product of forms in which one drawn input stands.
pub fn mean(shape: Shape, forms: &[Form]) -> f64 {
    let at = |x: f64| forms.iter().fold(1.0, |product, form| product * form.at(x));
    match shape {
        Shape::Lognormal { median, sigma } => {
            let power = |form: &Form| if let Form::Power(power) = form { Some(f64::from(*power)) } else { None };
            match forms.iter().map(power).sum::<Option<f64>>() {
                Some(power) => at(median) * exp(0.5 * power * power * sigma * sigma),
                None => lognormal(sigma, |x| at(median * x)),
            }
        }
        // With s = sqrt(2u) below the median and sqrt(2 - 2u) above, du = s ds on either side.
        Shape::Triangular { low, median, high } => GAUSS.iter().fold(0.0, |sum, (s, weight)| {
            sum + weight * s * (at(median + (low - median) * (1.0 - s)) + at(median + (high - median) * (1.0 - s)))
        }),
        Shape::Uniform { low, high } => GAUSS.iter().fold(0.0, |sum, (u, weight)| sum + weight * at(low + (high - low) * u)),
    }
}

fn lognormal(sigma: f64, at: impl Fn(f64) -> f64) -> f64 {
    const STEP: f64 = 0.1;
    let (mut sum, mut weights) = (0.0, 0.0);
    for n in -90..=90 {
        let z = STEP * f64::from(n);
        let weight = exp(-0.5 * z * z);
        sum += weight * at(exp(sigma * z));
        weights += weight;
    }
    sum / weights
}
