//! `factors/README.md`: what the tables are, counted and listed from the tables themselves. `cargo xtask tables`
//! writes it anew; without that, a page that is not of today's tables fails here.

use std::collections::BTreeMap;
use std::path::Path;

use faceload_core::factors::{Grade, Input, Origin, Published, Source, published};
use serde_json::Value;

use crate::shop::tables;

const OPENING: &str = "# The tables\n
<!-- generated from the tables and datapackage.json by `cargo xtask tables`; edits here are lost -->\n
What the program knows of shops and of loads, one number a row, each with its source, the place in it and a grade. The tables are
plain CSV (UTF-8, comma, quotes where a cell holds a comma), sorted by their first column; `datapackage.json` describes them by the
Table Schema, and `CHANGES.md` has a line for every changed number. A vintage is a row of its own, never an edit.\n
Units are UCUM; braces say what is counted: `kg{CO2e}/kW.h`, `mL{ink}/m2{face}`. Ranges are 90 % ranges of a lognormal spread, else
the ends; a `fixed` row is a choice, a constant or a stated fact.\n";

const FINGERPRINT: &str = "## Which tables a result rests on\n
Every result carries a fingerprint of the tables as they were read, and `faceload check --fingerprint` prints it. Write each row as a
line: the name of its file and its cells, apart by tabs; sort the lines by their bytes, end each by a line feed; SHA-256 of that text is
the fingerprint. Quotes, line ends and the order of rows do not count, any cell does. No result rests on `published.csv`: it does not count.\n";

/// The page as of today.
fn page() -> String {
    let mut out = String::from(OPENING);
    tables_and_columns(&mut out);
    grades(&mut out);
    sources(&mut out);
    out.push_str(&format!("\n{FINGERPRINT}"));
    out
}

/// Each table: what it is, its rows and columns.
fn tables_and_columns(out: &mut String) {
    let text = std::fs::read_to_string(folder().join("datapackage.json")).expect("the description");
    let package: Value = serde_json::from_str(&text).expect("JSON");
    for table in package["resources"].as_array().expect("tables") {
        let words = |value: &Value| value.as_str().expect("words").to_owned();
        let rows = match words(&table["path"]).as_str() {
            "practice.csv" => single().filter(|input| input.origin == Origin::Practice).count(),
            "factors.csv" => single().filter(|input| input.origin == Origin::Factor).count(),
            "carriers.csv" => tables().carriers.len(),
            "sign-codes.csv" => tables().signs.len(),
            "solvents.csv" => tables().solvents.len(),
            "published.csv" => values().len(),
            _ => tables().sources.len(),
        };
        out.push_str(&format!("\n## {}\n\n{} {rows} rows.\n\n", words(&table["path"]), words(&table["description"])));
        out.push_str("| column | what stands in it |\n| --- | --- |\n");
        for field in table["schema"]["fields"].as_array().expect("columns") {
            let list = field["constraints"]["enum"].as_array().map(|list| list.iter().map(words).collect::<Vec<_>>().join(", "));
            let list = list.map_or_else(String::new, |list| format!(" One of: {list}."));
            out.push_str(&format!("| `{}` | {}{list} |\n", words(&field["name"]), words(&field["description"])));
        }
    }
}

/// The inputs that are a row each: those of practice and factors, not the gases of a carrier.
fn single() -> impl Iterator<Item = &'static Input> {
    let stems: Vec<String> = tables().carriers.values().map(|carrier| format!("{}.co2e", carrier.stem())).collect();
    let of_a_carrier = move |input: &Input| stems.iter().any(|stem| input.id.starts_with(stem));
    tables().inputs.iter().map(AsRef::as_ref).filter(move |input| !of_a_carrier(input))
}

/// The published values.
fn values() -> &'static [Published] {
    static VALUES: std::sync::OnceLock<Vec<Published>> = std::sync::OnceLock::new();
    VALUES.get_or_init(|| published(tables()).unwrap_or_else(|faults| panic!("{}", faults[0])))
}

/// What is cited: the key of the source, the grade, and whether it is a row of practice, of factors, a carrier, a sign code, a solvent
/// or a published value.
fn cited() -> Vec<(&'static str, Grade, usize)> {
    let place = |origin| if origin == Origin::Practice { 0 } else { 1 };
    let inputs = single().map(|input| (input.source.as_str(), input.grade, place(input.origin)));
    let carriers = tables().carriers.values().map(|carrier| (carrier.source.as_str(), carrier.grade, 2));
    let signs = tables().signs.values().map(|sign| (sign.source.as_str(), sign.grade, 3));
    let solvents = tables().solvents.values().map(|solvent| (solvent.source.as_str(), solvent.grade, 4));
    let published = values().iter().map(|one| (one.source.as_str(), one.grade, 5));
    inputs.chain(carriers).chain(signs).chain(solvents).chain(published).collect()
}

