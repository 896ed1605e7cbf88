//! A canvas as a drawing ground: sharp at any device pixel ratio.

use faceload_picture::{Fine, UNITS_PER_PX};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, window};

/// Sizes the canvas at the window's device ratio and scales its context once.
pub fn fine(canvas: HtmlCanvasElement, size: (u32, u32)) -> Result<Fine<CanvasBackend>, JsValue> {
    let ratio = window().ok_or("no window")?.device_pixel_ratio();
    let device = |css: u32| (f64::from(css) * ratio).round() as u32;
    let (width, height) = (device(size.0), device(size.1));
    let context: CanvasRenderingContext2d = canvas.get_context("2d")?.ok_or("no context")?.dyn_into()?;
    if (canvas.width(), canvas.height()) == (width, height) {
        // Setting a size, even the same, makes a new ground; while a slider moves the old one is wiped.
        context.set_transform(1.0, 0.0, 0.0, 1.0, 0.0, 0.0)?;
        context.clear_rect(0.0, 0.0, f64::from(width), f64::from(height));
    } else {
        canvas.set_width(width);
        canvas.set_height(height);
    }
    let unit = ratio / f64::from(UNITS_PER_PX);
    context.set_transform(unit, 0.0, 0.0, unit, 0.0, 0.0)?;
    let inner = CanvasBackend::with_canvas_object(canvas).ok_or("no canvas")?;
    Ok(Fine::canvas(inner, size))
}
