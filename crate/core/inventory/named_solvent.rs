//! A solvent named in place of a value: `oxidation.ink-solvent.co2e = "isophorone"`.
//!
//! What an ink or a cleaner holds stands on its safety data sheet; its carbon then follows from its
//! formula. A row about the carbon of a solvent takes that, a row about its density its density.

use crate::factors::{Grade, Input, Origin, Solvent, Spread, Tables};
use crate::order::Override;

/// The rows that a solvent's carbon may stand in.
const CARBON: [&str; 5] = [
    "oxidation.cleaner.co2e",
    "oxidation.ink-solvent.co2e",
    "oxidation.jet-solvent.co2e",
    "oxidation.uv-monomer.co2e",
    "oxidation.water-ink.co2e",
];

/// Burnt, the carbon of a cleaner is that of its solvent too.
const BURNT: &str = "waste.cleaner-liquid.co2e";

/// The rows that a solvent's density may stand in.
const DENSE: [&str; 2] = ["cleaner.density", "screen.ink.thinner-density"];

/// What a row takes of a solvent: value, source, grade.
fn taken<'a>(solvent: &'a Solvent, row: &Input) -> Option<(f64, &'a str, Grade)> {
    if row.id == BURNT || CARBON.contains(&row.id.as_str()) {
        return Some((solvent.co2e, &solvent.source, solvent.grade));
    }
    let (density, source, grade) = solvent.density.as_ref().filter(|_| DENSE.contains(&row.id.as_str()))?;
    Some((*density, source, *grade))
}

/// The row with what it takes of the solvent that the order names; none where it names none.
pub(super) fn held(tables: &Tables, own: &Override, row: &Input) -> Option<Input> {
    let solvent = tables.solvents.get(own.text.trim())?;
    let (value, source, grade) = taken(solvent, row)?;
    Some(Input {
        value,
        centre: value,
        low: value,
        high: value,
        spread: Spread::Fixed,
        // The name is a fact of the order; the number is the tables'.
        grade,
        source: source.to_owned(),
        place: format!("{}, {}", solvent.item, solvent.formula),
        year: String::new(),
        note: if own.note.is_empty() { format!("named in {}", own.path) } else { own.note.clone() },
        origin: Origin::Override,
        ..row.clone()
    })
}

/// The way out where neither a value nor a solvent was read.
pub(super) fn help(tables: &Tables, own: &Override, row: &Input, typed: String) -> String {
    let names: Vec<&str> = tables.solvents.values().filter(|solvent| taken(solvent, row).is_some()).map(|one| one.id.as_str()).collect();
    match names.first() {
        None => typed,
        Some(_) => crate::order::offer(&own.text, &names, &format!("{typed}, or name a solvent such as `cyclohexanone`")),
    }
}
