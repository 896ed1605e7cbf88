//! The report as a document: two pages for a board, then what a critical reviewer asks for, in one HTML file that runs nothing.
//!
//! It composes what the other parts of this crate say; its own are the tables that only a reviewer needs.

mod allocation;
mod answer;
mod boundary;
mod checks;
mod closure;
mod consistency;
mod found;
mod gaps;
mod goal;
mod how_sure;
mod inputs;
mod inventory;
mod limits;
mod line_by_line;
mod loads;
mod node;
mod pairs;
mod policy;
mod question;
mod reference_flows;
mod references;
mod rests_on;
mod rows;
mod scopes;
mod sensitivity;
mod trade_off;
mod versions;
mod would_change;

use faceload_core::comparison::Comparison;
use faceload_core::factors::Tables;

pub use found::Asked;
use found::Found;
pub use node::Node;
use node::{element, escape, words};

use crate::data::{Looked, Manifest, Record, put_in};
use crate::labels::label;

/// The style sheet of the report, on its own and inside the page.
const SHEET: &str = include_str!("../../../www/report.css");

/// A report: its parts, and what stands at the head of every sheet of paper.
#[derive(Debug, serde::Serialize)]
pub struct Report {
    /// What it is called.
    pub title: String,
    /// The rule that puts it at the head of every sheet of paper.
    pub sheets: String,
    /// Its parts.
    pub body: Node,
    /// What it was made from and what came out, with hashes of both.
    #[serde(skip)]
    pub record: Record,
}

/// Makes the report of a comparison; `go_on` hears the share that is done.
pub fn report(tables: &Tables, comparison: &Comparison, asked: &Asked, go_on: impl FnMut(f64) -> bool) -> Report {
    let found = Found::of(tables, comparison, asked, go_on);
    let name = &comparison.order.name;
    let title = if name.is_empty() { label("report-title").to_owned() } else { format!("{}: {name}", label("report-title")) };
    let record = Record::of(tables, comparison, &found.draws, Looked { pair: asked.pair, indicator: asked.indicator });
    Report {
        sheets: page_rule(&format!("{title} \u{b7} {}", record.manifest.mark())),
        body: body(&found, &record.manifest, &title),
        title,
        record,
    }
}

/// The parts of the report.
fn body(found: &Found<'_>, manifest: &Manifest, title: &str) -> Node {
    let first = vec![words("h1", title), question::section(found), answer::section(found), answer::pictures(found)];
    let second = [
        trade_off::section(found),
        how_sure::section(found),
        rests_on::section(found),
        would_change::section(found),
        limits::section(found),
    ];
    let rest = [
        goal::section(found),
        reference_flows::section(found),
        boundary::section(found),
        gaps::section(found),
        allocation::section(found),
        loads::section(found),
        pairs::section(found),
        sensitivity::section(found),
        inventory::section(found),
        closure::section(found),
        scopes::section(found),
        consistency::section(found),
        checks::section(found),
        line_by_line::section(found),
        inputs::section(found),
        versions::section(found, manifest),
        references::section(found),
    ];
    let numbered = rest.into_iter().enumerate().map(|(at, section)| numbered(section, at + 1));
    element(
        "main",
        vec![
            element("div", first.into_iter().chain(second).collect()).with("class", "board"),
            element("div", std::iter::once(words("h1", label("report-rest"))).chain(numbered).collect()).with("class", "rest"),
        ],
    )
    .with("class", "report")
}

/// A section with its number before its heading.
fn numbered(section: Node, number: usize) -> Node {
    match section {
        Node::Element(name, attributes, mut inside) => {
            if let Some(Node::Element(_, _, heading)) = inside.first_mut() {
                heading.insert(0, Node::Words(format!("{number}  ")));
            }
            Node::Element(name, attributes, inside)
        }
        other => other,
    }
}

/// A section under its heading.
fn section(id: &'static str, mut inside: Vec<Node>) -> Node {
    inside.insert(0, words("h2", label(id)).with("id", id));
    element("section", inside).with("aria-labelledby", id)
}

impl Report {
    /// As one HTML file.
    pub fn html(&self) -> String {
        let style = format!("\n{SHEET}{}", self.sheets);
        let mut out = String::with_capacity(1 << 20);
        out.push_str("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"");
        escape(&policy::policy(&style), &mut out);
        out.push_str("\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        words("title", self.title.as_str()).write(&mut out);
        out.push_str("<style>");
        out.push_str(&style);
        out.push_str("</style>\n</head>\n<body>\n");
        self.body.write(&mut out);
        out.push_str(&put_in(&self.record.json()));
        out.push_str("\n</body>\n</html>\n");
        out
    }
}

/// The head of every sheet and the number of each page, for paper.
fn page_rule(head: &str) -> String {
    let mut text = String::new();
    for letter in head.chars().take(110) {
        // A string of CSS: whatever is not plain is written by its number.
        if letter.is_alphanumeric() || matches!(letter, ' ' | ',' | '.' | ':') {
            text.push(letter)
        } else {
            text.push_str(&format!("\\{:x} ", letter as u32))
        }
    }
    format!("@page report {{ @top-left {{ content: \"{text}\" }} }}\n")
}
