//! What an order is varied over: its quantity, batch, colours, designs, life, or one input.
//!
//! - quantity: all lines in proportion, made to order: `stock = false`, one batch, new screens, never fewer signs than designs;
//! - batch: pieces of one design in one set-up, for lines made for stock;
//! - colours: the face keeps its ground; the rest is shared evenly by so many colours;
//! - designs: of each line, in proportion, never more than its signs;
//! - life: of the second alternative, the first keeping its own; always per m2 and year;
//! - an input: the same value for every alternative that does not state its own.

use std::rc::Rc;

use crate::factors::{Spread, Tables};
use crate::load::Per;
use crate::order::{Colour, Line, Order, jobs, offer};

/// What is varied.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Over {
    /// Signs in the order.
    Quantity,
    /// Pieces of one design in one set-up.
    Batch,
    /// Colours printed, or cut as film.
    Colours,
    /// Designs in the order.
    Designs,
    /// Years in service of the second alternative.
    Life,
    /// One input, by its id.
    Input(String),
}

/// What is varied, and over which values.
#[derive(Debug, Clone, PartialEq)]
pub struct Axis {
    /// What.
    pub over: Over,
    /// What a reader calls it.
    pub item: String,
    /// Its unit, empty where it is a number of things.
    pub unit: String,
    /// The values tried, rising.
    pub values: Vec<f64>,
    /// The order's own value; none where its lines differ in it.
    pub own: Option<f64>,
    /// Whether it takes whole numbers only.
    pub whole: bool,
}

/// Why something cannot be varied: what came, what was wanted, the way out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unvaried {
    /// What came.
    pub came: String,
    /// What was wanted.
    pub wanted: String,
    /// The way out.
    pub help: String,
}

/// The colours that a face is given, in this order.
pub const PALETTE: [Colour; 6] = [Colour::Black, Colour::Red, Colour::Blue, Colour::Green, Colour::Yellow, Colour::Brown];

/// How many values are tried on an axis.
pub const POINTS: usize = 41;

