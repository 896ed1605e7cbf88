//! Results in words, tables and panels: what a person reads, on the terminal and in the page.
//!
//! It computes nothing; every number comes from the core.

pub mod carrier_list;
pub mod catalogue;
pub mod cautions;
pub mod document;
pub mod claims;
pub mod data;
pub mod differences;
pub mod drivers;
pub mod explain;
pub mod figure;
pub mod flip_panels;
pub mod flips;
pub mod input_list;
pub mod job_lines;
pub mod labels;
pub mod link;
pub mod other_units;
pub mod loads;
pub mod panel;
pub mod result;
pub mod row_report;
pub mod shares;
pub mod source_list;
pub mod spot;
pub mod stages;
pub mod sureness;
pub mod swings;
pub mod terminal;
pub mod view;
pub mod words;
