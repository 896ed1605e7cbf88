//! Where a function crosses zero: the method ITP (interpolate, truncate, project) of I. F. D. Oliveira and
//! R. H. C. Takahashi, ACM Transactions on Mathematical Software 47 (2020) 5: never worse than halving, mostly far better.

/// How ITP works.
#[derive(Debug, Clone, Copy)]
pub struct Itp {
    /// How near to the crossing it ends, half of the bracket.
    pub within: f64,
    /// How far the interpolated point is moved towards the middle: k1 (b - a)^2.
    pub k1: f64,
    /// Steps it may take beyond halving.
    pub slack: u32,
}

/// The crossing of `f` in a bracket whose ends have values of different sign, and every point tried.
pub fn itp(f: &mut dyn FnMut(f64) -> f64, bracket: (f64, f64), values: (f64, f64), how: Itp) -> (f64, Vec<f64>) {
    let ((mut a, mut b), (mut fa, mut fb)) = (bracket, values);
    let mut tried = Vec::new();
    if fa == 0.0 || fb == 0.0 {
        return (if fa == 0.0 { a } else { b }, tried);
    }
    let rises = fa < 0.0;
    let mut halvings = 0;
    let mut width = b - a;
    while width > 2.0 * how.within && halvings < 200 {
        width *= 0.5;
        halvings += 1;
    }
    // The radius of the middle halving would have reached, at each step.
    let mut reach = how.within * doubled(halvings + how.slack);
    while b - a > 2.0 * how.within && tried.len() < 300 {
        let middle = 0.5 * (a + b);
        let radius = (reach - 0.5 * (b - a)).max(0.0);
        let moved = how.k1 * (b - a) * (b - a);
        let interpolated = (fb * a - fa * b) / (fb - fa);
        let towards = if middle >= interpolated { 1.0 } else { -1.0 };
        let truncated = if moved <= (middle - interpolated).abs() { interpolated + towards * moved } else { middle };
        let x = if (truncated - middle).abs() <= radius { truncated } else { middle - towards * radius };
        let y = f(x);
        tried.push(x);
        if y == 0.0 {
            return (x, tried);
        }
        if (y > 0.0) == rises {
            (b, fb) = (x, y);
        } else {
            (a, fa) = (x, y);
        }
        reach *= 0.5;
    }
    (0.5 * (a + b), tried)
}

fn doubled(times: u32) -> f64 {
    (0..times).fold(1.0, |power, _| power * 2.0)
}
