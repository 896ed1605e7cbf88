//! A table at fault is refused, with file, line, column, what came, what was wanted and the way out.

use faceload_core::factors::{FILES, TableFault, Tables, Texts, published};

use super::none;

/// The faults of the built-in tables, with one of them changed.
fn faults(change: impl FnOnce(&mut Texts)) -> Vec<TableFault> {
    let mut texts = Texts::embedded();
    change(&mut texts);
    Tables::read(&texts).and_then(|tables| published(&tables)).err().unwrap_or_default()
}

/// The cells of a line, quoted ones as they are.
pub(super) fn cells(line: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => {
                cells.push(String::new());
                continue;
            }
            _ => {}
        }
        cells.last_mut().expect("never empty").push(c);
    }
    cells
}

/// A table with the cell in that line (from 1) and column written anew.
fn written(text: &str, line: usize, column: &str, cell: &str) -> String {
    let place = cells(text.lines().next().unwrap_or_default())
        .iter()
        .position(|name| name == column)
        .unwrap_or_else(|| panic!("no column `{column}`"));
    let lines = text.lines().enumerate().map(|(index, old)| {
        let mut cells = cells(old);
        if index + 1 == line {
            cells[place] = cell.to_owned();
        }
        cells.join(",")
    });
    lines.collect::<Vec<_>>().join("\n") + "\n"
}

/// Where a table stands among the texts.
pub(super) fn table<'a>(texts: &'a mut Texts, file: &str) -> &'a mut String {
    match file {
        "practice.csv" => &mut texts.practice,
        "factors.csv" => &mut texts.factors,
        "carriers.csv" => &mut texts.carriers,
        "sources.csv" => &mut texts.sources,
        "solvents.csv" => &mut texts.solvents,
        _ => &mut texts.signs,
    }
}

#[test]
fn writing_a_table_anew_without_a_change_changes_nothing() {
    let mut texts = Texts::embedded();
    for file in FILES {
        let text = table(&mut texts, file);
        let lines = cells(text.lines().nth(1).unwrap_or_default());
        assert_eq!(written(text, 2, &cells(text.lines().next().unwrap_or_default())[0], &lines[0]), *text, "{file}");
    }
}

