//! Loops over many numbers in the widest registers that the machine has. Sums and products are the same bits in any
//! width, since none are fused.

/// Does the work with wide registers; what it calls must be inlined to gain by it.
#[cfg(not(target_family = "wasm"))]
#[inline(always)]
pub fn wide<R>(work: impl FnOnce() -> R) -> R {
    pulp::Arch::new().dispatch(work)
}

/// The page is built with the registers it has.
#[cfg(target_family = "wasm")]
#[inline(always)]
pub fn wide<R>(work: impl FnOnce() -> R) -> R {
    work()
}
