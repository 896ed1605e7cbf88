//! Line by line: who can make each job, why not, and what it loads.

use faceload_core::load::Indicator;

use super::found::Found;
use super::limits::of_lines;
use super::node::{Node, list, table};
use crate::figure::{Cell, Table};
use crate::job_lines::jobs;
use crate::words::{count, number};

/// Every job by every alternative.
pub fn section(found: &Found<'_>) -> Node {
    let rows = jobs(found.comparison).into_iter().flat_map(|job| {
        let lines = if job.lines > 1 { format!(", {}", count(job.lines as u64, "line")) } else { String::new() };
        let what = format!("{}: {}, {} m2{lines}", job.label, job.what, number(job.m2));
        job.alternatives.into_iter().enumerate().map(move |(at, one)| {
            let name = if at == 0 { what.clone() } else { String::new() };
            let can = one.why_not.as_ref().map_or_else(|| "yes".to_owned(), |why| format!("no: {why}"));
            let mut loads = one.texts;
            loads.resize(Indicator::ALL.len(), String::new());
            [name, one.id, can].into_iter().chain(loads).map(Cell::from).collect()
        })
    });
    let names = Indicator::ALL.map(|one| format!("{}, {}", one.label(), one.unit()));
    let all = Table {
        caption: format!("Can it be made, and its loads {}", found.comparison.per.words()),
        columns: ["job", "by", "can it"].into_iter().map(str::to_owned).chain(names).collect(),
        rows: rows.collect(),
        ..Table::default()
    };
    let mut inside = list(of_lines(found));
    inside.push(table(&all));
    super::section("report-lines", inside)
}
