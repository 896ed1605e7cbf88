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
use faceload_report::claims::statement::{Statement, statement as stating};
use faceload_report::figure::Figure;
use faceload_report::panel::WIDE;
use faceload_report::spot::{Picture, Spot};
use faceload_report::{drivers, flip_panels, flips, shares, stages as by_stage, sureness};
use serde::{Deserialize, Serialize};

use crate::door::{Fault, ORDER, compared, indicator, plain, theme, with_tables};

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
    /// The same, in words: the middle 90 %, nothing where a load has no range.
    ranges: Vec<Vec<String>>,
    spread: Option<Shown>,
    /// What may be sent about the pair that is looked at, or why nothing may; nothing where it shares no line.
    statement: Option<Statement>,
}

#[derive(Serialize)]
struct PairOf {
    a: usize,
    b: usize,
    sentence: String,
    differences: Vec<String>,
}

/// A figure and its picture: for the screen, and for paper and files.
#[derive(Serialize)]
struct Shown {
    figure: Figure,
    csv: String,
    svg: Option<String>,
    paper: Option<String>,
    /// Of the picture for the screen: its width and height, css pixels, and its spots.
    size: (u32, u32),
    spots: Vec<Spot>,
}

thread_local! {
    static DRAWN: RefCell<Kept> = RefCell::default();
    static SCANNED: RefCell<Kept> = RefCell::default();
}

/// A comparison with what is looked at in it.
pub struct Looked {
    /// The comparison.
    pub comparison: Comparison,
    /// The pair.
    pub pair: (usize, usize),
    /// The indicator.
    pub indicator: Indicator,
    theme: Theme,
    width: u32,
}

impl Looked {
    /// What is asked of an order.
    pub fn at(tables: &Tables, order: &str, asked: &Asked) -> Result<Self, Vec<Fault>> {
        let comparison = compared(tables, ORDER, order, &asked.per, &asked.boundary, &asked.moved)?;
        let last = comparison.models.len() - 1;
        Ok(Self {
            pair: (asked.pair.0.min(last), asked.pair.1.min(last)),
            indicator: indicator(&asked.indicator)?,
            theme: theme(&asked.theme),
            width: asked.width.clamp(280, 2_000),
            comparison,
        })
    }

    /// Whether the two of the pair can make a line both.
    pub fn shares_a_line(&self) -> bool {
        self.pair.0 != self.pair.1 && !self.comparison.shared(self.pair.0, self.pair.1).is_empty()
    }
}

/// A figure with its picture in a width and theme.
fn pictured(
    figure: Figure,
    (width, theme): (u32, Theme),
    picture: &dyn Fn(u32, Theme) -> Result<Picture, String>,
) -> Result<Shown, Vec<Fault>> {
    let drawn = |width, theme| picture(width, theme).map_err(|reason| vec![plain(reason)]);
    let Picture { svg, size, spots } = drawn(width, theme)?;
    Ok(Shown { csv: figure.csv(), figure, svg: Some(svg), paper: Some(drawn(WIDE, Theme::Paper)?.svg), size, spots })
}

/// A figure that is a table.
fn table(figure: Figure) -> Shown {
    Shown { csv: figure.csv(), figure, svg: None, paper: None, size: (0, 0), spots: Vec::new() }
}

fn text(value: &impl Serialize) -> Result<String, Vec<Fault>> {
    serde_json::to_string(value).map_err(|error| vec![plain(error.to_string())])
}

/// How draws are made, so many where the page does not say.
pub fn settings(asked: &Asked, number: usize) -> Settings {
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
        let of = |indicator: Indicator| -> Vec<Interval> {
            (0..comparison.models.len()).map(|at| draws.interval(comparison, at, indicator)).collect()
        };
        let intervals: Vec<Vec<Interval>> = Indicator::ALL.into_iter().map(of).collect();
        let points = |one: &Interval| [one.p5, one.p25, one.median, one.p75, one.p95];
        let range = |one: &Interval| if one.p5 == one.p95 { String::new() } else { sureness::range(one) };
        let comparable = !comparison.common.is_empty();
        let spread = looked.shares_a_line().then(|| {
            let mut figure = sureness::figure(comparison, &draws, pair.0, pair.1);
            figure.tables.extend(shares::ranks(comparison, &draws, looked.indicator));
            let picture = |width, theme| flip_panels::dots_picture(comparison, &draws, pair, looked.indicator, width, theme);
            pictured(figure, (looked.width, looked.theme), &picture)
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
            intervals: intervals.iter().map(|row| row.iter().map(points).collect()).collect(),
            ranges: intervals.iter().map(|row| row.iter().map(range).collect()).collect(),
            spread: spread.transpose()?,
            statement: looked.shares_a_line().then(|| stating(comparison, &draws, pair, looked.indicator)),
        })
    })
}

/// The statement of the pair that may be sent, or why none may.
pub fn statement(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let draws = DRAWN.with_borrow_mut(|kept| Draws::make(&looked.comparison, &[looked.pair], settings(asked, 10_000), kept, |_| true));
        Ok(stating(&looked.comparison, &draws, looked.pair, looked.indicator).json())
    })
}

/// What moves the pair's difference.
pub fn drivers_of(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let found = driving(&looked.comparison, looked.pair.0, looked.pair.1, looked.indicator);
        let figure = found.map(|found| drivers::figure(&looked.comparison, looked.pair, looked.indicator, &found, 20)).unwrap_or_default();
        text(&table(figure))
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
        let picture = |width, theme| flip_panels::crossing_picture(&looked.comparison, looked.pair, looked.indicator, &found, width, theme);
        text(&pictured(figure, (looked.width, looked.theme), &picture)?)
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
        let drawn = |width, theme| flip_panels::map_picture(&looked.comparison, looked.pair, looked.indicator, &found, width, theme);
        text(&pictured(figure, (looked.width, looked.theme), &drawn)?)
    })
}

/// Where a load comes from, stage by stage.
pub fn stages(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let figure = by_stage::figure(&looked.comparison, looked.indicator);
        let drawn = |width, theme| by_stage::picture(&looked.comparison, looked.indicator, width, theme);
        text(&pictured(figure, (looked.width, looked.theme), &drawn)?)
    })
}

/// The pair under other choices of method, and each job by whoever clearly loads least.
pub fn choices(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let looked = Looked::at(tables, order, asked)?;
        let list = switching(tables, &looked.comparison, looked.pair, looked.indicator, &flips::OTHER_AREAS, settings(asked, 10_000));
        let switches = flips::switches(&looked.comparison, looked.pair, looked.indicator, &list);
        let plan = flips::mixed(&looked.comparison, looked.indicator, &mixed(&looked.comparison, looked.indicator, settings(asked, 500)));
        text(&[table(switches), table(plan)])
    })
}
