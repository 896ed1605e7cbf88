//! Draws: every alternative's loads under the same values of what they share.
//!
//! A draw gives each uncertain input one value; the alternatives of a pair take it together, so that
//! what they have in common cancels in their difference. A draw touches the products of one order's
//! totals, never its lines. The drawn values are kept: after an edit only the products are redone.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::ops::Range;

use crate::comparison::Comparison;
use crate::load::{Indicator, Model, Per};

use super::column::{Drawn, Shape};
use super::columns::Columns;
use super::finding::PairSpread;
use super::interval::Interval;
use super::program::Program;
use faceload_numeric::{BLOCK, Design, Layout, TILE, Table, run};

/// How draws are made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Settings {
    /// How many.
    pub number: usize,
    /// What the streams begin with.
    pub seed: u64,
    /// How numbers are spread.
    pub design: Design,
    /// Threads that share the work; the result is the same with any number.
    pub threads: usize,
}

impl Default for Settings {
    fn default() -> Self {
        Self { number: 10_000, seed: 1, design: Design::LatinHypercube, threads: 1 }
    }
}

/// The fewest and the most draws that can be asked for.
pub const NUMBERS: std::ops::RangeInclusive<usize> = 100..=1_000_000;

/// The most draws at each value of a scan: they are all kept at once.
pub const SCANNED: usize = 20_000;

/// Draws made at once; between two batches the work can be cancelled.
const BATCH: usize = 10 * BLOCK;

/// Drawn values, kept from one comparison to the next.
#[derive(Debug, Default)]
pub struct Kept {
    settings: Option<(u64, Design, usize)>,
    columns: BTreeMap<String, Column>,
    /// One for each of the times, and of the threads, that values were drawn.
    tables: Vec<Table>,
}

/// Where the values of an input lie.
#[derive(Debug, Clone, Copy)]
struct Column {
    shape: Shape,
    table: usize,
    column: usize,
}

/// A model on which an alternative is looked at: its column of the table, or of a pair on shared jobs.
#[derive(Debug, Clone, PartialEq, Eq)]
struct On {
    place: usize,
    jobs: Vec<usize>,
}

/// The loads of alternatives in every draw.
#[derive(Debug, Clone)]
pub struct Draws {
    /// How they were made; the number is of draws made, fewer than asked for where the work was cancelled.
    pub settings: Settings,
    /// How many were asked for.
    pub asked: usize,
    /// How many inputs were drawn.
    pub inputs: usize,
    models: Vec<On>,
    /// By model, then by indicator.
    loads: Vec<Vec<f64>>,
    known: RefCell<Known>,
}

/// What the draws were asked before, by places of loads; a spread by its pair and indicator.
#[derive(Debug, Clone, Default)]
struct Known {
    loads: Vec<(usize, Interval)>,
    differences: Vec<((usize, usize), Interval)>,
    spreads: Vec<((usize, usize, usize), PairSpread)>,
}

/// What stands under a key in a short list.
fn under<K: PartialEq, V: Copy>(list: &[(K, V)], key: K) -> Option<V> {
    list.iter().find(|(known, _)| *known == key).map(|(_, value)| *value)
}

/// A pair's loads in every draw.
#[derive(Debug, Clone, Copy)]
pub struct PairDraws<'a> {
    /// Of the first.
    pub first: &'a [f64],
    /// Of the second.
    pub second: &'a [f64],
}

impl PairDraws<'_> {
    /// Second less first, draw by draw.
    pub fn differences(&self) -> Vec<f64> {
        self.first.iter().zip(self.second).map(|(first, second)| second - first).collect()
    }

    /// Second over first, draw by draw; none where a first load is 0.
    pub fn ratios(&self) -> Option<Vec<f64>> {
        self.first.iter().zip(self.second).map(|(first, second)| (*first > 0.0).then(|| second / first)).collect()
    }
}

impl Draws {
    /// Draws the loads of the table and of some pairs. `go_on` hears how many draws are made and says whether to go on.
    pub fn make(
        comparison: &Comparison,
        pairs: &[(usize, usize)],
        settings: Settings,
        kept: &mut Kept,
        mut go_on: impl FnMut(usize) -> bool,
    ) -> Self {
        Self::made(comparison, pairs, settings, kept, &mut go_on)
    }

