//! What takes longer than a frame: draws, break-even, map. The page asks for it from a worker, which holds a program
//! and drawn values of its own; figures and pictures cross as text.

use std::cell::RefCell;

use faceload_core::analysis::{
    Draws, Interval, Kept, Over, POINTS, Pairing, Settings, Unvaried, break_even as breaking_even, drivers as driving, map as mapping,
    mixed, switches as switching,
};
use faceload_core::comparison::Comparison;
use faceload_core::factors::Tables;
use faceload_core::load::Indicator;
use faceload_picture::Theme;
use faceload_report::figure::Figure;
use faceload_report::{drivers, flip_panels, flips, sureness};
use serde::{Deserialize, Serialize};

use crate::door::{Fault, compared, indicator, plain, theme, with_tables};

/// What is asked of an order.
#[derive(Deserialize)]
pub struct Asked {
    per: String,
    boundary: String,
    pair: (usize, usize),
    indicator: String,
    moved: Vec<(String, f64)>,
    draws: usize,
    /// The picture's width in css pixels, and its ground.
    width: u32,
    theme: String,
    /// What varies, for a break-even (one) or a map (two).
    over: Vec<String>,
}

/// How sure the answer is.
#[derive(Serialize)]
struct Sure {
    how_sure: String,
    answer: Option<String>,
    ranked: Vec<String>,
    pairs: Vec<PairOf>,
    /// By indicator, then by alternative: 5, 25, 50, 75 and 95 % points.
    intervals: Vec<Vec<[f64; 5]>>,
    spread: Option<Shown>,
}

#[derive(Serialize)]
struct PairOf {
    a: usize,
    b: usize,
    sentence: String,
    differences: Vec<String>,
}

/// A figure and its picture.
#[derive(Serialize)]
struct Shown {
    figure: Figure,
    csv: String,
    svg: Option<String>,
}

thread_local! {
    static DRAWN: RefCell<Kept> = RefCell::default();
    static SCANNED: RefCell<Kept> = RefCell::default();
}

/// A comparison with what is looked at in it.
struct Looked {
    comparison: Comparison,
    pair: (usize, usize),
    indicator: Indicator,
    theme: Theme,
    width: u32,
}

impl Looked {
    fn at(tables: &Tables, order: &str, asked: &Asked) -> Result<Self, Vec<Fault>> {
        let comparison = compared(tables, order, &asked.per, &asked.boundary, &asked.moved)?;
        let last = comparison.models.len() - 1;
        Ok(Self {
            pair: (asked.pair.0.min(last), asked.pair.1.min(last)),
            indicator: indicator(&asked.indicator)?,
            theme: theme(&asked.theme),
            width: asked.width.clamp(280, 2_000),
            comparison,
        })
    }

    fn shares_a_line(&self) -> bool {
        self.pair.0 != self.pair.1 && !self.comparison.shared(self.pair.0, self.pair.1).is_empty()
    }
}

fn shown(figure: Figure, svg: Option<Result<String, String>>) -> Result<Shown, Vec<Fault>> {
    let svg = svg.transpose().map_err(|reason| vec![plain(reason)])?;
    Ok(Shown { csv: figure.csv(), figure, svg })
}

fn text(value: &impl Serialize) -> Result<String, Vec<Fault>> {
    serde_json::to_string(value).map_err(|error| vec![plain(error.to_string())])
}

fn settings(asked: &Asked, number: usize) -> Settings {
    Settings { number: if asked.draws == 0 { number } else { asked.draws }, ..Settings::default() }
}

