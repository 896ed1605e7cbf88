//! How a number is computed: indicator, stage, flow x factor, down to source, place and grade.

use faceload_core::factors::{Input, Origin, Tables};
use faceload_core::inventory::{Form, InputId, Stage, Term, Terms};
use faceload_core::load::{Contribution, Indicator, Model, Part, Per};
use faceload_core::quantity::{Kind, group, write_number};
use serde::Serialize;

use crate::words::number;

/// An explanation of one load.
#[derive(Debug, Serialize)]
pub struct Explained {
    /// The alternative.
    pub alternative: String,
    /// The indicator.
    pub indicator: &'static str,
    /// The load, with its unit.
    pub total: String,
    /// How it follows from the order's total.
    pub divided: String,
    /// Its stages, those that load anything.
    pub stages: Vec<StageOf>,
    /// The inputs that stand in it.
    pub inputs: Vec<InputOf>,
}

/// One stage.
#[derive(Debug, Serialize)]
pub struct StageOf {
    /// Its name and module.
    pub name: String,
    /// Its part of the order's load.
    pub total: String,
    /// Its flows, the largest first.
    pub flows: Vec<FlowOf>,
}

/// One flow.
#[derive(Debug, Serialize)]
pub struct FlowOf {
    /// What flows.
    pub label: String,
    /// `22.9 kg x 6.35 kg CO2e per kg = 145 kg CO2e`.
    pub product: String,
    /// The products that make up the amount, without what all of them share.
    pub amount: Vec<TermOf>,
    /// What all of them are multiplied by.
    pub amount_common: Vec<Piece>,
    /// The products that make up the factor, without what all of them share.
    pub factor: Vec<TermOf>,
    /// What all of them are multiplied by.
    pub factor_common: Vec<Piece>,
}

/// One product, its pieces in order.
#[derive(Debug, Serialize)]
pub struct TermOf {
    /// Its pieces; one that names an input carries its id.
    pub pieces: Vec<Piece>,
    /// What it comes to, the shared part included.
    pub value: String,
    /// The same as a number, without sign.
    #[serde(skip)]
    share: f64,
}

/// A piece of a product.
#[derive(Debug, Serialize)]
pub struct Piece {
    /// As written.
    pub text: String,
    /// The input it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub input: Option<String>,
    /// What that input is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub item: Option<String>,
}

/// One input with its evidence.
#[derive(Debug, Serialize)]
pub struct InputOf {
    /// Its id.
    pub id: String,
    /// What it is.
    pub item: String,
    /// Its value with unit.
    pub value: String,
    /// Its range, or nothing where it is fixed.
    pub range: String,
    /// The shape of its spread.
    pub spread: &'static str,
    /// Its grade.
    pub grade: String,
    /// What the grade means.
    pub grade_words: &'static str,
    /// Its source in words.
    pub source: String,
    /// The place in it.
    pub place: String,
    /// The year.
    pub year: String,
    /// A note.
    pub note: String,
    /// Whether this order states it in place of the table.
    pub own: bool,
    /// The alternatives that it stands in, where that was asked.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub whose: Vec<String>,
    /// As an order writes it, where an order may.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub typed: String,
}

/// Explains a load.
pub fn explain(tables: &Tables, model: &Model, indicator: Indicator, per: Per) -> Explained {
    let total = model.load(indicator, per).value;
    let whole = model.contributions_of(indicator, per).fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, Per::Order));
    let unit = indicator.unit();
    let divided = match per {
        Per::Order => format!("{} {unit} for the whole order", number(whole)),
        Per::M2 => format!("{} {unit} for the whole order \u{f7} {} m2 of face", number(whole), number(model.m2.base())),
        Per::M2Year => format!(
            "{} {unit} for the whole order and its visits \u{f7} {} m2 of face \u{f7} {} years in service",
            number(whole),
            number(model.m2.base()),
            number(model.life)
        ),
    };
    let mut stages = Vec::new();
    for (stage, name, module) in Stage::ALL {
        let mut flows: Vec<(&Part, &Contribution, f64)> = model
            .contributions_of(indicator, per)
            .filter(|(_, one)| one.stage == stage)
            .map(|(part, one)| (part, one, model.value_of(part, one, Per::Order)))
            .filter(|(.., value)| *value != 0.0)
            .collect();
        if flows.is_empty() {
            continue;
        }
        flows.sort_by(|a, b| b.2.abs().total_cmp(&a.2.abs()));
        let sum = flows.iter().fold(0.0, |sum, (.., value)| sum + value);
        stages.push(StageOf {
            name: format!("{name} ({module})"),
            total: format!("{} {unit}", number(sum)),
            flows: flows.iter().map(|(part, one, value)| flow(model, part, one, *value)).collect(),
        });
    }
    Explained {
        alternative: model.alternative.id.clone(),
        indicator: indicator.label(),
        total: format!("{} {unit} {}", number(total), per.words()),
        divided,
        stages,
        inputs: inputs_in(tables, model, indicator, per),
    }
}

