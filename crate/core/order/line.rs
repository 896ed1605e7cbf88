//! A line of the order: so many signs of one size and design.

use std::collections::BTreeMap;

use serde_json::Value;

use super::fields::{Bounds, Fields, list, offer, quoted, shown};
use super::rows::colours;
use super::{Colour, Document, OrderFault, RouteName, Shape};
use crate::factors::{Legend, SignRow, Tables};
use crate::quantity::{FaceArea, Span, read_number};

/// The construction of the sheeting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Sheeting {
    Prismatic,
    Beaded,
}

/// The colour of sheeting a face must be made on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Base {
    /// Whatever suits the route.
    Any,
    /// This colour, bought as sheeting.
    Of(Colour),
}

/// What the face is put on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Blank {
    /// Flat aluminium of this thickness.
    Aluminium(Span),
    /// Extruded aluminium panels, the sheeting wrapped round their edges.
    Panels,
    /// None: the face alone.
    None,
}

/// A line, understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Its label, for people.
    pub label: String,
    /// Its sign code, where it has one.
    pub code: Option<String>,
    /// What the code is called, or the shape.
    pub item: String,
    /// Its shape.
    pub shape: Shape,
    /// Its width.
    pub width: Span,
    /// Its height.
    pub height: Span,
    /// The radius of its corners.
    pub corner: Span,
    /// Its size as written.
    pub size: String,
    /// Its colours with their share of the face, white included.
    pub colours: BTreeMap<Colour, f64>,
    /// The colour at its edge.
    pub rim: Colour,
    /// How many signs.
    pub quantity: u32,
    /// How many designs they show.
    pub designs: u32,
    /// Faces on one blank.
    pub sides: u32,
    /// Pieces of one design in one set-up, where stated.
    pub batch: Option<u32>,
    /// Whether it is made for stock: set-ups charged pro rata.
    pub stock: bool,
    /// Whether its screens are kept.
    pub kept: bool,
    /// The construction of its sheeting.
    pub sheeting: Sheeting,
    /// The colour it must be made on.
    pub base: Base,
    /// Its blank.
    pub blank: Blank,
    /// Colours whose artwork all designs share: one screen for all of them.
    pub shared: Vec<Colour>,
    /// The length cut round legend and border of one face, where known.
    pub cut_length: Option<Span>,
    /// Characters on one face, where known.
    pub characters: Option<u32>,
    /// How many legends its code stands for; one where it has no code.
    pub legend: Legend,
    /// Height over width of its code, where it has one.
    pub proportion: Option<f64>,
    /// The artwork it shows, where named.
    pub artwork: Option<String>,
    /// Routes ruled out, with the reason.
    pub not: BTreeMap<RouteName, String>,
}

impl Line {
    /// The area of one face.
    pub fn face(&self) -> FaceArea {
        self.shape.face(self.width, self.height, self.corner)
    }
}

