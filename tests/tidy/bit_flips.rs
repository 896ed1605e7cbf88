//! One bit of one table flipped, ten thousand times: nobody's result rests on such a table without being told.
//!
//! The flipped table is given as a folder of own tables. It must be refused with the line, or be no text at all,
//! or the row must be named in every result; only a source row, which loads nothing, may show by the fingerprint
//! of the tables alone. The fingerprint is of cells, so a table may be written otherwise and keep it.

use faceload_core::factors::{FILES, Tables, Texts};

use super::refused_tables::{cells, table};
use crate::shop::tables;

/// How many flips.
const TRIALS: usize = 10_000;

/// Every so many flips the whole table is given, and read as a built-in one too; else the lines about the flip, for speed.
const WHOLE: usize = 20;

/// Columns that hold numbers.
const NUMBERS: [&str; 18] = [
    "default",
    "value",
    "low",
    "high",
    "co2",
    "ch4",
    "n2o",
    "co2e",
    "range",
    "trace_range",
    "height_over_width",
    "corner_over_width",
    "cut_length",
    "measured_width",
    "characters",
    "molar_mass",
    "carbon_share",
    "density",
];

/// Numbers by chance, the same every time: splitmix64, by Steele, Lea and Flood (2014).
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((mixed ^ (mixed >> 31)) % end as u64) as usize
    }
}

/// The key of the row and the column that a byte stands in; nothing for the first line, commas and line ends.
fn cell_at(text: &str, at: usize) -> Option<(String, String)> {
    let start = text.as_bytes()[..at].iter().rposition(|byte| *byte == b'\n')? + 1;
    let line = text[start..].lines().next()?;
    let columns = cells(text.lines().next()?);
    let inside = at - start;
    let mut end = 0;
    for (column, cell) in columns.into_iter().zip(cells(line)) {
        let from = end;
        end = from + cell.len();
        if (from..end).contains(&inside) {
            return Some((cells(line)[0].clone(), column));
        }
        end += 1;
    }
    None
}

/// The first line, and those from one before to two after the byte's own; and where the byte stands in them.
fn about(text: &str, at: usize) -> (String, usize) {
    let lines: Vec<&str> = text.split_inclusive('\n').collect();
    let own = text.as_bytes()[..at].iter().filter(|byte| **byte == b'\n').count();
    let first = own.saturating_sub(1).max(1);
    let skipped: usize = lines[1..first].iter().map(|line| line.len()).sum();
    (lines[0].to_owned() + &lines[first..(own + 3).min(lines.len())].concat(), at - skipped)
}

/// Whether the rows are the gases of one carrier, and of that one, where its name was not hit.
fn of_one_carrier(rows: &[String], cell: Option<&(String, String)>) -> bool {
    let stems: Vec<&str> = rows.iter().filter_map(|row| row.rsplit_once(".co2e").map(|(stem, _)| stem)).collect();
    let gases = if rows.len() == 1 { rows[0].ends_with(".co2e") } else { rows.len() == 3 };
    let stem = |key: &str| key.split_once('.').map_or_else(String::new, |(carried, id)| format!("{carried}.{}", id.replace('.', "-")));
    let same = stems.len() == rows.len() && stems.windows(2).all(|pair| pair[0] == pair[1]);
    gases && same && cell.is_some_and(|(key, column)| column == "id" || stems[0] == stem(key))
}

/// What became of a flip.
#[derive(Debug, PartialEq)]
enum Became {
    /// The bytes are no text, so the file is refused as it is opened.
    NoText,
    /// Refused, with the line.
    Refused,
    /// The results name these rows.
    Named(Vec<String>),
    /// Only the fingerprint differs.
    Marked,
    /// Nothing says so.
    Unseen,
}

/// What becomes of a table given as an own one.
fn became(file: &str, bytes: Vec<u8>) -> Became {
    let Ok(text) = String::from_utf8(bytes) else { return Became::NoText };
    let mut own = Texts::default();
    *table(&mut own, file) = text;
    match tables().with_own("own", &own) {
        Err(faults) => {
            let placed = faults.iter().all(|fault| fault.line > 0 && fault.file == file && fault.folder == "own");
            assert!(placed && !faults.is_empty(), "refused without a place: {faults:?}");
            Became::Refused
        }
        Ok(read) if !read.own.is_empty() => Became::Named(read.own),
        Ok(read) if read.fingerprint != tables().fingerprint => Became::Marked,
        Ok(_) => Became::Unseen,
    }
}

