//! The page's door to the core. Orders and results cross as JSON text made in Rust.
//!
//! The page holds an order as text and asks; the last comparison stays here, so that pictures and
//! explanations of what is on the screen need not compute it again.

mod canvas;
mod door;
mod rows;
mod link;
mod figures;
mod report;
mod sure;

use serde::de::DeserializeOwned;
use wasm_bindgen::prelude::*;

/// The demo orders: `[{name, title, order}]`.
#[wasm_bindgen]
pub fn demos_json() -> String {
    door::demos()
}

/// The choices an order has.
#[wasm_bindgen]
pub fn catalogue_json() -> Result<String, JsValue> {
    door::catalogue().map_err(words)
}

/// The labels by id.
#[wasm_bindgen]
pub fn labels_json() -> String {
    door::labels()
}

/// The result of an order: the same text as the command line prints. Words are thrown where the
/// order is at fault.
#[wasm_bindgen]
pub fn compare_json(order: &str, per: &str, boundary: &str) -> Result<String, JsValue> {
    door::compare_text(order, per, boundary).map_err(words)
}

/// Everything the page shows of an order. The comparison is kept for pictures and explanations.
#[wasm_bindgen]
pub fn view_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    door::view(order, &read(&asked)?).map_err(words)
}

/// How a load on the screen is computed; of one job, where its place in the line-by-line table is given.
#[wasm_bindgen]
pub fn explain_json(alternative: &str, indicator: &str, job: Option<usize>) -> Result<String, JsValue> {
    door::explain(alternative, indicator, job).map_err(words)
}

/// How sure the answer is: sentences, intervals and the spread of the pair, from draws.
#[wasm_bindgen]
pub fn sure_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::sure(order, &read(&asked)?).map_err(words)
}

/// The statement of the pair that may be sent, or why none may.
#[wasm_bindgen]
pub fn statement_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::statement(order, &read(&asked)?).map_err(words)
}

/// What moves the pair's difference, as a figure.
#[wasm_bindgen]
pub fn drivers_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::drivers_of(order, &read(&asked)?).map_err(words)
}

/// Where the pair's difference crosses zero, as a figure; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn break_even_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    sure::break_even(order, &read(&asked)?, told(progress)).map_err(words)
}

/// Who loads less over two things varied at once, as a figure; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn map_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    sure::map(order, &read(&asked)?, told(progress)).map_err(words)
}

/// Where a load comes from, stage by stage, as a figure.
#[wasm_bindgen]
pub fn stages_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::stages(order, &read(&asked)?).map_err(words)
}

/// The pair under other choices of method, and each job by whoever clearly loads least: two figures.
#[wasm_bindgen]
pub fn choices_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::choices(order, &read(&asked)?).map_err(words)
}

/// The report: its parts, and the file it is saved as; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn report_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    report::report(order, &read(&asked)?, told(progress)).map_err(words)
}

fn told(progress: &js_sys::Function) -> impl FnMut(f64) -> bool + '_ {
    |share| progress.call1(&JsValue::NULL, &JsValue::from_f64(share)).is_ok_and(|answer| !answer.is_falsy())
}

/// Takes the intervals that the loads on the screen are drawn with: by indicator and alternative, the
/// 5, 25, 50, 75 and 95 % points; none clears them.
#[wasm_bindgen]
pub fn take_intervals(intervals: JsValue) -> Result<(), JsValue> {
    door::take_intervals(read(&intervals)?);
    Ok(())
}

/// Draws the loads of an indicator; the height it took, in css pixels.
#[wasm_bindgen]
pub fn draw_loads(canvas: web_sys::HtmlCanvasElement, indicator: &str, width: u32, theme: &str) -> Result<u32, JsValue> {
    figures::draw_loads(canvas, indicator, width, theme)
}

