//! A drawing as SVG text. The head is ours: CSS size outside, fine units inside, and the title
//! for those who listen.
use crate::fine::{Fine, units};
use crate::refused::Refused;
use crate::text_width::printable;
use plotters::prelude::SVGBackend;

/// The SVG of a drawing.
pub(crate) fn svg(
    title: &str,
    size: (u32, u32),
    draw: impl FnOnce(Fine<SVGBackend<'_>>) -> Result<(), Refused>,
) -> Result<String, Refused> {
    let mut drawn = String::new();
    draw(Fine::svg(SVGBackend::with_string(&mut drawn, units(size)), size))?;
    let body = drawn.split_once(">\n").map_or("", |(_, body)| body);
    let (width, height) = size;
    let (w, h) = units(size);
    let title = escaped(&printable(title));
    Ok(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\" \
         viewBox=\"0 0 {w} {h}\" role=\"img\" aria-label=\"{title}\">\n{body}"
    ))
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
