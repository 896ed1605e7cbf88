//! The sources of the tables; the rows, solvents and published values that cite each; the credit that its licence asks for.

use faceload_core::in_order;
use std::collections::{BTreeMap, BTreeSet};

use faceload_core::comparison::Comparison;
use faceload_core::factors::{Origin, Published, Role, Solvent, Source, Tables};
use faceload_core::load::Indicator;
use serde::Serialize;

use crate::explain;

/// A source behind a comparison.
#[derive(Debug, Serialize)]
pub struct SourceOf {
    /// Its key.
    #[serde(skip)]
    pub key: String,
    /// Title, publisher, year and where it can be found.
    pub words: String,
    /// How it was seen, its licence, and the credit.
    pub licence: String,
    /// The inputs of the comparison that come from it.
    pub inputs: usize,
}

/// A source of the inputs behind some loads.
#[derive(Debug, Serialize)]
pub struct BehindLoad {
    /// Publisher and title, or what stands in place of a source.
    pub words: String,
    /// How many inputs rest on it.
    pub inputs: usize,
    /// Their grades.
    pub grades: Vec<String>,
}

/// The sources that hold a word, or whose rows do, as text.
pub fn text(tables: &Tables, published: &[Published], word: &str) -> String {
    let wanted = word.to_lowercase();
    let holds = |text: &str| text.to_lowercase().contains(&wanted);
    let mut out = String::new();
    for source in tables.sources.values() {
        let of_source = [&source.key, &source.title, &source.publisher, &source.year, &source.licence].into_iter().any(|text| holds(text));
        let rows = tables.inputs.iter().filter(|row| row.source == source.key);
        let rows: Vec<String> = rows
            .filter(|row| of_source || holds(&row.id) || holds(&row.item))
            .map(|row| {
                format!("    {} = {} {} (grade {}; {})\n", row.id, row.value, row.unit.words(), row.grade, row.place).replace("  (", " (")
            })
            .collect();
        let signs = tables.signs.values().filter(|sign| sign.source == source.key && (of_source || holds(&sign.code)));
        let signs: Vec<String> =
            signs.map(|sign| format!("    {} {} (grade {}; {})\n", sign.code, sign.item, sign.grade, sign.place)).collect();
        let solvents = tables.solvents.values().filter(|solvent| solvent.source == source.key);
        let solvents: Vec<String> = solvents
            .filter(|solvent| of_source || holds(&solvent.id) || holds(&solvent.item) || holds(&solvent.cas))
            .map(solvent_words)
            .collect();
        let published = published.iter().filter(|one| one.source == source.key);
        let published: Vec<String> = published
            .filter(|one| of_source || [&one.id, &one.backs, &one.item].into_iter().any(|text| holds(text)))
            .map(published_words)
            .collect();
        if !of_source && [&rows, &signs, &solvents, &published].into_iter().all(Vec::is_empty) {
            continue;
        }
        out.push_str(&format!("{}: {}\n  {}\n", source.key, named(source), licence(source)));
        out.extend(rows);
        out.extend(signs);
        out.extend(solvents);
        out.extend(published);
    }
    out
}

/// The sources behind a comparison, by key; not those that say that there is none.
pub fn behind(tables: &Tables, comparison: &Comparison) -> Vec<SourceOf> {
    let mut cited: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for plan in comparison.models.iter().flat_map(|model| model.parts.iter().map(|part| &part.plan)) {
        let rows = plan.book.used().into_iter().map(|id| plan.book.input(id));
        for row in rows.filter(|row| matches!(row.origin, Origin::Practice | Origin::Factor)) {
            cited.entry(&row.source).or_default().insert(&row.id);
        }
    }
    for line in comparison.order.lines.iter() {
        if let Some(sign) = line.code.as_ref().and_then(|code| tables.signs.get(code)) {
            cited.entry(&sign.source).or_default().insert(&sign.code);
        }
    }
    let published = |source: &&Source| !matches!(source.kind.as_str(), "practice" | "memory" | "judgement");
    let sources = cited.iter().filter_map(|(key, rows)| Some((tables.sources.get(*key).filter(published)?, rows.len())));
    sources.map(|(source, inputs)| SourceOf { key: source.key.clone(), words: named(source), licence: licence(source), inputs }).collect()
}