#[test]
fn a_table_as_it_is_changes_nothing() {
    for file in FILES {
        let mut texts = Texts::embedded();
        assert_eq!(became(file, table(&mut texts, file).clone().into_bytes()), Became::Unseen, "{file}");
    }
}

#[test]
fn no_flipped_bit_goes_unseen() {
    let mut texts = Texts::embedded();
    let files = FILES.map(|file| (file, std::mem::take(table(&mut texts, file))));
    let all: usize = files.iter().map(|(_, text)| text.len()).sum();
    let mut chance = Chance(20_261_125);
    let (mut refused, mut named, mut marked, mut numbers) = (0, 0, 0, 0);
    for trial in 0..TRIALS {
        let mut at = chance.below(all);
        let place = files
            .iter()
            .position(|(_, text)| {
                at < text.len() || {
                    at -= text.len();
                    false
                }
            })
            .expect("a byte of a table");
        let (file, text) = &files[place];
        let whole = trial % WHOLE == 0;
        let (text, at) = if whole { (text.clone(), at) } else { about(text, at) };
        let mut bytes = text.clone().into_bytes();
        bytes[at] ^= 1 << chance.below(8);
        let cell = cell_at(&text, at);
        let said = || format!("trial {trial}, {file}, byte {at}, {cell:?}: {:?} to {:?}", text.as_bytes()[at], bytes[at]);
        if whole && let Ok(text) = String::from_utf8(bytes.clone()) {
            let mut texts = Texts::embedded();
            *table(&mut texts, file) = text;
            assert!(Tables::read(&texts).map_or(true, |read| read.fingerprint != tables().fingerprint), "{}", said());
        }
        let became = became(file, bytes.clone());
        let is_number = cell.as_ref().is_some_and(|(_, column)| NUMBERS.contains(&column.as_str()));
        numbers += usize::from(is_number);
        match &became {
            Became::NoText | Became::Refused => refused += 1,
            Became::Named(rows) => {
                named += 1;
                // The row itself, unless its key was hit: then the results name the key that stands there now.
                let itself = match &cell {
                    _ if *file == "carriers.csv" => of_one_carrier(rows, cell.as_ref()),
                    Some((key, column)) => rows.len() == 1 && (rows[0] == *key || column == "id" || column == "code"),
                    None => rows.len() == 1 && at + 1 == text.len(),
                };
                assert!(itself, "{}: {rows:?}", said());
            }
            Became::Marked => {
                marked += 1;
                assert!(*file == "sources.csv" && !is_number, "{}", said());
            }
            Became::Unseen => panic!("{}", said()),
        }
    }
    println!("{TRIALS} flips: {refused} refused, {named} named, {marked} by the fingerprint alone; {numbers} of them in numbers");
    assert_eq!(refused + named + marked, TRIALS);
    assert!(refused > TRIALS / 10 && named > TRIALS / 10 && marked > 0 && numbers > TRIALS / 20, "{refused} {named} {marked} {numbers}");
}

#[test]
fn the_fingerprint_is_of_the_cells_and_not_of_how_they_are_written() {
    let mut texts = Texts::embedded();
    for file in FILES {
        let text = table(&mut texts, file);
        let quoted = |line: &str| {
            let cell = |cell: &String| if cell.starts_with('"') { cell.clone() } else { format!("\"{cell}\"") };
            cells(line).iter().map(cell).collect::<Vec<_>>().join(",")
        };
        let (header, rows) = text.split_once('\n').expect("rows");
        let rows: Vec<String> = rows.lines().rev().map(quoted).collect();
        *text = format!("{header}\r\n{}\r\n", rows.join("\r\n"));
    }
    let read = Tables::read(&texts).unwrap_or_else(|faults| panic!("{faults:?}"));
    assert_eq!(read.fingerprint, tables().fingerprint);
    texts.factors = texts.factors.replacen("\"lognormal\"", "\"uniform\"", 1);
    let other = Tables::read(&texts).unwrap_or_else(|faults| panic!("{faults:?}"));
    assert_ne!(other.fingerprint, tables().fingerprint);
    assert_ne!(other.fingerprint.short(), tables().fingerprint.short());
}
