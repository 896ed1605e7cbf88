//! A lane: what one register of the page does at once, which is two numbers. Elsewhere it is one, since there the compiler puts
//! lanes side by side by itself; it does not in what is built for size, whoever its packages are built for.
//!
//! Sums, products and quotients of lanes are the bits of one number after the other.

use std::ops::{Add, Div, Mul, Sub};

#[cfg(target_family = "wasm")]
use std::arch::wasm32 as register;

/// Numbers in a lane.
#[cfg(target_family = "wasm")]
pub const WIDTH: usize = 2;
/// Numbers in a lane.
#[cfg(not(target_family = "wasm"))]
pub const WIDTH: usize = 1;

/// A lane.
#[cfg(target_family = "wasm")]
#[derive(Debug, Clone, Copy)]
pub struct Lane(register::v128);
/// A lane.
#[cfg(not(target_family = "wasm"))]
#[derive(Debug, Clone, Copy)]
pub struct Lane(f64);

#[cfg(target_family = "wasm")]
impl Lane {
    /// Of nothing but 0.
    pub const ZERO: Self = Self(register::f64x2(0.0, 0.0));

    /// Of its numbers.
    #[inline(always)]
    pub fn of(numbers: [f64; WIDTH]) -> Self {
        Self(register::f64x2(numbers[0], numbers[1]))
    }

    /// Its numbers.
    #[inline(always)]
    pub fn numbers(self) -> [f64; WIDTH] {
        [register::f64x2_extract_lane::<0>(self.0), register::f64x2_extract_lane::<1>(self.0)]
    }

    /// No less than one number and no more than another.
    #[inline(always)]
    pub fn within(self, low: f64, high: f64) -> Self {
        Self(register::f64x2_min(register::f64x2_max(self.0, Self::from(low).0), Self::from(high).0))
    }

    /// 2 to the whole power that stands in the low bits.
    #[inline(always)]
    pub fn power_of_two(self) -> Self {
        Self(register::i64x2_shl(register::i64x2_add(self.0, register::i64x2_splat(1023)), 52))
    }
}

#[cfg(not(target_family = "wasm"))]
impl Lane {
    /// Of nothing but 0.
    pub const ZERO: Self = Self(0.0);

    /// Of its numbers.
    #[inline(always)]
    pub fn of(numbers: [f64; WIDTH]) -> Self {
        Self(numbers[0])
    }

    /// Its numbers.
    #[inline(always)]
    pub fn numbers(self) -> [f64; WIDTH] {
        [self.0]
    }

    /// No less than one number and no more than another.
    #[inline(always)]
    pub fn within(self, low: f64, high: f64) -> Self {
        Self(self.0.clamp(low, high))
    }

    /// 2 to the whole power that stands in the low bits.
    #[inline(always)]
    pub fn power_of_two(self) -> Self {
        Self(f64::from_bits(self.0.to_bits().wrapping_add(1023) << 52))
    }
}

impl From<f64> for Lane {
    #[inline(always)]
    fn from(number: f64) -> Self {
        Self::of([number; WIDTH])
    }
}

/// An operation of lanes: its trait, its method, the sign between numbers, the register's name for it.
macro_rules! operation {
    ($trait:ident, $method:ident, $sign:tt, $register:ident) => {
        impl $trait for Lane {
            type Output = Self;

            #[cfg(target_family = "wasm")]
            #[inline(always)]
            fn $method(self, other: Self) -> Self {
                Self(register::$register(self.0, other.0))
            }

            #[cfg(not(target_family = "wasm"))]
            #[inline(always)]
            fn $method(self, other: Self) -> Self {
                Self(self.0 $sign other.0)
            }
        }
    };
}

operation!(Add, add, +, f64x2_add);
operation!(Sub, sub, -, f64x2_sub);
operation!(Mul, mul, *, f64x2_mul);
operation!(Div, div, /, f64x2_div);

/// Works out each of some numbers, in place.
#[inline(always)]
pub fn each(numbers: &mut [f64], of: impl Fn(Lane) -> Lane) {
    let (lanes, rest) = numbers.as_chunks_mut::<WIDTH>();
    for numbers in lanes {
        *numbers = of(Lane::of(*numbers)).numbers();
    }
    for number in rest {
        [*number, ..] = of(Lane::from(*number)).numbers();
    }
}

#[cfg(test)]
mod tests {
    use super::{Lane, each};

    #[test]
    fn each_number_is_worked_out_alone() {
        let mut numbers = [1.0, 2.0, 4.0, 8.0, 10.0];
        each(&mut numbers, |x| (Lane::from(1.0) / x + x) * Lane::from(3.0) - Lane::from(1.0));
        assert_eq!(numbers, [1.0, 2.0, 4.0, 8.0, 10.0].map(|x: f64| (1.0 / x + x) * 3.0 - 1.0));
    }

    #[test]
    fn numbers_are_kept_within_and_powers_taken() {
        let mut numbers = [-9.0, 0.5, 9.0];
        each(&mut numbers, |x| x.within(-1.0, 1.0));
        assert_eq!(numbers, [-1.0, 0.5, 1.0]);
        let rounding = 6_755_399_441_055_744.0;
        each(&mut numbers, |x| (x * Lane::from(4.0) + Lane::from(rounding)).power_of_two());
        assert_eq!(numbers, [0.0625, 4.0, 16.0]);
    }
}
