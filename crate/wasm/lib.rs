//! The page's door to the core. Orders and results cross as JSON text made in Rust.
//!
//! The page holds an order as text and asks; the last comparison stays here, so that pictures and
//! explanations of what is on the screen need not compute it again.

mod canvas;
mod door;
mod report;
mod sure;

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
    let asked: door::Asked = serde_wasm_bindgen::from_value(asked)?;
    door::view(order, &asked).map_err(words)
}

/// How a load on the screen is computed.
#[wasm_bindgen]
pub fn explain_json(alternative: &str, indicator: &str) -> Result<String, JsValue> {
    door::explain(alternative, indicator).map_err(words)
}

/// How sure the answer is: sentences, intervals and the spread of the pair, from draws.
#[wasm_bindgen]
pub fn sure_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::sure(order, &serde_wasm_bindgen::from_value(asked)?).map_err(words)
}

/// What moves the pair's difference, as a figure.
#[wasm_bindgen]
pub fn drivers_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::drivers_of(order, &serde_wasm_bindgen::from_value(asked)?).map_err(words)
}

/// Where the pair's difference crosses zero, as a figure; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn break_even_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    sure::break_even(order, &serde_wasm_bindgen::from_value(asked)?, told(progress)).map_err(words)
}

/// Who loads less over two things varied at once, as a figure; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn map_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    sure::map(order, &serde_wasm_bindgen::from_value(asked)?, told(progress)).map_err(words)
}

/// Where a load comes from, stage by stage, as a figure.
#[wasm_bindgen]
pub fn stages_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::stages(order, &serde_wasm_bindgen::from_value(asked)?).map_err(words)
}

/// The pair under other choices of method, and each job by whoever clearly loads least: two figures.
#[wasm_bindgen]
pub fn choices_json(order: &str, asked: JsValue) -> Result<String, JsValue> {
    sure::choices(order, &serde_wasm_bindgen::from_value(asked)?).map_err(words)
}

/// The report: its parts, and the file it is saved as; `progress` is told the share that is done.
#[wasm_bindgen]
pub fn report_json(order: &str, asked: JsValue, progress: &js_sys::Function) -> Result<String, JsValue> {
    report::report(order, &serde_wasm_bindgen::from_value(asked)?, told(progress)).map_err(words)
}

fn told(progress: &js_sys::Function) -> impl FnMut(f64) -> bool + '_ {
    |share| progress.call1(&JsValue::NULL, &JsValue::from_f64(share)).is_ok_and(|answer| !answer.is_falsy())
}

/// Takes the intervals that the loads on the screen are drawn with: by indicator and alternative, the
/// 5, 25, 50, 75 and 95 % points; none clears them.
#[wasm_bindgen]
pub fn take_intervals(intervals: JsValue) -> Result<(), JsValue> {
    door::take_intervals(serde_wasm_bindgen::from_value(intervals)?);
    Ok(())
}

/// Draws the loads of an indicator; the height it took, in css pixels.
#[wasm_bindgen]
pub fn draw_loads(canvas: web_sys::HtmlCanvasElement, indicator: &str, width: u32, theme: &str) -> Result<u32, JsValue> {
    door::draw_loads(canvas, indicator, width, theme)
}

/// Draws the swings on the screen; the height it took, in css pixels.
#[wasm_bindgen]
pub fn draw_swings(canvas: web_sys::HtmlCanvasElement, width: u32, theme: &str) -> Result<u32, JsValue> {
    door::draw_swings(canvas, width, theme)
}

/// Where the rows of an indicator's picture are: `[{x, y, width, height}]` in css pixels.
#[wasm_bindgen]
pub fn loads_rows_json(indicator: &str, width: u32) -> String {
    door::loads_places(indicator, width)
}

/// Where the rows of the swings are, likewise.
#[wasm_bindgen]
pub fn swings_rows_json(width: u32) -> String {
    door::swings_places(width)
}

/// Faults as a list of texts.
fn words(faults: Vec<door::Fault>) -> JsValue {
    serde_wasm_bindgen::to_value(&faults).unwrap_or(JsValue::NULL)
}
