//! The book of one alternative: every input with the value it has there.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::sync::Arc;

use super::{Rate, named_solvent};
use crate::factors::{Grade, Input, Origin, Scope, Spread, TableFault, Tables};
use crate::order::{Alternative, Order, OrderFault, Override};
use crate::quantity::{Exponents, Kind, UnitText};

/// The place of an input in a book; equal ids have equal places in the books of one order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct InputId(u16);

impl InputId {
    /// The place.
    pub fn index(self) -> usize {
        usize::from(self.0)
    }

    /// The input at a place.
    pub fn at(index: usize) -> Self {
        Self(u16::try_from(index).unwrap_or(u16::MAX))
    }
}

/// Every input of one alternative.
#[derive(Debug)]
pub struct Book {
    inputs: Vec<Arc<Input>>,
    rows: usize,
    used: RefCell<BTreeSet<InputId>>,
    faults: RefCell<Vec<TableFault>>,
}

impl Book {
    /// The tables with what the order states and what the alternative overrides.
    pub fn open(tables: &Tables, order: &Order, alternative: &Alternative) -> Result<Self, Vec<OrderFault>> {
        let mut inputs = tables.inputs.clone();
        let rows = inputs.len();
        let mut faults = Vec::new();
        for own in &alternative.with {
            match tables.find(&own.id) {
                Some(place) => match named_solvent::held(tables, own, &inputs[place])
                    .map_or_else(|| overridden(tables, order, own, &inputs[place]), Ok)
                {
                    Ok(input) => inputs[place] = Arc::new(input),
                    Err(fault) => faults.push(fault),
                },
                None => {
                    let ids: Vec<&str> = tables.inputs.iter().map(|input| input.id.as_str()).collect();
                    let help = crate::order::offer(&own.id, &ids, "the page lists every input; `faceload explain` those of one load");
                    faults.push(order.fault(&own.path, &format!("`{}`", own.id), "the id of a row of the tables", &help));
                }
            }
        }
        for (id, value) in &order.moved {
            if let Some(place) = tables.find(id).filter(|place| inputs[*place].origin != Origin::Override) {
                inputs[place] = Arc::new(Input { value: *value, ..Input::clone(&inputs[place]) });
            }
        }
        for (id, value) in &order.held {
            if let Some(place) = tables.find(id).filter(|place| inputs[*place].origin != Origin::Override) {
                inputs[place] = Arc::new(Input { value: *value, spread: Spread::Fixed, ..Input::clone(&inputs[place]) });
            }
        }
        let life = alternative.life.unwrap_or(order.life);
        for (id, item, value, unit) in [
            ("order.degree-days", "heating degree-days a year", order.site.degree_days, "K.d"),
            ("order.delivery", "distance to the customer", order.site.delivery.unwrap_or(0.0), "km"),
            ("order.visit", "round trip to a sign", order.site.visit.unwrap_or(0.0), "km"),
            ("order.life", "years in service", life, "a"),
        ] {
            inputs.push(Arc::new(stated(id, item, value, unit)));
        }
        for (id, item, value, unit) in
            [("calendar.year", "a year", 365.0, "d"), ("calendar.kilowatt-hour", "heat of a kilowatt-hour", 3.6, "MJ{heat}/kW.h")]
        {
            inputs.push(Arc::new(Input { source: "by definition".to_owned(), grade: Grade::A, ..stated(id, item, value, unit) }));
        }
        if faults.is_empty() { Ok(Self { inputs, rows, used: RefCell::default(), faults: RefCell::default() }) } else { Err(faults) }
    }

    /// Puts a value in the place of a row, in the row's unit: what follows from a fact of the order.
    pub fn replace(&mut self, id: &str, value: f64, field: &str, note: &str) {
        if let Some(row) = self.inputs.iter_mut().find(|input| input.id == id) {
            *row = Arc::new(Input {
                value,
                centre: value,
                low: value,
                high: value,
                spread: Spread::Fixed,
                grade: Grade::D,
                source: "the order".to_owned(),
                place: field.to_owned(),
                note: note.to_owned(),
                origin: Origin::Override,
                ..Input::clone(row)
            });
        }
    }

    /// The input of that id; a missing or ill-typed row is noted as a fault of the tables.
    pub fn rate<Q: Kind>(&self, id: &str) -> Rate<Q> {
        Rate::new(self.asked(id, Q::EXPONENTS))
    }