    fn made(
        comparison: &Comparison,
        pairs: &[(usize, usize)],
        settings: Settings,
        kept: &mut Kept,
        go_on: &mut dyn FnMut(usize) -> bool,
    ) -> Self {
        let mut columns = Columns::default();
        let mut program = Program::default();
        let mut models: Vec<On> = Vec::new();
        let mut push = |place: usize, jobs: &[usize], model: &Model| {
            let on = On { place, jobs: jobs.to_vec() };
            if !models.contains(&on) {
                models.push(on);
                program.push(model, &Indicator::ALL, comparison.per, &mut columns);
            }
        };
        for (at, model) in comparison.models.iter().enumerate() {
            push(at, &comparison.table_jobs(comparison.places[at]), model);
        }
        for (a, b) in pairs {
            if let Some((first, second)) = comparison.of_pair(*a, *b) {
                let jobs = comparison.shared(*a, *b);
                push(*a, &jobs, &first);
                push(*b, &jobs, &second);
            }
        }
        let laid = program.laid();
        let mut loads = vec![Vec::with_capacity(settings.number); program.loads()];
        let mut done = 0;
        while done < settings.number {
            let batch = BATCH.min(settings.number - done);
            // The first batch's values are kept: few ask for more draws than that.
            let fresh = &mut Kept::default();
            let values = if settings.number <= BATCH { &mut *kept } else { fresh };
            values.fill(columns.list(), done, batch, settings);
            run_shared(&laid, &values.of(columns.list()), batch, settings.threads, &mut loads);
            done += batch;
            if !go_on(done) {
                break;
            }
        }
        Self {
            settings: Settings { number: done, ..settings },
            asked: settings.number,
            inputs: columns.list().len(),
            models,
            loads,
            known: RefCell::default(),
        }
    }

    /// An alternative's loads on the lines of the table.
    pub fn load(&self, comparison: &Comparison, at: usize, indicator: Indicator) -> &[f64] {
        self.on_table(comparison, at, indicator).map_or(&[], |load| &self.loads[load])
    }

    /// Their interval.
    pub fn interval(&self, comparison: &Comparison, at: usize, indicator: Indicator) -> Interval {
        self.on_table(comparison, at, indicator).map_or_else(|| Interval::of(&[]), |load| self.interval_of(load))
    }

    /// The interval of an alternative's loads less another's, on the lines of the table.
    pub fn difference(&self, comparison: &Comparison, first: usize, second: usize, indicator: Indicator) -> Interval {
        match (self.on_table(comparison, first, indicator), self.on_table(comparison, second, indicator)) {
            (Some(first), Some(second)) => self.difference_of(first, second),
            _ => Interval::of(&[]),
        }
    }

    /// A pair's loads on the lines both can make.
    pub fn pair(&self, comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Option<PairDraws<'_>> {
        let (first, second) = self.places(comparison, a, b, indicator)?;
        Some(PairDraws { first: &self.loads[first], second: &self.loads[second] })
    }

