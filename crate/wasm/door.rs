//! What the page may ask, in Rust's terms.

use std::cell::RefCell;

use faceload_core::analysis::{Draws, Kept, Settings, Swing};
use faceload_core::comparison::{CompareFault, Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, OrderFault, demo};
use faceload_picture::{
    Place, Theme, draw_loads as paint_loads, draw_swings as paint_swings, loads_height, loads_rows, swings_height, swings_rows,
};
use faceload_report::{catalogue as choosing, cautions, explain as explaining, labels, panel, result, view as viewing};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value, json};
use wasm_bindgen::JsValue;

use crate::canvas;

/// A fault with the field it belongs to, where there is one.
#[derive(Serialize)]
pub struct Fault {
    field: String,
    came: String,
    wanted: String,
    help: String,
    words: String,
}

/// What the page asks of an order.
#[derive(Deserialize)]
pub struct Asked {
    per: String,
    boundary: String,
    pair: (usize, usize),
    indicator: String,
    most: usize,
    rows: Vec<String>,
    moved: Vec<(String, f64)>,
}

/// What is on the screen.
struct Shown {
    comparison: Comparison,
    pair: (usize, usize),
    indicator: Indicator,
    swings: Vec<Swing>,
    intervals: Vec<Vec<[f64; 5]>>,
    /// What was asked: the order's text, per what, and what is counted.
    of: [String; 3],
}

/// Takes the intervals of the loads on the screen.
pub fn take_intervals(intervals: Vec<Vec<[f64; 5]>>) {
    SHOWN.with_borrow_mut(|shown| {
        if let Some(shown) = shown {
            shown.intervals = intervals;
        }
    });
}

thread_local! {
    static TABLES: RefCell<Option<Tables>> = const { RefCell::new(None) };
    static SHOWN: RefCell<Option<Shown>> = const { RefCell::new(None) };
}

pub fn plain(words: String) -> Fault {
    Fault { field: String::new(), came: String::new(), wanted: String::new(), help: String::new(), words }
}

pub fn with_tables<T>(run: impl FnOnce(&Tables) -> Result<T, Vec<Fault>>) -> Result<T, Vec<Fault>> {
    TABLES.with_borrow_mut(|tables| {
        if tables.is_none() {
            *tables = Some(Tables::embedded().map_err(|faults| faults.iter().map(|fault| plain(fault.to_string())).collect::<Vec<_>>())?);
        }
        tables.as_ref().map_or_else(|| Err(Vec::new()), run)
    })
}

fn choice<T: Copy>(word: &str, words: &[(&str, T)], what: &str) -> Result<T, Vec<Fault>> {
    words.iter().find(|(known, _)| *known == word).map(|(_, choice)| *choice).ok_or_else(|| vec![plain(format!("`{word}` is no {what}"))])
}

pub fn indicator(id: &str) -> Result<Indicator, Vec<Fault>> {
    Indicator::read(id).ok_or_else(|| vec![plain(format!("`{id}` is no indicator"))])
}

pub fn compared(tables: &Tables, order: &str, per: &str, boundary: &str, moved: &[(String, f64)]) -> Result<Comparison, Vec<Fault>> {
    let per = choice(per, &Per::ALL, "functional unit")?;
    let boundary = choice(boundary, &Boundary::ALL, "boundary")?;
    let document = Document::json("the order", order).map_err(|fault| named(vec![fault]))?;
    let order = Order::read(document, tables).and_then(|order| order.moved_by_hand(moved.to_vec(), tables)).map_err(named)?;
    compare(tables, &order, per, boundary).map_err(faults)
}

fn named(faults: Vec<OrderFault>) -> Vec<Fault> {
    let named = |fault: OrderFault| Fault {
        words: fault.to_string(),
        field: fault.field,
        came: fault.came,
        wanted: fault.wanted,
        help: fault.help,
    };
    faults.into_iter().map(named).collect()
}

fn faults(fault: CompareFault) -> Vec<Fault> {
    match fault {
        CompareFault::Order(faults) => named(faults),
        other => cautions::fault(&other).into_iter().map(plain).collect(),
    }
}

/// The demos.
pub fn demos() -> String {
    let list: Vec<Value> = demo::DEMOS.iter().map(|demo| json!({ "name": demo.name, "title": demo.title, "order": demo.text })).collect();
    Value::Array(list).to_string()
}

/// The choices an order has.
pub fn catalogue() -> Result<String, Vec<Fault>> {
    with_tables(|tables| Ok(choosing::catalogue(tables).to_string()))
}

/// The labels.
pub fn labels() -> String {
    let map: Map<String, Value> = labels::LABELS.iter().map(|label| (label.id.to_owned(), Value::String(label.text.to_owned()))).collect();
    Value::Object(map).to_string()
}