    /// The place of the input of that id, whose unit must be of that kind.
    fn asked(&self, id: &str, kind: Exponents) -> InputId {
        let place = self.inputs[..self.rows]
            .binary_search_by(|input| input.id.as_str().cmp(id))
            .ok()
            .or_else(|| self.inputs[self.rows..].iter().position(|input| input.id == id).map(|place| place + self.rows));
        let fault = |came: &str, wanted: &str, help: &str| {
            self.faults.borrow_mut().push(TableFault {
                folder: "factors".to_owned(),
                file: if id.ends_with(".co2e") || id.ends_with(".energy") { "factors.csv" } else { "practice.csv" },
                line: 0,
                column: "id".to_owned(),
                came: came.to_owned(),
                wanted: wanted.to_owned(),
                help: help.to_owned(),
            });
        };
        let Some(place) = place else {
            fault(id, "a row that the model needs", "add the row");
            return InputId::at(0);
        };
        if self.inputs[place].unit.kind() != kind {
            fault(
                id,
                "a unit of the kind that the model needs",
                &format!("`{}` is none; see the step that uses it", self.inputs[place].unit.text()),
            );
        }
        let id = InputId::at(place);
        self.used.borrow_mut().insert(id);
        id
    }

    /// The value of an input in base units.
    pub fn value(&self, id: InputId) -> f64 {
        let input = &self.inputs[id.index()];
        input.value * input.unit.base()
    }

    /// Every value in base units, by place.
    pub fn values(&self) -> Vec<f64> {
        (0..self.inputs.len()).map(|index| self.value(InputId::at(index))).collect()
    }

    /// The value of a row read as a choice of layout.
    pub fn choice<Q: Kind>(&self, id: &str) -> Q {
        let rate = self.rate::<Q>(id).formula();
        rate.value(&super::Activity::default(), &self.values_for(&rate))
    }

    fn values_for<Q: Kind>(&self, formula: &super::Formula<Q>) -> Vec<f64> {
        let last = formula.terms().0.iter().flat_map(|term| &term.inputs).map(|(id, _)| id.index()).max().unwrap_or(0);
        (0..=last).map(|index| self.value(InputId::at(index))).collect()
    }

    /// The rows whose id begins so.
    pub fn family(&self, stem: &str) -> Vec<String> {
        self.inputs.iter().filter(|input| input.id.starts_with(stem)).map(|input| input.id.clone()).collect()
    }

    /// The input at a place.
    pub fn input(&self, id: InputId) -> &Input {
        &self.inputs[id.index()]
    }

    /// The row of that id.
    pub fn row(&self, id: &str) -> Option<&Input> {
        self.inputs.iter().find(|input| input.id == id).map(AsRef::as_ref)
    }

    /// The same inputs asked for as of another book of the same tables.
    pub fn asked_as(self, other: &Self) -> Self {
        Self { used: other.used.clone(), ..self }
    }

    /// The inputs that a model asked for.
    pub fn used(&self) -> BTreeSet<InputId> {
        self.used.borrow().clone()
    }

    /// What the tables lacked.
    pub fn faults(&self) -> Vec<TableFault> {
        self.faults.borrow().clone()
    }
}

/// A fact of the order as an input.
fn stated(id: &str, item: &str, value: f64, unit: &str) -> Input {
    Input {
        id: id.to_owned(),
        item: item.to_owned(),
        unit: UnitText::read(unit).unwrap_or_else(|_| UnitText::pure()),
        value,
        centre: value,
        low: value,
        high: value,
        spread: Spread::Fixed,
        scope: Scope::Shop,
        grade: Grade::Own,
        source: "the order".to_owned(),
        place: String::new(),
        region: String::new(),
        year: String::new(),
        note: String::new(),
        origin: Origin::Order,
    }
}

/// A row with the shop's own value in its place.
fn overridden(tables: &Tables, order: &Order, own: &Override, row: &Input) -> Result<Input, OrderFault> {
    let wanted = || {
        let words = row.unit.words();
        if words.is_empty() { "a number without unit".to_owned() } else { format!("a value in {words}") }
    };
    let value = crate::order::read_with_unit(&own.text, &row.unit).ok_or_else(|| {
        let typed = format!("write it as `{}`", format!("{} {}", row.value, row.unit.typed()).trim_end());
        order.fault(&own.path, &format!("`{}`", own.text), &wanted(), &named_solvent::help(tables, own, row, typed))
    })?;
    let share = row.unit.text() == "1" && row.high <= 1.0;
    // Shares of a composition may be 0; other rows above 0 may stand below a fraction line.
    let reciprocal = row.low > 0.0 && !(share && row.spread == Spread::Fixed);
    let fits = value.is_finite() && value >= 0.0 && (!share || value <= 1.0) && (!reciprocal || value > 0.0);
    if !fits {
        let range = if share { "a share from 0 to 1" } else { "a value above 0" };
        return Err(order.fault(
            &own.path,
            &format!("`{}`", own.text),
            range,
            &format!("the table has `{}` (from {} to {})", format!("{} {}", row.value, row.unit.typed()).trim_end(), row.low, row.high),
        ));
    }
    Ok(Input {
        value,
        centre: value,
        low: value,
        high: value,
        spread: Spread::Fixed,
        grade: own.grade,
        source: "the order".to_owned(),
        place: own.path.clone(),
        region: String::new(),
        year: String::new(),
        note: if own.note.is_empty() { format!("in place of {} from `{}`", row.value, row.source) } else { own.note.clone() },
        origin: Origin::Override,
        ..row.clone()
    })
}