#[test]
fn a_broken_cell_is_refused_in_its_line_and_column() {
    let mut missed = Vec::new();
    for (file, column, cell) in [
        ("practice.csv", "id", ""),
        ("practice.csv", "item", ""),
        ("practice.csv", "unit", "furlong"),
        ("practice.csv", "default", "many"),
        ("practice.csv", "default", "nan"),
        ("practice.csv", "default", "1e400"),
        ("practice.csv", "low", ""),
        ("practice.csv", "high", "1 000 x"),
        ("practice.csv", "spread", "normal"),
        ("practice.csv", "scope", "everybody"),
        ("practice.csv", "source", ""),
        ("practice.csv", "source", "hearsay"),
        ("practice.csv", "place", ""),
        ("practice.csv", "grade", "E"),
        ("practice.csv", "grade", "own"),
        ("factors.csv", "id", ""),
        ("factors.csv", "item", ""),
        ("factors.csv", "value", "inf"),
        ("factors.csv", "value", "-"),
        ("factors.csv", "unit", "kg{ink}"),
        ("factors.csv", "low", "x"),
        ("factors.csv", "high", "x"),
        ("factors.csv", "spread", ""),
        ("factors.csv", "source", "hearsay"),
        ("factors.csv", "place", ""),
        ("factors.csv", "grade", ""),
        ("carriers.csv", "id", ""),
        ("carriers.csv", "id", "water.us"),
        ("carriers.csv", "id", "electricity.US"),
        ("carriers.csv", "name", ""),
        ("carriers.csv", "country", ""),
        ("carriers.csv", "year", ""),
        ("carriers.csv", "basis", "half"),
        ("carriers.csv", "co2e", "much"),
        ("carriers.csv", "co2e", "-1"),
        ("carriers.csv", "co2", "5"),
        ("carriers.csv", "unit", "kg{gas}/km"),
        ("carriers.csv", "unit", "kg{CO2}/kW.h"),
        ("carriers.csv", "range", "0.5"),
        ("carriers.csv", "loss", ""),
        ("carriers.csv", "loss", "grid-loss.nowhere"),
        ("carriers.csv", "upstream", "upstream.nowhere"),
        ("carriers.csv", "energy", ""),
        ("carriers.csv", "energy", "primary.nowhere"),
        ("carriers.csv", "source", "hearsay"),
        ("carriers.csv", "place", ""),
        ("carriers.csv", "grade", "A"),
        ("sources.csv", "title", ""),
        ("sources.csv", "kind", "rumour"),
        ("sources.csv", "seen", "heard"),
        ("sources.csv", "key", ""),
        ("solvents.csv", "id", ""),
        ("solvents.csv", "formula", ""),
        ("solvents.csv", "molar_mass", "heavy"),
        ("solvents.csv", "co2e", "4"),
        ("solvents.csv", "source", "hearsay"),
        ("solvents.csv", "grade", "F"),
        ("solvents.csv", "grade", "A"),
        ("solvents.csv", "density", "-1"),
        ("solvents.csv", "density_grade", "A"),
        ("solvents.csv", "density_source", "hearsay"),
        ("solvents.csv", "found_by", "hearsay"),
        ("sign-codes.csv", "code", ""),
        ("sign-codes.csv", "item", ""),
        ("sign-codes.csv", "shape", ""),
        ("sign-codes.csv", "shape", "heptagon"),
        ("sign-codes.csv", "height_over_width", "tall"),
        ("sign-codes.csv", "corner_over_width", ""),
        ("sign-codes.csv", "colours", "red 76.2"),
        ("sign-codes.csv", "colours", "ruby 76.2; white 23.8"),
        ("sign-codes.csv", "rim", ""),
        ("sign-codes.csv", "rim", "ruby"),
        ("sign-codes.csv", "cut_length", "long"),
        ("sign-codes.csv", "characters", "few"),
        ("sign-codes.csv", "legend", "many"),
        ("sign-codes.csv", "source", "hearsay"),
        ("sign-codes.csv", "place", ""),
        ("sign-codes.csv", "grade", "F"),
    ] {
        let found = faults(|texts| {
            let text = table(texts, file);
            *text = written(text, 3, column, cell);
        });
        let here = |fault: &&TableFault| fault.file == file && fault.line == 3 && fault.column == column;
        match found.iter().find(here) {
            Some(fault) => assert!(fault.came == cell && !fault.wanted.is_empty() && !fault.help.is_empty(), "{fault}"),
            None => missed.push(format!(
                "{file}, line 3, `{column}` = `{cell}`: {}",
                found.iter().map(ToString::to_string).collect::<Vec<_>>().join(" | ")
            )),
        }
    }
    none(missed);
}

#[test]
fn the_message_says_where_what_came_what_was_wanted_and_the_way_out() {
    let found = faults(|texts| texts.practice = written(&texts.practice, 3, "default", "many"));
    assert_eq!(
        found.first().map(ToString::to_string).as_deref(),
        Some("factors/practice.csv, line 3, column `default`: `many` where a number was wanted; write digits with a point, without a unit")
    );
}

