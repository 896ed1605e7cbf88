//! What cannot be made, what no shop would do, where air is short, and faults, in words.

use faceload_core::comparison::{Caution, CompareFault, Comparison, Dropped};
use faceload_core::route::{Reason, route};

use crate::words::{join, number};

/// Why a route cannot make a job.
pub fn reason(reason: &Reason) -> String {
    match reason {
        Reason::Excluded(why) => format!("excluded by the order: {why}"),
        Reason::Table => "the face is larger than the screen table (`screen.table`)".to_owned(),
        Reason::Roll => "no roll in stock is wide enough (`layout.roll`), even with a splice".to_owned(),
        Reason::TwoBases => "it shows two colours that exist only as sheeting".to_owned(),
        Reason::FilmColours => "it shows more colours than a face takes in film (`film.most-colours`)".to_owned(),
        Reason::WhiteFilm => "white would have to be laid on a coloured base, and film is transparent".to_owned(),
        Reason::LightCopy => "direct-applied copy is white on one dark ground".to_owned(),
        Reason::NothingPrinted => "it shows one colour only: nothing is printed".to_owned(),
    }
}

/// What alternatives cannot make, a sentence for each alternative and reason.
pub fn dropped(all: &[Dropped]) -> Vec<String> {
    let mut groups: Vec<(String, Vec<&str>)> = Vec::new();
    for one in all {
        let instead = one.instead.as_ref().map(|id| format!(", so {id} makes it")).unwrap_or_default();
        let what = format!("{} cannot make it: {}{instead}", one.id, reason(&one.reason));
        match groups.iter_mut().find(|(known, _)| *known == what) {
            Some((_, labels)) => labels.push(&one.label),
            None => groups.push((what, vec![&one.label])),
        }
    }
    let shown = |labels: &[&str]| match labels {
        [first, second, third, rest @ ..] if rest.len() > 1 => format!("{first}, {second}, {third} and {} more", rest.len()),
        all => join(all),
    };
    groups.iter().map(|(what, labels)| format!("{}: {what}", shown(labels))).collect()
}

/// A caution about an air flow.
pub fn caution(caution: &Caution) -> String {
    format!(
        "{}: the air reckoned for the {} ({} m3/h) is below the {} m3/h that the 25 % LFL estimating rule (NFPA 86) asks for the solvent evaporated; \
         this says nothing about what is safe, ask the responsible engineer",
        caution.alternative,
        caution.place,
        number(caution.air),
        number(caution.floor)
    )
}

/// A fault in words, one line each.
pub fn fault(fault: &CompareFault) -> Vec<String> {
    match fault {
        CompareFault::Order(faults) => faults.iter().map(ToString::to_string).collect(),
        CompareFault::Table(faults) => faults.iter().map(ToString::to_string).collect(),
        CompareFault::Mass(gaps) => gaps
            .iter()
            .map(|gap| {
                format!(
                    "{}: mass does not close, {:e} of what is bought is lost; this is a fault of the program, please report it",
                    gap.material, gap.share
                )
            })
            .collect(),
        CompareFault::NothingMade(all) => {
            let mut lines = dropped(all);
            lines.push("no alternative can make any line, so nothing is compared; change the lines, or add an alternative".to_owned());
            lines
        }
    }
}

/// What no shop would do: said beside a number that can be computed all the same.
pub fn unusual(comparison: &Comparison) -> Vec<String> {
    let mut said = Vec::new();
    for plan in comparison.models.iter().map(|model| &model.parts[0].plan) {
        for job in &comparison.jobs {
            let route = route(plan.alternative.route);
            if let Some(why) = route.work(job, &plan.layout).ok().and_then(|work| route.unusual(&work)) {
                said.push(format!("{}, {}: not how it is done, {why}", job.line.label, plan.alternative.id));
            }
        }
    }
    said
}
