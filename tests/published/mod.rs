//! Checks against publications, one file each; every check runs through code that the product runs.

mod air;
mod blank;
mod niosh_wash_up;
mod cfr_98;
mod egrid_2022;
mod ghg_protocol;
mod gwp;
mod hand_film_and_copy;
mod hand_results;
mod hand_set_ups;
mod iso_tr_52000_2;
mod mesh;
mod nfpa_86;
mod nist_hb44;
mod roll_layout;
mod shapes;
mod solvents;
mod voc_limit;
mod water;
