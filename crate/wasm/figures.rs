//! The pictures that move with a slider, on a canvas; and the same as text, with their numbers and their sources.

use faceload_core::load::Indicator;
use faceload_picture::{draw_loads as paint_loads, draw_swings as paint_swings, loads_height, swings_height};
use faceload_report::swings::Swings;
use faceload_report::{loads, panel, source_list};
use serde::Serialize;
use wasm_bindgen::JsValue;
use web_sys::HtmlCanvasElement;

use crate::canvas;
use crate::door::{Fault, OnScreen, on_screen, plain, theme, with_tables};

fn nothing() -> Vec<Fault> {
    vec![plain("nothing is on the screen".to_owned())]
}

fn text(value: &impl Serialize) -> Result<String, Vec<Fault>> {
    serde_json::to_string(value).map_err(|error| vec![plain(error.to_string())])
}

/// Looks at the loads of an indicator on the screen.
fn of_loads<T>(id: &str, look: impl FnOnce(&OnScreen, Indicator, loads::Points) -> T) -> Result<T, Vec<Fault>> {
    let indicator = crate::door::indicator(id)?;
    on_screen(|shown| look(shown, indicator, shown.intervals.get(indicator as usize))).ok_or_else(nothing)
}

/// Looks at the swings on the screen.
fn of_swings<T>(look: impl FnOnce(Swings) -> T) -> Result<T, Vec<Fault>> {
    let swings = |shown: &OnScreen| {
        look(Swings { comparison: &shown.comparison, pair: shown.pair, indicator: shown.indicator, list: &shown.swings })
    };
    on_screen(swings).ok_or_else(nothing)
}

fn refused(faults: Vec<Fault>) -> JsValue {
    JsValue::from_str(faults.first().map_or("", Fault::words))
}

/// Draws the loads of an indicator; the height it took.
pub fn draw_loads(on: HtmlCanvasElement, id: &str, width: u32, word: &str) -> Result<u32, JsValue> {
    let panel = of_loads(id, |shown, indicator, points| panel::loads(&shown.comparison, indicator, points)).map_err(refused)?;
    let height = loads_height(&panel, width);
    paint_loads(canvas::fine(on, (width, height))?, &panel, theme(word)).map_err(|reason| JsValue::from_str(&reason.to_string()))?;
    Ok(height)
}

/// Draws the swings on the screen; the height it took.
pub fn draw_swings(on: HtmlCanvasElement, width: u32, word: &str) -> Result<u32, JsValue> {
    let panel = of_swings(|swings| swings.panel()).map_err(refused)?;
    let height = swings_height(&panel, width);
    paint_swings(canvas::fine(on, (width, height))?, &panel, theme(word)).map_err(|reason| JsValue::from_str(&reason.to_string()))?;
    Ok(height)
}

/// The spots of an indicator's loads.
pub fn loads_spots(id: &str, width: u32) -> Result<String, Vec<Fault>> {
    text(&of_loads(id, |shown, indicator, points| loads::spots(&shown.comparison, indicator, points, width))?)
}

/// The spots of the swings.
pub fn swings_spots(width: u32) -> Result<String, Vec<Fault>> {
    text(&of_swings(|swings| swings.spots(width))?)
}

/// An indicator's loads as SVG.
pub fn loads_svg(id: &str, width: u32, word: &str) -> Result<String, Vec<Fault>> {
    of_loads(id, |shown, indicator, points| loads::picture(&shown.comparison, indicator, points, (width, theme(word))))?
        .map(|picture| picture.svg)
        .map_err(|reason| vec![plain(reason)])
}

/// The swings as SVG.
pub fn swings_svg(width: u32, word: &str) -> Result<String, Vec<Fault>> {
    of_swings(|swings| swings.picture(width, theme(word)))?.map(|picture| picture.svg).map_err(|reason| vec![plain(reason)])
}

/// An indicator's loads as CSV.
pub fn loads_csv(id: &str) -> Result<String, Vec<Fault>> {
    of_loads(id, |shown, indicator, points| loads::figure(&shown.comparison, indicator, points).csv())
}

/// The swings as CSV.
pub fn swings_csv() -> Result<String, Vec<Fault>> {
    of_swings(|swings| swings.figure().csv())
}

/// The sources behind what some alternatives load in an indicator, or in all of them: none named means all.
pub fn sources(id: &str, alternatives: &[usize]) -> Result<String, Vec<Fault>> {
    let indicators = if id.is_empty() { Indicator::ALL.to_vec() } else { vec![crate::door::indicator(id)?] };
    with_tables(|tables| {
        let list = on_screen(|shown| source_list::behind_loads(tables, &shown.comparison, &indicators, alternatives));
        text(&list.ok_or_else(nothing)?)
    })
}
