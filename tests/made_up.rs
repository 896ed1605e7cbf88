//! Orders made up by chance: every one is valid; some hold lines that not every route can make.

use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::shop::tables;
use faceload_core::factors::{Scope, Spread};

/// In which units lengths are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Units {
    /// Inches.
    Inches,
    /// Millimetres.
    Millimetres,
}

/// A line of an order: what it shows, and how it is made.
#[derive(Debug, Clone)]
pub struct MadeUpLine {
    /// `"code":…`, or shape, colours and rim.
    pub face: String,
    /// Quarters of an inch; one number where the shape or code gives the height.
    pub size: (u32, Option<u32>),
    /// Eighths of an inch.
    pub corner: Option<u32>,
    /// Signs.
    pub quantity: u32,
    /// Designs, at most the quantity.
    pub designs: u32,
    /// Pieces of one design in one set-up.
    pub batch: Option<u32>,
    /// Whether it is made for stock.
    pub stock: Option<bool>,
    /// Thousandths of an inch of aluminium, or none.
    pub blank: Option<u32>,
    /// The rest, which has no length in it.
    pub rest: String,
}

/// An order.
#[derive(Debug, Clone)]
pub struct MadeUp {
    /// Its lines.
    pub lines: Vec<MadeUpLine>,
    /// Everything above the lines.
    pub head: String,
    /// Its alternatives, or none: the default ones.
    pub alternatives: Vec<String>,
}

impl Units {
    /// A length of so many parts of an inch, exactly.
    fn write(self, parts: u32, of: u32) -> String {
        match self {
            Self::Inches => format!("{} in", f64::from(parts) / f64::from(of)),
            Self::Millimetres => {
                let nanometres = u64::from(parts) * 25_400_000 / u64::from(of);
                format!("{}.{:06} mm", nanometres / 1_000_000, nanometres % 1_000_000)
            }
        }
    }
}

