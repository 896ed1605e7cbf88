//! Makers: which alternative makes a job for whom: itself, or by following its `otherwise`.

use std::rc::Rc;

use crate::load::Plan;
use crate::order::Job;
use crate::route::{Reason, route};

/// A job that an alternative cannot make.
#[derive(Debug, Clone, PartialEq)]
pub struct Dropped {
    /// The job, by its place.
    pub job: usize,
    /// The label of its line.
    pub label: String,
    /// The alternative, by its place.
    pub alternative: usize,
    /// Its id.
    pub id: String,
    /// Why.
    pub reason: Reason,
    /// The alternative that makes it instead.
    pub instead: Option<String>,
}

/// Who makes what.
#[derive(Debug, Clone)]
pub struct Makers {
    /// For each alternative and job, the place of the alternative that makes it.
    pub of: Vec<Vec<Option<usize>>>,
    /// What an alternative cannot make itself.
    pub dropped: Vec<Dropped>,
}

impl Makers {
    /// Finds who makes what.
    pub fn find(plans: &[Rc<Plan>], jobs: &[Job]) -> Self {
        let can = |plan: &Plan, job: &Job| route(plan.alternative.route).work(job, &plan.layout).err();
        let reasons: Vec<Vec<Option<Reason>>> = plans.iter().map(|plan| jobs.iter().map(|job| can(plan, job)).collect()).collect();
        let place = |id: &str| plans.iter().position(|plan| plan.alternative.id == id);
        let mut dropped = Vec::new();
        let of = plans.iter().enumerate().map(|(alternative, plan)| {
            let made = jobs.iter().enumerate().map(|(job, of_job)| {
                let mut maker = Some(alternative);
                // The chain of `otherwise` is known to end.
                while let Some(at) = maker.filter(|at| reasons[*at][job].is_some()) {
                    maker = plans[at].alternative.otherwise.as_deref().and_then(place);
                }
                if let Some(reason) = &reasons[alternative][job] {
                    dropped.push(Dropped {
                        job,
                        label: of_job.line.label.clone(),
                        alternative,
                        id: plan.alternative.id.clone(),
                        reason: reason.clone(),
                        instead: maker.map(|maker| plans[maker].alternative.id.clone()),
                    });
                }
                maker
            });
            made.collect()
        });
        let of = of.collect();
        Self { of, dropped }
    }

    /// Whether an alternative makes any job.
    pub fn makes_any(&self, alternative: usize) -> bool {
        self.of[alternative].iter().any(Option::is_some)
    }

    /// The jobs that all of these alternatives can make.
    pub fn common(&self, alternatives: &[usize]) -> Vec<usize> {
        let jobs = self.of.first().map_or(0, Vec::len);
        (0..jobs).filter(|job| alternatives.iter().all(|alternative| self.of[*alternative][*job].is_some())).collect()
    }
}
