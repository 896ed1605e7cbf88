//! From twenty jobs, read and planned, to the five loads of all alternatives: what a slider or a draw repeats.

mod envelope;
mod time;
mod twenty_jobs;

use std::rc::Rc;

use faceload_core::comparison::{Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Model, Part, Per};
use faceload_core::order::{Boundary, Document, Order};
use faceload_core::route::count;

/// Counts the activity of every alternative anew.
#[inline(never)]
fn count_all(comparison: &Comparison) -> Vec<Model> {
    let of_part = |part: &Part| {
        let jobs = part.jobs.iter().map(|job| &comparison.jobs[*job]);
        let activity = count(&comparison.order, &part.plan.alternative, &part.plan.layout, jobs);
        Part::of(Rc::clone(&part.plan), activity, part.m2, part.jobs.clone())
    };
    comparison.models.iter().map(|model| Model::of(model.parts.iter().map(of_part).collect())).collect()
}

/// The five loads of every alternative, added up so that none is left out.
#[inline(never)]
fn evaluate_all(models: &[Model]) -> f64 {
    models.iter().flat_map(|model| Indicator::ALL.map(|indicator| model.load(indicator, Per::M2).value)).sum()
}

/// Both.
#[inline(never)]
fn counted(comparison: &Comparison) -> f64 {
    evaluate_all(&count_all(comparison))
}

fn main() -> Result<(), String> {
    let tables = Tables::embedded().map_err(|faults| faults[0].to_string())?;
    let document = Document::json("twenty.json", &twenty_jobs::twenty_jobs()).map_err(|fault| fault.to_string())?;
    let order = Order::read(document, &tables).map_err(|faults| faults[0].to_string())?;
    let comparison = compare(&tables, &order, Per::M2, Boundary::Face).map_err(|fault| format!("{fault:?}"))?;
    let parts: usize = comparison.models.iter().map(|model| model.parts.len()).sum();
    let contributions: usize = comparison.models.iter().flat_map(|model| &model.parts).map(|part| part.plan.contributions.len()).sum();
    println!(
        "{} jobs, {} in common, {} alternatives of {parts} parts, {contributions} contributions",
        comparison.jobs.len(),
        comparison.common.len(),
        comparison.models.len()
    );
    let known = evaluate_all(&comparison.models);
    if counted(&comparison) != known {
        return Err("the loads of a second count differ from the first".to_owned());
    }
    if time::once() {
        std::hint::black_box(counted(&comparison));
        return Ok(());
    }
    time::print("20 jobs, from activity to loads", 2001, || counted(&comparison));
    time::print("  of it, counting", 2001, || count_all(&comparison));
    let models = count_all(&comparison);
    time::print("  of it, loads", 2001, || evaluate_all(&models));
    Ok(())
}
