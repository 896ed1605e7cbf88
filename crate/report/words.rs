//! Sentences: the answer, what is left out, what is not covered, the cautions.

use faceload_core::comparison::{Caution, CompareFault, Comparison, Dropped, Verdict};
use faceload_core::load::{Amount, Indicator};
use faceload_core::order::{Alternative, Blank, Boundary, Drying, Ink, Job, Order, RouteName};
use faceload_core::quantity::{Kind, group, write_number};
use faceload_core::route::{Reason, route};

/// How many digits a value without an interval is given with.
const DIGITS: usize = 3;

/// Said with every answer until draws exist.
pub const HOW_SURE: &str = "single values; how sure is not computed yet";

/// What five indicators don't cover, so that nothing looks free.
pub const NOT_COVERED: &str = "Five indicators are not the whole load. Not covered: toxicity to people and water, skin sensitisers in UV inks, \
ozone formed from solvent, noise, and upstream water. Zero solvent is a boundary, not a finding: what a supplier uses to make film, sheeting or ink is not in it.";

/// The caution beside every answer.
pub const CAUTION: &str = "Signs are safety devices: sheeting, ink, overlay and fabrication must meet the agency's specification and local law first. \
Before changing ventilation, solvents, ovens or lamps: exposure limits, fire codes, the products' safety data sheets and the responsible engineer come first. \
Nothing here is a statement of conformity, certification or durability.";

/// What kind of statement a comparison is.
pub const STANDING: &str =
    "For internal decisions: generic data unless marked own, not verified by a third party, not a public comparative assertion.";

/// A number as printed.
pub fn number(value: f64) -> String {
    write_number(value, DIGITS)
}

/// A load as printed, with its unit.
pub fn amount(amount: Amount) -> String {
    format!("{} {}", number(amount.value), amount.indicator.unit())
}

/// What an alternative is, in words.
pub fn alternative(alternative: &Alternative) -> String {
    let ink = match alternative.ink {
        Ink::Solvent => "solvent ink",
        Ink::Uv => "UV ink",
    };
    let last = match (alternative.route, alternative.drying, alternative.overlay) {
        (RouteName::ScreenPrinting, Drying::Oven, _) => "oven",
        (RouteName::ScreenPrinting, Drying::Uv, _) => "UV lamps",
        (RouteName::DigitalPrinting, _, true) => "clear overlay",
        (RouteName::DigitalPrinting, _, false) => "no overlay",
    };
    format!("{}, {ink}, {last}", route(alternative.route).label())
}

/// `1 sign`, `2 signs`.
pub fn count(number: u64, one: &str) -> String {
    let number_words = group(&number.to_string());
    if number == 1 { format!("{number_words} {one}") } else { format!("{number_words} {one}s") }
}

/// The order in one line: `100 stop signs (R1-1), 30 in`.
pub fn order_line(jobs: &[Job]) -> String {
    let mut groups: Vec<(String, String, u64, u64)> = Vec::new();
    for job in jobs {
        let line = &job.line;
        let code = line.code.as_ref().map(|code| format!(" ({code})")).unwrap_or_default();
        let name = format!("{} sign", line.item);
        let rest = format!("{code}, {}", line.size);
        match groups.iter_mut().find(|(known, tail, ..)| *known == name && *tail == rest) {
            Some((.., signs, designs)) => {
                *signs += u64::from(line.quantity);
                *designs += u64::from(line.designs);
            }
            None => groups.push((name, rest, u64::from(line.quantity), u64::from(line.designs))),
        }
    }
    let written = groups.iter().map(|(name, rest, signs, designs)| {
        let designs = if *designs > 1 { format!(", {}", count(*designs, "design")) } else { String::new() };
        format!("{}{rest}{designs}", count(*signs, name))
    });
    written.collect::<Vec<_>>().join("; ")
}

/// How much face that is, on how many lines.
pub fn extent(comparison: &Comparison) -> String {
    let m2 = comparison.models.first().map_or(0.0, |model| model.m2.base());
    let jobs = comparison.jobs.len() as u64;
    let lines = if comparison.lines_compared == comparison.lines {
        count(comparison.lines as u64, "line")
    } else {
        format!("{} of {}", comparison.lines_compared, count(comparison.lines as u64, "line"))
    };
    let made = if jobs == comparison.lines_compared as u64 { String::new() } else { format!(", made as {}", count(jobs, "job")) };
    format!("{} m2 of face on {lines}{made}", number(m2))
}

/// What the order rests on, in a line.
pub fn conditions(comparison: &Comparison) -> String {
    let order = &comparison.order;
    let stock = comparison.jobs.iter().filter(|job| job.line.stock).count();
    let stock = match stock {
        0 => "made to order: every batch pays its set-up",
        all if all == comparison.jobs.len() => "made for stock: set-ups charged pro rata, a share never used",
        _ => "partly made for stock: there set-ups are charged pro rata, a share never used",
    };
    let gwp = faceload_core::order::GwpSet::ALL.iter().find(|(_, set)| *set == order.gwp).map_or("", |(name, _)| name);
    format!(
        "{stock}; {} in service; electricity {}, heat {}, {} K\u{b7}d; GWP100 {gwp}",
        years(order.life),
        order.site.electricity,
        order.site.heat,
        number(order.site.degree_days)
    )
}

/// Years as they were given: `10 years`.
fn years(life: f64) -> String {
    format!("{life} years")
}

/// The inputs that were moved by hand, a line each.
pub fn moved(comparison: &Comparison) -> Vec<String> {
    let Some(model) = comparison.models.first() else { return Vec::new() };
    let row = |id: &str| model.book.row(id);
    let said = comparison.order.moved.iter().filter_map(|(id, value)| {
        let row = row(id)?;
        Some(format!("Moved by hand: {} is {} {} instead of {}", row.item, value, row.unit.words(), row.centre).replace("  ", " "))
    });
    said.collect()
}

