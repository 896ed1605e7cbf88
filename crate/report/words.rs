//! Sentences: the answer, what is left out, what is not covered, the cautions.

use faceload_core::comparison::{Comparison, Verdict};
use faceload_core::factors::Basis;
use faceload_core::in_order;
use faceload_core::load::{Amount, Indicator, Model, Part};
use faceload_core::order::{Alternative, Blank, Boundary, Drying, Ink, Order, RouteName};
use faceload_core::quantity::{Kind, group, write_number};
use faceload_core::route::route;

use crate::shares::percent;

/// How many digits a value without an interval is given with.
const DIGITS: usize = 3;

/// Said where no draws are made.
pub const HOW_SURE: &str = "single values; `faceload compare` and `faceload spread` say how sure";

/// What five indicators don't cover, so that nothing looks free.
pub const NOT_COVERED: &str = "Five indicators are not the whole load. Not covered: toxicity to people and water, skin sensitisers in UV inks, \
ozone formed from solvent, noise, and upstream water. Zero solvent is a boundary, not a finding: what a supplier uses to make film, sheeting or ink is not in it.";

/// The caution beside every answer.
pub const CAUTION: &str = "Signs are safety devices: sheeting, ink, overlay and fabrication must meet the agency's specification and local law first. \
Before changing ventilation, solvents, ovens or lamps: exposure limits, fire codes, the products' safety data sheets and the responsible engineer come first. \
Nothing here is a statement of conformity, certification or durability.";

/// What kind of statement a comparison is.
pub const STANDING: &str = "For internal decisions: generic data unless marked own, not verified by a third party, not a public comparative assertion: no panel review.";

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
        Ink::Water => "water-based ink",
        Ink::Resin => "resin ink",
    };
    let drying = match alternative.drying {
        Drying::Rack => "racks",
        Drying::Oven => "oven",
        Drying::Uv => "UV lamps",
        Drying::UvLed => "UV LED lamps",
    };
    let label = route(alternative.route).label();
    match alternative.route {
        RouteName::ScreenPrinting => format!("{label}, {ink}, {drying}"),
        RouteName::DigitalPrinting => format!("{label}, {ink}, {}", if alternative.overlay { "clear overlay" } else { "no overlay" }),
        RouteName::OverlayFilm | RouteName::DirectApplied => label.to_owned(),
    }
}

/// `1 sign`, `2 signs`.
pub fn count(number: u64, one: &str) -> String {
    let number_words = group(&number.to_string());
    if number == 1 { format!("{number_words} {one}") } else { format!("{number_words} {one}s") }
}

/// Kinds of sign that are all named; of more, those with the most face.
const NAMED: usize = 5;

/// The order in one line: `100 stop signs (R1-1), 30 in`.
pub fn order_line(comparison: &Comparison) -> String {
    let mut places: Vec<usize> = (0..comparison.jobs.len()).collect();
    in_order(&mut places, |a, b| comparison.jobs[*a].first.cmp(&comparison.jobs[*b].first));
    let mut groups: Vec<(String, String, u64, u64, f64)> = Vec::new();
    for place in places {
        let (line, m2) = (&comparison.jobs[place].line, comparison.m2_of(&[place]));
        let (name, rest) = match &line.code {
            Some(code) => (format!("{} sign", line.item), format!(" ({code}), {}", line.size)),
            None => (String::new(), format!(" \u{d7} {} ({}), {}", line.label, line.shape.name(), line.size)),
        };
        match groups.iter_mut().find(|(known, tail, ..)| *known == name && *tail == rest) {
            Some((.., signs, designs, face)) => {
                *signs += u64::from(line.quantity);
                *designs += u64::from(line.designs);
                *face += m2;
            }
            None => groups.push((name, rest, u64::from(line.quantity), u64::from(line.designs), m2)),
        }
    }
    let more = if groups.len() > NAMED { groups.len() - (NAMED - 1) } else { 0 };
    if more > 0 {
        in_order(&mut groups, |a, b| b.4.total_cmp(&a.4));
        groups.truncate(NAMED - 1);
    }
    let written = groups.iter().map(|(name, rest, signs, designs, _)| {
        let signs = if name.is_empty() { group(&signs.to_string()) } else { count(*signs, name) };
        let designs = if *designs > 1 { format!(", {}", count(*designs, "design")) } else { String::new() };
        format!("{signs}{rest}{designs}")
    });
    let rest = (more > 0).then(|| format!("and {more} more kinds"));
    written.chain(rest).collect::<Vec<_>>().join("; ")
}

