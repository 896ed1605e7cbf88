//! Consistency: of each alternative's load, how much stands on inputs of which grade, place and age.

use faceload_core::in_order;
use std::collections::BTreeMap;

use faceload_core::factors::{Grade, Input};
use faceload_core::load::Model;

use super::found::Found;
use super::node::{Node, list, paragraph, table};
use crate::figure::{Cell, Table};

/// What a product of inputs is sorted by.
type By = fn(&[&Input]) -> String;

/// The worst grade that stands in a product.
fn grade(inputs: &[&Input]) -> String {
    inputs.iter().map(|row| row.grade).max().unwrap_or(Grade::A).to_string()
}

/// The places that its factors come from.
fn region(inputs: &[&Input]) -> String {
    let named = inputs.iter().flat_map(|row| row.region.split(" and ")).flat_map(|region| region.split(", "));
    let short = |region| match region {
        "United States" => "US",
        "United Kingdom" => "UK",
        other => other,
    };
    let mut all: Vec<&str> = named.filter(|region| !region.is_empty()).map(short).collect();
    in_order(&mut all, Ord::cmp);
    all.dedup();
    if all.is_empty() { "not stated".to_owned() } else { all.join(", ") }
}

/// The age of the oldest of its factors.
fn age(inputs: &[&Input]) -> String {
    let years = inputs.iter().filter_map(|row| row.year.get(..4)?.parse::<u32>().ok());
    match years.min() {
        None => "no year stated".to_owned(),
        Some(year) if year < 2000 => "before 2000".to_owned(),
        Some(year) => format!("{} to {}", year / 10 * 10, year / 10 * 10 + 9),
    }
}

/// The shares of an alternative's load, by what each product of inputs is sorted by.
fn shares(found: &Found<'_>, model: &Model, by: By, factor_only: bool) -> BTreeMap<String, f64> {
    let per = found.comparison.per;
    let mut sums: BTreeMap<String, f64> = BTreeMap::new();
    for (part, one) in model.contributions_of(found.indicator, per) {
        let book = &part.plan.book;
        let value = |term: &faceload_core::inventory::Term| term.value(&part.activity, part.plan.values());
        for amount in &one.amount.0 {
            for factor in &one.factor.0 {
                let load = value(amount) * value(factor) / model.divisor(part, per);
                if load == 0.0 {
                    continue;
                }
                let amounts = if factor_only { [].iter() } else { amount.inputs.iter() };
                let inputs: Vec<&Input> = amounts.chain(&factor.inputs).map(|(id, _)| book.input(*id)).collect();
                *sums.entry(by(&inputs)).or_default() += load;
            }
        }
    }
    let whole: f64 = sums.values().sum();
    sums.values_mut().for_each(|sum| *sum /= if whole == 0.0 { 1.0 } else { whole });
    sums
}

/// Below this share in every column, rows are put together.
const SMALL: f64 = 0.005;

/// A table of shares.
fn shares_table(found: &Found<'_>, caption: &str, by: By, factor_only: bool) -> Table {
    let all: Vec<BTreeMap<String, f64>> = found.models().iter().map(|model| shares(found, model, by, factor_only)).collect();
    let mut names: Vec<&String> = all.iter().flat_map(BTreeMap::keys).collect();
    in_order(&mut names, Ord::cmp);
    names.dedup();
    let share = |sums: &BTreeMap<String, f64>, name: &str| sums.get(name).copied().unwrap_or(0.0);
    let (large, small): (Vec<_>, Vec<_>) = names.into_iter().partition(|name| all.iter().any(|sums| share(sums, name) >= SMALL));
    let row = |head: &str, names: &[&String]| {
        let shares = all.iter().map(|sums| names.iter().fold(0.0, |sum, name| sum + share(sums, name)));
        let cells = shares.map(|share| Cell::number(share, format!("{} %", (share * 100.0).round() + 0.0)));
        std::iter::once(Cell::from(head)).chain(cells).collect()
    };
    let mut rows: Vec<Vec<Cell>> = large.iter().map(|name| row(name, &[*name])).collect();
    match small.as_slice() {
        [] => {}
        [one] => rows.push(row(one, &small)),
        some => rows.push(row(&format!("{} others", some.len()), some)),
    }
    Table { caption: caption.to_owned(), columns: found.columns(&[""]), rows, ..Table::default() }
}

/// The consistency of the alternatives.
pub fn section(found: &Found<'_>) -> Node {
    let label = found.indicator.label();
    let mut inside: Vec<Node> = found.own_lines().into_iter().collect();
    inside.extend([
        paragraph(format!(
            "Shares of each alternative's load in {label}. A load is a sum of products; a product takes the worst grade of the inputs that stand in it, and the oldest year of its factor. \
             Columns that differ much would say that alternatives were not looked at with the same eyes."
        )),
        table(&shares_table(found, "By the worst grade in each product, how the shop works included", grade, false)),
        table(&shares_table(found, "By the worst grade in its factor alone", grade, true)),
        table(&shares_table(found, "By where its factor comes from", region, true)),
        table(&shares_table(found, "By the oldest year of its factor", age, true)),
    ]);
    inside.extend(list([
        "Technology: rates and layout are those of common shop practice per route unless marked own; what each row stands for is said in its note in the list of inputs.".to_owned(),
        "Electricity, fuel, freight, waste treatment, warming potentials and the rule for the end of life are the same rows for every alternative.".to_owned(),
    ]));
    super::section("report-consistency", inside)
}