/// What is counted.
pub fn boundary(boundary: Boundary) -> &'static str {
    match boundary {
        Boundary::Face => "face only: the blank's making, freight and end of life are left out, being equal for all routes",
        Boundary::FaceWithBlank => "face with its blank",
    }
}

/// Names joined as a sentence does.
pub fn join(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

/// The answer for a pair, in a sentence: what is lower, what got worse, what is about the same.
pub fn pair(comparison: &Comparison, a: usize, b: usize) -> String {
    let (first, second) = (&comparison.models[a].alternative.id, &comparison.models[b].alternative.id);
    let having = |verdict| {
        let labels =
            Indicator::ALL.into_iter().filter(|indicator| comparison.difference(a, b, *indicator).verdict == verdict).map(Indicator::label);
        labels.collect::<Vec<_>>()
    };
    let (less, more, same) = (having(Verdict::FirstLess), having(Verdict::SecondLess), having(Verdict::AboutTheSame));
    let mut parts = Vec::new();
    match (less.is_empty(), more.is_empty()) {
        (false, false) => parts.push(format!("{first} loads less than {second} in {}, but more in {}", join(&less), join(&more))),
        (false, true) => parts.push(format!("{first} loads less than {second} in {}", join(&less))),
        (true, false) => parts.push(format!("{second} loads less than {first} in {}", join(&more))),
        (true, true) => {}
    }
    if !same.is_empty() {
        parts.push(format!(
            "{} {} about the same{}",
            join(&same),
            if same.len() == 1 { "is" } else { "are" },
            if parts.is_empty() { format!(" for {first} and {second}") } else { String::new() }
        ));
    }
    let sentence = parts.join("; ");
    let mut letters = sentence.chars();
    let sentence = if less.is_empty() && more.is_empty() {
        letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
    } else {
        sentence
    };
    format!("{sentence}.")
}

/// How one indicator differs in a pair.
pub fn difference(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> String {
    let difference = comparison.difference(a, b, indicator);
    let (first, second) = (&comparison.models[a].alternative.id, &comparison.models[b].alternative.id);
    let (lower, higher) = if difference.value() < 0.0 { (second, first) } else { (first, second) };
    let share = difference.share_of_smaller().map(|share| format!(", {}", percent_more(share))).unwrap_or_default();
    let same = if difference.verdict == Verdict::AboutTheSame { "about the same: " } else { "" };
    let loads = format!("{first} {}, {second} {} {}", number(difference.first), number(difference.second), indicator.unit());
    if difference.value() == 0.0 {
        return format!("{loads}: no difference");
    }
    format!("{loads}: {same}{higher} {} more than {lower}{share}", number(difference.value().abs()))
}

/// A share more, in words a reader can check: per cent up to a doubling, then times as much.
fn percent_more(share: f64) -> String {
    if share < 1.0 {
        format!("{} % more", write_number(share * 100.0, 2))
    } else {
        format!("{} times as much", write_number(1.0 + share, 2))
    }
}

/// What is left out of this comparison.
pub fn left_out(order: &Order, boundary: Boundary) -> Vec<String> {
    let mut out = Vec::new();
    if boundary == Boundary::Face {
        out.push("the blank (count it with the boundary face-with-blank)".to_owned());
    } else if order.lines.iter().any(|line| line.blank == Blank::None) {
        out.push("a blank for lines that have none".to_owned());
    }
    if order.site.delivery.is_none() {
        out.push("delivery to the customer: the order gives no distance".to_owned());
    }
    if order.site.visit.is_none() {
        out.push("visits to the sign: the order gives no distance".to_owned());
    }
    out.push("replacements within a study period, posts, and use of the sign".to_owned());
    out.push("cut overlay film and direct-applied copy: not in this version".to_owned());
    out
}

/// What the face is made on, where that differs between alternatives or from white.
pub fn bases(comparison: &Comparison) -> Vec<String> {
    let mut lines = Vec::new();
    for model in &comparison.models {
        let layout = faceload_core::inventory::Layout::read(&model.book);
        let mut said: Vec<String> = Vec::new();
        for job in &comparison.jobs {
            if let Ok(work) = route(model.alternative.route).work(job, &layout, &model.book) {
                let printed: Vec<&str> = work.printed.iter().map(|printed| printed.colour.name()).collect();
                let one = format!("{} printed on {} sheeting", join(&printed), work.base.name());
                if !said.contains(&one) {
                    said.push(one);
                }
            }
        }
        lines.push(format!("{}: {}", model.alternative.id, said.join("; ")));
    }
    lines
}

/// Why a route cannot make a job.
pub fn reason(reason: &Reason) -> String {
    match reason {
        Reason::Excluded(why) => format!("excluded by the order: {why}"),
        Reason::Table => "the face is larger than the screen table (`screen.table`)".to_owned(),
        Reason::Roll => "no roll in stock is wide enough (`layout.roll`), and splices are not in this version".to_owned(),
        Reason::TwoBases => "it shows two colours that exist only as sheeting".to_owned(),
        Reason::NothingPrinted => "it shows one colour only: nothing is printed".to_owned(),
    }
}

/// A dropped job, in a sentence.
pub fn dropped(dropped: &Dropped) -> String {
    format!("{}: {} cannot make it: {}", dropped.label, dropped.alternative, reason(&dropped.reason))
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
        CompareFault::NothingInCommon(all) => {
            let mut lines: Vec<String> = all.iter().map(dropped).collect();
            lines.push(
                "no line can be made by every alternative, so nothing is compared; take an alternative out, or change the lines".to_owned(),
            );
            lines
        }
    }
}
