//! Jobs one by one: who can make each, why not, what it loads there.

use std::rc::Rc;

use faceload_core::comparison::Comparison;
use faceload_core::in_order;
use faceload_core::load::{Indicator, Model};
use serde::Serialize;
use serde_json::{Map, Value, json};

use crate::{cautions, words};

/// One job.
#[derive(Debug, Serialize)]
pub struct JobOf {
    /// The label of its line.
    pub label: String,
    /// What it is: `100 stop signs (R1-1), 30 in`.
    pub what: String,
    /// How many lines it stands for.
    pub lines: usize,
    /// Its faces, m2.
    pub m2: f64,
    /// Every alternative.
    pub alternatives: Vec<AlternativeOf>,
}

/// One alternative for a job.
#[derive(Debug, Serialize)]
pub struct AlternativeOf {
    /// Its id.
    pub id: String,
    /// Whether it makes the job itself.
    pub makes: bool,
    /// Why not, and who makes it instead.
    pub why_not: Option<String>,
    /// The loads by indicator, where the job is made.
    pub loads: Option<Map<String, Value>>,
    /// The loads as printed, in the order of the indicators.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub texts: Vec<String>,
}

/// The jobs as they are listed: by their first line.
fn listed(comparison: &Comparison) -> Vec<usize> {
    let mut places: Vec<usize> = (0..comparison.jobs.len()).collect();
    in_order(&mut places, |a, b| comparison.jobs[*a].first.cmp(&comparison.jobs[*b].first));
    places
}

/// An alternative's model of the job in that place of the list, where it is made.
pub fn model(comparison: &Comparison, alternative: &str, listed_at: usize) -> Option<Rc<Model>> {
    let job = *listed(comparison).get(listed_at)?;
    let place = comparison.plans.iter().position(|plan| plan.alternative.id == alternative)?;
    comparison.makers.of[place][job].map(|_| comparison.model_on(place, &[job]))
}

/// Every job of a comparison.
pub fn jobs(comparison: &Comparison) -> Vec<JobOf> {
    let each = listed(comparison).into_iter().map(|place| {
        let job = &comparison.jobs[place];
        let line = &job.line;
        let code = line.code.as_ref().map_or_else(|| line.shape.name().to_owned(), Clone::clone);
        let designs = if line.designs > 1 { format!(", {}", words::count(u64::from(line.designs), "design")) } else { String::new() };
        JobOf {
            label: line.label.clone(),
            what: format!("{} \u{d7} {code}, {}{designs}", faceload_core::quantity::group(&line.quantity.to_string()), line.size),
            lines: job.lines,
            m2: comparison.m2_of(&[place]),
            alternatives: (0..comparison.plans.len()).map(|alternative| of_alternative(comparison, alternative, place)).collect(),
        }
    });
    each.collect()
}

fn of_alternative(comparison: &Comparison, alternative: usize, job: usize) -> AlternativeOf {
    let dropped = comparison.makers.dropped.iter().find(|one| one.alternative == alternative && one.job == job);
    let why_not = dropped.map(|one| {
        let instead = one.instead.as_ref().map(|id| format!("; {id} makes it")).unwrap_or_default();
        format!("{}{instead}", cautions::reason(&one.reason))
    });
    let loads = comparison.makers.of[alternative][job].map(|_| {
        let model = comparison.model_on(alternative, &[job]);
        let load = |indicator: Indicator| {
            let unit = format!("{}{}", indicator.unit(), comparison.per.suffix());
            (indicator.id().to_owned(), json!({ "value": model.load(indicator, comparison.per).value, "unit": unit }))
        };
        Indicator::ALL.into_iter().map(load).collect()
    });
    let loads: Option<Map<String, Value>> = loads;
    let texts = loads.iter().flat_map(Map::values).map(|load| words::number(load["value"].as_f64().unwrap_or(f64::NAN))).collect();
    AlternativeOf { id: comparison.plans[alternative].alternative.id.clone(), makes: dropped.is_none(), why_not, loads, texts }
}

/// The jobs as text for a terminal.
pub fn text(comparison: &Comparison, jobs: &[JobOf]) -> String {
    let units = Indicator::ALL.map(|indicator| format!("{} {}", indicator.label(), indicator.unit()));
    let mut out = format!("Loads {}: {}\n({})\n", comparison.per.words(), units.join(", "), words::HOW_SURE);
    for job in jobs {
        let lines = if job.lines > 1 { format!(", {}", words::count(job.lines as u64, "line")) } else { String::new() };
        out.push_str(&format!("\n{}: {} ({} m2{lines})\n", job.label, job.what, words::number(job.m2)));
        let wide = job.alternatives.iter().map(|one| one.id.chars().count()).max().unwrap_or(0);
        for one in &job.alternatives {
            out.push_str(&format!("  {:<wide$}", one.id));
            for text in &one.texts {
                out.push_str(&format!("  {text:>9}"));
            }
            if let Some(why) = &one.why_not {
                out.push_str(&format!("  no: {why}"));
            }
            out.push('\n');
        }
    }
    out
}
