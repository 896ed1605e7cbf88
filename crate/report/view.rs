//! Everything the page shows of a comparison, as one JSON text.

use faceload_core::analysis::{Swing, swings, swings_of};
use faceload_core::comparison::{Comparison, effort};
use faceload_core::factors::{Spread, Tables};
use faceload_core::inventory::{Stage, What};
use faceload_core::load::{Contribution, Indicator, Model};
use faceload_core::route::route;
use serde::Serialize;

use crate::explain::InputOf;
use crate::input_list::inputs_of;
use crate::job_lines::{JobOf, jobs};
use crate::labels::label;
use crate::other_units::square_feet;
use crate::source_list::{SourceOf, behind};
use crate::{cautions, differences, words};

/// What the page asks for.
#[derive(Debug, Clone)]
pub struct Asked {
    /// The pair whose difference is looked at.
    pub pair: (usize, usize),
    /// The indicator whose swings are looked at.
    pub indicator: Indicator,
    /// How many swings, the widest first; with none what stands below the answer is left out.
    pub most: usize,
    /// The swings of these inputs instead, in this order: while one of them is being moved.
    pub rows: Vec<String>,
}

/// What the page shows.
#[derive(Debug, Serialize)]
pub struct View {
    name: String,
    order_line: String,
    extent: String,
    /// The area of face in square feet.
    square_feet: String,
    compared: String,
    comparable: bool,
    conditions: String,
    moved: Vec<String>,
    per: &'static str,
    per_words: &'static str,
    boundary: &'static str,
    boundary_words: &'static str,
    how_sure: &'static str,
    answer: Option<String>,
    alternatives: Vec<AlternativeOf>,
    indicators: Vec<IndicatorOf>,
    beside: Vec<Beside>,
    pairs: Vec<PairOf>,
    moves: MovesOf,
    inputs: Vec<InputOf>,
    sources: Vec<SourceOf>,
    tables: String,
    /// The first digits of the tables' fingerprint.
    tables_mark: String,
    jobs: Vec<JobOf>,
    dropped: Vec<String>,
    cautions: Vec<String>,
    left_out: Vec<String>,
    not_covered: &'static str,
    caution: &'static str,
    standing: &'static str,
}

#[derive(Debug, Serialize)]
struct AlternativeOf {
    id: String,
    words: String,
    story: &'static str,
    base: String,
}

#[derive(Debug, Serialize)]
struct IndicatorOf {
    id: &'static str,
    label: &'static str,
    unit: String,
    counts: &'static str,
    ranked: String,
    texts: Vec<String>,
}

/// A row beside the loads: part of one of them, or what a meter would show.
#[derive(Debug, Serialize)]
pub struct Beside {
    /// What it is.
    pub label: &'static str,
    /// Its unit.
    pub unit: &'static str,
    /// The indicator whose arithmetic holds it.
    pub within: Option<&'static str>,
    /// One value per alternative.
    pub texts: Vec<String>,
    /// The same as numbers.
    #[serde(skip)]
    pub values: Vec<f64>,
}

#[derive(Debug, Serialize)]
struct PairOf {
    a: usize,
    b: usize,
    words: String,
    /// On how much of the order, and who makes it.
    lines: String,
    sentence: String,
    differences: Vec<String>,
}

#[derive(Debug, Serialize)]
struct MovesOf {
    pair: (usize, usize),
    indicator: &'static str,
    now: String,
    rest: usize,
    rows: Vec<MoveOf>,
}

#[derive(Debug, Serialize)]
struct MoveOf {
    id: String,
    item: String,
    unit: String,
    value: f64,
    low: f64,
    high: f64,
    by_ratio: bool,
    at_low: String,
    at_high: String,
    turns: bool,
    grade: String,
}

/// The rows beside the loads.
pub fn beside(comparison: &Comparison) -> Vec<Beside> {
    let per = comparison.per;
    let of_co2e = |model: &Model, wanted: &dyn Fn(&Contribution) -> bool| {
        let wanted = model.contributions_of(Indicator::Co2e, per).filter(|(_, one)| wanted(one));
        wanted.fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, per))
    };
    let row = |id: &str, unit: &'static str, within: Option<Indicator>, value: &dyn Fn(&Model) -> f64| {
        let values: Vec<f64> = comparison.models.iter().map(value).collect();
        Beside {
            label: label(id),
            unit,
            within: within.map(Indicator::id),
            texts: values.iter().map(|value| words::number(*value)).collect(),
            values,
        }
    };
    vec![
        row("site-electricity", "kWh", Some(Indicator::Energy), &|model| model.flows_of(per, |what| matches!(what, What::Electricity(_)))),
        row("site-heat", "MJ", Some(Indicator::Energy), &|model| model.flows_of(per, |what| matches!(what, What::Heat(_)))),
        row("liquid-waste", "kg", Some(Indicator::Waste), &|model| model.flows_of(per, |what| matches!(what, What::LiquidWaste(..)))),
        row("oxidised", "kg CO2e", Some(Indicator::Co2e), &|model| of_co2e(model, &|one| one.factor_unit == "kg CO2e per kg oxidised")),
        row("end-of-life", "kg CO2e", Some(Indicator::Co2e), &|model| of_co2e(model, &|one| one.stage == Stage::EndOfLife)),
        row("attended", "min", None, &|model| model.flows_of(per, |what| matches!(what, What::Attended(_))) * 60.0),
        row("days", "days", None, &|model| effort(comparison, model).days),
    ]
}

