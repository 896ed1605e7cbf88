//! The shapes of what crosses from the program to the page, as TypeScript declarations for the check of the scripts:
//! `tests/page/types/program.d.ts`, written from the structs of `crate/report` and `crate/wasm` that serde writes or reads.

use crate::{Chore, Outcome, page, place, program};
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::PathBuf;

/// The chore of this file.
pub const CHORE: Chore = Chore { name: "types", help: "write anew the types of what the page gets from the program", run };

const HEAD: &str = "// Written by `cargo xtask types` from the structs of crate/report and crate/wasm.\n";

fn file() -> PathBuf {
    place::root().join("tests/page/types/program.d.ts")
}

fn run() -> Outcome {
    page::write(&file(), declarations()?.as_bytes())
}

/// Checks that the declarations are not stale, and the scripts of the page against them.
pub fn check() -> Outcome {
    if page::read(&file())? != declarations()?.into_bytes() {
        return Err("tests/page/types/program.d.ts is stale: `cargo xtask types` writes it anew".into());
    }
    program::run(&mut program::program("node", &["tests/page/node_modules/typescript/bin/tsc", "--project", "tests/page/types"]))
}

/// A struct or an enum: its name, whether it is an enum, its body.
struct Shape<'a> {
    name: &'a str,
    is_enum: bool,
    body: &'a str,
}

fn declarations() -> Result<String, String> {
    let mut sources = BTreeMap::new();
    for folder in ["crate/report", "crate/wasm"] {
        let entries = std::fs::read_dir(place::root().join(folder)).map_err(|error| format!("{folder}: {error}"))?;
        for path in
            entries.filter_map(|entry| Some(entry.ok()?.path())).filter(|path| path.extension().is_some_and(|ending| ending == "rs"))
        {
            let name = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
            let text = String::from_utf8(page::read(&path)?).map_err(|_| format!("{}: not UTF-8", place::shown(&path)))?;
            sources.insert(name, text);
        }
    }
    Ok(written(&sources))
}

/// The shapes of every module, each module a namespace.
fn written(sources: &BTreeMap<String, String>) -> String {
    let modules: BTreeMap<&str, Vec<Shape>> =
        sources.iter().map(|(name, text)| (name.as_str(), shapes(text))).filter(|(_, shapes)| !shapes.is_empty()).collect();
    let mut out = HEAD.to_owned();
    for (module, shapes) in &modules {
        // A name of the same file, else of the one other that has it.
        let named = |name: &str| {
            let holds = |shapes: &Vec<Shape>| shapes.iter().any(|shape| shape.name == name);
            let home = if holds(shapes) { Some(module) } else { modules.iter().find(|(_, other)| holds(other)).map(|(home, _)| home) };
            home.map_or_else(|| "unknown".to_owned(), |home| format!("{home}.{name}"))
        };
        let _ = writeln!(out, "\ndeclare namespace {module} {{");
        for shape in shapes {
            if shape.is_enum {
                let _ = writeln!(out, "  type {} = {};", shape.name, variants(shape.body, &named).join(" | "));
            } else {
                let _ = writeln!(out, "  interface {} {{", shape.name);
                for field in fields(shape.body, &named) {
                    let _ = writeln!(out, "    {field};");
                }
                out.push_str("  }\n");
            }
        }
        out.push_str("}\n");
    }
    out
}

/// The structs and untagged enums of a file that serde writes or reads.
fn shapes(text: &str) -> Vec<Shape<'_>> {
    let mut found = Vec::new();
    for (at, derive) in text.match_indices("#[derive(") {
        let rest = &text[at + derive.len()..];
        let Some((derived, after)) = rest.split_once(")]\n") else { continue };
        if !derived.contains("Serialize") && !derived.contains("Deserialize") {
            continue;
        }
        let line = after.lines().find(|line| !line.starts_with("#[")).unwrap_or_default();
        let words = line.trim_start_matches("pub ");
        let Some((kind, name)) = words.split_once(' ').filter(|(kind, _)| ["struct", "enum"].contains(kind)) else { continue };
        let name = name.split(['<', ' ']).next().unwrap_or_default();
        let body = after.split_once("{\n").and_then(|(_, body)| body.split_once("\n}")).map_or("", |(body, _)| body);
        found.push(Shape { name, is_enum: kind == "enum", body });
    }
    found
}

