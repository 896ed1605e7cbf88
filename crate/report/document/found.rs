//! What the report is about, computed once: draws, drivers, break-even and switches of the pair that is looked at.

use faceload_core::analysis::{
    BreakEven, Draws, Drivers, Kept, Over, POINTS, PairSpread, Pairing, SCANNED, Settings, Switched, break_even, drivers, switches_in,
};
use faceload_core::comparison::Comparison;
use faceload_core::factors::Tables;
use faceload_core::inventory::Flow;
use faceload_core::load::{Indicator, Model, Part};
use faceload_core::order::Boundary;

use super::node::{Node, paragraph};
use crate::flips::OTHER_AREAS;
use crate::source_list::{SourceOf, behind};
use crate::sureness::{self, Spreads};

/// What is asked of a report.
#[derive(Debug, Clone, Copy)]
pub struct Asked {
    /// The pair that is looked at closely; without it, the first of the order's pairs that shares a line.
    pub pair: Option<(usize, usize)>,
    /// The indicator that is looked at closely.
    pub indicator: Indicator,
    /// How draws are made.
    pub settings: Settings,
}

/// Draws at each value of a scan.
pub const SCAN: usize = 500;

/// What was found.
pub struct Found<'a> {
    /// The tables.
    pub tables: &'a Tables,
    /// The comparison.
    pub comparison: &'a Comparison,
    /// The draws of the table and of every pair.
    pub draws: Draws,
    /// Every pair with its spread in every indicator.
    pub spreads: Vec<Spreads>,
    /// The pair that is looked at closely; none where no two share a line.
    pub pair: Option<(usize, usize)>,
    /// The indicator that is looked at closely.
    pub indicator: Indicator,
    /// What moves the pair's difference, by indicator.
    pub drivers: Vec<Option<Drivers>>,
    /// Where the pair's difference crosses zero over quantity, by indicator.
    pub break_even: Vec<Option<BreakEven>>,
    /// The pair under other choices of method, by indicator.
    pub switches: [Vec<Switched>; 5],
    /// The publications behind the comparison, by key.
    pub sources: Vec<SourceOf>,
}

impl<'a> Found<'a> {
    /// Finds it; `go_on` hears the share that is done.
    pub fn of(tables: &'a Tables, comparison: &'a Comparison, asked: &Asked, mut go_on: impl FnMut(f64) -> bool) -> Self {
        let shares = |(a, b): &(usize, usize)| !comparison.shared(*a, *b).is_empty();
        let all: Vec<(usize, usize)> = comparison.pairs();
        let pair = asked.pair.or_else(|| all.first().copied()).filter(shares).or_else(|| all.iter().copied().find(shares));
        let settings = asked.settings;
        let mut pairs = all;
        // A pair may be asked for the other way round.
        pairs.extend(pair.filter(|pair| !pairs.contains(pair)));
        let mut drawn = Kept::default();
        let draws = Draws::make(comparison, &pairs, settings, &mut drawn, |done| go_on(0.5 * done as f64 / settings.number as f64));
        let spreads = pairs.iter().map(|(a, b)| ((*a, *b), sureness::spreads(comparison, &draws, *a, *b))).collect();
        let scan = Settings { number: SCAN.min(settings.number), ..settings };
        let mut kept = Kept::default();
        let pairing = pair.map(|(a, b)| Pairing::of(tables, comparison, a, b, asked.indicator));
        let (mut driving, mut breaking) = (Vec::new(), Vec::new());
        for indicator in Indicator::ALL {
            driving.push(pair.and_then(|(a, b)| drivers(comparison, a, b, indicator)));
            breaking.push(pairing.as_ref().and_then(|pairing| {
                let axis = Over::Quantity.axis(&comparison.order, tables, None, POINTS).ok()?;
                break_even(&pairing.in_indicator(indicator), axis, scan, &mut kept, |_| true)
            }));
            go_on(0.5 + 0.08 * driving.len() as f64);
        }
        let choices = Settings { number: SCANNED.min(settings.number), ..settings };
        let switching =
            pair.map(|pair| switches_in(tables, comparison, pair, Indicator::ALL, &OTHER_AREAS, choices, &mut drawn)).unwrap_or_default();
        go_on(1.0);
        Self {
            tables,
            comparison,
            draws,
            spreads,
            pair,
            indicator: asked.indicator,
            drivers: driving,
            break_even: breaking,
            switches: switching,
            sources: behind(tables, comparison),
        }
    }

    /// The id of an alternative.
    pub fn id(&self, at: usize) -> &str {
        &self.comparison.models[at].alternative.id
    }

    /// The ids of a pair.
    pub fn ids(&self, (a, b): (usize, usize)) -> [&str; 2] {
        [self.id(a), self.id(b)]
    }

    /// Said over tables that put alternatives beside each other, where each stands on lines of its own.
    pub fn own_lines(&self) -> Option<Node> {
        self.comparison.common.is_empty().then(|| {
            paragraph("No line can be made by every alternative: each stands here on the lines it can make, so that its column must not be compared with another.")
        })
    }

    /// The flows of a part that the boundary counts, each with its place among the plan's.
    pub fn flows<'b>(&self, part: &'b Part) -> impl Iterator<Item = (usize, &'b Flow)> + use<'b> {
        let with_blank = self.comparison.boundary == Boundary::FaceWithBlank;
        part.plan.flows.iter().enumerate().filter(move |(_, flow)| !flow.blank || with_blank)
    }

    /// The spread of a pair in every indicator.
    pub fn spreads_of(&self, pair: (usize, usize)) -> &[PairSpread] {
        self.spreads.iter().find(|(known, _)| *known == pair).map_or(&[], |(_, spreads)| spreads)
    }

    /// Every alternative's model on the lines of the table.
    pub fn models(&self) -> &[Model] {
        &self.comparison.models
    }

    /// Every alternative's id, behind some first columns.
    pub fn columns(&self, first: &[&str]) -> Vec<String> {
        first.iter().map(|name| (*name).to_owned()).chain(self.models().iter().map(|model| model.alternative.id.clone())).collect()
    }

    /// The unit of an indicator, per what loads are given.
    pub fn unit(&self, indicator: Indicator) -> String {
        format!("{}{}", indicator.unit(), self.comparison.per.suffix())
    }
}
