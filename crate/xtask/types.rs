//! The shapes of what crosses from the program to the page, as TypeScript declarations for the check of the scripts:
//! `tests/page/types/program.d.ts`, written from the structs of `crate/report` and `crate/wasm` that serde writes or reads.

use crate::{Chore, Outcome, page, place, program};
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::{Path, PathBuf};

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
        read_below(&place::root().join(folder), &mut sources)?;
    }
    Ok(written(&sources))
}

/// The modules of a folder and those below it; of two with one name the texts stand together, in one order.
fn read_below(folder: &Path, sources: &mut BTreeMap<String, String>) -> Outcome {
    let entries = std::fs::read_dir(folder).map_err(|error| format!("{}: {error}", place::shown(folder)))?;
    let mut paths: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() {
            read_below(&path, sources)?;
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            let text = String::from_utf8(page::read(&path)?).map_err(|_| format!("{}: not UTF-8", place::shown(&path)))?;
            sources.entry(module(&path)).or_default().push_str(&text);
        }
    }
    Ok(())
}

/// The module of a file: its name, or its folder's.
fn module(path: &Path) -> String {
    let stem = |path: &Path| path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let name = stem(path);
    if name == "mod" { path.parent().map_or(name, stem) } else { name }
}

/// The shapes of every module, each module a namespace.
fn written(sources: &BTreeMap<String, String>) -> String {
    let modules: BTreeMap<&str, Vec<Shape>> =
        sources.iter().map(|(name, text)| (name.as_str(), shapes(text))).filter(|(_, shapes)| !shapes.is_empty()).collect();
    let mut out = HEAD.to_owned();
    for (module, shapes) in &modules {
        // A name of the module that stands before it, else of the same file, else of the one other that has it.
        let named = |name: &str| {
            let (before, name) = name.rsplit_once("::").unwrap_or((module, name));
            let holds = |shapes: &Vec<Shape>| shapes.iter().any(|shape| shape.name == name);
            let first = modules.get_key_value(before).filter(|(_, shapes)| holds(shapes));
            let home = first.or_else(|| modules.iter().find(|(_, other)| holds(other))).map(|(home, _)| home);
            home.map_or_else(|| "unknown".to_owned(), |home| format!("{home}.{name}"))
        };
        let _ = writeln!(out, "\ndeclare namespace {module} {{");
        for shape in shapes {
            if shape.is_enum {
                let _ = writeln!(out, "  type {} = {};", shape.name, variants(shape.body, &named).join(" | "));
            } else {
                let (fields, flat) = fields(shape.body, &named);
                let from = if flat.is_empty() { String::new() } else { format!(" extends {}", flat.join(", ")) };
                let _ = writeln!(out, "  interface {}{from} {{", shape.name);
                for field in fields {
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

/// The fields of a struct's body as they are declared, without those that serde skips; and what is laid flat into it.
fn fields(body: &str, named: &dyn Fn(&str) -> String) -> (Vec<String>, Vec<String>) {
    let (mut found, mut laid_flat) = (Vec::new(), Vec::new());
    let (mut skipped, mut optional, mut flat) = (false, false, false);
    for line in body.lines().map(str::trim) {
        if line.starts_with("#[serde(skip)]") {
            skipped = true;
        } else if line.contains("skip_serializing_if") {
            optional = true;
        } else if line.starts_with("#[serde(flatten)]") {
            flat = true;
        } else if let Some((name, kind)) =
            line.trim_start_matches("pub ").trim_end_matches(',').split_once(": ").filter(|_| !line.starts_with("//"))
        {
            let kind = kind.trim();
            let inner = kind.strip_prefix("Option<").and_then(|kind| kind.strip_suffix('>')).filter(|_| optional);
            if flat {
                laid_flat.push(typed(kind, named));
            } else if !skipped {
                found.push(format!("{name}{}: {}", if optional { "?" } else { "" }, typed(inner.unwrap_or(kind), named)));
            }
            (skipped, optional, flat) = (false, false, false);
        }
    }
    (found, laid_flat)
}

/// The variants of an untagged enum: what is in them.
fn variants(body: &str, named: &dyn Fn(&str) -> String) -> Vec<String> {
    let mut found = Vec::new();
    let mut open: Option<String> = None;
    for line in body.lines().filter(|line| !line.trim().starts_with("//")) {
        if let Some(inside) = &mut open {
            if line.trim() == "}," {
                found.push(format!("{{ {} }}", fields(inside, named).0.join("; ")));
                open = None;
            } else {
                inside.push_str(line);
                inside.push('\n');
            }
        } else if line.trim().ends_with('{') {
            open = Some(String::new());
        } else if let Some((_, kind)) = line.trim().trim_end_matches("),").split_once('(') {
            found.push(if parts(kind).len() > 1 { tuple(kind, named) } else { typed(kind, named) });
        }
    }
    found
}

/// What stands between the commas of a list of types, except those inside brackets.
fn parts(kinds: &str) -> Vec<&str> {
    let (mut found, mut depth, mut from) = (Vec::new(), 0_i32, 0);
    for (at, letter) in kinds.char_indices() {
        match letter {
            '<' | '(' | '[' => depth += 1,
            '>' | ')' | ']' => depth -= 1,
            ',' if depth == 0 => {
                found.push(kinds[from..at].trim());
                from = at + 1;
            }
            _ => {}
        }
    }
    found.push(kinds[from..].trim());
    found
}

fn tuple(kinds: &str, named: &dyn Fn(&str) -> String) -> String {
    let parts: Vec<String> = parts(kinds).into_iter().map(|part| typed(part, named)).collect();
    format!("[{}]", parts.join(", "))
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
        return tuple(inner, named);
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
    fn what_is_laid_flat_is_extended_and_several_in_a_variant_are_a_tuple() {
        let text = "#[derive(Serialize)]\nstruct Whole {\n    #[serde(flatten)]\n    inner: far::Part,\n    html: String,\n}\n\n\
                    #[derive(Serialize)]\n#[serde(untagged)]\nenum Node {\n    Element(&'static str, Vec<(&'static str, String)>, Vec<Node>),\n}\n";
        let part = "#[derive(Serialize)]\nstruct Part {\n    size: usize,\n}\n";
        let near = "#[derive(Serialize)]\nstruct Part {\n    other: usize,\n}\n";
        let sources =
            [("whole".to_owned(), text.to_owned()), ("far".to_owned(), part.to_owned()), ("a".to_owned(), near.to_owned())].into();
        let declared = written(&sources);
        assert!(declared.contains("  interface Whole extends far.Part {\n    html: string;\n  }\n"), "{declared}");
        assert!(declared.contains("  type Node = [string, [string, string][], whole.Node[]];\n"), "{declared}");
    }

    #[test]
    fn the_declarations_are_those_of_the_structs() {
        let kept = String::from_utf8(page::read(&file()).unwrap()).unwrap();
        assert!(kept == declarations().unwrap(), "stale: `cargo xtask types` writes it anew");
        assert!(kept.matches("interface ").count() > 20);
    }
}