/// The result as text.
pub fn compare_text(order: &str, per: &str, boundary: &str) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        compared(tables, order, per, boundary, &[]).map(|comparison| {
            let pairs = comparison.first_pairs();
            let draws = Draws::make(&comparison, &pairs, Settings::default(), &mut Kept::default(), |_| true);
            result::json(&comparison, &draws, None)
        })
    })
}

/// What the page shows.
pub fn view(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let of = [order, &asked.per, &asked.boundary].map(str::to_owned);
        // While a slider moves only values change.
        let moved = SHOWN.with_borrow(|shown| {
            let shown = shown.as_ref().filter(|shown| !asked.rows.is_empty() && shown.of == of)?;
            shown.comparison.moved(tables, &asked.moved)
        });
        let comparison = match moved {
            Some(moved) => moved.map_err(faults)?,
            None => compared(tables, order, &asked.per, &asked.boundary, &asked.moved)?,
        };
        let indicator = indicator(&asked.indicator)?;
        let last = comparison.models.len() - 1;
        let pair = (asked.pair.0.min(last), asked.pair.1.min(last));
        let asked = viewing::Asked { pair, indicator, most: asked.most, rows: asked.rows.clone() };
        let mut swings = viewing::asked_swings(&comparison, &asked);
        let view = viewing::view(tables, &comparison, &asked, &swings);
        let text = serde_json::to_string(&view).map_err(|error| vec![plain(error.to_string())])?;
        swings.truncate(asked.most);
        SHOWN.set(Some(Shown { comparison, pair, indicator, swings, intervals: Vec::new(), of }));
        Ok(text)
    })
}

/// How a load on the screen is computed.
pub fn explain(alternative: &str, id: &str) -> Result<String, Vec<Fault>> {
    let indicator = indicator(id)?;
    with_tables(|tables| {
        SHOWN.with_borrow(|shown| {
            let model = shown.as_ref().and_then(|shown| Some((shown, shown.comparison.model(alternative)?)));
            let Some((shown, model)) = model else { return Err(vec![plain(format!("`{alternative}` is not on the screen"))]) };
            let explained = explaining::explain(tables, model, indicator, shown.comparison.per);
            serde_json::to_string(&explained).map_err(|error| vec![plain(error.to_string())])
        })
    })
}

pub fn theme(word: &str) -> Theme {
    match word {
        "dark" => Theme::Dark,
        "paper" => Theme::Paper,
        _ => Theme::Light,
    }
}

/// Draws the loads of an indicator.
pub fn draw_loads(on: web_sys::HtmlCanvasElement, id: &str, width: u32, word: &str) -> Result<u32, JsValue> {
    SHOWN.with_borrow(|shown| {
        let (Some(shown), Some(indicator)) = (shown.as_ref(), Indicator::read(id)) else {
            return Err(JsValue::from_str("nothing is on the screen"));
        };
        let panel = panel::loads(&shown.comparison, indicator, shown.intervals.get(indicator as usize));
        let height = loads_height(&panel, width);
        paint_loads(canvas::fine(on, (width, height))?, &panel, theme(word)).map_err(|refused| JsValue::from_str(&refused.to_string()))?;
        Ok(height)
    })
}

/// The rows of a picture, in css pixels.
fn places(rows: &[Place]) -> String {
    Value::Array(rows.iter().map(|row| json!({ "x": row.x, "y": row.y, "width": row.width, "height": row.height })).collect()).to_string()
}

/// Where the rows of an indicator's loads are.
pub fn loads_places(id: &str, width: u32) -> String {
    SHOWN.with_borrow(|shown| match (shown.as_ref(), Indicator::read(id)) {
        (Some(shown), Some(indicator)) => {
            places(&loads_rows(&panel::loads(&shown.comparison, indicator, shown.intervals.get(indicator as usize)), width))
        }
        _ => places(&[]),
    })
}

/// Where the rows of the swings are.
pub fn swings_places(width: u32) -> String {
    SHOWN.with_borrow(|shown| {
        shown.as_ref().map_or_else(
            || places(&[]),
            |shown| {
                places(&swings_rows(&panel::swings(&shown.comparison, shown.pair.0, shown.pair.1, shown.indicator, &shown.swings), width))
            },
        )
    })
}

/// Draws the swings on the screen.
pub fn draw_swings(on: web_sys::HtmlCanvasElement, width: u32, word: &str) -> Result<u32, JsValue> {
    SHOWN.with_borrow(|shown| {
        let Some(shown) = shown.as_ref() else { return Err(JsValue::from_str("nothing is on the screen")) };
        let panel = panel::swings(&shown.comparison, shown.pair.0, shown.pair.1, shown.indicator, &shown.swings);
        let height = swings_height(&panel, width);
        paint_swings(canvas::fine(on, (width, height))?, &panel, theme(word)).map_err(|refused| JsValue::from_str(&refused.to_string()))?;
        Ok(height)
    })
}
