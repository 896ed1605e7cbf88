//! A work order: what is made, where, and the alternatives to compare.

use std::rc::Rc;
use std::sync::Arc;

use serde_json::Value;

use super::fields::{Fields, offer, quoted};
use super::{Alternative, Document, GwpSet, Line, OrderFault, Site, alternative, default_alternatives, line, site};
use crate::factors::{Carried, Carrier, Fingerprint, Tables};
use crate::quantity::group;

/// What is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Boundary {
    /// Everything but making, freight and end of life of the blank.
    Face,
    /// All of it.
    FaceWithBlank,
}

impl Boundary {
    /// As commands and orders write it.
    pub const ALL: [(&'static str, Self); 3] =
        [("face", Self::Face), ("face-with-blank", Self::FaceWithBlank), ("face with blank", Self::FaceWithBlank)];

    /// As commands write it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Face => "face",
            Self::FaceWithBlank => "face-with-blank",
        }
    }
}

/// What becomes of a sign taken down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EndOfLife {
    /// The blank is melted again without credit, the face burnt on it.
    Recycled,
    /// The blank is used again, the face scraped off and landfilled.
    Reused,
    /// Both are landfilled.
    Landfilled,
}

impl EndOfLife {
    /// As orders write it; `cut-off` is the first.
    pub const ALL: [(&'static str, Self); 4] =
        [("cut-off", Self::Recycled), ("recycled", Self::Recycled), ("reused", Self::Reused), ("landfilled", Self::Landfilled)];
}

/// A work order, understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Order {
    /// The file it came from.
    pub file: String,
    /// Its name.
    pub name: String,
    /// Years a face stays in service.
    pub life: f64,
    /// The set of global warming potentials.
    pub gwp: GwpSet,
    /// Whether solvent oxidised in air counts in CO2e.
    pub voc_oxidised: bool,
    /// What becomes of a sign taken down.
    pub end_of_life: EndOfLife,
    /// What is counted, unless the command says otherwise.
    pub boundary: Boundary,
    /// Where it is made.
    pub site: Site,
    /// Its lines.
    pub lines: Rc<Vec<Line>>,
    /// The alternatives.
    pub alternatives: Vec<Alternative>,
    /// The orders added up: name and lines of each.
    pub sums: Vec<(String, usize)>,
    /// The fingerprint of the tables it was read with.
    pub tables: Fingerprint,
    /// Rows of own tables, by id.
    pub own_rows: Vec<String>,
    /// Inputs moved by hand for all alternatives, by id; not part of the file.
    pub moved: Vec<(String, f64)>,
    /// Inputs held at a value without spread, by id, while something is varied; not part of the file.
    pub held: Vec<(String, f64)>,
    /// Who reviewed it, as its writer says; nothing here checks it.
    pub reviewers: Vec<String>,
    /// The document, for the lines of later faults.
    pub document: Rc<Document>,
    /// Every document added up, this one first.
    pub documents: Vec<Rc<Document>>,
}

/// The most lines an order may have.
pub(super) const MOST_LINES: usize = 20_000;

/// The most signs an order may have.
pub(super) const MOST_SIGNS: u64 = 1_000_000_000;

impl Order {
    /// Understands a document; all faults at once.
    pub fn read(document: Document, tables: &Tables) -> Result<Self, Vec<OrderFault>> {
        let mut faults = Vec::new();
        let document = Rc::new(document);
        let order = read(&document, tables, &mut faults);
        order.filter(|_| faults.is_empty()).ok_or(faults)
    }

    /// Moves inputs by hand, in their units; a value that the table's range does not hold is refused.
    pub fn moved_by_hand(mut self, moved: Vec<(String, f64)>, tables: &Tables) -> Result<Self, Vec<OrderFault>> {
        let mut faults = Vec::new();
        for (id, value) in &moved {
            let row = tables.find(id).map(|place| &tables.inputs[place]);
            // The range holds the 5 % and 95 % points too, which a centre off its middle puts beyond low or high.
            let range = row.map(|row| (row.low.min(row.ends().0), row.high.max(row.ends().1)));
            if !range.is_some_and(|(low, high)| low <= *value && *value <= high) {
                let words = row.map_or_else(String::new, |row| row.unit.words());
                let wanted =
                    range.map_or("the id of a row of the tables".to_owned(), |(low, high)| format!("a value from {low} to {high} {words}"));
                faults.push(self.fault(id, &format!("`{value}`"), wanted.trim_end(), "move it within its range"));
            }
        }
        self.moved = moved;
        if faults.is_empty() { Ok(self) } else { Err(faults) }
    }

