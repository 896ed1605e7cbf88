//! The shop that the tests work in: the built-in tables, orders as text, amounts read off a model.

use std::sync::LazyLock;

use faceload_core::analysis::{Draws, Kept, Settings};
use faceload_core::comparison::{CompareFault, Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::inventory::{Book, Flow, Terms, What};
use faceload_core::load::{Contribution, Indicator, Model, Per};
use faceload_core::order::{Boundary, Document, Order, OrderFault};

static TABLES: LazyLock<Tables> = LazyLock::new(|| Tables::embedded().expect("the built-in tables hold together"));

/// The tables built into the program.
pub fn tables() -> &'static Tables {
    &TABLES
}

/// An order as the program reads it, or what is wrong with it.
pub fn read(text: &str) -> Result<Order, Vec<OrderFault>> {
    let document = Document::json("order.json", text).map_err(|fault| vec![fault])?;
    Order::read(document, tables())
}

/// An order that must be good.
pub fn order(text: &str) -> Order {
    read(text).unwrap_or_else(|faults| panic!("{}\n{text}", faults.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")))
}

/// The comparison of an order, or why there is none.
pub fn try_compare(text: &str, boundary: Boundary) -> Result<Comparison, CompareFault> {
    compare(tables(), &order(text), Per::Order, boundary)
}

/// The comparison of an order's faces, per order.
pub fn compared(text: &str) -> Comparison {
    try_compare(text, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}\n{text}"))
}

/// The comparison of an order's faces with their blanks.
pub fn compared_with_blank(text: &str) -> Comparison {
    try_compare(text, Boundary::FaceWithBlank).unwrap_or_else(|fault| panic!("{fault:?}\n{text}"))
}

/// An order of one line and one alternative, each given as the inside of a JSON object.
pub fn one(line: &str, alternative: &str) -> String {
    format!(r#"{{"schema_version":1,"line":[{{{line}}}],"alternative":[{{"id":"only",{alternative}}}]}}"#)
}

/// The same with a site.
pub fn one_at(site: &str, line: &str, alternative: &str) -> String {
    format!(r#"{{"schema_version":1,"site":{{{site}}},"line":[{{{line}}}],"alternative":[{{"id":"only",{alternative}}}]}}"#)
}

/// The value of a formula on a model whose jobs one alternative makes.
pub fn amount(model: &Model, terms: &Terms) -> f64 {
    assert_eq!(model.parts.len(), 1, "another alternative makes a part of the order");
    model.parts[0].value(terms)
}

/// The amount of every flow with that label and of that sort, in its base unit, for the whole order.
pub fn flow(model: &Model, label: &str, sort: fn(&What) -> bool) -> f64 {
    let found: Vec<&Flow> = model.flows.iter().filter(|flow| flow.label == label && sort(&flow.what)).collect();
    assert!(!found.is_empty(), "no such flow: {label}; there are {:?}", model.flows.iter().map(|flow| &flow.label).collect::<Vec<_>>());
    found.iter().map(|flow| amount(model, flow.what.terms())).sum()
}

/// Kilograms bought of a material.
pub fn bought(model: &Model, material: &str) -> f64 {
    flow(model, material, |what| matches!(what, What::Bought(..)))
}

/// Kilowatt-hours of a machine.
pub fn electricity(model: &Model, machine: &str) -> f64 {
    flow(model, machine, |what| matches!(what, What::Electricity(_)))
}

/// Litres drawn for a rinse.
pub fn water(model: &Model, rinse: &str) -> f64 {
    flow(model, rinse, |what| matches!(what, What::WaterDrawn(_)))
}

/// The value of an input in the unit of its row.
pub fn input(model: &Model, id: &str) -> f64 {
    let place = tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"));
    model.book.input(faceload_core::inventory::InputId::at(place)).value
}

/// The one contribution of that label to an indicator.
pub fn part<'a>(model: &'a Model, indicator: Indicator, label: &str) -> &'a Contribution {
    model
        .contributions_to(indicator, Per::Order)
        .find(|part| part.label == label)
        .unwrap_or_else(|| panic!("nothing of {label} counts in {}", indicator.id()))
}

/// What one unit of that flow loads, in base units.
pub fn factor(model: &Model, indicator: Indicator, label: &str) -> f64 {
    amount(model, &part(model, indicator, label).factor)
}

/// kg CO2e of a kWh of an area at the meter, weighed with that set, and the area's grid loss.
pub fn at_the_meter(area: &str, gwp: &str) -> (f64, f64) {
    let site = format!(r#""electricity":"{area}""#);
    let text = one_at(&site, r#""code":"R1-1","size":"30 in","quantity":10"#, r#""route":"screen-printing""#);
    let comparison = compared(&text.replacen('{', &format!(r#"{{"gwp":"{gwp}","#), 1));
    let model = comparison.model("only").expect("the order has one alternative");
    let loss = input(model, &comparison.order.site.electricity.loss);
    (factor(model, Indicator::Co2e, "press"), loss)
}

/// kg CO2e of a MJ of a fuel (HHV), burnt in an area, weighed with that set.
pub fn burnt(fuel: &str, area: &str, gwp: &str) -> f64 {
    let site = format!(r#""electricity":"{area}","heat":"{fuel}""#);
    let text = one_at(&site, r#""code":"R1-1","size":"30 in","quantity":10"#, r#""route":"screen-printing""#);
    let comparison = compared(&text.replacen('{', &format!(r#"{{"gwp":"{gwp}","#), 1));
    let model = comparison.model("only").expect("the order has one alternative");
    factor(model, Indicator::Co2e, "warming the air of the screen room")
}

/// kg CO2e of a kg m carried and of a m driven, in an order with that site, weighed with AR5.
pub fn carried(site: &str, with: &str) -> (f64, f64) {
    let site = format!(r#"{site},"delivery":"60 km","visit":"30 km""#);
    let text = one_at(&site, r#""code":"R1-1","size":"30 in","quantity":10"#, &format!(r#""route":"screen-printing","with":{{{with}}}"#));
    let text = text.replacen('{', r#"{"gwp":"AR5","#, 1);
    let comparison = compare(tables(), &order(&text), Per::M2Year, Boundary::Face).unwrap_or_else(|fault| panic!("{fault:?}"));
    let model = comparison.model("only").expect("the order has one alternative");
    let of = |wanted: fn(&What) -> bool| {
        let flow = model.flows.iter().find(|flow| wanted(&flow.what)).expect("such a flow");
        let found = model.contributions_to(Indicator::Co2e, Per::M2Year).find(|one| one.label == flow.label && one.stage == flow.stage);
        amount(model, &found.expect("it loads CO2e").factor)
    };
    (of(|what| matches!(what, What::Freight(_))), of(|what| matches!(what, What::Travel(_))))
}

/// The book of an order's first alternative.
pub fn book(order: &Order) -> Book {
    Book::open(tables(), order, &order.alternatives[0]).unwrap_or_else(|faults| panic!("{faults:?}"))
}

/// Whether a value lies within a distance of what was published.
#[track_caller]
pub fn near(what: &str, value: f64, published: f64, within: f64) {
    assert!((value - published).abs() <= within, "{what}: {value}, published {published}, more than {within} apart");
}

/// A few draws of a comparison and all of its pairs.
pub fn draws(comparison: &Comparison) -> Draws {
    Draws::make(comparison, &comparison.pairs(), Settings { number: 100, ..Settings::default() }, &mut Kept::default(), |_| true)
}

/// The result of a comparison as JSON text, with a few draws.
pub fn json(comparison: &Comparison, pair: Option<(usize, usize)>) -> String {
    faceload_report::result::json(comparison, &draws(comparison), pair)
}
