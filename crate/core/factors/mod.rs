//! Floor 1. Owns: the typed rows of `factors/`, their sources, grades and spreads; inputs by id.
//! Never: knowledge of routes.

mod carrier;
mod fault;
mod file_names;
mod fingerprint;
mod grade;
mod input;
mod licence;
mod published;
mod reading;
mod row;
mod sign;
mod solvent;
mod source;
mod spread;
mod table;

pub use carrier::{Basis, Carried, Carrier};
pub use fault::TableFault;
pub use file_names::FILES;
pub use fingerprint::Fingerprint;
pub use grade::Grade;
pub use input::{Input, Origin, Scope};
pub use licence::Licence;
pub use published::{Published, Role, published};
pub(crate) use sign::{COLOURS, SHAPES};
pub use sign::{Legend, SignRow};
pub use solvent::Solvent;
pub use source::{Seen, Source};
pub use spread::Spread;
pub use table::{Tables, Texts};