impl MadeUpLine {
    fn text(&self, units: Units) -> String {
        let mut text = self.face.clone();
        let width = units.write(self.size.0, 4);
        match self.size.1 {
            Some(height) => text += &format!(r#","width":"{width}","height":"{}""#, units.write(height, 4)),
            None => text += &format!(r#","size":"{width}""#),
        }
        if let Some(corner) = self.corner {
            text += &format!(r#","corner":"{}""#, units.write(corner, 8));
        }
        let blank = self.blank.map_or("none".to_owned(), |thickness| format!("aluminium {}", units.write(thickness, 1_000)));
        text += &format!(r#","quantity":{},"designs":{},"blank":"{blank}""#, self.quantity, self.designs);
        if let Some(batch) = self.batch {
            text += &format!(r#","batch":{batch}"#);
        }
        if let Some(stock) = self.stock {
            text += &format!(r#","stock":{stock}"#);
        }
        format!("{{{text}{}}}", self.rest)
    }
}

impl MadeUp {
    /// The order as JSON.
    pub fn text(&self, units: Units) -> String {
        let lines: Vec<String> = self.lines.iter().map(|line| line.text(units)).collect();
        let mut text = format!(r#"{{"schema_version":1,{}"line":[{}]"#, self.head, lines.join(","));
        if !self.alternatives.is_empty() {
            text += &format!(r#","alternative":[{}]"#, self.alternatives.join(","));
        }
        text + "}"
    }

    /// The order in inches.
    pub fn inches(&self) -> String {
        self.text(Units::Inches)
    }

    /// The same order with its lines changed.
    pub fn with_lines(&self, change: impl Fn(&mut MadeUpLine)) -> Self {
        let mut other = self.clone();
        other.lines.iter_mut().for_each(change);
        other
    }
}

/// One of these, or nothing.
fn perhaps(texts: &'static [&'static str]) -> impl Strategy<Value = String> {
    select(texts).prop_map(str::to_owned)
}

/// A face: its text, whether it takes width and height, and whether its corners may be rounded.
#[derive(Debug, Clone)]
struct Face {
    text: String,
    two_sizes: bool,
    rounded: bool,
}

/// Shape, colours and rim of a sign without a code; or its code.
fn face() -> impl Strategy<Value = Face> {
    let codes: Vec<String> = tables().signs.keys().cloned().collect();
    let coded = select(codes).prop_map(|code| Face { text: format!(r#""code":"{code}""#), two_sizes: false, rounded: false });
    let shapes = ["square", "diamond", "octagon", "triangle", "disc", "shield", "rectangle", "pentagon"];
    let colours = ["red", "black", "blue", "green", "yellow", "orange", "brown", "fluorescent yellow-green"];
    let drawn = (select(shapes.to_vec()), subsequence(colours.to_vec(), 1..=3), 5_u32..=30, perhaps(&["", "", "red", "white", "black"]));
    let drawn = drawn.prop_map(|(shape, colours, share, rim)| {
        let colours: Vec<String> = colours.iter().map(|colour| format!(r#""{colour}":"{share} %""#)).collect();
        let rim = if rim.is_empty() { String::new() } else { format!(r#","rim":"{rim}""#) };
        let text = format!(r#""shape":"{shape}","colours":{{{}}}{rim}"#, colours.join(","));
        Face { text, two_sizes: matches!(shape, "rectangle" | "pentagon"), rounded: !matches!(shape, "disc" | "pentagon" | "shield") }
    });
    prop_oneof![coded, drawn]
}

/// A line.
pub fn line() -> impl Strategy<Value = MadeUpLine> {
    let rest = (
        perhaps(&["", "", r#","sides":2"#]),
        perhaps(&["", r#","sheeting":"beaded""#]),
        perhaps(&["", "", r#","screens":"new""#, r#","screens":"kept""#]),
        perhaps(&["", "", "", r#","base":"white""#, r#","base":"any""#]),
        perhaps(&["", "", r#","artwork":"one""#]),
    );
    let quantity = prop_oneof![1_u32..=12, 13_u32..=400];
    let counts = (quantity, 0.0_f64..1.0, proptest::option::of(1_u32..=500), proptest::option::of(any::<bool>()));
    let lengths = (24_u32..=128, 24_u32..=160, proptest::option::of(0_u32..=12), proptest::option::of(select(vec![63_u32, 80, 100, 125])));
    (face(), lengths, counts, rest).prop_map(|(face, (width, height, corner, blank), (quantity, designs, batch, stock), rest)| MadeUpLine {
        size: (width, face.two_sizes.then_some(height)),
        corner: corner.filter(|_| face.rounded),
        face: face.text,
        quantity,
        designs: 1 + (f64::from(quantity - 1) * designs * designs) as u32,
        batch,
        stock,
        blank,
        rest: format!("{}{}{}{}{}", rest.0, rest.1, rest.2, rest.3, rest.4),
    })
}

/// A value of this shop in place of a row, somewhere in the row's range.
fn with() -> impl Strategy<Value = String> {
    let rows: Vec<_> = tables().inputs.iter().filter(|row| row.spread != Spread::Fixed && row.scope != Scope::Choice).cloned().collect();
    (select(rows), 0.0_f64..=1.0).prop_map(|(row, part)| {
        let value = (row.low + (row.high - row.low) * part).clamp(row.low, row.high);
        let unit = if row.unit.text() == "1" { "" } else { row.unit.text() };
        format!(r#""{}":"{value} {unit}""#, row.id)
    })
}

/// An alternative, without its id.
fn alternative() -> impl Strategy<Value = String> {
    let route = select(vec!["screen-printing", "digital-printing"]);
    let overrides = proptest::collection::vec(with(), 0..=2);
    (route, select(vec!["solvent", "uv"]), any::<bool>(), proptest::option::of(1_u32..=30), overrides).prop_map(
        |(route, ink, overlay, life, mut with)| {
            // Two values for one row would be one key twice.
            with.sort();
            with.dedup_by_key(|text| text.split(':').next().unwrap_or_default().to_owned());
            let life = life.map_or(String::new(), |years| format!(r#","life":"{years} years""#));
            format!(r#""route":"{route}","ink":"{ink}","overlay":{overlay}{life},"with":{{{}}}"#, with.join(","))
        },
    )
}

fn named(alternatives: Vec<String>) -> Vec<String> {
    alternatives.iter().enumerate().map(|(index, text)| format!(r#"{{"id":"way {}",{text}}}"#, index + 1)).collect()
}

/// What stands above the lines.
fn head() -> impl Strategy<Value = String> {
    let areas: Vec<String> = tables()
        .inputs
        .iter()
        .filter_map(|row| row.id.strip_prefix("electricity.")?.strip_suffix(".co2e.co2"))
        .map(|area| area.replacen('-', ".", 1))
        .collect();
    let site = (select(areas), 0_u32..=6_000, any::<bool>(), proptest::option::of(0_u32..=500), proptest::option::of(0_u32..=200));
    let site = site.prop_map(|(area, degree_days, voc_rule, delivery, visit)| {
        let km = |key: &str, distance: Option<u32>| distance.map_or(String::new(), |km| format!(r#","{key}":"{km} km""#));
        format!(
            r#""electricity":"{area}","degree_days":"{degree_days} K.d","voc_rule":{voc_rule}{}{}"#,
            km("delivery", delivery),
            km("visit", visit)
        )
    });
    (site, select(vec!["AR4", "AR5", "AR6"]), any::<bool>(), 1_u32..=30).prop_map(|(site, gwp, oxidised, life)| {
        format!(r#""site":{{{site}}},"gwp":"{gwp}","voc_oxidised":{oxidised},"life":"{life} years","#)
    })
}

/// An order of one to four lines, with the default alternatives or one to three of its own.
pub fn order() -> impl Strategy<Value = MadeUp> {
    let alternatives = prop_oneof![Just(Vec::new()), proptest::collection::vec(alternative(), 1..=3)];
    (proptest::collection::vec(line(), 1..=4), head(), alternatives).prop_map(|(lines, head, alternatives)| MadeUp {
        lines,
        head,
        alternatives: named(alternatives),
    })
}

/// An order whose two alternatives are the same but for their ids.
pub fn order_of_equals() -> impl Strategy<Value = MadeUp> {
    (order(), alternative())
        .prop_map(|(order, alternative)| MadeUp { alternatives: named(vec![alternative.clone(), alternative]), ..order })
}
