//! The jobs as rows: who can make each, why not, and the loads there.

use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use serde_json::{Value, json};

use super::results::unit;
use super::sheet::{Column, Kind, Sheet, number, text};
use crate::job_lines;

/// The sheet.
pub(super) fn sheet(comparison: &Comparison) -> Sheet {
    let mut columns = vec![
        Column::of("job", Kind::Whole, "Number of the job, in the order of its first line."),
        Column::perhaps("label", Kind::Text, "Label of its first line."),
        Column::of("what", Kind::Text, "What is made."),
        Column::of("lines", Kind::Whole, "Lines that it stands for."),
        Column::of("m2", Kind::Number, "Square metres of face."),
        Column::of("alternative", Kind::Text, "Id of the alternative."),
        Column::of("makes", Kind::Flag, "Whether the alternative makes the job itself."),
        Column::perhaps("why_not", Kind::Text, "Why not, and who makes it instead."),
    ];
    let load = |indicator: Indicator| {
        let says = format!("Load in {}, {}; nothing where the job is not made.", indicator.label(), unit(comparison, indicator));
        Column { required: false, ..Column::told(indicator.id(), Kind::Number, says) }
    };
    columns.extend(Indicator::ALL.map(load));
    let mut rows = Vec::new();
    for (at, job) in job_lines::jobs(comparison).iter().enumerate() {
        for one in &job.alternatives {
            let mut row = vec![
                json!(at + 1),
                text(&job.label),
                text(&job.what),
                json!(job.lines),
                number(job.m2),
                text(&one.id),
                json!(one.makes),
                text(one.why_not.as_deref().unwrap_or_default()),
            ];
            let load = |indicator: Indicator| {
                let value = one.loads.as_ref().and_then(|loads| loads.get(indicator.id())?.get("value")?.as_f64());
                value.map_or(Value::Null, number)
            };
            row.extend(Indicator::ALL.map(load));
            rows.push(row);
        }
    }
    Sheet {
        name: "jobs",
        says: "Every job and every alternative: whether it can make it, and the loads of that job alone.".to_owned(),
        columns,
        key: &["job", "alternative"],
        rows,
    }
}
