//! The inputs of a comparison: every row its models asked for, with whose it is and how an order would state it.

use std::collections::{BTreeMap, BTreeSet};

use faceload_core::factors::{Input, Origin, Tables};
use faceload_core::in_order;
use faceload_core::load::Model;

use crate::explain::{InputOf, input};
use crate::words::join;

/// Every input that the models asked for, once; own values that differ stand each for itself.
pub fn inputs_of(tables: &Tables, models: &[Model]) -> Vec<InputOf> {
    let mut seen: BTreeMap<(String, String), InputOf> = BTreeMap::new();
    let mut users: BTreeMap<String, BTreeSet<&str>> = BTreeMap::new();
    for plan in models.iter().flat_map(|model| model.parts.iter().map(|part| &part.plan)) {
        let whose = plan.alternative.id.as_str();
        for id in plan.book.used() {
            let row = plan.book.input(id);
            users.entry(row.id.clone()).or_default().insert(whose);
            let differs = if row.origin == Origin::Override { format!("{} {} {}", row.value, row.grade, row.note) } else { String::new() };
            let shown =
                seen.entry((row.id.clone(), differs)).or_insert_with(|| InputOf { typed: typed(tables, row), ..input(tables, row) });
            if !shown.whose.iter().any(|known| known == whose) {
                shown.whose.push(whose.to_owned());
            }
        }
    }
    let mut list: Vec<InputOf> = seen.into_values().collect();
    for shown in &mut list {
        if shown.own && users.get(&shown.id).is_some_and(|users| users.len() > shown.whose.len()) {
            shown.item = format!("{} ({} only)", shown.item, join(&shown.whose.iter().map(String::as_str).collect::<Vec<_>>()));
        }
    }
    in_order(&mut list, |a, b| (&a.id, &a.item).cmp(&(&b.id, &b.item)));
    list
}

/// A row's value as an order writes it; nothing where an order states it elsewhere.
fn typed(tables: &Tables, row: &Input) -> String {
    let by_with = row.origin != Origin::Override || row.source != "the order" || row.place.contains(".with.");
    if tables.find(&row.id).is_none() || !by_with {
        return String::new();
    }
    format!("{} {}", row.value, row.unit.typed()).trim_end().to_owned()
}