/// The fields of a struct's body as they are declared, without those that serde skips.
fn fields(body: &str, named: &dyn Fn(&str) -> String) -> Vec<String> {
    let mut found = Vec::new();
    let (mut skipped, mut optional) = (false, false);
    for line in body.lines().map(str::trim) {
        if line.starts_with("#[serde(skip)]") {
            skipped = true;
        } else if line.contains("skip_serializing_if") {
            optional = true;
        } else if let Some((name, kind)) =
            line.trim_start_matches("pub ").trim_end_matches(',').split_once(": ").filter(|_| !line.starts_with("//"))
        {
            let kind = kind.trim();
            let inner = kind.strip_prefix("Option<").and_then(|kind| kind.strip_suffix('>')).filter(|_| optional);
            if !skipped {
                found.push(format!("{name}{}: {}", if optional { "?" } else { "" }, typed(inner.unwrap_or(kind), named)));
            }
            (skipped, optional) = (false, false);
        }
    }
    found
}

/// The variants of an untagged enum: what is in them.
fn variants(body: &str, named: &dyn Fn(&str) -> String) -> Vec<String> {
    let mut found = Vec::new();
    let mut open: Option<String> = None;
    for line in body.lines().filter(|line| !line.trim().starts_with("//")) {
        if let Some(inside) = &mut open {
            if line.trim() == "}," {
                found.push(format!("{{ {} }}", fields(inside, named).join("; ")));
                open = None;
            } else {
                inside.push_str(line);
                inside.push('\n');
            }
        } else if line.trim().ends_with('{') {
            open = Some(String::new());
        } else if let Some((_, kind)) = line.trim().trim_end_matches("),").split_once('(') {
            found.push(typed(kind, named));
        }
    }
    found
}

/// A type of Rust as JSON has it.
fn typed(kind: &str, named: &dyn Fn(&str) -> String) -> String {
    let inside = |front: &str, back: &str| kind.strip_prefix(front).and_then(|kind| kind.strip_suffix(back));
    if let Some(inner) = inside("Option<", ">") {
        return format!("{} | null", typed(inner, named));
    }
    if let Some(inner) = inside("Vec<", ">") {
        let inner = typed(inner, named);
        return if inner.contains(" | ") { format!("({inner})[]") } else { format!("{inner}[]") };
    }
    if let Some((inner, _)) = inside("[", "]").and_then(|kind| kind.rsplit_once("; ")) {
        return format!("{}[]", typed(inner, named));
    }
    if let Some(inner) = inside("(", ")") {
        let parts: Vec<String> = inner.split(", ").map(|part| typed(part, named)).collect();
        return format!("[{}]", parts.join(", "));
    }
    match kind {
        "String" | "&'static str" | "&'a str" | "char" => "string".to_owned(),
        "f64" | "usize" | "u64" | "u32" | "i64" => "number".to_owned(),
        "bool" => "boolean".to_owned(),
        "Map<String, Value>" => "Record<string, unknown>".to_owned(),
        name => named(name.split('<').next().unwrap_or(name)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_struct_becomes_an_interface() {
        let text = "/// A spot.\n#[derive(Debug, Serialize)]\npub struct Spot<'a> {\n    /// Left.\n    pub x: f64,\n    #[serde(skip)]\n    share: f64,\n    \
                    #[serde(skip_serializing_if = \"Option::is_none\")]\n    pub lead: Option<Lead>,\n    points: Vec<Vec<[f64; 5]>>,\n    pair: (usize, usize),\n    cells: Vec<Cell>,\n}\n\n\
                    #[derive(Serialize)]\n#[serde(untagged)]\npub enum Cell {\n    /// Words.\n    Words(String),\n    Number {\n        /// As it is.\n        value: f64,\n        shown: String,\n    },\n}\n\n\
                    #[derive(Debug)]\nstruct Unseen {\n    inner: f64,\n}\n";
        let other = "#[derive(Serialize)]\nstruct Lead {\n    stage: Option<&'static str>,\n}\n";
        let sources = [("spot".to_owned(), text.to_owned()), ("lead".to_owned(), other.to_owned())].into();
        let wanted = "\ndeclare namespace lead {\n  interface Lead {\n    stage: string | null;\n  }\n}\n\n\
                      declare namespace spot {\n  interface Spot {\n    x: number;\n    lead?: lead.Lead;\n    points: number[][][];\n    pair: [number, number];\n    cells: spot.Cell[];\n  }\n  \
                      type Cell = string | { value: number; shown: string };\n}\n";
        assert_eq!(written(&sources).strip_prefix(HEAD), Some(wanted), "{}", written(&sources));
    }

    #[test]
    fn the_declarations_are_those_of_the_structs() {
        let kept = String::from_utf8(page::read(&file()).unwrap()).unwrap();
        assert!(kept == declarations().unwrap(), "stale: `cargo xtask types` writes it anew");
        assert!(kept.matches("interface ").count() > 20);
    }
}
