//! Tests of the whole: against publications, against laws that must always hold, against bad input,
//! and of the files themselves.

mod laws;
mod made_up;
mod published;
mod shop;
