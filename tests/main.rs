//! Tests of the whole: against publications, against laws that must always hold, against bad input,
//! and of the files themselves.

mod claims;
mod cli;
mod data;
mod laws;
mod made_up;
mod program;
mod published;
mod readme;
mod refused;
mod report;
mod shop;
mod tables;
mod tables_page;
mod tidy;