    /// Adds another order's lines; what is not a line must be the same in both.
    pub fn joined_by(mut self, other: Self) -> Result<Self, OrderFault> {
        let differs = [
            ("life", self.life != other.life),
            ("gwp", self.gwp != other.gwp),
            ("voc_oxidised", self.voc_oxidised != other.voc_oxidised),
            ("end_of_life", self.end_of_life != other.end_of_life),
            ("boundary", self.boundary != other.boundary),
            ("site", self.site != other.site),
            ("alternative", self.alternatives != other.alternatives),
            ("moved", self.moved != other.moved),
        ];
        if let Some((field, _)) = differs.iter().find(|(_, differs)| *differs) {
            let wanted = format!("the same `{field}` as in {}", self.file);
            return Err(other.fault(
                field,
                &format!("another `{field}`"),
                &wanted,
                "orders are added up on one site with the same alternatives; compare them apart, or make the two alike",
            ));
        }
        Rc::make_mut(&mut self.lines).extend(other.lines.iter().cloned());
        self.sums.extend(other.sums);
        self.documents.extend(other.documents);
        // Who reviewed one order has not reviewed the other.
        self.reviewers.retain(|one| other.reviewers.contains(one));
        Ok(self)
    }

    /// A fault in one field of this order.
    pub fn fault(&self, field: &str, came: &str, wanted: &str, help: &str) -> OrderFault {
        OrderFault {
            file: self.file.clone(),
            line: self.document.line(field),
            field: field.to_owned(),
            came: came.to_owned(),
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        }
    }
}

fn read(document: &Rc<Document>, tables: &Tables, faults: &mut Vec<OrderFault>) -> Option<Order> {
    if !document.value.is_object() {
        faults.push(OrderFault {
            file: document.name.clone(),
            line: Some(1),
            field: String::new(),
            came: super::fields::shown(&document.value),
            wanted: "an order, a table of fields".to_owned(),
            help: "begin with `schema_version`, then give its lines".to_owned(),
        });
        return None;
    }
    let mut fields = Fields::new(document, "", &document.value, faults);
    match fields.text("schema_version") {
        Some(version) if version == "1" => {}
        Some(version) => fields.refuse("schema_version", &quoted(&version), "`1`", "this program reads version 1 only"),
        None => fields.refuse("schema_version", "nothing", "`1`", "give the version, 1"),
    }
    let name = fields.label("name").unwrap_or_default();
    let reviewers = fields.labels("reviewers", 12);
    let life = fields.measured("life", "years", 1.0, 50.0, "10 years").unwrap_or(10.0);
    let gwp = fields.word("gwp", &GwpSet::ALL).unwrap_or(GwpSet::Ar6);
    let voc_oxidised = fields.flag("voc_oxidised").unwrap_or(true);
    let end_of_life = fields.word("end_of_life", &EndOfLife::ALL).unwrap_or(EndOfLife::Recycled);
    let boundary = fields.word("boundary", &Boundary::ALL).unwrap_or(Boundary::Face);
    let nowhere = Value::Object(serde_json::Map::new());
    let place = fields.get("site");
    let lines = fields.list("line");
    let missing = fields.get("line").is_none_or(Value::is_array);
    if missing && (lines.is_empty() || lines.len() > MOST_LINES) {
        fields.refuse("line", &format!("{} lines", lines.len()), "1 to 20\u{202f}000 lines", "write a `[[line]]` for each kind of sign");
    }
    let stated = fields.get("alternative").is_some();
    let alternatives = fields.list("alternative");
    if stated && !(1..=12).contains(&alternatives.len()) {
        fields.refuse(
            "alternative",
            &format!("{} alternatives", alternatives.len()),
            "1 to 12 alternatives",
            "write an `[[alternative]]` for each, or leave them all out",
        );
    }
    fields.finish();
    let site = read_site(document, place.unwrap_or(&nowhere), tables, faults);
    let lines: Vec<Line> = lines
        .iter()
        .enumerate()
        .filter_map(|(index, value)| line::read(document, &format!("line[{}]", index + 1), value, tables, faults))
        .collect();
    let signs = lines.iter().fold(0_u64, |sum, line: &Line| sum + u64::from(line.quantity));
    if signs > MOST_SIGNS {
        faults.push(OrderFault {
            file: document.name.clone(),
            line: document.line("line"),
            field: "line".to_owned(),
            came: format!("{} signs", group(&signs.to_string())),
            wanted: format!("at most {} signs in one order", group(&MOST_SIGNS.to_string())),
            help: "split it into several files".to_owned(),
        });
    }
    let alternatives: Vec<Alternative> = if stated {
        alternatives
            .iter()
            .enumerate()
            .filter_map(|(index, value)| alternative::read(document, &format!("alternative[{}]", index + 1), value, faults))
            .collect()
    } else {
        default_alternatives()
    };
    let sums = vec![(if name.is_empty() { document.file_name().to_owned() } else { name.clone() }, lines.len())];
    check_otherwise(document, &alternatives, faults);
    for (index, one) in alternatives.iter().enumerate() {
        if alternatives[..index].iter().any(|other| other.id == one.id) {
            let field = format!("alternative[{}].id", index + 1);
            faults.push(OrderFault {
                file: document.name.clone(),
                line: document.line(&field),
                field,
                came: quoted(&one.id),
                wanted: "an id of its own".to_owned(),
                help: "give each alternative another id".to_owned(),
            });
        }
    }
    Some(Order {
        file: document.name.clone(),
        name,
        life,
        gwp,
        voc_oxidised,
        end_of_life,
        boundary,
        site: site?,
        lines: Rc::new(lines),
        alternatives,
        sums,
        tables: tables.fingerprint.clone(),
        own_rows: tables.own.clone(),
        moved: Vec::new(),
        held: Vec::new(),
        reviewers,
        document: Rc::clone(document),
        documents: vec![Rc::clone(document)],
    })
}

/// Each `otherwise` names another alternative, and following it never comes back.
fn check_otherwise(document: &Document, alternatives: &[Alternative], faults: &mut Vec<OrderFault>) {
    for (index, one) in alternatives.iter().enumerate() {
        let Some(next) = &one.otherwise else { continue };
        let field = format!("alternative[{}].otherwise", index + 1);
        let ids: Vec<&str> = alternatives.iter().map(|one| one.id.as_str()).filter(|id| *id != one.id).collect();
        let mut refuse = |came: String, wanted: &str, help: String| {
            faults.push(OrderFault {
                file: document.name.clone(),
                line: document.line(&field),
                field: field.clone(),
                came,
                wanted: wanted.to_owned(),
                help,
            });
        };
        if !ids.contains(&next.as_str()) {
            refuse(
                quoted(next),
                "the id of another alternative",
                offer(
                    next,
                    &ids,
                    &if ids.is_empty() {
                        "add the alternative that it names, or take it out".to_owned()
                    } else {
                        format!("use {}", super::fields::list(&ids))
                    },
                ),
            );
            continue;
        }
        let mut seen = vec![one.id.as_str()];
        let mut at = next.as_str();
        while !seen.contains(&at) {
            seen.push(at);
            let Some(further) = alternatives.iter().find(|one| one.id == at).and_then(|one| one.otherwise.as_deref()) else { break };
            at = further;
        }
        if at == one.id {
            refuse(quoted(next), "a chain that ends", "it leads back to this alternative; let one of them do without".to_owned());
        }
    }
}

/// The carrier of that id, else the nearest ones by id or name in the words of a fault.
fn carrier(fields: &mut Fields<'_, '_>, tables: &Tables, carried: Carried, key: &'static str, usual: &str) -> Option<Arc<Carrier>> {
    let text = fields.text(key).unwrap_or_else(|| usual.to_owned());
    let found = tables.carrier(carried, &text).cloned();
    if found.is_none() {
        let all = tables.carriers_of(carried);
        let wanted = format!("{} such as `{usual}`", what(carried));
        fields.refuse(key, &quoted(&text), &wanted, &offer_carrier(&text, &all));
    }
    found
}

/// What is wanted in a field.
fn what(carried: Carried) -> &'static str {
    match carried {
        Carried::Electricity => "the id of an electricity area",
        Carried::Heat => "the id of a heating fuel",
        Carried::Freight => "the id of a way to carry goods",
        Carried::Vehicle => "the id of a vehicle",
    }
}