/// The inputs that stand in a product that is not zero, each once.
fn inputs_in(tables: &Tables, model: &Model, indicator: Indicator, per: Per) -> Vec<InputOf> {
    let mut shown: Vec<&Input> = Vec::new();
    for (part, one) in model.contributions_of(indicator, per).filter(|(part, one)| model.value_of(part, one, per) != 0.0) {
        for (id, _) in one
            .amount
            .0
            .iter()
            .chain(&one.factor.0)
            .filter(|term| part.value(&Terms(vec![(*term).clone()])) != 0.0)
            .flat_map(|term| &term.inputs)
        {
            let row = part.plan.book.input(*id);
            if !shown.contains(&row) {
                shown.push(row);
            }
        }
    }
    shown.sort_by(|a, b| a.id.cmp(&b.id));
    shown.into_iter().map(|row| input(tables, row)).collect()
}

fn flow(model: &Model, part: &Part, one: &Contribution, value: f64) -> FlowOf {
    let (amounts, amount_common) = terms(part, &one.amount, one.amount_unit);
    let is_one = one.factor.0.iter().all(|term| term.inputs.is_empty());
    let (factors, factor_common) = if is_one { (Vec::new(), Vec::new()) } else { terms(part, &one.factor, one.factor_unit) };
    let by =
        if part.plan.alternative.id == model.alternative.id { String::new() } else { format!(", made as {}", part.plan.alternative.id) };
    FlowOf {
        label: format!("{}{by}", one.label),
        product: format!(
            "{} {} \u{d7} {} {} = {} {}",
            number(part.value(&one.amount)),
            one.amount_unit,
            number(part.value(&one.factor)),
            one.factor_unit,
            number(value),
            one.indicator.unit()
        ),
        amount: amounts,
        amount_common,
        factor: factors,
        factor_common,
    }
}

/// The products that are not zero, and what all of them share; each value counts the shared part.
fn terms(part: &Part, terms: &Terms, unit: &str) -> (Vec<TermOf>, Vec<Piece>) {
    let value = |term: &Term| term.value(&part.activity, part.plan.values());
    let shown: Vec<&Term> = terms.0.iter().filter(|term| value(term) != 0.0).collect();
    let shared: Vec<(InputId, Form)> = match shown[..] {
        [first, _, ..] => first.inputs.iter().copied().filter(|one| shown.iter().all(|term| term.inputs.contains(one))).collect(),
        _ => Vec::new(),
    };
    let own = |term: &Term| Term { inputs: term.inputs.iter().copied().filter(|one| !shared.contains(one)).collect(), ..term.clone() };
    let list = shown.iter().map(|term| TermOf {
        pieces: pieces(part, &own(term)),
        value: format!("{} {unit}", number(value(term))),
        share: value(term).abs(),
    });
    let common = pieces(part, &Term { coefficient: 1.0, measure: None, inputs: shared.clone() });
    (list.collect(), if shared.is_empty() { Vec::new() } else { common })
}

fn pieces(part: &Part, term: &Term) -> Vec<Piece> {
    let mut pieces = Vec::new();
    if let Some(symbol) = term.measure {
        let stock = if symbol.stock { ", for stock" } else { "" };
        let count = part.activity.count(symbol);
        pieces.push(Piece {
            text: format!("{} {} {}{stock}", number(count), symbol.unit, symbol.name).replace("  ", " "),
            input: None,
            item: None,
        });
    }
    for (id, form) in &term.inputs {
        let row = part.plan.book.input(*id);
        pieces.push(Piece { text: as_formed(&value_of(row), *form), input: Some(row.id.clone()), item: Some(row.item.clone()) });
    }
    if term.coefficient != 1.0 {
        let sign = if term.coefficient < 0.0 { "\u{2212}" } else { "" };
        let size = term.coefficient.abs();
        if size == 1.0 && !pieces.is_empty() {
            pieces[0].text.insert_str(0, sign);
        } else {
            pieces.insert(0, Piece { text: format!("{sign}{}", number(size)), input: None, item: None });
        }
    }
    if pieces.is_empty() {
        pieces.push(Piece { text: "1".to_owned(), input: None, item: None });
    }
    pieces
}

fn as_formed(value: &str, form: Form) -> String {
    match form {
        Form::Power(1) => value.to_owned(),
        Form::Power(-1) => format!("1/({value})"),
        Form::Power(power) => format!("({value})^{power}"),
        Form::PerOnePlus => format!("1/(1 + {value})"),
        Form::PerOneMinus => format!("1/(1 \u{2212} {value})"),
    }
}

/// An input's value with its unit. Values are shown as the table has them.
pub fn value_of(input: &Input) -> String {
    with_unit(input.value, input)
}

