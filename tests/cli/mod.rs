//! The command line: results to standard output, words to standard error, exit codes, JSON.

mod compare;
mod explain;
mod usage;
