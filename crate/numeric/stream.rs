//! Numbers between 0 and 1 for the draws, one stream per input.
//!
//! A number depends on the seed, the stream's name and the draw only, so that adding an input
//! leaves the draws of all others alone, and any machine and any number of threads find the same.
//! In Latin hypercube blocks of 1,000 draws each stream takes one number from each of the block's
//! 1,000 equal slices of (0, 1), in an order of its own; plain draws are independent.

use crate::wide;

/// Draws in a block of a Latin hypercube.
pub const BLOCK: usize = 1000;

/// How the numbers are spread over (0, 1).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Design {
    /// One number from each slice of a block.
    LatinHypercube,
    /// Independent numbers.
    Plain,
}

impl Design {
    /// Every design by the name that commands take.
    pub const ALL: [(&'static str, Self); 2] = [("latin-hypercube", Self::LatinHypercube), ("plain", Self::Plain)];

    /// Its name.
    pub fn name(self) -> &'static str {
        Self::ALL.iter().find(|(_, design)| *design == self).map_or("", |(name, _)| name)
    }
}

/// The stream of one input.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stream {
    key: u64,
    design: Design,
}

/// Mixes 64 bits so that each depends on all (the finaliser of SplitMix64, Steele, Lea and Flood,
/// OOPSLA 2014).
#[inline(always)]
fn mixed(mut z: u64) -> u64 {
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// The step between two numbers of a stream: 2^64 over the golden ratio, odd.
const STEP: u64 = 0x9e37_79b9_7f4a_7c15;

impl Stream {
    /// The stream of a name under a seed.
    pub fn new(seed: u64, name: &str, design: Design) -> Self {
        let named = name.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |key, byte| (key ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
        Self { key: mixed(named ^ mixed(seed.wrapping_add(STEP))), design }
    }

    /// The 64 bits of the n-th number.
    #[inline(always)]
    fn bits(self, n: u64) -> u64 {
        mixed(self.key.wrapping_add(n.wrapping_mul(STEP)))
    }

    /// Fills the numbers of a block of draws, as long as `out`.
    #[inline(never)]
    pub fn fill(self, block: usize, out: &mut [f64]) {
        let first = (block * BLOCK) as u64;
        wide(
            #[inline(always)]
            || {
                for (n, number) in (first..).zip(out.iter_mut()) {
                    *number = between(self.bits(n));
                }
            },
        );
        if self.design == Design::LatinHypercube {
            self.stratify(first, out);
        }
    }

    /// Puts each number in a slice of its own, the slices shuffled (Fisher and Yates).
    fn stratify(self, first: u64, out: &mut [f64]) {
        // Apart from the numbers themselves: another key.
        let order = Self { key: mixed(self.key ^ STEP), design: self.design };
        let slice = 1.0 / out.len() as f64;
        let mut places = [0_u32; BLOCK];
        wide(
            #[inline(always)]
            || {
                for ((n, number), place) in (0_u32..).zip(out.iter_mut()).zip(&mut places) {
                    *number = (f64::from(n) + *number) * slice;
                    *place = (((order.bits(first + u64::from(n)) >> 32) * (u64::from(n) + 1)) >> 32) as u32;
                }
            },
        );
        for n in (1..out.len()).rev() {
            out.swap(n, places[n] as usize);
        }
    }
}

/// A number between 0 and 1 made of 52 bits and a half, so that neither comes up.
#[inline(always)]
fn between(bits: u64) -> f64 {
    // From 1 to 2, then less 1 - 2^-53: exact, and quick in any register.
    f64::from_bits((bits >> 12) | 1.0_f64.to_bits()) - (1.0 - 0.5 * f64::EPSILON)
}
