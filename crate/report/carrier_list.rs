//! Electricity areas, fuels, freight and vehicles: what an order may name, and what each emits.

use faceload_core::factors::{Basis, Carried, Carrier, Grade, Tables};
use faceload_core::load::emission;
use faceload_core::order::{Document, Order, demo};

use crate::words::number;

/// What is listed: heading, the unit as a reader sees it, base units in one of it.
const LISTED: [(Carried, &str, &str, f64); 4] = [
    (Carried::Electricity, "Electricity areas", "g CO2e per kWh at the meter", 1e-3),
    (Carried::Heat, "Heating fuels", "g CO2e per kWh of fuel (HHV)", 1e-3 / 3.6),
    (Carried::Freight, "Freight", "g CO2e per tonne-kilometre", 1e-9),
    (Carried::Vehicle, "Vehicles", "g CO2e per kilometre", 1e-6),
];

/// Those whose id, name, country or year holds a word, as text; nothing where none does.
pub fn text(tables: &Tables, word: &str) -> String {
    let Some(order) = order(tables) else { return String::new() };
    let wanted = word.to_lowercase();
    let holds = |one: &Carrier| [&one.id, &one.name, &one.country, &one.year].into_iter().any(|text| text.to_lowercase().contains(&wanted));
    let mut out = String::new();
    for (carried, heading, unit, size) in LISTED {
        let found: Vec<_> = tables.carriers_of(carried).into_iter().filter(|one| holds(one)).collect();
        if found.is_empty() {
            continue;
        }
        if !out.is_empty() {
            out.push('\n');
        }
        out.push_str(&format!("{heading}, {unit}, GWP100 AR6\n"));
        let wide = found.iter().map(|one| one.id.len()).max().unwrap_or_default();
        for one in found {
            let load = emission(tables, &order, one).map_or_else(|| "no row".to_owned(), |load| number(load / size));
            let basis = match (one.basis, one.upstream.is_empty()) {
                (Basis::LifeCycle, _) => "life-cycle",
                (Basis::Direct, false) if carried != Carried::Electricity => "direct, or from the well",
                (Basis::Direct, _) => "direct",
            };
            let gases = if one.by_gas { "" } else { ", CO2e only" };
            out.push_str(&format!("  {:wide$}  {load:>6}  {}; {basis}{gases}; grade {}\n", one.id, one.full_label(), grade(tables, one)));
        }
    }
    out
}

/// The worst grade among its emissions and its grid loss.
fn grade(tables: &Tables, one: &Carrier) -> Grade {
    tables.find(&one.loss).map_or(one.grade, |place| one.grade.max(tables.inputs[place].grade))
}

/// A direct order, on which fuels and vehicles count what leaves stack and exhaust.
fn order(tables: &Tables) -> Option<Order> {
    let document = Document::json("the first demo", demo::DEMOS.first()?.text).ok()?;
    Order::read(document, tables).ok()
}