/// What the page shows of a comparison.
pub fn view(tables: &Tables, comparison: &Comparison, asked: &Asked, swings: &[Swing]) -> View {
    let bases = words::bases(comparison);
    let suffix = comparison.per.suffix();
    // While an input is being moved, its evidence stays as it is.
    let below = asked.rows.is_empty() && asked.most > 0;
    View {
        name: comparison.order.name.clone(),
        order_line: words::order_line(comparison),
        extent: words::extent(comparison),
        square_feet: square_feet(comparison.m2_of(&(0..comparison.jobs.len()).collect::<Vec<_>>())),
        compared: words::part_of(comparison, &comparison.common),
        comparable: !comparison.common.is_empty(),
        conditions: words::conditions(comparison),
        moved: [words::own_rows(&comparison.order), words::moved(comparison), cautions::unusual(comparison)].concat(),
        per: comparison.per.name(),
        per_words: comparison.per.words(),
        boundary: comparison.boundary.name(),
        boundary_words: words::boundary(comparison.boundary),
        how_sure: "single values; how sure follows",
        answer: words::answer(comparison),
        alternatives: comparison
            .models
            .iter()
            .zip(bases)
            .map(|(model, base)| AlternativeOf {
                id: model.alternative.id.clone(),
                words: words::alternative_on(model),
                story: route(model.alternative.route).story(),
                base: base.split_once(": ").map(|(_, base)| base.to_owned()).unwrap_or_default(),
            })
            .collect(),
        indicators: Indicator::ALL
            .into_iter()
            .map(|indicator| IndicatorOf {
                id: indicator.id(),
                label: indicator.label(),
                unit: format!("{}{suffix}", indicator.unit()),
                counts: indicator.counts(),
                ranked: if comparison.common.is_empty() { String::new() } else { words::ranked(comparison, indicator) },
                texts: comparison.models.iter().map(|model| words::number(model.load(indicator, comparison.per).value)).collect(),
            })
            .collect(),
        beside: beside(comparison),
        pairs: comparison.first_pairs().into_iter().map(|(a, b)| pair(comparison, a, b)).collect(),
        moves: moves(comparison, asked, swings),
        inputs: if below { inputs_of(tables, &comparison.models) } else { Vec::new() },
        sources: if below { behind(tables, comparison) } else { Vec::new() },
        tables: words::tables(&comparison.order),
        tables_mark: tables.fingerprint.short().to_owned(),
        jobs: if below { jobs(comparison) } else { Vec::new() },
        dropped: cautions::dropped(&comparison.makers.dropped),
        cautions: comparison.cautions.iter().map(cautions::caution).collect(),
        left_out: words::left_out(&comparison.order, comparison.boundary),
        not_covered: words::NOT_COVERED,
        caution: words::CAUTION,
        standing: words::STANDING,
    }
}

fn pair(comparison: &Comparison, a: usize, b: usize) -> PairOf {
    let id = |index: usize| comparison.models[index].alternative.id.as_str();
    PairOf {
        a,
        b,
        words: format!("{} and {}", id(a), id(b)),
        lines: pair_lines(comparison, a, b),
        sentence: words::pair(comparison, a, b),
        differences: Indicator::ALL.into_iter().map(|indicator| differences::difference(comparison, a, b, indicator)).collect(),
    }
}

/// On how much of the order a pair is compared, and who makes how much of it.
fn pair_lines(comparison: &Comparison, a: usize, b: usize) -> String {
    let lines: usize = comparison.jobs.iter().map(|job| job.lines).sum();
    let on = match words::part_of(comparison, &comparison.shared(a, b)) {
        part if !part.is_empty() => words::capital(&part),
        _ if lines == 1 => "On the one line of the order".to_owned(),
        _ => format!("On all {} lines of the order", lines),
    };
    format!("{on}{}.", words::helped(comparison, a, b))
}

/// The swings that are asked for.
pub fn asked_swings(comparison: &Comparison, asked: &Asked) -> Vec<Swing> {
    let (a, b) = asked.pair;
    if asked.most == 0 {
        return Vec::new();
    }
    if asked.rows.is_empty() {
        return swings(comparison, a, b, asked.indicator);
    }
    let some = swings_of(comparison, a, b, asked.indicator, |id| asked.rows.iter().any(|row| row == id));
    let book = &comparison.models[a].book;
    asked.rows.iter().filter_map(|id| some.iter().find(|swing| book.input(swing.input).id == *id).cloned()).collect()
}

fn moves(comparison: &Comparison, asked: &Asked, all: &[Swing]) -> MovesOf {
    let (a, b) = asked.pair;
    let rows = all.iter().take(asked.most).filter_map(|swing| {
        let row = [a, b].iter().map(|index| comparison.models[*index].book.input(swing.input)).find(|row| row.spread != Spread::Fixed)?;
        Some(MoveOf {
            id: row.id.clone(),
            item: row.item.clone(),
            unit: row.unit.words(),
            value: row.centre,
            low: swing.ends.0,
            high: swing.ends.1,
            by_ratio: row.spread == Spread::Lognormal,
            at_low: words::number(swing.at_low),
            at_high: words::number(swing.at_high),
            turns: swing.turns(),
            grade: row.grade.to_string(),
        })
    });
    MovesOf {
        pair: asked.pair,
        indicator: asked.indicator.id(),
        now: differences::single_values(comparison, a, b, asked.indicator),
        rest: all.len().saturating_sub(asked.most),
        rows: rows.collect(),
    }
}
