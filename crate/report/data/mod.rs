//! A result as data that can be checked: everything it was made from, what came out, and hashes of both.
//!
//! The record is one JSON text; the same rows stand beside it as CSV, described as an open table package.
//! `verify` makes a record again from what it carries and says what differs.

mod canonical;
mod embedded;
mod export;
mod inputs;
mod jobs;
mod made_from;
mod manifest;
mod package;
mod pairs;
mod record;
mod results;
mod schema;
mod sheet;
mod sources;
pub mod verify;

pub use canonical::{canonical, sha_256};
pub use embedded::{put_in, taken_from};
pub use export::{File, files};
pub use made_from::{Looked, drawn};
pub use manifest::Manifest;
pub use record::{RECORD, Record};