/// Reads one line.
pub(super) fn read(document: &Document, path: &str, value: &Value, tables: &Tables, faults: &mut Vec<OrderFault>) -> Option<Line> {
    let before = faults.len();
    let mut fields = Fields::new(document, path, value, faults);
    let label = fields.label("label");
    let code = fields.text("code");
    let row = code.as_deref().and_then(|code| tables.signs.get(code));
    if let (Some(code), None) = (&code, row) {
        let known: Vec<&str> = tables.signs.keys().map(String::as_str).collect();
        let help = offer(code, &known, "leave the code out and give shape, size and colours");
        fields.refuse("code", &quoted(code), &format!("a sign code measured so far ({})", list(&known)), &help);
    }
    let shape = fields
        .word("shape", &Shape::ALL)
        .or_else(|| Shape::ALL.iter().find(|(name, _)| row.is_some_and(|row| row.shape == *name)).map(|(_, shape)| *shape));
    let (width, height, size) = read_size(&mut fields, shape, row);
    let corner = fields
        .length("corner", Bounds::new(0, 500_000_000, "from 0 mm to 500 mm"))
        .or_else(|| Some(Span::from_metres(width?.metres() * row?.corner_over_width)))
        .unwrap_or_default();
    if let (Some(shape), Some(width), Some(height), true) = (shape, width, height, fields.get("corner").is_some()) {
        match shape.largest_corner(width, height) {
            None => fields.refuse("corner", "a corner radius", &format!("no corner radius on a {}", shape.name()), "take it out"),
            Some(most) if corner > most => {
                let wanted = format!("a radius of at most {} mm for this size", most.count() / 1_000_000);
                fields.refuse("corner", "a corner larger than its face", &wanted, "give a smaller radius");
            }
            Some(_) => {}
        }
    }
    let quantity = fields.whole("quantity", 1, 1_000_000, "say how many signs are made");
    if fields.get("quantity").is_none() {
        fields.refuse("quantity", "nothing", "a whole number from 1 on", "say how many signs are made");
    }
    let designs = fields.whole("designs", 1, 1_000_000, "say how many designs the signs show").unwrap_or(1);
    if quantity.is_some_and(|quantity| designs > quantity) {
        fields.refuse(
            "designs",
            &format!("`{designs}`"),
            &format!("at most the quantity, {}", quantity.unwrap_or(0)),
            "each sign shows one design",
        );
    }
    let sides = fields.whole("sides", 1, 2, "a blank has one face or two").unwrap_or(1);
    let batch = fields.whole("batch", 1, 1_000_000, "say how many pieces of one design are made in one set-up");
    let stock = fields.flag("stock").unwrap_or(code.is_some());
    let kept = fields.word("screens", &[("new", false), ("kept", true)]).unwrap_or(stock);
    let sheeting =
        fields.word("sheeting", &[("prismatic", Sheeting::Prismatic), ("beaded", Sheeting::Beaded)]).unwrap_or(Sheeting::Prismatic);
    let base = read_base(&mut fields);
    let blank = read_blank(&mut fields);
    let artwork = fields.label("artwork");
    let cut_length =
        fields.length("cut_length", Bounds::new(10_000_000, 1_000_000_000_000, "from 10 mm to 1 km")).or_else(|| cut_of_code(row?, width?));
    let characters = fields.whole("characters", 0, 1_000, "say how many characters one face shows").or(row.and_then(|row| row.characters));
    let shared = read_shared(&mut fields);
    let colours = fields.get("colours").map(|value| (fields.path("colours"), value));
    let rim = fields.word("rim", &Colour::ALL).or_else(|| Colour::read(&row?.rim));
    let not = fields.get("not").map(|value| (fields.path("not"), value));
    if shape.is_none() && fields.get("shape").is_none() && code.is_none() {
        fields.refuse("shape", "nothing", &list(&Shape::ALL.map(|(name, _)| name)), "give a shape, or a sign code");
    }
    if colours.is_none() && code.is_none() {
        fields.refuse(
            "colours",
            "nothing",
            "colours with their share of the face",
            "write `colours = { red = \"76 %\", white = \"24 %\" }`, or give a sign code",
        );
    }
    fields.finish();
    let colours = match colours {
        Some((path, value)) => read_colours(document, &path, value, faults),
        None => row.map(|row| {
            let mut colours = BTreeMap::new();
            colours.extend(row.colours.iter().filter_map(|(name, share)| Some((Colour::read(name)?, share / 100.0))));
            colours
        }),
    };
    let not = not.map(|(path, value)| read_not(document, &path, value, faults)).unwrap_or_default();
    if faults.len() > before {
        return None;
    }
    let colours = colours?;
    let most = colours.iter().max_by(|a, b| a.1.total_cmp(b.1)).map(|(colour, _)| *colour)?;
    let item = row.map_or_else(|| shape.map(|shape| shape.name().to_owned()), |row| Some(row.item.clone()))?;
    Some(Line {
        label: label.unwrap_or_else(|| item.clone()),
        code,
        item,
        shape: shape?,
        width: width?,
        height: height?,
        corner,
        size,
        rim: rim.unwrap_or(most),
        colours,
        quantity: quantity?,
        designs,
        sides,
        batch,
        stock,
        kept,
        sheeting,
        base,
        blank,
        legend: row.map_or(Legend::One, |row| row.legend),
        proportion: row.map(|row| row.height_over_width),
        shared,
        cut_length,
        characters,
        artwork,
        not,
    })
}

