//! An alternative: a route with the choices and values of one shop.

use serde_json::Value;

use super::fields::{Bounds, Fields, list};
use super::{Document, OrderFault};
use crate::factors::Grade;
use crate::quantity::Span;

/// The routes by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[expect(missing_docs, reason = "the names say it")]
pub enum RouteName {
    ScreenPrinting,
    OverlayFilm,
    DirectApplied,
    DigitalPrinting,
}

impl RouteName {
    /// As orders write them.
    pub const ALL: [(&'static str, Self); 4] = [
        ("screen-printing", Self::ScreenPrinting),
        ("overlay-film", Self::OverlayFilm),
        ("direct-applied", Self::DirectApplied),
        ("digital-printing", Self::DigitalPrinting),
    ];

    /// As orders write it.
    pub fn name(self) -> &'static str {
        Self::ALL.iter().find(|(_, route)| *route == self).map_or("", |(name, _)| name)
    }
}

/// The kind of ink.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Ink {
    Solvent,
    Uv,
    /// Water-based screen ink.
    Water,
    /// Water-based resin jet ink.
    Resin,
}

/// How a screen print dries.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Drying {
    Rack,
    Oven,
    Uv,
    UvLed,
}

/// What the adhesive of a layer is covered with until it is applied.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names say it")]
pub enum Liner {
    Paper,
    Pet,
}

/// A screen's mesh, where a shop knows it: opening and thread width, fabric thickness.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mesh {
    /// The opening between two threads.
    pub opening: Span,
    /// The thread.
    pub thread: Span,
    /// The fabric's thickness.
    pub fabric: Span,
}

/// A value of this shop in place of a row of the tables.
#[derive(Debug, Clone, PartialEq)]
pub struct Override {
    /// The row's id.
    pub id: String,
    /// The value with its unit, as written.
    pub text: String,
    /// Why.
    pub note: String,
    /// How good it is.
    pub grade: Grade,
    /// The field it stands in.
    pub path: String,
}

/// An alternative as stated.
#[derive(Debug, Clone, PartialEq)]
pub struct Alternative {
    /// Its id, short, unique in the order.
    pub id: String,
    /// Its route.
    pub route: RouteName,
    /// Its ink (printing).
    pub ink: Ink,
    /// How it dries (screen printing).
    pub drying: Drying,
    /// The liner of the sheeting, and of film or overlay.
    pub liners: (Liner, Liner),
    /// The alternative that makes the lines this one cannot.
    pub otherwise: Option<String>,
    /// Whether a clear overlay protects the print (digital printing).
    pub overlay: bool,
    /// Its life, where it differs, in years.
    pub life: Option<f64>,
    /// The mesh, where it is known.
    pub mesh: Option<Mesh>,
    /// The values of this shop.
    pub with: Vec<Override>,
}

/// The alternatives of an order that states none: every route, and the printing ones with either
/// ink, since ink and drying may move the result more than the route.
pub fn default_alternatives() -> Vec<Alternative> {
    let make = |id: &str, route, ink, drying| Alternative {
        id: id.to_owned(),
        route,
        ink,
        drying,
        liners: (Liner::Paper, Liner::Paper),
        otherwise: None,
        overlay: true,
        life: None,
        mesh: None,
        with: Vec::new(),
    };
    vec![
        make("screen", RouteName::ScreenPrinting, Ink::Solvent, Drying::Oven),
        make("screen-uv", RouteName::ScreenPrinting, Ink::Uv, Drying::Uv),
        make("film", RouteName::OverlayFilm, Ink::Solvent, Drying::Oven),
        make("direct", RouteName::DirectApplied, Ink::Solvent, Drying::Oven),
        make("digital", RouteName::DigitalPrinting, Ink::Solvent, Drying::Oven),
        make("digital-uv", RouteName::DigitalPrinting, Ink::Uv, Drying::Uv),
    ]
}

/// Reads one alternative.
pub(super) fn read(document: &Document, path: &str, value: &Value, faults: &mut Vec<OrderFault>) -> Option<Alternative> {
    let mut fields = Fields::new(document, path, value, faults);
    let id = fields.label("id");
    if id.as_deref().is_none_or(str::is_empty) {
        fields.refuse("id", "nothing", "a short name", "name the alternative, such as `screen`");
    }
    let route = fields.word("route", &RouteName::ALL);
    if route.is_none() && fields.get("route").is_none() {
        fields.refuse("route", "nothing", &list(&RouteName::ALL.map(|(name, _)| name)), "say how the face is made");
    }
    let ink = read_ink(&mut fields, route);
    let drying = read_drying(&mut fields, route, ink);
    let overlay = fields.flag("overlay");
    if overlay.is_some() && route.is_some_and(|route| route != RouteName::DigitalPrinting) {
        fields.refuse("overlay", "an overlay", "none on this route", "only digital prints take a clear overlay; take it out");
    }
    let overlay = overlay.unwrap_or(true);
    let liner = [("paper", Liner::Paper), ("pet", Liner::Pet)];
    let liners = (fields.word("sheeting_liner", &liner).unwrap_or(Liner::Paper), fields.word("film_liner", &liner).unwrap_or(Liner::Paper));
    let otherwise = fields.label("otherwise");
    let life = fields.measured("life", "years", 1.0, 50.0, "10 years");
    if fields.get("mesh").is_some() && route.is_some_and(|route| route != RouteName::ScreenPrinting) {
        fields.refuse("mesh", "a mesh", "none on this route", "only screens have a mesh; take it out");
    }
    let mesh = fields.get("mesh").map(|value| (fields.path("mesh"), value));
    let with = fields.get("with").map(|value| (fields.path("with"), value));
    fields.finish();
    let mesh = mesh.and_then(|(path, value)| read_mesh(document, &path, value, faults));
    let with = with.map(|(path, value)| read_with(document, &path, value, faults)).unwrap_or_default();
    Some(Alternative { id: id?, route: route?, ink, drying, liners, otherwise, overlay, life, mesh, with })
}