/// The orders that were added up, where there are several.
pub fn orders(order: &Order) -> Vec<String> {
    if order.sums.len() < 2 {
        Vec::new()
    } else {
        order.sums.iter().map(|(name, lines)| format!("{name}: {}", count(*lines as u64, "line"))).collect()
    }
}

/// What a user's own tables put in the place of built-in rows.
pub fn own_rows(order: &Order) -> Vec<String> {
    if order.own_rows.is_empty() {
        return Vec::new();
    }
    let ids: Vec<&str> = order.own_rows.iter().map(String::as_str).collect();
    vec![format!("Rows of own tables, in place of or beside the built-in ones: {}", join(&ids))]
}

/// Which tables a result rests on.
pub fn tables(order: &Order) -> String {
    format!("Tables {}: results with the same mark rest on the same rows.", order.tables.short())
}

/// How much face the order is, on how many lines.
pub fn extent(comparison: &Comparison) -> String {
    let lines: usize = comparison.jobs.iter().map(|job| job.lines).sum();
    let m2 = comparison.m2_of(&(0..comparison.jobs.len()).collect::<Vec<_>>());
    let made =
        if comparison.jobs.len() == lines { String::new() } else { format!(", made as {}", count(comparison.jobs.len() as u64, "job")) };
    let signs = comparison.jobs.iter().fold(0, |sum, job| sum + u64::from(job.line.quantity));
    format!("{}, {} m2 of face on {}{made}", count(signs, "sign"), number(m2), count(lines as u64, "line"))
}

/// On how much of the order some jobs are, where that is not all of it.
pub fn part_of(comparison: &Comparison, jobs: &[usize]) -> String {
    let lines: usize = comparison.jobs.iter().map(|job| job.lines).sum();
    if jobs.len() == comparison.jobs.len() {
        return String::new();
    }
    format!("on {} of {}, {} m2", comparison.lines_of(jobs), count(lines as u64, "line"), number(comparison.m2_of(jobs)))
}

/// What the order rests on, in a line.
pub fn conditions(comparison: &Comparison) -> String {
    let order = &comparison.order;
    let stock = comparison.jobs.iter().filter(|job| job.line.stock).count();
    let stock = match stock {
        0 => "made to order: every batch pays its set-up",
        all if all == comparison.jobs.len() => {
            "made for stock: set-ups charged pro rata, so that the quantity moves loads little; a share never used"
        }
        _ => "partly made for stock: there set-ups are charged pro rata, so that the quantity moves loads little; a share never used",
    };
    let gwp = faceload_core::order::GwpSet::ALL.iter().find(|(_, set)| *set == order.gwp).map_or("", |(name, _)| name);
    let site = &order.site;
    let basis = match site.basis() {
        Basis::Direct => "direct emissions",
        Basis::LifeCycle => "life-cycle emissions, fuels and vehicles from the well",
    };
    let fixed: Vec<&str> = [("electricity", &site.electricity), ("heat", &site.heat)]
        .into_iter()
        .filter(|(_, carrier)| !carrier.by_gas)
        .map(|(word, _)| word)
        .collect();
    let fixed = if fixed.is_empty() { String::new() } else { format!(" ({} published as CO2e only: not moved by it)", join(&fixed)) };
    format!(
        "{stock}; {} in service; electricity: {}; heat: {}; {basis}; {} K\u{b7}d; GWP100 {gwp}{fixed}",
        years(order.life),
        site.electricity.full_label(),
        site.heat.full_label(),
        number(site.degree_days)
    )
}