/// Width and height: `size = "30 in"`, `size = "24 x 30 in"`, or each by itself.
fn read_size(fields: &mut Fields<'_, '_>, shape: Option<Shape>, row: Option<&SignRow>) -> (Option<Span>, Option<Span>, String) {
    const SIZE: Bounds = Bounds::new(50_000_000, 12_000_000_000, "from 50 mm to 12 m");
    let Some(size) = fields.text("size") else {
        let width = fields.length("width", SIZE);
        let height = fields.length("height", SIZE).or(width.filter(|_| shape.is_some_and(Shape::is_as_high_as_wide)));
        if width.is_none() && fields.get("width").is_none() {
            fields.refuse("size", "nothing", "a size such as `30 in`", "give size, or width and height");
        } else if height.is_none() && fields.get("height").is_none() {
            fields.refuse("height", "nothing", "a height", "a rectangle needs both width and height");
        }
        let written = [fields.text("width"), fields.text("height")].into_iter().flatten().collect::<Vec<_>>().join(" x ");
        return (width, height, written);
    };
    for key in ["width", "height"] {
        if fields.get(key).is_some() {
            fields.refuse(key, "a width or height beside `size`", "one of the two", "keep `size`, or `width` and `height`");
        }
    }
    let parts: Vec<&str> = size.split(['x', 'X', '\u{d7}']).map(str::trim).collect();
    if let [width, height] = parts[..] {
        let unit: String = height.chars().skip_while(|c| c.is_ascii_digit() || matches!(c, '.' | ' ')).collect();
        let width = if width.ends_with(|c: char| c.is_ascii_digit()) { format!("{width} {unit}") } else { width.to_owned() };
        return (fields.length_of("size", &width, &size, SIZE), fields.length_of("size", height, &size, SIZE), size.clone());
    }
    let width = fields.length_of("size", &size, &size, SIZE);
    let ratio = row.map(|row| row.height_over_width).or(shape.filter(|shape| shape.is_as_high_as_wide()).map(|_| 1.0));
    if ratio.is_none() && width.is_some() && shape.is_some() {
        fields.refuse("size", &quoted(&size), "width and height", "write `24 x 30 in`");
    }
    (width, width.and_then(|width| Some(Span::nanometres((width.count() as f64 * ratio?).round() as i64))), size)
}

/// The cut length measured on a code's artwork, for this size of it.
fn cut_of_code(row: &SignRow, width: Span) -> Option<Span> {
    let (length, at) = row.cut?;
    Some(Span::from_metres(length * width.metres() / at))
}

/// The colours that all designs share.
fn read_shared(fields: &mut Fields<'_, '_>) -> Vec<Colour> {
    let Some(value) = fields.get("shared_colours") else { return Vec::new() };
    let names: Vec<&str> = Colour::ALL.iter().map(|(name, _)| *name).collect();
    let mut shared = Vec::new();
    for one in value.as_array().into_iter().flatten() {
        match one.as_str().and_then(Colour::read) {
            Some(colour) => shared.push(colour),
            None => {
                let text = one.as_str().unwrap_or_default();
                fields.refuse(
                    "shared_colours",
                    &shown(one),
                    "colours of sign faces",
                    &offer(text, &names, &format!("use {}", list(&names))),
                );
            }
        }
    }
    if shared.is_empty() && !value.is_array() {
        fields.refuse("shared_colours", "no list", "a list of colours", "write `[\"blue\", \"yellow\"]`");
    }
    shared
}

