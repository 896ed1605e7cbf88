//! Every label, and where its word comes from: the trade, a standard, or us.

/// Where a label's word comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// Sign shops and printers say it.
    Trade,
    /// A standard defines it.
    Standard(&'static str),
    /// Plain words of ours.
    Ours,
}

/// A label.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Label {
    /// What the program calls it.
    pub id: &'static str,
    /// What a reader sees.
    pub text: &'static str,
    /// Where the word comes from.
    pub origin: Origin,
}

use Origin::{Ours, Standard, Trade};

const fn label_of(id: &'static str, text: &'static str, origin: Origin) -> Label {
    Label { id, text, origin }
}

/// The labels.
pub const LABELS: [Label; 88] = [
    label_of("order", "The order", Trade),
    label_of("answer", "The answer", Ours),
    label_of("loads", "Loads", Ours),
    label_of("moves", "What moves it", Ours),
    label_of("draws-range", "middle 50 % and 90 % of the draws", Ours),
    label_of("stages", "Where it comes from", Ours),
    label_of("flips", "Where it flips", Ours),
    label_of("sure", "How sure", Ours),
    label_of("choices", "Choices of method", Ours),
    label_of("plan", "Each job by whoever loads least", Ours),
    label_of("sources", "Factors and sources", Ours),
    label_of("credits", "Sources, licences and credits", Ours),
    label_of("arithmetic", "How computed", Ours),
    label_of("by-line", "Line by line", Trade),
    label_of("limits", "What this does not say", Ours),
    label_of("energy", "energy", Standard("ISO 14040")),
    label_of("water", "water", Ours),
    label_of("solvent", "solvent", Trade),
    label_of("waste", "waste", Standard("ISO 14040")),
    label_of("co2e", "CO2e", Standard("GHG Protocol")),
    label_of("screen-printing", "screen printing", Trade),
    label_of("digital-printing", "digital printing", Trade),
    label_of("face", "face only", Trade),
    label_of("face-with-blank", "face with its blank", Trade),
    label_of("m2", "per m2 of face", Standard("ISO 14040, functional unit")),
    label_of("order-total", "whole order", Trade),
    label_of("m2-year", "per m2 and year in service", Standard("ISO 14040, functional unit")),
    label_of("quantity", "quantity", Trade),
    label_of("batch", "batch", Trade),
    label_of("designs", "designs", Trade),
    label_of("life", "life", Trade),
    label_of("start-from", "start from", Ours),
    label_of("counted", "counted", Ours),
    label_of("given", "given", Ours),
    label_of("beside", "beside the loads", Ours),
    label_of("site-electricity", "electricity at the meter", Trade),
    label_of("site-heat", "fuel heat", Trade),
    label_of("oxidised", "of CO2e: solvent oxidised", Ours),
    label_of("liquid-waste", "of waste: liquid", Trade),
    label_of("end-of-life", "of CO2e: end of life", Standard("EN 15804, C1-C4")),
    label_of("attended", "attended time, no load", Trade),
    label_of("days", "days until ready, no load", Trade),
    label_of("overlay-film", "cut overlay film", Trade),
    label_of("direct-applied", "direct-applied copy", Trade),
    label_of("moves-low", "input at its 5 % point", Ours),
    label_of("moves-high", "at its 95 % point", Ours),
    label_of("moves-centre", "difference now", Ours),
    label_of("turns", "turns it", Ours),
    label_of("amount", "amount", Ours),
    label_of("factor", "factor", Standard("GHG Protocol, emission factor")),
    label_of("input", "input", Standard("ISO 14040")),
    label_of("value", "value", Ours),
    label_of("grade", "grade", Ours),
    label_of("source", "source", Ours),
    label_of("place", "place", Ours),
    label_of("pair", "compare", Ours),
    label_of("indicator", "look at", Ours),
    label_of("over", "over", Ours),
    label_of("colours", "colours", Trade),
    label_of("across", "two at once, across", Ours),
    label_of("down", "down", Ours),
    label_of("report", "Report", Ours),
    label_of("report-title", "Sign faces compared", Ours),
    label_of("report-rest", "For a critical reviewer", Standard("ISO 14044")),
    label_of("report-question", "The question", Ours),
    label_of("report-answer", "The answer", Ours),
    label_of("report-trade-off", "What is better and what is worse", Ours),
    label_of("report-sure", "How sure", Ours),
    label_of("report-rests-on", "What it rests on", Ours),
    label_of("report-change", "What would change it", Ours),
    label_of("report-limits", "Limits and cautions", Ours),
    label_of("report-goal", "Goal and scope", Standard("ISO 14044")),
    label_of("report-flows", "Reference flows", Standard("ISO 14044")),
    label_of("report-boundary", "System boundary", Standard("ISO 14044")),
    label_of("report-gaps", "Cut-offs, coverage and filled gaps", Standard("ISO 14044")),
    label_of("report-allocation", "Allocation and end of life", Standard("ISO 14044")),
    label_of("report-loads", "Loads and their stages", Ours),
    label_of("report-pairs", "Every pair", Ours),
    label_of("report-sensitivity", "Uncertainty and sensitivity", Standard("ISO 14044")),
    label_of("report-inventory", "Inventory by stage", Standard("ISO 14040")),
    label_of("report-closure", "Mass closure", Ours),
    label_of("report-scopes", "Greenhouse gases by scope", Standard("GHG Protocol")),
    label_of("report-consistency", "Consistency of the data", Standard("ISO 14044")),
    label_of("report-checks", "Checks", Standard("ISO 14044")),
    label_of("report-lines", "Line by line", Trade),
    label_of("report-inputs", "Every input", Standard("ISO 14040")),
    label_of("report-versions", "Versions and fingerprints", Ours),
    label_of("report-references", "References", Ours),
];

/// The text of a label.
pub fn label(id: &str) -> &'static str {
    LABELS.iter().find(|label| label.id == id).map_or("", |label| label.text)
}