/// Years as they were given: `10 years`.
pub(crate) fn years(life: f64) -> String {
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
        Boundary::Face => "face only: the blank is left out, its making, freight and end of life being equal for all routes",
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

/// Which alternatives load least in an indicator, on the common lines: the least and those about the same.
fn least(comparison: &Comparison, indicator: Indicator) -> Vec<usize> {
    let loads: Vec<f64> = comparison.models.iter().map(|model| model.load(indicator, comparison.per).value).collect();
    let Some(lowest) = loads.iter().copied().min_by(f64::total_cmp) else { return Vec::new() };
    let same =
        |load: f64| load == lowest || comparison.between(indicator, lowest, load, &comparison.models[0]).verdict == Verdict::AboutTheSame;
    let mut places: Vec<usize> = (0..loads.len()).filter(|place| same(loads[*place])).collect();
    in_order(&mut places, |a, b| loads[*a].total_cmp(&loads[*b]));
    places
}

/// The answer for all alternatives, in a sentence: who loads least in what. None where they share no line.
pub fn answer(comparison: &Comparison) -> Option<String> {
    if comparison.common.is_empty() || comparison.models.len() < 2 {
        return None;
    }
    let id = |place: usize| comparison.models[place].alternative.id.as_str();
    let mut groups: Vec<(Vec<usize>, Vec<&str>)> = Vec::new();
    let mut all_alike = Vec::new();
    for indicator in Indicator::ALL {
        let mut places = least(comparison, indicator);
        in_order(&mut places, Ord::cmp);
        if places.len() == comparison.models.len() {
            all_alike.push(indicator.label());
            continue;
        }
        match groups.iter_mut().find(|(known, _)| *known == places) {
            Some((_, labels)) => labels.push(indicator.label()),
            None => groups.push((places, vec![indicator.label()])),
        }
    }
    let mut parts: Vec<String> = groups
        .iter()
        .map(|(places, labels)| {
            let ids: Vec<&str> = places.iter().map(|place| id(*place)).collect();
            format!("{} load{} least in {}", join(&ids), if ids.len() == 1 { "s" } else { "" }, join(labels))
        })
        .collect();
    if !all_alike.is_empty() {
        parts.push(format!("{} {} about the same for all", join(&all_alike), if all_alike.len() == 1 { "is" } else { "are" }));
    }
    let on = part_of(comparison, &comparison.common);
    let on = if on.is_empty() { String::new() } else { format!(" ({on} that all can make)") };
    Some(format!("{}{on}.", parts.join("; ")))
}

/// One indicator for all alternatives: the least, what is about the same, and the most.
pub fn ranked(comparison: &Comparison, indicator: Indicator) -> String {
    let loads: Vec<f64> = comparison.models.iter().map(|model| model.load(indicator, comparison.per).value).collect();
    let said = |place: usize| format!("{} {}", comparison.models[place].alternative.id, number(loads[place]));
    let places = least(comparison, indicator);
    let Some((first, same)) = places.split_first() else { return String::new() };
    if places.len() == loads.len() {
        let most = loads.iter().copied().fold(0.0, f64::max);
        return format!("about the same for all: {} to {} {}", number(loads[*first]), number(most), indicator.unit());
    }
    let same: Vec<String> = same.iter().map(|place| said(*place)).collect();
    let same: Vec<&str> = same.iter().map(String::as_str).collect();
    let same = if same.is_empty() { String::new() } else { format!(" (about the same: {})", join(&same)) };
    let most = (0..loads.len()).max_by(|a, b| loads[*a].total_cmp(&loads[*b])).filter(|most| !places.contains(most));
    let most = most.map(|most| format!("; most {}", said(most))).unwrap_or_default();
    format!("least {}{same}{most} {}", said(*first), indicator.unit())
}

/// The answer for a pair, in a sentence: what is lower, what got worse, what is about the same.
pub fn pair(comparison: &Comparison, a: usize, b: usize) -> String {
    let (first, second) = (&comparison.models[a].alternative.id, &comparison.models[b].alternative.id);
    let differences: Vec<_> = Indicator::ALL.into_iter().filter_map(|indicator| comparison.difference(a, b, indicator)).collect();
    if differences.is_empty() {
        return format!("{first} and {second} share no line, so they are not ranked.");
    }
    let having = |verdict| differences.iter().filter(|one| one.verdict == verdict).map(|one| one.indicator.label()).collect::<Vec<_>>();
    let (less, more, same) = (having(Verdict::FirstLess), having(Verdict::SecondLess), having(Verdict::AboutTheSame));
    let mut parts = Vec::new();
    match (less.is_empty(), more.is_empty()) {
        (false, false) => parts.push(format!("{first} loads less than {second} in {}, but more in {}", join(&less), join(&more))),
        (false, true) => parts.push(format!("{first} loads less than {second} in {}", join(&less))),
        (true, false) => parts.push(format!("{second} loads less than {first} in {}", join(&more))),
        (true, true) => {}
    }
    if !same.is_empty() {
        let whose = if parts.is_empty() { format!(" for {first} and {second}") } else { String::new() };
        parts.push(format!("{} {} about the same{whose}", join(&same), if same.len() == 1 { "is" } else { "are" }));
    }
    let sentence = parts.join("; ");
    let sentence = if less.is_empty() && more.is_empty() { capital(&sentence) } else { sentence };
    let shared = comparison.shared(a, b);
    let on = part_of(comparison, &shared);
    let on = if on.is_empty() { String::new() } else { format!(" ({on})") };
    format!("{sentence}{on}{}.", helped(comparison, a, b))
}

/// Who makes how much of an alternative's lines, in words; nothing where it makes all.
fn makers(model: &Model, own: &str) -> String {
    let parts: Vec<&Part> = model.parts.iter().filter(|part| part.m2.base() > 0.0).collect();
    if parts.iter().all(|part| part.plan.alternative.id == model.alternative.id) {
        return String::new();
    }
    let made = parts.iter().enumerate().map(|(at, part)| {
        let id = part.plan.alternative.id.as_str();
        let who = if id == model.alternative.id { own } else { id };
        format!("{who}{} {}", if at == 0 { " makes" } else { "" }, percent(part.m2.base() / model.m2.base()))
    });
    let made: Vec<String> = made.collect();
    join(&made.iter().map(String::as_str).collect::<Vec<_>>())
}

/// Who makes how much of a pair's lines for whom, where an `otherwise` is followed.
pub(crate) fn helped(comparison: &Comparison, a: usize, b: usize) -> String {
    let Some((first, second)) = comparison.of_pair(a, b) else { return String::new() };
    let made = [first, second].map(|model| (model.alternative.id.clone(), makers(&model, &model.alternative.id)));
    let said = made.iter().filter(|(_, made)| !made.is_empty()).map(|(id, made)| format!("; of the m2 for {id}, {made}"));
    said.collect()
}

/// An alternative, and who makes how much of its lines where others make some.
pub fn alternative_on(model: &Model) -> String {
    let (own, made) = (alternative(&model.alternative), makers(model, "it"));
    if made.is_empty() { own } else { format!("{own} (of the m2 {made})") }
}

/// With its first letter large.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| [first.to_ascii_uppercase()].into_iter().chain(letters).collect()).unwrap_or_default()
}

/// The same, unless it begins with an id.
pub fn capital_unless(text: &str, ids: [&str; 2]) -> String {
    if ids.iter().any(|id| text.starts_with(id)) { text.to_owned() } else { capital(text) }
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
    out
}

/// What the face is made on, where that differs between alternatives or from white.
pub fn bases(comparison: &Comparison) -> Vec<String> {
    let mut lines = Vec::new();
    for model in &comparison.models {
        let mut said: Vec<String> = Vec::new();
        for job in &comparison.jobs {
            if let Ok(work) = route(model.alternative.route).work(job, &model.layout) {
                let printed: Vec<&str> = work.printed.iter().map(|printed| printed.colour.name()).collect();
                let one = match model.alternative.route {
                    RouteName::DirectApplied => format!("white copy on {} sheeting", work.base.name()),
                    RouteName::OverlayFilm => format!("{} film on {} sheeting", join(&printed), work.base.name()),
                    RouteName::ScreenPrinting | RouteName::DigitalPrinting => {
                        format!("{} printed on {} sheeting", join(&printed), work.base.name())
                    }
                };
                if !said.contains(&one) {
                    said.push(one);
                }
            }
        }
        lines.push(format!("{}: {}", model.alternative.id, said.join("; ")));
    }
    lines
}
