//! Jobs: lines that are made together.
//!
//! An inventory has one sign per row; a hundred equal rows are one job of a hundred, not a hundred
//! set-ups. Lines equal in all that matters to the shop are one job: quantities add; designs add
//! too, unless the artwork or the sign code says that it is the same design.

use std::collections::BTreeMap;

use super::Line;

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

/// The lines of an order as jobs, in an order that does not depend on that of the lines.
pub fn jobs(lines: &[Line]) -> Vec<Job> {
    let mut jobs: BTreeMap<String, Job> = BTreeMap::new();
    for (place, line) in lines.iter().enumerate() {
        let one_design = line.artwork.is_some() || line.code.is_some();
        jobs.entry(key(line))
            .and_modify(|job| {
                job.lines += 1;
                job.line.quantity = job.line.quantity.saturating_add(line.quantity);
                job.line.designs =
                    if one_design { job.line.designs.max(line.designs) } else { job.line.designs.saturating_add(line.designs) };
            })
            .or_insert_with(|| Job { line: line.clone(), lines: 1, first: place });
    }
    jobs.into_values().collect()
}

/// All that makes two lines one job.
fn key(line: &Line) -> String {
    // Labels and the way a size was typed don't matter; everything else that a line states does.
    let Line {
        label: _,
        size: _,
        quantity: _,
        designs: _,
        item: _,
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
    } = line;
    format!(
        "{code:?} {shape:?} {width:?} {height:?} {corner:?} {colours:?} {rim:?} {sides} {batch:?} {stock} {kept} {sheeting:?} {base:?} {blank:?} {shared:?} {cut_length:?} {characters:?} {artwork:?} {not:?}"
    )
}
