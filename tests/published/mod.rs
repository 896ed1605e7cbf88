//! Checks against publications, one file each; every check runs through code that the product runs.

mod air;
mod blank;
mod cfr_98;
mod egrid_2022;
mod gwp;
mod hand_results;
mod mesh;
mod nfpa_86;
mod nist_hb44;
mod roll_layout;
mod shapes;
mod solvents;
