//! A comparison as text for a terminal.

use faceload_core::analysis::Draws;
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::order::Order;

use crate::figure::Figure;
use crate::labels::label;
use crate::view::beside;
use crate::{cautions, claims, sureness, words};

/// How wide a column may grow.
const WIDE: usize = 78;

/// The comparison as text, as its draws have it; headings bold where asked.
pub fn comparison(comparison: &Comparison, draws: &Draws, between: Option<(usize, usize)>, bold: bool) -> String {
    let heading = |text: &str| if bold { format!("\u{1b}[1m{text}\u{1b}[0m") } else { text.to_owned() };
    let line = wrapped(&words::order_line(comparison), 0);
    let mut out = format!("{}\n", heading(line.trim_end()));
    if !comparison.order.name.is_empty() {
        out.push_str(&format!("{}\n", comparison.order.name));
    }
    out.push_str(&wrapped(&format!("{}; {}", words::extent(comparison), words::boundary(comparison.boundary)), 0));
    out.push_str(&wrapped(&words::conditions(comparison), 0));
    out.push('\n');

    let pairs = between.map_or_else(|| comparison.first_pairs(), |pair| vec![pair]);
    match (between, sureness::answer(comparison, draws)) {
        (None, Some(answer)) => {
            out.push_str(&wrapped(&format!("{}: {answer}", words::capital(comparison.per.words())), 0));
            for indicator in Indicator::ALL {
                out.push_str(&hanging(indicator.label(), &sureness::ranked(comparison, draws, indicator)));
            }
        }
        _ => {
            if let Some((a, b)) = between {
                out.push_str(&wrapped(
                    &format!("{}: {}", words::capital(comparison.per.words()), sureness::pair(comparison, draws, a, b)),
                    0,
                ));
                for indicator in Indicator::ALL {
                    out.push_str(&hanging(indicator.label(), &sureness::difference_of(comparison, draws, a, b, indicator)));
                }
            }
        }
    }
    out.push_str(&wrapped(&format!("({})", sureness::drawn(draws)), 2));
    out.push('\n');
    let on = words::part_of(comparison, &comparison.common);
    let on = if on.is_empty() { String::new() } else { format!(", {on} that all of them can make") };
    if comparison.common.is_empty() {
        out.push_str(&wrapped(
            "No line can be made by every alternative, so there is no common table; the pairs below each say on how many lines they stand.",
            0,
        ));
    } else {
        out.push_str(&format!("{}\n", heading(&format!("{}, {}{on}", label("loads"), comparison.per.words()))));
        out.push_str(&table(comparison));
    }
    out.push('\n');
    for model in &comparison.models {
        out.push_str(&format!("  {:<11} {}\n", model.alternative.id, words::alternative_on(model)));
    }
    for base in words::bases(comparison) {
        out.push_str(&wrapped(&base, 2));
    }
    if between.is_none() && !pairs.is_empty() {
        out.push_str(&format!("\n{}\n", heading("Pair by pair")));
        for (a, b) in &pairs {
            out.push_str(&wrapped(&sureness::pair(comparison, draws, *a, *b), 2));
        }
    }
    out.push_str(&format!("\n{}\n", heading(label("limits"))));
    if let Some(line) = sureness::off_headlines(comparison, draws, &pairs) {
        out.push_str(&wrapped(&line, 2));
    }
    for line in [words::orders(&comparison.order), words::own_rows(&comparison.order), cautions::unusual(comparison)].concat() {
        out.push_str(&wrapped(&line, 2));
    }
    let dropped = cautions::dropped(&comparison.makers.dropped).into_iter();
    let cautions = comparison.cautions.iter().map(cautions::caution);
    for line in dropped.chain(cautions) {
        out.push_str(&wrapped(&line, 2));
    }
    out.push_str(&wrapped(&format!("Left out: {}.", words::left_out(&comparison.order, comparison.boundary).join("; ")), 2));
    out.push_str(&standing(&comparison.order));
    out
}

/// A figure as text; its heading bold where asked.
pub fn figure(figure: &Figure, order: &Order, bold: bool) -> String {
    format!("{}\n{}", figure_alone(figure, bold), standing(order))
}

/// The same where no order stands behind it.
pub fn figure_alone(figure: &Figure, bold: bool) -> String {
    let heading = if bold { format!("\u{1b}[1m{}\u{1b}[0m\n", figure.heading) } else { format!("{}\n", figure.heading) };
    let sentences: String = figure.sentences.iter().map(|sentence| wrapped(sentence, 2)).collect();
    let tables: String = figure.tables.iter().map(|table| format!("\n{}", table.text())).collect();
    format!("{heading}{sentences}{tables}")
}

/// A text in one paragraph.
pub fn paragraph(text: &str) -> String {
    wrapped(text, 0)
}

/// What stands under every output: what is not covered, the caution, what kind of statement it is, on which tables.
pub fn standing(order: &Order) -> String {
    let (reviewers, tables) = (claims::reviewers(order), words::tables(order));
    let lines = [words::NOT_COVERED, words::CAUTION].into_iter().chain(reviewers.as_deref()).chain([claims::standing_words(), &tables]);
    lines.map(|line| wrapped(line, 2)).collect()
}

/// The table: a row per indicator, a column per alternative, then what stands beside.
fn table(comparison: &Comparison) -> String {
    let mut rows: Vec<Vec<String>> = vec![
        ["".to_owned(), "".to_owned()].into_iter().chain(comparison.models.iter().map(|model| model.alternative.id.clone())).collect(),
    ];
    for indicator in Indicator::ALL {
        let values = comparison.models.iter().map(|model| words::number(model.load(indicator, comparison.per).value));
        rows.push([indicator.label().to_owned(), indicator.unit().to_owned()].into_iter().chain(values).collect());
    }
    for row in beside(comparison) {
        rows.push([row.label.to_owned(), row.unit.to_owned()].into_iter().chain(row.texts).collect());
    }
    let columns = rows[0].len();
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0).min(WIDE);
    let widths: Vec<usize> = (0..columns).map(width).collect();
    let needed: usize = 4 + widths.iter().sum::<usize>() + 2 * (columns - 2);
    let gap = if needed > 99 { " " } else { "  " };
    let mut out = String::new();
    for row in &rows {
        let mut line = format!("  {:<w0$}  {:<w1$}", row[0], row[1], w0 = widths[0], w1 = widths[1]);
        for (cell, width) in row.iter().zip(&widths).skip(2) {
            line.push_str(&format!("{gap}{cell:>width$}"));
        }
        out.push_str(line.trim_end());
        out.push('\n');
    }
    out
}

/// A label and its text, further lines set under the text.
fn hanging(label: &str, text: &str) -> String {
    const INDENT: usize = 11;
    let under = wrapped(text, INDENT);
    format!("  {label:<8} {}", &under[INDENT..])
}

/// Text broken at spaces, at most 100 letters a line.
fn wrapped(text: &str, indent: usize) -> String {
    let mut out = String::new();
    let mut line = " ".repeat(indent);
    for word in text.split(' ') {
        if line.chars().count() + word.chars().count() > 99 && !line.trim().is_empty() {
            out.push_str(line.trim_end());
            out.push('\n');
            line = " ".repeat(indent);
        }
        line.push_str(word);
        line.push(' ');
    }
    out.push_str(line.trim_end());
    out.push('\n');
    out
}