/// The sources of the inputs that stand in what some alternatives load, those of most inputs first; what has no
/// published source is named by what it is. No alternative named means all.
pub fn behind_loads(tables: &Tables, comparison: &Comparison, indicators: &[Indicator], alternatives: &[usize]) -> Vec<BehindLoad> {
    let mut cited: BTreeMap<String, (BTreeSet<&str>, BTreeSet<String>)> = BTreeMap::new();
    let models = comparison.models.iter().enumerate().filter(|(at, _)| alternatives.is_empty() || alternatives.contains(at));
    for (_, model) in models {
        for part in &model.parts {
            let book = &part.plan.book;
            for indicator in indicators {
                for id in part.plan.inputs(*indicator, comparison.per) {
                    let row = book.input(id);
                    let (rows, grades) = cited.entry(explain::source_of(tables, row)).or_default();
                    rows.insert(&row.id);
                    grades.insert(row.grade.to_string());
                }
            }
        }
    }
    let mut list: Vec<BehindLoad> = cited
        .into_iter()
        .map(|(words, (rows, grades))| BehindLoad { words, inputs: rows.len(), grades: grades.into_iter().collect() })
        .collect();
    in_order(&mut list, |a, b| b.inputs.cmp(&a.inputs).then(a.words.cmp(&b.words)));
    list
}

/// Title, publisher, year and where it can be found.
fn named(source: &Source) -> String {
    let facts = [source.publisher.as_str(), source.year.as_str(), source.locator.as_str()];
    let facts: Vec<&str> = facts.into_iter().filter(|text| !text.is_empty()).collect();
    format!("{} ({})", source.title, facts.join(", "))
}

/// What kind of source it is, how it was seen, its licence, where that can be read, and the credit it asks for.
fn licence(source: &Source) -> String {
    let licence = if source.licence.is_empty() { "no licence stated" } else { source.licence.as_str() };
    let (read, asked) = match source.asks_for_credit() {
        Some(asking) if asking.text.is_empty() => (String::new(), "credit, as the licence asks"),
        Some(asking) => (format!(", {}", asking.text), "credit, as the licence asks"),
        None => (String::new(), "credit"),
    };
    let credit = if source.attribution.is_empty() { String::new() } else { format!("; {asked}: {}", source.attribution) };
    format!("{}, seen as {}; licence: {licence}{read}{credit}", source.kind, source.seen.word())
}

/// A solvent, by what its carbon becomes.
fn solvent_words(solvent: &Solvent) -> String {
    let density = solvent.density.as_ref().map_or(String::new(), |(density, _, grade)| format!("; {density} kg/L, grade {grade}"));
    let note = [solvent.note.as_str(), solvent.found_by.as_str()].into_iter().filter(|text| !text.is_empty());
    let note: String = note.map(|text| format!("; {text}")).collect();
    format!(
        "    solvent {}: {}, {} = {} kg CO2e/kg (grade {}{density}{note})\n",
        solvent.id, solvent.item, solvent.formula, solvent.co2e, solvent.grade
    )
}

/// What a published value is to the row it backs, as a reader sees it.
const ROLES: [(Role, &str); 6] = [
    (Role::Default, "its value"),
    (Role::Mean, "in its mean"),
    (Role::Also, "in its range"),
    (Role::Low, "its low end"),
    (Role::High, "its high end"),
    (Role::Beside, "beside it"),
];

/// A published value, by the row it backs and what it is to it.
fn published_words(one: &Published) -> String {
    let roles: Vec<&str> = ROLES.iter().filter(|(role, _)| one.is(*role)).map(|(_, word)| *word).collect();
    let times = if one.times == 1.0 { String::new() } else { format!(" x {}", one.times) };
    let note = if one.note.is_empty() { String::new() } else { format!("; {}", one.note) };
    format!(
        "    published for {}, {}: {} {}{times} (grade {}; {}; {}, {}, {}; {}{note})\n",
        one.backs,
        roles.join(" and "),
        one.value,
        one.unit.words(),
        one.grade,
        one.item,
        one.region,
        one.year,
        one.boundary,
        one.place
    )
}