/// The inks a route prints with, by the words of an order; none where it cuts.
pub fn inks(route: RouteName) -> &'static [(&'static str, Ink)] {
    match route {
        RouteName::ScreenPrinting => &[("solvent", Ink::Solvent), ("uv", Ink::Uv), ("water", Ink::Water)],
        RouteName::DigitalPrinting => &[("solvent", Ink::Solvent), ("uv", Ink::Uv), ("resin", Ink::Resin)],
        RouteName::OverlayFilm | RouteName::DirectApplied => &[],
    }
}

/// How a screen print may dry, by the words of an order.
pub const DRYINGS: [(&str, Drying); 4] = [("rack", Drying::Rack), ("oven", Drying::Oven), ("uv", Drying::Uv), ("uv-led", Drying::UvLed)];

/// The ink: which a route prints with.
fn read_ink(fields: &mut Fields<'_, '_>, route: Option<RouteName>) -> Ink {
    let words = inks(route.unwrap_or(RouteName::ScreenPrinting));
    if words.is_empty() && fields.get("ink").is_some() {
        fields.refuse("ink", "an ink", "none on this route", "film and copy are cut, not printed; take it out");
        return Ink::Solvent;
    }
    fields.word("ink", words).unwrap_or(Ink::Solvent)
}

/// The drying: what suits the ink.
fn read_drying(fields: &mut Fields<'_, '_>, route: Option<RouteName>, ink: Ink) -> Drying {
    let by_ink = if ink == Ink::Uv { Drying::Uv } else { Drying::Oven };
    if fields.get("drying").is_some() && route.is_some_and(|route| route != RouteName::ScreenPrinting) {
        fields.refuse("drying", "a drying", "none on this route", "only screen prints are dried by choice; take it out");
        return by_ink;
    }
    let drying = fields.word("drying", &DRYINGS).unwrap_or(by_ink);
    if (ink == Ink::Uv) != matches!(drying, Drying::Uv | Drying::UvLed) {
        let word = DRYINGS.iter().find(|(_, one)| *one == drying).map_or("", |(word, _)| word);
        fields.refuse(
            "drying",
            &format!("`{word}`"),
            "a drying that suits the ink",
            "solvent and water-based ink dry on racks or in the oven, UV ink under UV lamps",
        );
        return by_ink;
    }
    drying
}

fn read_mesh(document: &Document, path: &str, value: &Value, faults: &mut Vec<OrderFault>) -> Option<Mesh> {
    let mut fields = Fields::new(document, path, value, faults);
    let mut side = |key| {
        let span = fields.length(key, Bounds::new(1_000, 1_000_000, "from 1 um to 1000 um").such_as("write it as `40 um`"));
        if span.is_none() && fields.get(key).is_none() {
            fields.refuse(key, "nothing", "a length such as `40 um`", "give opening, thread and fabric");
        }
        span
    };
    let (opening, thread, fabric) = (side("opening"), side("thread"), side("fabric"));
    fields.finish();
    Some(Mesh { opening: opening?, thread: thread?, fabric: fabric? })
}

fn read_with(document: &Document, path: &str, value: &Value, faults: &mut Vec<OrderFault>) -> Vec<Override> {
    let mut with = Vec::new();
    let Some(map) = value.as_object() else {
        Fields::new(document, path, value, faults).finish();
        return with;
    };
    for (id, value) in map {
        let path = format!("{path}.{id}");
        if let Some(text) = value.as_str() {
            with.push(Override { id: id.clone(), text: text.to_owned(), note: String::new(), grade: Grade::D, path });
        } else {
            let mut fields = Fields::new(document, &path, value, faults);
            let text = fields.text("value");
            let note = fields.label("note").unwrap_or_default();
            let grade = fields
                .word("grade", &[("own", Grade::Own), ("A", Grade::A), ("B", Grade::B), ("C", Grade::C), ("D", Grade::D)])
                .unwrap_or(Grade::D);
            if text.is_none() {
                fields.refuse("value", "nothing", "a value with its unit", "write it as `0.20 L/m2`");
            }
            fields.finish();
            with.extend(text.map(|text| Override { id: id.clone(), text, note, grade, path }));
        }
    }
    with
}
