//! Orders made up by chance: every one is valid; many hold lines that not every route can make.

use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::shop::tables;
use faceload_core::factors::{Carried, Scope, Spread};

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
    /// What it is put on, and how many thousandths of an inch thick that is; 0: no blank.
    pub blank: (&'static str, u32),
    /// Eighths of an inch cut round legend and border of a face.
    pub cut: Option<u32>,
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
        if let Some(cut) = self.cut {
            text += &format!(r#","cut_length":"{}""#, units.write(cut, 8));
        }
        let blank = match self.blank {
            (_, 0) => "none".to_owned(),
            (stuff, thickness) => format!("{stuff} {}", units.write(thickness, 1_000)),
        };
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
        perhaps(&["", "", r#","shared_colours":["black","green"]"#, r#","shared_colours":["red"]"#]),
        perhaps(&["", "", r#","characters":0"#, r#","characters":9"#]),
        perhaps(&["", "", "", r#","not":{"digital-printing":"agency specification"}"#, r#","not":{"overlay-film":"no plotter"}"#]),
    );
    let quantity = prop_oneof![1_u32..=12, 13_u32..=400];
    let counts = (quantity, 0.0_f64..1.0, proptest::option::of(1_u32..=500), proptest::option::of(any::<bool>()));
    // Every tenth face or so is too large for one route or another.
    let side = || prop_oneof![6 => 24_u32..=128, 1 => 129_u32..=260];
    let blank = select(vec![("none", 0), ("aluminium", 63_u32), ("aluminium", 80), ("aluminium", 125), ("panels", 125)]);
    let lengths = (side(), side(), proptest::option::of(0_u32..=12), blank, proptest::option::of(40_u32..=9_000));
    (face(), lengths, counts, rest).prop_map(|(face, (width, height, corner, blank, cut), (quantity, designs, batch, stock), rest)| {
        MadeUpLine {
            size: (width, face.two_sizes.then_some(height)),
            corner: corner.filter(|_| face.rounded),
            face: face.text,
            quantity,
            designs: 1 + (f64::from(quantity - 1) * designs * designs) as u32,
            batch,
            stock,
            blank,
            cut,
            rest: format!("{}{}{}{}{}{}{}{}", rest.0, rest.1, rest.2, rest.3, rest.4, rest.5, rest.6, rest.7),
        }
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

/// Every way to make a face: route, ink, drying, overlay.
const WAYS: &[&str] = &[
    r#""route":"screen-printing","ink":"solvent""#,
    r#""route":"screen-printing","ink":"solvent","drying":"rack""#,
    r#""route":"screen-printing","ink":"uv""#,
    r#""route":"screen-printing","ink":"uv","drying":"uv-led""#,
    r#""route":"screen-printing","ink":"water","drying":"oven""#,
    r#""route":"screen-printing","ink":"water","drying":"rack""#,
    r#""route":"overlay-film""#,
    r#""route":"direct-applied""#,
    r#""route":"digital-printing","ink":"solvent""#,
    r#""route":"digital-printing","ink":"uv","overlay":true"#,
    r#""route":"digital-printing","ink":"resin""#,
    r#""route":"digital-printing","ink":"solvent","overlay":false"#,
];

/// An alternative, without its id and its `otherwise`.
fn alternative() -> impl Strategy<Value = String> {
    let overrides = proptest::collection::vec(with(), 0..=2);
    let liners = (perhaps(&["", "", r#","sheeting_liner":"pet""#]), perhaps(&["", "", r#","film_liner":"pet""#]));
    (perhaps(WAYS), liners, proptest::option::of(1_u32..=30), overrides).prop_map(|(way, liners, life, mut with)| {
        // Two values for one row would be one key twice.
        with.sort();
        with.dedup_by_key(|text| text.split(':').next().unwrap_or_default().to_owned());
        let life = life.map_or(String::new(), |years| format!(r#","life":"{years} years""#));
        format!(r#"{way}{}{}{life},"with":{{{}}}"#, liners.0, liners.1, with.join(","))
    })
}

fn named(alternatives: &[String]) -> Vec<String> {
    alternatives.iter().enumerate().map(|(index, text)| format!(r#"{{"id":"way {}",{text}}}"#, index + 1)).collect()
}

/// An alternative for every way to make a face, at the values of the tables.
pub fn every_way() -> Vec<String> {
    named(&WAYS.iter().map(|way| (*way).to_owned()).collect::<Vec<_>>())
}

/// Alternatives of which each may hand on to one behind it, so that no chain comes back; turned
/// round, to one before it.
fn alternatives() -> impl Strategy<Value = Vec<String>> {
    let one = (alternative(), proptest::option::of(1_usize..=3));
    (proptest::collection::vec(one, 1..=4), any::<bool>()).prop_map(|(ways, turned)| {
        let last = ways.len() - 1;
        let place = |index: usize| if turned { last - index } else { index };
        let mut texts = vec![String::new(); ways.len()];
        for (index, (text, further)) in ways.iter().enumerate() {
            let otherwise = further.map(|further| index + further).filter(|next| *next <= last);
            let otherwise = otherwise.map_or(String::new(), |next| format!(r#","otherwise":"way {}""#, place(next) + 1));
            texts[place(index)] = format!("{text}{otherwise}");
        }
        named(&texts)
    })
}

/// What stands above the lines.
fn head() -> impl Strategy<Value = String> {
    let areas: Vec<String> = tables().carriers_of(Carried::Electricity).into_iter().map(|area| area.id.clone()).collect();
    let site = (select(areas), 0_u32..=6_000, any::<bool>(), proptest::option::of(0_u32..=500), proptest::option::of(0_u32..=200));
    let site = site.prop_map(|(area, degree_days, voc_rule, delivery, visit)| {
        let km = |key: &str, distance: Option<u32>| distance.map_or(String::new(), |km| format!(r#","{key}":"{km} km""#));
        format!(
            r#""electricity":"{area}","degree_days":"{degree_days} K.d","voc_rule":{voc_rule}{}{}"#,
            km("delivery", delivery),
            km("visit", visit)
        )
    });
    let end = perhaps(&["", "", r#""end_of_life":"reused","#, r#""end_of_life":"landfilled","#]);
    (site, select(vec!["AR4", "AR5", "AR6"]), any::<bool>(), 1_u32..=30, end).prop_map(|(site, gwp, oxidised, life, end)| {
        format!(r#""site":{{{site}}},"gwp":"{gwp}","voc_oxidised":{oxidised},"life":"{life} years",{end}"#)
    })
}

/// An order of one to four lines, with the default alternatives or one to four of its own.
pub fn order() -> impl Strategy<Value = MadeUp> {
    let alternatives = prop_oneof![1 => Just(Vec::new()), 2 => alternatives()];
    (proptest::collection::vec(line(), 1..=4), head(), alternatives).prop_map(|(lines, head, alternatives)| MadeUp {
        lines,
        head,
        alternatives,
    })
}

/// An order whose two alternatives are the same but for their ids.
pub fn order_of_equals() -> impl Strategy<Value = MadeUp> {
    (order(), alternative(), alternative(), any::<bool>()).prop_map(|(order, alternative, third, further)| {
        let otherwise = if further { r#","otherwise":"way 3""# } else { "" };
        let equal = format!("{alternative}{otherwise}");
        MadeUp { alternatives: named(&[equal.clone(), equal, third]), ..order }
    })
}