    /// The intervals of these and of their difference.
    pub(super) fn pair_intervals(&self, comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Option<[Interval; 3]> {
        let (first, second) = self.places(comparison, a, b, indicator)?;
        Some([self.interval_of(first), self.interval_of(second), self.difference_of(first, second)])
    }

    /// What they say of the pair, worked out once.
    pub fn spread(&self, comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Option<PairSpread> {
        let key = (a, b, indicator as usize);
        let known = under(&self.known.borrow().spreads, key);
        known.or_else(|| {
            let spread = PairSpread::of(comparison, self, a, b, indicator)?;
            self.known.borrow_mut().spreads.push((key, spread));
            Some(spread)
        })
    }

    fn interval_of(&self, load: usize) -> Interval {
        let known = under(&self.known.borrow().loads, load);
        known.unwrap_or_else(|| {
            let interval = Interval::of(&self.loads[load]);
            self.known.borrow_mut().loads.push((load, interval));
            interval
        })
    }

    fn difference_of(&self, first: usize, second: usize) -> Interval {
        let known = under(&self.known.borrow().differences, (first, second));
        known.unwrap_or_else(|| {
            let interval = Interval::of(&PairDraws { first: &self.loads[first], second: &self.loads[second] }.differences());
            self.known.borrow_mut().differences.push(((first, second), interval));
            interval
        })
    }

    fn places(&self, comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Option<(usize, usize)> {
        let jobs = comparison.shared(a, b);
        Some((self.on(a, &jobs, indicator)?, self.on(b, &jobs, indicator)?))
    }

    fn on_table(&self, comparison: &Comparison, at: usize, indicator: Indicator) -> Option<usize> {
        self.on(at, &comparison.table_jobs(comparison.places[at]), indicator)
    }

    /// The place of a load.
    fn on(&self, place: usize, jobs: &[usize], indicator: Indicator) -> Option<usize> {
        let model = self.models.iter().position(|on| on.place == place && on.jobs == jobs)?;
        Some(model * Indicator::ALL.len() + indicator as usize)
    }
}

impl Kept {
    /// Where the values of columns lie.
    fn of(&self, columns: &[(Drawn, Shape)]) -> Vec<(&Table, usize)> {
        let known = columns.iter().map(|(drawn, _)| self.columns[&drawn.name()]);
        known.map(|column| (&self.tables[column.table], column.column)).collect()
    }

    /// Sees to it that every column has its values for some draws from one on.
    fn fill(&mut self, columns: &[(Drawn, Shape)], first: usize, draws: usize, settings: Settings) {
        let same = (settings.seed, settings.design, settings.number);
        if self.settings != Some(same) {
            *self = Self { settings: Some(same), ..Self::default() };
        }
        let mut missing: Vec<&(Drawn, Shape)> = Vec::new();
        for column in columns {
            match self.columns.get_mut(&column.0.name()) {
                None => missing.push(column),
                Some(known) if known.shape != column.1 => {
                    known.shape = column.1;
                    fill(&mut self.tables[known.table], known.column, column, first..first + draws, settings);
                }
                Some(_) => {}
            }
        }
        let together = missing.len().div_ceil(settings.threads.max(1)).max(1);
        let parts: Vec<&[&(Drawn, Shape)]> = missing.chunks(together).collect();
        let made = shared(&parts, settings.threads, |columns| {
            let mut table = Table::new(columns.len(), draws);
            for (at, column) in columns.iter().enumerate() {
                fill(&mut table, at, column, first..first + draws, settings);
            }
            table
        });
        for (part, table) in parts.into_iter().zip(made) {
            let place = self.tables.len();
            let columns = part.iter().enumerate();
            self.columns.extend(columns.map(|(column, (drawn, shape))| (drawn.name(), Column { shape: *shape, table: place, column })));
            self.tables.push(table);
        }
    }
}

/// Fills a column of a table with the values of an input in some draws.
fn fill(table: &mut Table, column: usize, (drawn, shape): &(Drawn, Shape), draws: Range<usize>, settings: Settings) {
    let stream = drawn.stream(settings);
    let mut values = [0.0; BLOCK];
    for from in draws.clone().step_by(BLOCK) {
        let values = &mut values[..BLOCK.min(draws.end - from)];
        stream.fill(from / BLOCK, values);
        shape.fill(values);
        table.put(column, from - draws.start, values);
    }
}

/// The loads of some models in every draw, by model, then by indicator; few draws, so in one batch.
pub fn loads_of(models: &[&Model], indicators: &[Indicator], per: Per, settings: Settings, kept: &mut Kept) -> Vec<Vec<f64>> {
    let mut columns = Columns::default();
    let mut program = Program::default();
    for model in models {
        program.push(model, indicators, per, &mut columns);
    }
    kept.fill(columns.list(), 0, settings.number, settings);
    let mut loads = vec![Vec::with_capacity(settings.number); program.loads()];
    run(&program.laid(), &kept.of(columns.list()), 0..settings.number, &mut loads);
    loads
}

/// Second less first, draw by draw, of two models in one indicator.
pub fn differences_of(models: [&Model; 2], indicator: Indicator, per: Per, settings: Settings, kept: &mut Kept) -> Vec<f64> {
    let loads = loads_of(&models, &[indicator], per, settings, kept);
    PairDraws { first: &loads[0], second: &loads[1] }.differences()
}

/// Runs on a batch, its draws cut into as many pieces as there are threads.
fn run_shared(laid: &Layout, values: &[(&Table, usize)], draws: usize, threads: usize, loads: &mut [Vec<f64>]) {
    if threads <= 1 {
        return run(laid, values, 0..draws, loads);
    }
    let piece = draws.div_ceil(threads).next_multiple_of(TILE);
    let pieces: Vec<Range<usize>> = (0..draws).step_by(piece).map(|from| from..draws.min(from + piece)).collect();
    let made = shared(&pieces, threads, |draws| {
        let mut out = vec![Vec::with_capacity(draws.len()); loads.len()];
        run(laid, values, draws.clone(), &mut out);
        out
    });
    for piece in made {
        for (load, more) in loads.iter_mut().zip(piece) {
            load.extend(more);
        }
    }
}

/// Does a piece of work for each of some things, on some threads, and gives the results in their order. The page has one thread.
fn shared<T: Sync, R: Send>(things: &[T], threads: usize, work: impl Fn(&T) -> R + Sync) -> Vec<R> {
    if threads <= 1 || things.len() <= 1 || cfg!(target_family = "wasm") {
        return things.iter().map(work).collect();
    }
    let piece = things.len().div_ceil(threads);
    std::thread::scope(|scope| {
        let work = &work;
        let running: Vec<_> = things.chunks(piece).map(|things| scope.spawn(move || things.iter().map(work).collect::<Vec<R>>())).collect();
        running.into_iter().flat_map(|thread| thread.join().unwrap_or_default()).collect()
    })
}