#[test]
fn what_does_not_hold_together_is_refused() {
    let refused = |change: &dyn Fn(&mut Texts), column: &str, came: &str| {
        let found = faults(|texts| change(texts));
        assert!(found.iter().any(|fault| fault.column == column && fault.came.contains(came)), "{column}, {came}: {found:?}");
    };
    // An id that stands twice, in two tables.
    refused(&|texts| texts.factors = written(&texts.factors, 2, "id", "air.density"), "id", "air.density");
    // A range that does not hold its value; a lognormal one that reaches 0; a choice that varies.
    refused(&|texts| texts.practice = written(&texts.practice, 2, "low", "600"), "low", "600");
    refused(&|texts| texts.practice = written(&texts.practice, 2, "low", "0"), "low", "0");
    refused(&|texts| texts.practice = written(&texts.practice, 2, "scope", "choice"), "spread", "lognormal");
    // An area that stands twice, and two whose inputs would have one id.
    let area = |texts: &Texts| texts.carriers.lines().nth(1).unwrap_or_default().to_owned();
    refused(&|texts| texts.carriers += &format!("{}\n", area(texts)), "id", "electricity.");
    refused(
        &|texts| texts.carriers += &format!("{}\n", area(texts).replacen("electricity.", "electricity.us.rfcw,", 1)),
        "all",
        "a row of another",
    );
    let twin = |texts: &Texts| texts.carriers.lines().find(|line| line.starts_with("electricity.us.rfcw,")).unwrap_or_default().to_owned();
    refused(&|texts| texts.carriers += &format!("{}\n", twin(texts).replacen("us.rfcw", "us-rfcw", 1)), "id", "us-rfcw");
    // A fuel that is not direct; a fuel with a grid loss.
    let fuel = |texts: &Texts| texts.carriers.lines().position(|line| line.starts_with("heat.")).unwrap_or_default() + 1;
    refused(&|texts| texts.carriers = written(&texts.carriers, fuel(texts), "basis", "life-cycle"), "basis", "life-cycle");
    refused(&|texts| texts.carriers = written(&texts.carriers, fuel(texts), "loss", "grid-loss.us-2023"), "loss", "grid-loss");
    // A grade better than its source allows; a density without a source; a source that nobody cites.
    refused(&|texts| texts.solvents = written(&texts.solvents, 2, "density_grade", "A"), "density_grade", "A");
    refused(&|texts| texts.solvents = written(&texts.solvents, 2, "density_source", "hearsay"), "density_source", "hearsay");
    refused(&|texts| texts.solvents = written(&texts.solvents, 2, "density_source", ""), "density_source", "");
    refused(&|texts| texts.practice = written(&texts.practice, 2, "grade", "A"), "grade", "A");
    refused(&|texts| texts.sources.push_str("unread,A book,,,trade,document,,,shelf\n"), "key", "unread");
    // Columns that are missing, and a row of another length.
    refused(&|texts| texts.practice = texts.practice.replacen("id,item", "item,id", 1), "all", "item,id");
    refused(&|texts| texts.factors.push_str("one,two\n"), "all", "a row of another length");
}

#[test]
fn a_sign_code_or_a_source_that_stands_twice_is_refused() {
    // The second row would silently take the place of the first.
    let twice = |text: &mut String| {
        let row = text.lines().nth(1).unwrap_or_default().to_owned();
        text.push_str(&row);
        text.push('\n');
    };
    assert!(faults(|texts| twice(&mut texts.signs)).iter().any(|fault| fault.column == "code"), "a code twice was taken");
    assert!(faults(|texts| twice(&mut texts.sources)).iter().any(|fault| fault.column == "key"), "a key twice was taken");
}

#[test]
fn a_sign_of_no_size_or_of_half_a_character_is_refused() {
    for (column, cell) in [
        ("height_over_width", "0"),
        ("height_over_width", "-1"),
        ("corner_over_width", "-0.1"),
        ("cut_length", "-2"),
        ("characters", "2.5"),
        ("characters", "-2"),
    ] {
        let found = faults(|texts| texts.signs = written(&texts.signs, 2, column, cell));
        assert!(found.iter().any(|fault| fault.column == column), "`{column}` of {cell} was taken");
    }
}

