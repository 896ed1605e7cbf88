//! The command line: results to standard output, words to standard error, exit codes, JSON.

mod analysis;
mod areas;
mod compare;
mod explain;
mod lines;
mod order;
mod rows;
mod own_tables;
mod several;
mod statement;
mod usage;
