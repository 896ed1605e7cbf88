//! What cannot be made, what no shop would do, where air is short, and faults, in words.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use faceload_core::comparison::{Caution, CompareFault, Comparison, Dropped};
use faceload_core::factors::Legend;
use faceload_core::order::OrderFault;
use faceload_core::quantity::group;
use faceload_core::route::{Reason, route};

use crate::words::{join, number};

/// Why a route cannot make a job.
pub fn reason(reason: &Reason) -> String {
    match reason {
        Reason::Excluded(why) => format!("excluded by the order: {why}"),
        Reason::Table => "the face is larger than the screen table (input screen.table)".to_owned(),
        Reason::Roll => "no roll in stock is wide enough (input layout.roll), even with a splice".to_owned(),
        Reason::TwoBases => "it shows two colours that exist only as sheeting".to_owned(),
        Reason::FilmColours => "it shows more colours than a face takes in film (input film.most-colours)".to_owned(),
        Reason::WhiteFilm => "white would have to be laid on a coloured base, and film is transparent".to_owned(),
        Reason::LightCopy => "direct-applied copy is white on one dark ground".to_owned(),
        Reason::NothingPrinted => "it shows one colour only: nothing is printed".to_owned(),
    }
}

/// What is said for some jobs, and of which alternatives; of none by name, an empty one.
type Said<'a> = (String, Vec<&'a str>, Vec<&'a str>);

/// Says it for one more job.
fn say<'a>(said: &mut Vec<Said<'a>>, what: String, id: &'a str, label: &'a str) {
    match said.iter_mut().find(|(known, ids, _)| *known == what && ids == &[id]) {
        Some((.., labels)) => labels.push(label),
        None => said.push((what, vec![id], vec![label])),
    }
}

/// One sentence for the alternatives of which the same is said for the same jobs.
fn together(said: Vec<Said<'_>>, words: impl Fn(&str, &str) -> String) -> Vec<String> {
    let mut groups: Vec<Said<'_>> = Vec::new();
    for (what, ids, labels) in said {
        match groups.iter_mut().find(|(known, _, jobs)| *known == what && *jobs == labels) {
            Some((_, known, _)) => known.extend(ids),
            None => groups.push((what, ids, labels)),
        }
    }
    groups.iter().map(|(what, ids, labels)| format!("{}: {}", shown(labels), words(&join(ids), what))).collect()
}

/// What alternatives cannot make, a sentence for each reason.
pub fn dropped(all: &[Dropped]) -> Vec<String> {
    let mut said = Vec::new();
    for one in all {
        let instead = one.instead.as_ref().map(|id| format!(", so {id} makes it")).unwrap_or_default();
        say(&mut said, format!("{}{instead}", reason(&one.reason)), &one.id, &one.label);
    }
    together(said, |ids, why| format!("{ids} cannot make it: {why}"))
}

/// What no shop would do, though it is counted, a sentence for each cause; of some alternatives.
pub fn odd(comparison: &Comparison, of: impl Fn(&str) -> bool) -> Vec<String> {
    let mut said = Vec::new();
    for plan in comparison.models.iter().map(|model| &model.parts[0].plan).filter(|plan| of(&plan.alternative.id)) {
        let route = route(plan.alternative.route);
        for job in &comparison.jobs {
            if let Some(why) = route.work(job, &plan.layout).ok().and_then(|work| route.unusual(&work)) {
                say(&mut said, why.to_owned(), &plan.alternative.id, &job.line.label);
            }
        }
    }
    together(said, |ids, why| format!("counted for {ids} too, though it is not done so: {why}"))
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
        CompareFault::Order(all) => faults(all),
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

/// What no shop would do, and what a code leaves open: said beside numbers that can be computed all
/// the same, once for each cause.
pub fn unusual(comparison: &Comparison) -> Vec<String> {
    let mut said = Vec::new();
    for job in &comparison.jobs {
        let (line, code) = (&job.line, job.line.code.as_deref().unwrap_or_default());
        if line.artwork.is_none() && line.legend == Legend::Few && job.lines > 1 {
            say(
                &mut said,
                format!("{code} has more legends than one, and all lines are counted as one design: name the artwork of each"),
                "",
                &line.label,
            );
        }
        if line.artwork.is_none() && line.legend == Legend::Each && job.lines > 1 {
            say(
                &mut said,
                format!(
                    "each line of {code} is counted as a design of its own, since its legend varies: name the artwork where it is the same"
                ),
                "",
                &line.label,
            );
        }
        let proportion = line.height.metres() / line.width.metres();
        let off = line.proportion.is_some_and(|usual| match line.legend {
            Legend::Each => (proportion > 1.0) != (usual > 1.0),
            Legend::One | Legend::Few => !(0.8..=1.25).contains(&(proportion / usual)),
        });
        if off {
            say(
                &mut said,
                format!("{} is far from the proportions of {code}: its loads are for the size as written", line.size),
                "",
                &line.label,
            );
        }
    }
    [odd(comparison, |_| true), together(said, |_, cause| cause.to_owned())].concat()
}

/// The first few of many labels.
fn shown(labels: &[&str]) -> String {
    match labels {
        [first, second, third, rest @ ..] if rest.len() > 1 => format!("{first}, {second}, {third} and {} more", rest.len()),
        all => join(all),
    }
}

/// Faults of an order, equal ones said once with the number of lines that share them.
pub fn faults(all: &[OrderFault]) -> Vec<String> {
    // The same key with the same cell, whichever line it stands in.
    let cause = |fault: &OrderFault| {
        let key = fault.field.rsplit('.').next().unwrap_or_default().to_owned();
        (key, fault.came.clone(), fault.wanted.clone(), fault.help.clone())
    };
    let mut groups: Vec<(&OrderFault, usize)> = Vec::new();
    let mut places: BTreeMap<(String, String, String, String), usize> = BTreeMap::new();
    for fault in all {
        match places.entry(cause(fault)) {
            Entry::Occupied(place) => groups[*place.get()].1 += 1,
            Entry::Vacant(place) => {
                place.insert(groups.len());
                groups.push((fault, 0));
            }
        }
    }
    let more = |more: usize| if more == 0 { String::new() } else { format!(" (and {} more like it)", group(&more.to_string())) };
    groups.iter().map(|(fault, same)| format!("{fault}{}", more(*same))).collect()
}
