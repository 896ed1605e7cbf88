//! Jobs: lines that are made together.
//!
//! An inventory has one sign per row; a hundred equal rows are one job of a hundred, not a hundred
//! set-ups. Lines equal in all that matters to the shop are one job: quantities add; designs add
//! too, unless the artwork or the sign code says that it is the same design.

use std::collections::BTreeMap;

use super::Line;
use crate::factors::Legend;
use crate::in_order;

/// One job: a line that stands for all equal ones.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// The lines' common facts; its quantity and designs are the sums.
    pub line: Line,
    /// How many lines it stands for.
    pub lines: usize,
    /// The place of the first of them.
    pub first: usize,
}

/// What a glance at a line shows: code, artwork, width, height.
type Glance<'a> = (Option<&'a str>, Option<&'a str>, i64, i64);

/// The lines of an order as jobs, in an order that does not depend on that of the lines.
pub fn jobs(lines: &[Line]) -> Vec<Job> {
    let mut jobs: Vec<Job> = Vec::new();
    // Jobs that look alike at a glance, so that a long inventory is not compared line with line.
    let mut alike: BTreeMap<Glance<'_>, Vec<usize>> = BTreeMap::new();
    for (place, line) in lines.iter().enumerate() {
        let one_design = line.artwork.is_some() || (line.code.is_some() && line.legend != Legend::Each);
        let glance = (line.code.as_deref(), line.artwork.as_deref(), line.width.count(), line.height.count());
        let near = alike.entry(glance).or_default();
        if let Some(job) = near.iter().copied().find(|job| is_same_job(&jobs[*job].line, line)) {
            let job = &mut jobs[job];
            job.lines += 1;
            job.line.quantity = job.line.quantity.saturating_add(line.quantity);
            job.line.designs = if one_design { job.line.designs.max(line.designs) } else { job.line.designs.saturating_add(line.designs) };
        } else {
            near.push(jobs.len());
            jobs.push(Job { line: line.clone(), lines: 1, first: place });
        }
    }
    let mut keyed: Vec<(String, Job)> = jobs.into_iter().map(|job| (key(&job.line), job)).collect();
    in_order(&mut keyed, |a, b| a.0.cmp(&b.0));
    keyed.into_iter().map(|(_, job)| job).collect()
}

/// Whether two lines are one job: labels and the way a size was typed don't matter; everything else
/// that a line states does.
fn is_same_job(a: &Line, b: &Line) -> bool {
    let Line {
        label: _,
        size: _,
        quantity: _,
        designs: _,
        item: _,
        legend: _,
        proportion: _,
        code,
        shape,
        width,
        height,
        corner,
        colours,
        rim,
        sides,
        batch,
        stock,
        kept,
        sheeting,
        base,
        blank,
        shared,
        cut_length,
        characters,
        artwork,
        not,
    } = a;
    (code, shape, width, height, corner, colours, rim, sides, batch, stock, kept)
        == (&b.code, &b.shape, &b.width, &b.height, &b.corner, &b.colours, &b.rim, &b.sides, &b.batch, &b.stock, &b.kept)
        && (sheeting, base, blank, shared, cut_length, characters, artwork, not)
            == (&b.sheeting, &b.base, &b.blank, &b.shared, &b.cut_length, &b.characters, &b.artwork, &b.not)
}

/// A text that sorts jobs; equal only for equal jobs.
fn key(line: &Line) -> String {
    let Line { code, shape, width, height, corner, colours, rim, sides, batch, stock, kept, .. } = line;
    let Line { sheeting, base, blank, shared, cut_length, characters, artwork, not, .. } = line;
    format!(
        "{code:?} {shape:?} {width:?} {height:?} {corner:?} {colours:?} {rim:?} {sides} {batch:?} {stock} {kept} {sheeting:?} {base:?} {blank:?} {shared:?} {cut_length:?} {characters:?} {artwork:?} {not:?}"
    )
}