/// The answer with its draws.
pub fn sure(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let (comparison, pair) = (&looked.comparison, looked.pair);
        let mut pairs = comparison.first_pairs();
        if looked.shares_a_line() && !pairs.contains(&pair) {
            pairs.push(pair);
        }
        let draws = DRAWN.with_borrow_mut(|kept| Draws::make(comparison, &pairs, settings(asked, 10_000), kept, |_| true));
        let of = |indicator: Indicator| {
            let interval = |at: usize| {
                let Interval { p5, p25, median, p75, p95 } = Interval::of(draws.load(comparison, at, indicator));
                [p5, p25, median, p75, p95]
            };
            (0..comparison.models.len()).map(interval).collect()
        };
        let comparable = !comparison.common.is_empty();
        let spread = looked.shares_a_line().then(|| {
            let mut figure = sureness::figure(comparison, &draws, pair.0, pair.1);
            figure.tables.extend(sureness::ranks(comparison, &draws, looked.indicator));
            let svg = flip_panels::dots_picture(comparison, &draws, pair, looked.indicator, looked.width, looked.theme);
            shown(figure, Some(svg))
        });
        text(&Sure {
            how_sure: sureness::drawn(&draws),
            answer: sureness::answer(comparison, &draws),
            ranked: Indicator::ALL
                .into_iter()
                .map(|indicator| if comparable { sureness::ranked(comparison, &draws, indicator) } else { String::new() })
                .collect(),
            pairs: comparison
                .first_pairs()
                .into_iter()
                .map(|(a, b)| PairOf {
                    a,
                    b,
                    sentence: sureness::pair(comparison, &draws, a, b),
                    differences: Indicator::ALL.into_iter().map(|one| sureness::difference_of(comparison, &draws, a, b, one)).collect(),
                })
                .collect(),
            intervals: Indicator::ALL.into_iter().map(of).collect(),
            spread: spread.transpose()?,
        })
    })
}

/// What moves the pair's difference.
pub fn drivers_of(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let found = driving(&looked.comparison, looked.pair.0, looked.pair.1, looked.indicator);
        let figure = found.map(|found| drivers::figure(&looked.comparison, looked.pair, looked.indicator, &found, 20)).unwrap_or_default();
        text(&shown(figure, None)?)
    })
}

fn unvaried(fault: Unvaried) -> Vec<Fault> {
    vec![plain(format!("{} where {} was wanted; {}", fault.came, fault.wanted, fault.help))]
}

/// Where the pair's difference crosses zero; `go_on` hears the share that is done.
pub fn break_even(order: &str, asked: &Asked, go_on: impl FnMut(f64) -> bool) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let over = Over::read(asked.over.first().map_or("quantity", String::as_str), tables).map_err(unvaried)?;
        let axis = over.axis(&looked.comparison.order, tables, None, POINTS).map_err(unvaried)?;
        let pairing = Pairing::of(tables, &looked.comparison, looked.pair.0, looked.pair.1, looked.indicator);
        let found = SCANNED.with_borrow_mut(|kept| breaking_even(&pairing, axis, settings(asked, 500), kept, go_on));
        let Some(found) = found else { return Err(vec![plain("stopped".to_owned())]) };
        let figure = flips::break_even(&looked.comparison, looked.pair, looked.indicator, &found);
        let svg = flip_panels::crossing_picture(&looked.comparison, looked.pair, looked.indicator, &found, looked.width, looked.theme);
        text(&shown(figure, Some(svg))?)
    })
}

/// Who loads less over two things varied at once.
pub fn map(order: &str, asked: &Asked, go_on: impl FnMut(f64) -> bool) -> Result<String, Vec<Fault>> {
    const SIDE: usize = 9;
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let axis = |at: usize, usual: &str| {
            let over = Over::read(asked.over.get(at).map_or(usual, String::as_str), tables).map_err(unvaried)?;
            over.axis(&looked.comparison.order, tables, None, SIDE).map_err(unvaried)
        };
        let (across, down) = (axis(0, "quantity")?, axis(1, "colours")?);
        let pairing = Pairing::of(tables, &looked.comparison, looked.pair.0, looked.pair.1, looked.indicator);
        let found = SCANNED.with_borrow_mut(|kept| mapping(&pairing, across, down, settings(asked, 500), kept, go_on));
        let Some(found) = found else { return Err(vec![plain("stopped".to_owned())]) };
        let figure = flips::map(&looked.comparison, looked.pair, looked.indicator, &found);
        text(&shown(figure, None)?)
    })
}

/// The pair under other choices of method, and each job by whoever clearly loads least.
pub fn choices(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let list = switching(tables, &looked.comparison, looked.pair, looked.indicator, &flips::OTHER_AREAS, settings(asked, 500));
        let switches = flips::switches(&looked.comparison, looked.pair, looked.indicator, &list);
        let plan = flips::mixed(&looked.comparison, looked.indicator, &mixed(&looked.comparison, looked.indicator, settings(asked, 500)));
        text(&[shown(switches, None)?, shown(plan, None)?])
    })
}