/// What solvents cite beside the source of their carbon: who gives the density, and who found them where signs are made.
fn cited_beside() -> impl Iterator<Item = &'static str> {
    let solvents = tables().solvents.values();
    let keys = solvents.flat_map(|solvent| solvent.density.iter().map(|(_, source, _)| source).chain([&solvent.found_by]));
    keys.map(String::as_str).filter(|key| !key.is_empty())
}

/// Rows by grade, and by kind of source and grade.
fn grades(out: &mut String) {
    const GRADES: [Grade; 4] = [Grade::A, Grade::B, Grade::C, Grade::D];
    let cited = cited();
    out.push_str(
        "\n## How good the evidence is\n\n| grade | means | practice | factors | carriers | sign codes | solvents | published values |\n\
         | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: |\n",
    );
    for grade in GRADES {
        let rows = |table| cited.iter().filter(|(_, its, place)| (*its, *place) == (grade, table)).count();
        let counts: Vec<String> = (0..6).map(|table| rows(table).to_string()).collect();
        out.push_str(&format!("| {grade} | {} | {} |\n", grade.words(), counts.join(" | ")));
    }
    let mut kinds: BTreeMap<&str, [usize; 4]> = BTreeMap::new();
    for (key, grade, _) in &cited {
        let place = GRADES.iter().position(|other| other == grade).expect("a grade of the tables");
        kinds.entry(&source(key).kind).or_default()[place] += 1;
    }
    out.push_str("\n| kind of source | A | B | C | D |\n| --- | ---: | ---: | ---: | ---: |\n");
    for (kind, [a, b, c, d]) in kinds {
        out.push_str(&format!("| {kind} | {a} | {b} | {c} | {d} |\n"));
    }
}

fn source(key: &str) -> &'static Source {
    tables().sources.get(key).unwrap_or_else(|| panic!("no source `{key}`"))
}

/// Each source: title, publisher, year, how it was seen, licence, credit, and how many rows cite it.
fn sources(out: &mut String) {
    out.push_str("\n## Sources\n\nWhat is asked for when these numbers are shown elsewhere stands under *licence and credit*.\n");
    out.push_str("`faceload sources KEY` lists the rows that cite one.\n\n");
    out.push_str("| key | source | seen | licence and credit | rows |\n| --- | --- | --- | --- | ---: |\n");
    let keys: Vec<&str> = cited().into_iter().map(|(key, ..)| key).chain(cited_beside()).collect();
    for source in tables().sources.values() {
        let rows = keys.iter().filter(|key| **key == source.key).count();
        let named = format!("{} ({}, {}; {})", source.title, source.publisher, source.year, source.locator);
        let licence = match source.asks_for_credit() {
            Some(licence) if !licence.text.is_empty() => format!("[{}]({}), asks for credit", source.licence, licence.text),
            Some(_) => format!("{}, asks for credit", source.licence),
            None => source.licence.clone(),
        };
        let credit = if source.attribution.is_empty() { String::new() } else { format!(": {}", source.attribution) };
        out.push_str(&format!("| `{}` | {named} | {} | {licence}{credit} | {rows} |\n", source.key, source.seen.word()));
    }
}

fn folder() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("factors")
}

#[test]
fn the_page_of_the_tables_is_of_todays_tables() {
    let path = folder().join("README.md");
    let now = page();
    if std::env::var_os("FACELOAD_BLESS").is_some_and(|value| value == "1") {
        std::fs::write(&path, now).expect("factors/README.md can be written");
        return;
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    let differs = now.lines().zip(kept.lines()).find(|(now, kept)| now != kept);
    assert!(kept == now, "factors/README.md is stale; run `cargo xtask tables`; the first line that differs: {differs:?}");
}

#[test]
fn the_page_counts_every_row_once_and_names_every_source() {
    let page = page();
    let sum = |heading: &str| -> usize {
        let table = page.split(heading).nth(1).unwrap_or_else(|| panic!("no `{heading}`"));
        let rows = table.lines().skip_while(|line| !line.starts_with("| ---")).skip(1).take_while(|line| line.starts_with('|'));
        rows.flat_map(|row| row.split('|')).filter_map(|cell| cell.trim().parse::<usize>().ok()).sum()
    };
    let rows = |file: &str| std::fs::read_to_string(folder().join(file)).expect("a table").lines().count() - 1;
    let all =
        ["practice.csv", "factors.csv", "carriers.csv", "sign-codes.csv", "solvents.csv", "published.csv"].map(rows).into_iter().sum();
    assert_eq!((sum("| grade | means"), sum("| kind of source"), sum("| key | source")), (all, all, all + cited_beside().count()));
    for source in tables().sources.values() {
        assert!(page.contains(&format!("| `{}` | {} (", source.key, source.title)), "{} is not on it", source.key);
        assert!(!source.title.contains('|') && !source.attribution.contains('|'), "{}: a bar would end its cell", source.key);
        assert!(source.asks_for_credit().is_none_or(|_| page.contains(&format!(", asks for credit: {}", source.attribution))));
    }
}