/// Draws the swings on the screen; the height it took, in css pixels.
#[wasm_bindgen]
pub fn draw_swings(canvas: web_sys::HtmlCanvasElement, width: u32, theme: &str) -> Result<u32, JsValue> {
    figures::draw_swings(canvas, width, theme)
}

/// The spots of an indicator's picture: `[{x, y, width, height, words, lead}]`, places in css pixels.
#[wasm_bindgen]
pub fn loads_spots_json(indicator: &str, width: u32) -> Result<String, JsValue> {
    figures::loads_spots(indicator, width).map_err(words)
}

/// The spots of the swings, likewise.
#[wasm_bindgen]
pub fn swings_spots_json(width: u32) -> Result<String, JsValue> {
    figures::swings_spots(width).map_err(words)
}

/// The picture of an indicator's loads as SVG.
#[wasm_bindgen]
pub fn loads_svg(indicator: &str, width: u32, theme: &str) -> Result<String, JsValue> {
    figures::loads_svg(indicator, width, theme).map_err(words)
}

/// The picture of the swings as SVG.
#[wasm_bindgen]
pub fn swings_svg(width: u32, theme: &str) -> Result<String, JsValue> {
    figures::swings_svg(width, theme).map_err(words)
}

/// An indicator's loads as CSV.
#[wasm_bindgen]
pub fn loads_csv(indicator: &str) -> Result<String, JsValue> {
    figures::loads_csv(indicator).map_err(words)
}

/// The swings as CSV.
#[wasm_bindgen]
pub fn swings_csv() -> Result<String, JsValue> {
    figures::swings_csv().map_err(words)
}

/// The sources behind what some alternatives load in an indicator: `[{words, licence, inputs, grades}]`. Without an
/// indicator those of all; without alternatives likewise.
#[wasm_bindgen]
pub fn sources_json(indicator: &str, alternatives: &[usize]) -> Result<String, JsValue> {
    figures::sources(indicator, alternatives).map_err(words)
}

/// What was understood of a spreadsheet's rows.
#[wasm_bindgen]
pub fn rows_json(bytes: &[u8], asked: JsValue) -> Result<String, JsValue> {
    rows::understood(bytes, &read(&asked)?).map_err(words)
}

/// An order with the lines of a spreadsheet's rows, beside its own or in their place.
#[wasm_bindgen]
pub fn rows_in_order_json(bytes: &[u8], asked: JsValue, order: &str, beside: bool) -> Result<String, JsValue> {
    rows::in_order(bytes, &read(&asked)?, order, beside).map_err(words)
}

/// The rows that could not be taken, as CSV with the reason behind each.
#[wasm_bindgen]
pub fn rows_left_out(bytes: &[u8], asked: JsValue) -> Result<String, JsValue> {
    rows::rest(bytes, &read(&asked)?).map_err(words)
}

/// Every fault of an order file, by its name.
#[wasm_bindgen]
pub fn check_order(name: &str, text: &str) -> Result<(), JsValue> {
    link::check(name, text).map_err(words)
}

/// A link to an order and what is looked at in it: `{link, left_out}`.
#[wasm_bindgen]
pub fn write_link(order: &str, shared: JsValue) -> Result<String, JsValue> {
    link::write(order, read(&shared)?).map_err(words)
}

/// What a link holds, its order checked.
#[wasm_bindgen]
pub fn read_link(address: &str) -> Result<String, JsValue> {
    link::read(address).map_err(words)
}

/// A length in `metric` or `customary` units; nothing where it is in them already.
#[wasm_bindgen]
pub fn in_units(text: &str, units: &str) -> Option<String> {
    link::in_units(text, units)
}

/// Reads what the page hands over.
fn read<T: DeserializeOwned>(value: &JsValue) -> Result<T, JsValue> {
    Ok(serde_wasm_bindgen::from_value(value.clone())?)
}

/// Faults as a list, as the page catches them.
fn words(faults: Vec<door::Fault>) -> JsValue {
    serde_wasm_bindgen::to_value(&faults).unwrap_or(JsValue::NULL)
}