fn read_base(fields: &mut Fields<'_, '_>) -> Base {
    let Some(text) = fields.text("base") else { return Base::Any };
    if text == "any" {
        return Base::Any;
    }
    match Colour::read(&text).filter(|colour| colour.is_sold_as_base()) {
        Some(colour) => Base::Of(colour),
        None => {
            let names: Vec<&str> = ["any"]
                .into_iter()
                .chain(Colour::ALL.iter().filter(|(_, colour)| colour.is_sold_as_base()).map(|(name, _)| *name))
                .collect();
            fields.refuse("base", &quoted(&text), &list(&names), &offer(&text, &names, "use a colour sold as sheeting"));
            Base::Any
        }
    }
}

fn read_blank(fields: &mut Fields<'_, '_>) -> Blank {
    let text = fields.text("blank").unwrap_or_else(|| "aluminium 0.080 in".to_owned());
    let span = |text: &str| Span::read(text).ok().filter(|span| (Span::nanometres(200_000)..=Span::nanometres(20_000_000)).contains(span));
    match text.split_once(' ') {
        Some(("panels", thickness)) if span(thickness).is_some() => Blank::Panels,
        Some(("aluminium", thickness)) if span(thickness).is_some() => Blank::Aluminium(span(thickness).unwrap_or_default()),
        None if text == "none" => Blank::None,
        _ => {
            fields.refuse(
                "blank",
                &quoted(&text),
                "`aluminium` or `panels` with its thickness from 0.2 mm to 20 mm, or `none`",
                "write `aluminium 0.080 in` or `panels 0.125 in`",
            );
            Blank::None
        }
    }
}

fn read_colours(document: &Document, path: &str, value: &Value, faults: &mut Vec<OrderFault>) -> Option<BTreeMap<Colour, f64>> {
    let mut refuse = |field: String, came: String, wanted: &str, help: String| {
        faults.push(OrderFault { file: document.name.clone(), line: document.line(&field), field, came, wanted: wanted.to_owned(), help });
    };
    if let Some(text) = value.as_str() {
        return match colours::read(text, false) {
            Ok(map) => read_colours(document, path, &Value::Object(map), faults),
            Err((came, wanted, help)) => {
                refuse(path.to_owned(), came, &wanted, help);
                None
            }
        };
    }
    let names: Vec<&str> = Colour::ALL.iter().map(|(name, _)| *name).collect();
    let Some(map) = value.as_object().filter(|map| !map.is_empty()) else {
        refuse(
            path.to_owned(),
            "nothing".to_owned(),
            "colours with their share of the face",
            "write `{ red = \"76 %\", white = \"24 %\" }`".to_owned(),
        );
        return None;
    };
    let mut colours = BTreeMap::new();
    for (name, share) in map {
        let field = format!("{path}.{name}");
        let Some(colour) = Colour::read(name) else {
            refuse(field, quoted(name), "a colour of sign faces", offer(name, &names, &format!("use {}", list(&names))));
            continue;
        };
        let text = share.as_str().map_or_else(|| share.to_string(), str::to_owned);
        let number = text.strip_suffix('%').map_or_else(|| read_number(&text), |percent| read_number(percent).map(|n| n / 100.0));
        match number {
            Ok(share) if share > 0.0 && share <= 1.0 => {
                colours.insert(colour, share);
            }
            _ => refuse(field, quoted(&text), "a share above 0 % and at most 100 %", "write it as `76 %`".to_owned()),
        }
    }
    let sum: f64 = colours.values().sum();
    if sum < 0.995 && !colours.contains_key(&Colour::White) {
        colours.insert(Colour::White, 1.0 - sum);
    }
    Some(colours)
}

fn read_not(document: &Document, path: &str, value: &Value, faults: &mut Vec<OrderFault>) -> BTreeMap<RouteName, String> {
    let mut fields = Fields::new(document, path, value, faults);
    let mut not = BTreeMap::new();
    for (name, route) in RouteName::ALL {
        if let Some(reason) = fields.label(name) {
            not.insert(route, reason);
        }
    }
    fields.finish();
    not
}
