//! Verifying: a record is made again from what it carries, and compared with what it says.
//!
//! This finds what was changed after it was made, or what another program or other tables make of it. It does not
//! say who made it: whoever makes a record anew from a changed order gets one that is whole in itself.

use faceload_core::analysis::Draws;
use faceload_core::factors::Tables;
use serde_json::Value;

use super::embedded::taken_from;
use super::export::files;
use super::made_from::{self, MadeFrom, drawn};
use super::manifest::Manifest;
use super::record::{RECORD, Record, SCHEMA_VERSION};

/// What is given to verify.
pub enum Given<'a> {
    /// The text of a record.
    Record(&'a str),
    /// A page that carries one.
    Page(&'a str),
    /// A folder of data: its files by name.
    Folder(&'a dyn Fn(&str) -> Option<Vec<u8>>),
}

/// A record made again.
pub struct Again {
    /// What it was made from.
    pub made_from: MadeFrom,
    /// Its draws.
    pub draws: Draws,
    /// The record.
    pub record: Record,
}

/// Most differences that are told one by one.
const MOST: usize = 20;

/// Verifies a file or folder of that name. `page` makes the page of a record again, where it can; `go_on` hears the share
/// of draws that is made. What is the same in a sentence, else what differs, line by line.
pub fn verify(
    name: &str,
    given: &Given<'_>,
    built_in: &Tables,
    page: &dyn Fn(&Again) -> Option<String>,
    go_on: impl FnMut(f64) -> bool,
) -> Result<String, Vec<String>> {
    let fault = |came: &str, wanted: &str, help: &str| vec![format!("{name}: {came} where {wanted} was wanted; {help}")];
    let text = match given {
        Given::Record(text) => Some((*text).to_owned()),
        Given::Page(text) => taken_from(text).map(str::to_owned),
        Given::Folder(file) => file(RECORD).and_then(|bytes| String::from_utf8(bytes).ok()),
    };
    let help = "give a report, a folder of data, or its data.json";
    let text = text.ok_or_else(|| fault("no data, or more than one block of it,", "one record of a result", help))?;
    let stated: Value = serde_json::from_str(&text)
        .map_err(|error| fault(&format!("text that is not JSON ({error})"), "the record of a result", "take the file as it was made"))?;
    if stated.get("alternatives").is_some() && stated.get("made_from").is_none() {
        return Err(fault("a result without its order", "a record that carries what it was made from", help));
    }
    if stated.get("made_from").is_none() {
        return Err(fault("another JSON text", "the record of a result", help));
    }
    if stated["schema_version"] != SCHEMA_VERSION {
        let came = format!("schema_version {}", stated["schema_version"]);
        return Err(fault(&came, &format!("schema_version {SCHEMA_VERSION}"), "verify it with the program that made it"));
    }
    let mut said = versions(&stated, built_in);
    let again = match again(&stated, built_in, go_on) {
        Ok(again) => again,
        Err(faults) => {
            said.insert(0, format!("{name}: cannot be made again from what it carries"));
            said.extend(faults);
            return Err(said);
        }
    };
    let mut found = Vec::new();
    differ(&stated, &again.record.tree, "", &mut found);
    let now = again.record.json();
    if found.is_empty() {
        let now = if matches!(given, Given::Page(_)) { now.replace('<', "\\u003c") } else { now };
        found.extend(other_bytes(if matches!(given, Given::Page(_)) { "its data" } else { RECORD }, &text, &now));
    }
    let mut compared = "its data";
    match given {
        Given::Record(_) => {}
        Given::Folder(file) => {
            compared = "every file of it";
            for (path, bytes) in files(&again.record).iter().filter(|(path, _)| path != RECORD) {
                match file(path) {
                    None => found.push(format!("{path}: not there where a file of the data was wanted")),
                    Some(given) => found.extend(other_bytes(path, &String::from_utf8_lossy(&given), &String::from_utf8_lossy(bytes))),
                }
            }
        }
        Given::Page(given) => match page(&again) {
            Some(page) => {
                compared = "the whole page";
                found.extend(other_bytes("the page", given, &page));
            }
            None => compared = "its data (the page around them was not compared)",
        },
    }
    if found.is_empty() && said.is_empty() {
        return Ok(format!("{name}: the same. Made again, {compared} came out as it stands: {}.\n", again.record.manifest.short()));
    }
    let more = found.len().saturating_sub(MOST);
    let count = crate::words::count(found.len() as u64, "difference");
    if stated["sha_256"]["made_from"] != again.record.tree["sha_256"]["made_from"] {
        said.push("what it was made from does not have the hash that it states: one of the two was changed, and numbers follow what it carries now".to_owned());
    }
    said.insert(0, format!("{name}: {count} between what it says and what is made again from it"));
    said.extend(found.into_iter().take(MOST));
    if more > 0 {
        said.push(format!("and {more} more"));
    }
    Err(said)
}

/// Makes a record again.
fn again(stated: &Value, built_in: &Tables, mut go_on: impl FnMut(f64) -> bool) -> Result<Again, Vec<String>> {
    let made_from = made_from::read(&stated["made_from"], built_in)?;
    let draws =
        drawn(&made_from.comparison, made_from.looked, made_from.settings, |done| go_on(done as f64 / made_from.settings.number as f64));
    let record = Record::of(&made_from.tables, &made_from.comparison, &draws, made_from.looked);
    Ok(Again { made_from, draws, record })
}

/// The program and the tables that it was made with, where they are not those of now.
fn versions(stated: &Value, built_in: &Tables) -> Vec<String> {
    let mut said = Vec::new();
    let program = &stated["program"];
    if program["name"] != Manifest::PROGRAM || program["version"] != Manifest::VERSION {
        said.push(format!(
            "made by {} {}, this is {} {}: numbers may differ for that reason; verify it with that version",
            shown(&program["name"]),
            shown(&program["version"]),
            Manifest::PROGRAM,
            Manifest::VERSION
        ));
    }
    let tables = &stated["sha_256"]["tables"];
    let own = stated["made_from"]["own_tables"].as_object().is_some_and(|own| !own.is_empty());
    if !own && *tables != built_in.fingerprint.to_string() {
        said.push(format!("made with tables {}, this program has {}: it rests on other rows", shown(tables), built_in.fingerprint));
    }
    said
}

/// A value as a message shows it.
fn shown(value: &Value) -> String {
    let text = value.as_str().map_or_else(|| value.to_string(), str::to_owned);
    let short: String = text.chars().take(80).map(|c| if c.is_control() { ' ' } else { c }).collect();
    if short.len() < text.len() { format!("`{short}\u{2026}`") } else { format!("`{short}`") }
}

/// Every leaf in which two trees differ, with its path.
fn differ(stated: &Value, now: &Value, path: &str, found: &mut Vec<String>) {
    let below = |key: &str| if path.is_empty() { key.to_owned() } else { format!("{path}.{key}") };
    match (stated, now) {
        (Value::Object(stated), Value::Object(now)) => {
            for (key, value) in now {
                match stated.get(key) {
                    Some(stated) => differ(stated, value, &below(key), found),
                    None => found.push(format!("{}: nothing where {} is made again", below(key), shown(value))),
                }
            }
            let more = stated.iter().filter(|(key, _)| !now.contains_key(*key));
            found.extend(more.map(|(key, value)| format!("{}: {} where nothing is made again", below(key), shown(value))));
        }
        (Value::Array(stated), Value::Array(now)) => {
            for (at, pair) in stated.iter().zip(now).enumerate() {
                differ(pair.0, pair.1, &format!("{path}[{}]", at + 1), found);
            }
            if stated.len() != now.len() {
                found.push(format!("{path}: {} rows where {} are made again", stated.len(), now.len()));
            }
        }
        (stated, now) if stated == now => {}
        (stated, now) => found.push(format!("{path}: {} where {} is made again", shown(stated), shown(now))),
    }
}

/// The first line in which two texts differ.
fn other_bytes(what: &str, stated: &str, now: &str) -> Option<String> {
    if stated == now {
        return None;
    }
    let mut lines = (1_usize..).zip(stated.split('\n').zip(now.split('\n')));
    let differing = lines.find(|(_, (stated, now))| stated != now);
    Some(match differing {
        Some((line, (stated, now))) => format!("{what}, line {line}: {} where {} is made again", part(stated, now), part(now, stated)),
        None => format!("{what}: {} lines where {} are made again", stated.split('\n').count(), now.split('\n').count()),
    })
}

/// A line from a little before where it leaves the other.
fn part(line: &str, other: &str) -> String {
    let same = line.chars().zip(other.chars()).take_while(|(a, b)| a == b).count();
    let cut: String = line.chars().skip(same.saturating_sub(20)).collect();
    shown(&Value::String(cut))
}
