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
pub const LABELS: &[Label] = &[
    label_of("order", "The order", Trade),
    label_of("rows", "Rows from a spreadsheet", Trade),
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
    label_of("units", "lengths and areas", Ours),
    label_of("link", "Link to this order", Ours),
    label_of("of-this-order", "of this order, not the tables'", Ours),
    label_of("copy-message", "Copy the sentence that may be sent", Ours),
    label_of("alternative", "alternative", Ours),
    label_of("load", "load", Ours),
    label_of("unit", "unit", Standard("ISO 14040, functional unit")),
    label_of("id", "id", Ours),
    label_of("ranking", "ranking", Ours),
    label_of("turns-ranking", "turns the ranking", Ours),
    label_of("middle-90", "middle 90 % of its draws", Ours),
    label_of("draws-5", "5 % of draws", Ours),
    label_of("draws-25", "25 % of draws", Ours),
    label_of("draws-median", "median of draws", Ours),
    label_of("draws-75", "75 % of draws", Ours),
    label_of("draws-95", "95 % of draws", Ours),
    label_of("at-5", "at its 5 % point", Ours),
    label_of("at-95", "at its 95 % point", Ours),
    label_of("difference-at-5", "difference at its 5 % point", Ours),
    label_of("difference-at-95", "difference at its 95 % point", Ours),
    label_of("difference-there", "difference there", Ours),
    label_of("layer", "{name}: parts of the picture, by arrow keys", Ours),
    label_of("opens-arithmetic", "Opens how it was computed.", Ours),
    label_of("save", "save", Ours),
    label_of("save-as", "save as {form}: {heading}", Ours),
    label_of("behind", "The sources of these numbers", Ours),
    label_of("source-of-one", "{source}: {inputs} input, grade {grades}", Ours),
    label_of("source-of-many", "{source}: {inputs} inputs, grade {grades}", Ours),
    label_of("numbers-of-picture", "The numbers of this picture", Ours),
    label_of("table-rows", "The table, {rows} rows", Ours),
    label_of("loads-picture", "{indicator} in {unit}: {values}. The table below holds the numbers.", Ours),
    label_of("loads-with-ranges", "Loads {per}; under each, the middle 90 % of its draws", Ours),
    label_of("loads-before-ranges", "Loads {per}; the middle 90 % of the draws follow", Ours),
    label_of("how-computed", "{what}; how computed", Ours),
    label_of("swings-picture", "Swings of the difference in {indicator}: {rows}", Ours),
    label_of("of-grade", "grade {grade}", Ours),
    label_of("moves-less", "{rest} more inputs move it less.", Ours),
    label_of(
        "no-flow",
        "Nothing in {alternative} loads {indicator}: no step of the route has such a flow, so the sum is 0. That is what the boundary holds, not a finding.",
        Ours,
    ),
    label_of("units-converted", "Units are converted where they differ; each product is given as it comes to.", Ours),
    label_of("inputs-with-source", "The inputs, with source and grade", Ours),
    label_of("each", "each", Ours),
    label_of("sum-of", "{name}, the sum of", Ours),
    label_of("range-of", "range {range}, {spread}", Ours),
    label_of("grade-is", "Grade {grade}", Ours),
    label_of("source-is", "Source: {source}", Ours),
];

/// The text of a label.
pub fn label(id: &str) -> &'static str {
    LABELS.iter().find(|label| label.id == id).map_or("", |label| label.text)
}