fn with_unit(value: f64, input: &Input) -> String {
    let plain = format!("{value}");
    // As the table has it; what was computed has no end of digits.
    let text = if plain.len() > 9 { write_number(value, 5) } else { group(&plain) };
    format!("{text} {}", input.unit.words()).trim().to_owned()
}

/// An input with its evidence.
pub fn input(tables: &Tables, input: &Input) -> InputOf {
    let source = match (input.origin, tables.sources.get(&input.source)) {
        (Origin::Order, _) if input.source == "by definition" => "by definition".to_owned(),
        (Origin::Order, _) => "stated in the order".to_owned(),
        (Origin::Override, _) => "stated in the order for this alternative".to_owned(),
        (_, Some(source)) => match source.kind.as_str() {
            "practice" => "common practice, no source".to_owned(),
            "memory" => "from memory".to_owned(),
            "judgement" => "judgement, no source".to_owned(),
            _ => [source.publisher.as_str(), source.title.as_str()]
                .into_iter()
                .filter(|text| !text.is_empty())
                .collect::<Vec<_>>()
                .join(": "),
        },
        (_, None) => input.source.clone(),
    };
    let year = tables
        .sources
        .get(&input.source)
        .filter(|_| input.year.is_empty())
        .map_or_else(|| input.year.clone(), |source| source.year.clone());
    let range = if input.low == input.high {
        String::new()
    } else {
        format!("{} to {}", with_unit(input.low, input).split(' ').next().unwrap_or_default(), with_unit(input.high, input))
    };
    InputOf {
        id: input.id.clone(),
        item: input.item.clone(),
        value: value_of(input),
        range,
        spread: input.spread.word(),
        grade: input.grade.to_string(),
        grade_words: input.grade.words(),
        source,
        place: input.place.clone(),
        year,
        note: input.note.clone(),
        own: input.origin == Origin::Override || tables.own.contains(&input.id),
        whose: Vec::new(),
        typed: String::new(),
    }
}

impl Explained {
    /// As text for a terminal.
    pub fn text(&self) -> String {
        let mut out = format!("{}, {}: {}\n{}\n", self.alternative, self.indicator, self.total, self.divided);
        for stage in &self.stages {
            out.push_str(&format!("\n{}: {}\n", stage.name, stage.total));
            for flow in &stage.flows {
                out.push_str(&format!("  {}: {}\n", flow.label, flow.product));
                sum_text(&mut out, "amount", &flow.amount, &flow.amount_common);
                sum_text(&mut out, "factor", &flow.factor, &flow.factor_common);
            }
        }
        out.push_str("\nInputs\n");
        for input in &self.inputs {
            let range = if input.range.is_empty() { input.spread.to_owned() } else { format!("{}, {}", input.range, input.spread) };
            out.push_str(&format!("  [{}] {}: {} ({range})\n", input.id, input.item, input.value));
            let place =
                [input.place.as_str(), input.year.as_str()].into_iter().filter(|text| !text.is_empty()).collect::<Vec<_>>().join(", ");
            let place = if place.is_empty() { String::new() } else { format!("; {place}") };
            let note = if input.note.is_empty() { String::new() } else { format!("; {}", input.note) };
            out.push_str(&format!("      grade {}, {}: {}{place}{note}\n", input.grade, input.grade_words, input.source));
        }
        out
    }
}

/// Below this share of a sum, products are given together on a terminal; the JSON has each.
const SMALL: f64 = 0.001;

/// A sum of products, a line each.
fn sum_text(out: &mut String, name: &str, terms: &[TermOf], common: &[Piece]) {
    let whole = terms.iter().fold(0.0, |sum, term| sum + term.share);
    let mut lead = name;
    let (shown, small): (Vec<&TermOf>, Vec<&TermOf>) = terms.iter().partition(|term| term.share >= SMALL * whole);
    for term in shown {
        out.push_str(&format!("    {lead:<6} {}{} = {}\n", if lead.is_empty() { "+ " } else { "" }, written(&term.pieces), term.value));
        lead = "";
    }
    if !small.is_empty() {
        let share = small.iter().fold(0.0, |sum, term| sum + term.share) / whole * 100.0;
        out.push_str(&format!(
            "           + {}, together {} % of it\n",
            crate::words::count(small.len() as u64, "smaller product"),
            number(share)
        ));
    }
    if !common.is_empty() {
        out.push_str(&format!("           all of it \u{d7} {}\n", written(common)));
    }
}

/// A product on one line, its inputs by id.
fn written(pieces: &[Piece]) -> String {
    let pieces = pieces.iter().map(|piece| match &piece.input {
        Some(id) => format!("{} [{id}]", piece.text),
        None => piece.text.clone(),
    });
    pieces.collect::<Vec<_>>().join(" \u{d7} ")
}
