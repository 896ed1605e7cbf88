//! A pair's loads as sums of products with what we say of them, as JSON: for libraries that check us from outside.
//! `pair_model DEMO FIRST SECOND INDICATOR`.

use faceload_core::analysis::{Columns, Draws, Interval, Kept, PairSpread, Settings, Shape, Sum, drivers, load};
use faceload_core::comparison::compare;
use faceload_core::factors::Tables;
use faceload_core::inventory::Form;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, demo};
use serde_json::{Value, json};

fn shape(shape: Shape) -> Value {
    match shape {
        Shape::Lognormal { median, sigma } => json!(["lognormal", median, sigma]),
        Shape::Triangular { low, median, high } => json!(["triangular", low, median, high]),
        Shape::Uniform { low, high } => json!(["uniform", low, high]),
    }
}

fn form(column: u16, form: Form) -> Value {
    match form {
        Form::Power(power) => json!([column, "power", power]),
        Form::PerOnePlus => json!([column, "per-one-plus", 1]),
        Form::PerOneMinus => json!([column, "per-one-plus", -1]),
    }
}

fn terms(sum: &Sum) -> Value {
    sum.0.iter().map(|(product, by)| json!([by, product.iter().map(|(column, one)| form(*column, *one)).collect::<Value>()])).collect()
}

fn points(interval: &Interval) -> Value {
    json!([interval.p5, interval.p25, interval.median, interval.p75, interval.p95])
}

fn exported(words: &[String]) -> Option<Value> {
    let [name, first, second, indicator] = words else { return None };
    let tables = Tables::embedded().ok()?;
    let demo = demo::find(name)?;
    let order = Order::read(Document::json(demo.name, demo.text).ok()?, &tables).ok()?;
    let comparison = compare(&tables, &order, Per::M2, Boundary::Face).ok()?;
    let place = |id: &str| comparison.models.iter().position(|model| model.alternative.id == id);
    let (a, b, indicator) = (place(first)?, place(second)?, Indicator::read(indicator)?);
    let (one, other) = comparison.of_pair(a, b)?;
    let mut columns = Columns::default();
    let sums = [load(&one, indicator, Per::M2, &mut columns), load(&other, indicator, Per::M2, &mut columns)];
    let found = drivers(&comparison, a, b, indicator)?;
    let draws = Draws::make(&comparison, &[(a, b)], Settings { number: 100_000, ..Settings::default() }, &mut Kept::default(), |_| true);
    let spread = PairSpread::of(&comparison, &draws, a, b, indicator)?;
    let drawn: Vec<Value> = columns.list().iter().map(|(drawn, own)| json!({ "name": drawn.name(), "shape": shape(*own) })).collect();
    let rows: Vec<Value> = found
        .rows
        .iter()
        .map(|row| json!({ "name": row.drawn.name(), "elasticity": row.elasticity, "first": row.first, "total": row.total }))
        .collect();
    Some(json!({
        "columns": drawn,
        "loads": [terms(&sums[0]), terms(&sums[1])],
        "ours": {
            "headline": found.headline, "mean": found.mean, "deviation": found.deviation, "rows": rows,
            "first": points(&spread.first), "second": points(&spread.second), "difference": points(&spread.difference),
            "first_less": spread.first_less,
        },
    }))
}

fn main() -> std::process::ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match exported(&words) {
        Some(value) => {
            println!("{value}");
            std::process::ExitCode::SUCCESS
        }
        None => {
            eprintln!("wanted: a demo, two of its alternatives that share a line, an indicator");
            std::process::ExitCode::from(2)
        }
    }
}
