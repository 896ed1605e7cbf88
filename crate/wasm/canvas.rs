//! A canvas as a drawing ground: sharp at any device pixel ratio.

use faceload_picture::{Fine, UNITS_PER_PX};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, window};

/// Sizes the canvas at the window's device ratio and scales its context once.
pub fn fine(canvas: HtmlCanvasElement, size: (u32, u32)) -> Result<Fine<CanvasBackend>, JsValue> {
    let ratio = window().ok_or("no window")?.device_pixel_ratio();
    let device = |css: u32| (f64::from(css) * ratio).round() as u32;
    // Setting a size also clears the canvas and resets its context.
    canvas.set_width(device(size.0));
    canvas.set_height(device(size.1));
    let context: CanvasRenderingContext2d = canvas.get_context("2d")?.ok_or("no context")?.dyn_into()?;
    let unit = ratio / f64::from(UNITS_PER_PX);
    context.set_transform(unit, 0.0, 0.0, unit, 0.0, 0.0)?;
    let inner = CanvasBackend::with_canvas_object(canvas).ok_or("no canvas")?;
    Ok(Fine::canvas(inner, size))
}
