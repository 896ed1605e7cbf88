//! The sources of the tables, and the rows that cite each.

use faceload_core::factors::Tables;

/// The sources that hold a word, or whose rows do, as text.
pub fn text(tables: &Tables, word: &str) -> String {
    let wanted = word.to_lowercase();
    let holds = |text: &str| text.to_lowercase().contains(&wanted);
    let mut out = String::new();
    for source in tables.sources.values() {
        let of_source = [&source.key, &source.title, &source.publisher, &source.year].into_iter().any(|text| holds(text));
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
        if !of_source && rows.is_empty() && signs.is_empty() {
            continue;
        }
        let facts = [source.publisher.as_str(), source.year.as_str(), source.locator.as_str()];
        let facts: Vec<&str> = facts.into_iter().filter(|text| !text.is_empty()).collect();
        out.push_str(&format!("{}: {} ({})\n", source.key, source.title, facts.join(", ")));
        let credit = if source.attribution.is_empty() { String::new() } else { format!("; credit: {}", source.attribution) };
        let licence = if source.licence.is_empty() { "no licence stated" } else { source.licence.as_str() };
        out.push_str(&format!("  {}, seen as {}; licence: {licence}{credit}\n", source.kind, source.seen.word()));
        out.extend(rows);
        out.extend(signs);
    }
    out
}