#[test]
fn a_number_below_nothing_is_refused() {
    let found = faults(|texts| {
        texts.practice = written(&written(&texts.practice, 3, "default", "-1"), 3, "low", "-2");
        texts.practice = written(&texts.practice, 3, "spread", "triangular");
    });
    assert!(found.iter().any(|fault| fault.line == 3), "a fan of -1 kW per m3/s was taken");
}

#[test]
fn a_cell_that_runs_over_its_neighbours_is_refused() {
    // A quote lost or won lets one cell swallow a comma, or rows: what stands in it then is no plain text.
    let from = ",\"primary energy of";
    for to in ["<\"primary energy of", ",\"\nprimary energy of", ",\"\u{1b}primary energy of", ",\"\"\"primary energy of"] {
        assert!(Texts::embedded().factors.contains(from));
        let found = faults(|texts| texts.factors = texts.factors.replacen(from, to, 1));
        assert!(!found.is_empty() && found.iter().all(|fault| fault.line > 0), "{to}: {found:?}");
    }
}

#[test]
fn a_name_that_is_none_is_refused() {
    let refused = |change: &dyn Fn(&mut Texts), column: &str| {
        let found = faults(|texts| change(texts));
        assert!(found.iter().any(|fault| fault.column == column && fault.help == "rename the row"), "{column}: {found:?}");
    };
    refused(&|texts| texts.practice = written(&texts.practice, 2, "id", "air copy"), "id");
    refused(&|texts| texts.factors = written(&texts.factors, 2, "id", "Electricity"), "id");
    refused(&|texts| texts.sources = written(&texts.sources, 2, "key", "air.properties"), "key");
    refused(&|texts| texts.signs = written(&texts.signs, 2, "code", "D 1"), "code");
}

#[test]
fn a_source_without_the_credit_its_licence_asks_for_is_refused() {
    let line = |texts: &Texts, licence: &str| texts.sources.lines().position(|line| line.contains(licence)).expect("a source") + 1;
    for licence in ["Open Government Licence", ",MIT,"] {
        let found = faults(|texts| texts.sources = written(&texts.sources, line(texts, licence), "attribution", " "));
        assert!(matches!(&found[..], [fault] if fault.column == "attribution"), "{licence}: {found:?}");
    }
    for licence in ["CC BY 4.0", "ODC-By 1.0"] {
        let found = faults(|texts| {
            let line = line(texts, "public domain");
            texts.sources = written(&written(&texts.sources, line, "attribution", ""), line, "licence", licence);
        });
        assert!(matches!(&found[..], [fault] if fault.column == "attribution"), "{licence}: {found:?}");
    }
    // Public domain and facts alone ask for none.
    assert!(faults(|texts| texts.sources = written(&texts.sources, line(texts, "public domain"), "attribution", "")).is_empty());
}

#[test]
fn colours_that_cannot_be_read_are_refused_and_not_left_out() {
    for colours in ["green 81.6; white 18.4; red", "green 81.2; white 18.4; red 0&4", "green -1; white 101", "green; white 100"] {
        let found = faults(|texts| texts.signs = written(&texts.signs, 2, "colours", colours));
        assert!(found.iter().any(|fault| fault.column == "colours"), "{colours}: {found:?}");
    }
    let found = faults(|texts| texts.signs = written(&texts.signs, 2, "measured_width", "1"));
    assert!(found.iter().any(|fault| fault.column == "cut_length"), "{found:?}");
}

#[test]
fn a_sign_of_a_better_grade_than_its_source_is_refused() {
    let found = faults(|texts| texts.signs = written(&texts.signs, 2, "grade", "A"));
    assert!(found.iter().any(|fault| fault.column == "grade" && fault.wanted == "B or lower"), "{found:?}");
}

#[test]
fn every_fault_is_named_at_once() {
    let found = faults(|texts| {
        texts.practice = written(&written(&texts.practice, 3, "default", "many"), 5, "grade", "E");
        texts.signs = written(&texts.signs, 2, "rim", "");
    });
    assert!(found.len() >= 3, "{found:?}");
}