/// The carriers meant: of nearly that id, else those whose name or id holds the text.
fn offer_carrier(text: &str, all: &[&Arc<Carrier>]) -> String {
    let ids: Vec<&str> = all.iter().map(|one| one.id.as_str()).collect();
    let near = super::fields::nearest(text, &ids);
    let word = text.trim().to_ascii_lowercase();
    let holds = |one: &Carrier| !word.is_empty() && (one.name.to_ascii_lowercase().contains(&word) || one.id.contains(&word));
    let meant = all.iter().filter(|one| if near.is_empty() { holds(one) } else { near.contains(&one.id.as_str()) });
    let meant: Vec<String> = meant.take(MOST_OFFERED).map(|one| format!("`{}` ({})", one.id, one.full_label())).collect();
    match meant.split_last() {
        None => "the page offers them by name; `faceload areas` lists them".to_owned(),
        Some((one, [])) => format!("did you mean {one}?"),
        Some((last, first)) => format!("did you mean {} or {last}?", first.join(", ")),
    }
}

/// How many carriers a fault offers.
const MOST_OFFERED: usize = 4;

fn read_site(document: &Document, value: &Value, tables: &Tables, faults: &mut Vec<OrderFault>) -> Option<Site> {
    let mut fields = Fields::new(document, "site", value, faults);
    let mut area = |key: &'static str, carried: Carried, usual: &str| carrier(&mut fields, tables, carried, key, usual);
    let electricity = area("electricity", Carried::Electricity, "us.rfcw");
    let heat = area("heat", Carried::Heat, "us.natural-gas");
    let usual = |carried| site::usual(tables, electricity.as_deref(), carried);
    let freight = area("freight", Carried::Freight, usual(Carried::Freight));
    let vehicle = area("vehicle", Carried::Vehicle, usual(Carried::Vehicle));
    if let Some(area) = &electricity {
        for (key, carrier) in [("heat", &heat), ("freight", &freight), ("vehicle", &vehicle)] {
            let Some(carrier) = carrier.as_ref().filter(|carrier| !site::fits(area, carrier)) else { continue };
            let fitting = tables.carriers_of(carrier.carried).into_iter().filter(|other| site::fits(area, other));
            let fitting: Vec<&str> = fitting.map(|other| other.id.as_str()).collect();
            fields.refuse(
                key,
                &quoted(&carrier.id),
                &format!("one whose way from the well to the tank is known, since `{}` is a life-cycle area", area.id),
                &format!("use {}, or an electricity area that is direct", super::fields::list(&fitting)),
            );
        }
    }
    let climate = fields.word("climate", &[("cold", 4500.0), ("middle", 2800.0), ("mild", 1500.0)]);
    let degree_days = fields.measured("degree_days", "K.d", 0.0, 12_000.0, "2800 K.d");
    if climate.is_some() && degree_days.is_some() {
        fields.refuse("climate", "a climate beside `degree_days`", "one of the two", "keep the one you know better");
    }
    let voc_rule = fields.flag("voc_rule").unwrap_or(false);
    let delivery = fields.measured("delivery", "km", 0.0, 20_000.0, "60 km");
    let visit = fields.measured("visit", "km", 0.0, 5_000.0, "30 km");
    fields.finish();
    Some(Site {
        electricity: electricity?,
        heat: heat?,
        freight: freight?,
        vehicle: vehicle?,
        degree_days: degree_days.or(climate).unwrap_or(2800.0),
        voc_rule,
        delivery,
        visit,
    })
}
