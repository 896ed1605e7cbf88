//! The result as data: the same text from the command line and the page, byte for byte.

use faceload_core::analysis::{Draws, Interval};
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::order::Order;
use faceload_core::quantity::Kind;
use serde::Serialize;
use serde_json::{Map, Value, json};

use crate::figure::Figure;
use crate::sureness;
use crate::words::{CAUTION, NOT_COVERED, STANDING};

/// The version of the result's form.
pub const SCHEMA_VERSION: u32 = 1;

#[derive(Serialize)]
struct Exchange<'a> {
    schema_version: u32,
    order: &'a str,
    per: &'static str,
    boundary: &'static str,
    lines: usize,
    lines_compared: usize,
    lines_per_alternative: Vec<usize>,
    how_sure: String,
    draws: Made,
    not_covered: &'static str,
    caution: &'static str,
    standing: &'static str,
    factors: FactorsOf<'a>,
    alternatives: Vec<One<'a>>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pairs: Vec<Between<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    between: Option<Between<'a>>,
}

/// How the draws were made.
#[derive(Serialize)]
struct Made {
    number: usize,
    asked: usize,
    seed: u64,
    design: &'static str,
    inputs: usize,
}

/// The points of an interval.
fn points(interval: &Interval) -> Value {
    json!({ "5%": interval.p5, "25%": interval.p25, "50%": interval.median, "75%": interval.p75, "95%": interval.p95 })
}

/// The tables that a result rests on.
#[derive(Serialize)]
struct FactorsOf<'a> {
    sha_256: String,
    own_rows: &'a [String],
}

/// The tables that an order was read with.
fn factors(order: &Order) -> FactorsOf<'_> {
    FactorsOf { sha_256: order.tables.to_string(), own_rows: &order.own_rows }
}

/// A pair on the lines both can make.
#[derive(Serialize)]
struct Between<'a> {
    alternatives: [&'a str; 2],
    lines: usize,
    m2: f64,
    loads: Map<String, Value>,
}

#[derive(Serialize)]
struct One<'a> {
    id: &'a str,
    route: &'static str,
    m2: f64,
    loads: Map<String, Value>,
}

/// The comparison as JSON text.
pub fn json(comparison: &Comparison, draws: &Draws, pair: Option<(usize, usize)>) -> String {
    let alternatives = comparison.models.iter().enumerate().map(|(at, model)| {
        let loads = Indicator::ALL.into_iter().map(|indicator| {
            let unit = format!("{}{}", indicator.unit(), comparison.per.suffix());
            let interval = draws.interval(comparison, at, indicator);
            let value = model.load(indicator, comparison.per).value;
            (indicator.id().to_owned(), json!({ "value": value, "unit": unit, "draws": points(&interval) }))
        });
        One { id: &model.alternative.id, route: model.alternative.route.name(), m2: model.m2.base(), loads: loads.collect() }
    });
    let exchange = Exchange {
        schema_version: SCHEMA_VERSION,
        order: &comparison.order.name,
        per: comparison.per.name(),
        boundary: comparison.boundary.name(),
        lines: comparison.jobs.iter().map(|job| job.lines).sum(),
        lines_compared: comparison.lines_of(&comparison.common),
        lines_per_alternative: comparison.places.iter().map(|place| comparison.lines_of(&comparison.makers.common(&[*place]))).collect(),
        how_sure: sureness::drawn(draws),
        draws: Made {
            number: draws.settings.number,
            asked: draws.asked,
            seed: draws.settings.seed,
            design: draws.settings.design.name(),
            inputs: draws.inputs,
        },
        not_covered: NOT_COVERED,
        caution: CAUTION,
        standing: STANDING,
        factors: factors(&comparison.order),
        alternatives: alternatives.collect(),
        pairs: match pair {
            Some(_) => Vec::new(),
            None => comparison.first_pairs().into_iter().map(|(a, b)| between(comparison, draws, a, b)).collect(),
        },
        between: pair.map(|(a, b)| between(comparison, draws, a, b)),
    };
    let mut text = serde_json::to_string_pretty(&exchange).unwrap_or_default();
    text.push('\n');
    text
}

/// A figure as JSON text, with the tables it rests on.
pub fn figure(figure: &Figure, order: &Order) -> String {
    #[derive(Serialize)]
    struct Whole<'a> {
        #[serde(flatten)]
        figure: &'a Figure,
        factors: FactorsOf<'a>,
    }
    let mut text = serde_json::to_string_pretty(&Whole { figure, factors: factors(order) }).unwrap_or_default();
    text.push('\n');
    text
}

fn between<'a>(comparison: &'a Comparison, draws: &Draws, a: usize, b: usize) -> Between<'a> {
    let jobs = comparison.shared(a, b);
    let id = |index: usize| comparison.models[index].alternative.id.as_str();
    let loads = Indicator::ALL.into_iter().filter_map(|indicator| {
        let difference = comparison.difference(a, b, indicator)?;
        let unit = format!("{}{}", indicator.unit(), comparison.per.suffix());
        let spread = draws.spread(comparison, a, b, indicator)?;
        let ratio = draws.pair(comparison, a, b, indicator)?.ratios().map(|ratios| points(&Interval::of(&ratios)));
        let values = json!({
            "first": difference.first,
            "second": difference.second,
            "difference": difference.value(),
            "unit": unit,
            "draws": {
                "first": points(&spread.first),
                "second": points(&spread.second),
                "difference": points(&spread.difference),
                "ratio": ratio,
                "first_less": spread.first_less,
                "difference_at": spread.headline_at,
            },
            "finding": spread.finding.name(),
        });
        Some((indicator.id().to_owned(), values))
    });
    Between { alternatives: [id(a), id(b)], lines: comparison.lines_of(&jobs), m2: comparison.m2_of(&jobs), loads: loads.collect() }
}