impl Over {
    /// The names beside the ids of inputs.
    pub const NAMES: [(&'static str, Self); 5] = [
        ("quantity", Self::Quantity),
        ("batch", Self::Batch),
        ("colours", Self::Colours),
        ("designs", Self::Designs),
        ("life", Self::Life),
    ];

    /// Reads a name, or the id of an input.
    pub fn read(text: &str, tables: &Tables) -> Result<Self, Unvaried> {
        if let Some((_, over)) = Self::NAMES.into_iter().find(|(name, _)| *name == text) {
            return Ok(over);
        }
        if tables.find(text).is_some() {
            return Ok(Self::Input(text.to_owned()));
        }
        let names = Self::NAMES.iter().map(|(name, _)| *name).chain(tables.inputs.iter().map(|input| input.id.as_str()));
        Err(Unvaried {
            came: format!("`{text}`"),
            wanted: "`quantity`, `batch`, `colours`, `designs`, `life` or the id of an input".to_owned(),
            help: offer(text, &names.collect::<Vec<_>>(), "`faceload drivers` lists the inputs that matter"),
        })
    }

    /// Its name.
    pub fn name(&self) -> &str {
        match self {
            Self::Input(id) => id,
            other => Self::NAMES.iter().find(|(_, over)| over == other).map_or("", |(name, _)| name),
        }
    }

    /// Per what loads are compared.
    pub fn per(&self, per: Per) -> Per {
        if *self == Self::Life { Per::M2Year } else { per }
    }

    /// The axis on an order, from its own range or a given one, with so many values.
    pub fn axis(&self, order: &Order, tables: &Tables, given: Option<(f64, f64)>, points: usize) -> Result<Axis, Unvaried> {
        let lines: Vec<Line> = jobs(&order.lines).into_iter().map(|job| job.line).collect();
        let total: u64 = lines.iter().map(|line| u64::from(line.quantity)).sum();
        let designs: u64 = lines.iter().map(|line| u64::from(line.designs)).sum();
        let alike = |of: &dyn Fn(&Line) -> f64| {
            let first = lines.first().map(of)?;
            lines.iter().all(|line| of(line) == first).then_some(first)
        };
        let largest = |at_least: f64| given.map_or(at_least, |(_, to)| to);
        let (item, unit, whole, own, from, to) = match self {
            Self::Quantity => {
                ("signs in the order", "", true, Some(total as f64), designs as f64, largest(10_000_f64.max(4.0 * total as f64)))
            }
            Self::Batch => (
                "pieces of one design in a set-up",
                "",
                true,
                alike(&|line| line.batch.map_or_else(|| per_design(line), f64::from)),
                1.0,
                largest(1_000.0),
            ),
            Self::Colours => ("colours on the ground", "", true, alike(&|line| line.colours.len().saturating_sub(1) as f64), 1.0, 6.0),
            Self::Designs => ("designs in the order", "", true, Some(designs as f64), lines.len() as f64, total as f64),
            Self::Life => ("years in service of the second", "years", false, None, 1.0, 30.0),
            Self::Input(id) => return input_axis(id, order, tables, given, points),
        };
        let (from, to) = range(given, (from, to), whole)?;
        let values = if whole { whole_numbers(from, to, points) } else { evenly(from, to, points) };
        Ok(Axis { over: self.clone(), item: item.to_owned(), unit: unit.to_owned(), values, own, whole })
    }

    /// The order with another value of what is varied; `second` is the id of the alternative whose life varies.
    pub fn applied(&self, order: &Order, value: f64, second: &str) -> Order {
        let mut order = order.clone();
        match self {
            Self::Life => {
                for alternative in order.alternatives.iter_mut().filter(|alternative| alternative.id == second) {
                    alternative.life = Some(value);
                }
            }
            Self::Input(id) => order.held.push((id.clone(), value)),
            lines_of => {
                let mut lines: Vec<Line> = jobs(&order.lines).into_iter().map(|job| job.line).collect();
                lines_of.vary(&mut lines, value);
                order.lines = Rc::new(lines);
            }
        }
        order
    }

    fn vary(&self, lines: &mut [Line], value: f64) {
        let total: u64 = lines.iter().map(|line| u64::from(line.quantity)).sum();
        let designs: u64 = lines.iter().map(|line| u64::from(line.designs)).sum();
        let part = |of: u32, whole: u64| (f64::from(of) * value / whole as f64).round().clamp(1.0, 1e9) as u32;
        for line in lines {
            match self {
                Self::Quantity => {
                    line.quantity = part(line.quantity, total).max(line.designs);
                    line.batch = None;
                    line.kept &= !line.stock;
                    line.stock = false;
                }
                Self::Batch => {
                    line.batch = Some(value as u32);
                    line.stock = true;
                }
                Self::Designs => line.designs = part(line.designs, designs).min(line.quantity),
                Self::Colours => recolour(line, value as usize),
                Self::Life | Self::Input(_) => {}
            }
        }
    }
}

fn per_design(line: &Line) -> f64 {
    (f64::from(line.quantity) / f64::from(line.designs)).ceil()
}

/// The face keeps its largest colour that is sold as sheeting; the rest is shared by so many others.
fn recolour(line: &mut Line, number: usize) {
    let ground = line.colours.iter().filter(|(colour, _)| colour.is_sold_as_base()).max_by(|a, b| a.1.total_cmp(b.1));
    let (ground, share) = ground.map_or((Colour::White, 0.5), |(colour, share)| (*colour, *share));
    let printed: Vec<Colour> = PALETTE.into_iter().filter(|colour| *colour != ground).take(number.max(1)).collect();
    let each = (1.0 - share) / printed.len() as f64;
    line.colours = printed.iter().map(|colour| (*colour, each)).chain([(ground, share)]).collect();
    line.shared.retain(|colour| printed.contains(colour));
    if line.rim != ground {
        line.rim = printed[0];
    }
}

fn input_axis(id: &str, order: &Order, tables: &Tables, given: Option<(f64, f64)>, points: usize) -> Result<Axis, Unvaried> {
    let Some(place) = tables.find(id) else {
        return Over::read(id, tables).and(Err(Unvaried { came: format!("`{id}`"), wanted: "an input".to_owned(), help: String::new() }));
    };
    let row = &tables.inputs[place];
    if row.spread == Spread::Fixed && given.is_none() {
        return Err(Unvaried {
            came: format!("`{id}`, which is fixed"),
            wanted: "an input that has a range".to_owned(),
            help: "give the range: `--from` and `--to`".to_owned(),
        });
    }
    let (low, high) = row.bounds();
    let ends = row.ends();
    let (from, to) = range(given, (low.min(ends.0), high.max(ends.1)), false)?;
    let own = order.moved.iter().find(|(moved, _)| moved == id).map_or(row.value, |(_, value)| *value);
    let values = if row.spread == Spread::Lognormal && from > 0.0 { in_ratio(from, to, points) } else { evenly(from, to, points) };
    Ok(Axis { over: Over::Input(id.to_owned()), item: row.item.clone(), unit: row.unit.words(), values, own: Some(own), whole: false })
}

fn range(given: Option<(f64, f64)>, own: (f64, f64), whole: bool) -> Result<(f64, f64), Unvaried> {
    let (from, to) = given.unwrap_or(own);
    let least = if whole { 1.0 } else { 0.0 };
    let fault = |came: String, wanted: &str, help: &str| Err(Unvaried { came, wanted: wanted.to_owned(), help: help.to_owned() });
    if !(from.is_finite() && to.is_finite()) || from < least || to > 1e9 {
        return fault(format!("a range from {from} to {to}"), &format!("numbers from {least} to 1e9"), "give other ends");
    }
    if to < from || (given.is_some() && to == from) {
        return fault(format!("a range from {from} to {to}"), "one that ends after it starts", "turn `--from` and `--to` round");
    }
    Ok((from, to))
}

/// Whole numbers in about even ratios.
fn whole_numbers(from: f64, to: f64, points: usize) -> Vec<f64> {
    let (from, to) = (from.ceil(), to.floor());
    if to - from < points as f64 {
        return (0..).map(|step| from + f64::from(step)).take_while(|value| *value <= to).collect();
    }
    let mut values: Vec<f64> = in_ratio(from, to, points).into_iter().map(f64::round).collect();
    values.dedup();
    values
}

fn in_ratio(from: f64, to: f64, points: usize) -> Vec<f64> {
    let step = crate::quantity::ln(to / from) / (points - 1) as f64;
    let mut values: Vec<f64> = (0..points).map(|point| from * crate::quantity::exp(step * point as f64)).collect();
    values[points - 1] = to;
    values
}

fn evenly(from: f64, to: f64, points: usize) -> Vec<f64> {
    (0..points).map(|point| from + (to - from) * point as f64 / (points - 1) as f64).collect()
}
