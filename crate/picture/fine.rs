//! The one wrapper around a plotters backend. Plotters counts in whole numbers, so a unit is an
//! eighth of a CSS px: bars glide and dots are round. The inner backend must draw in these units
//! (an SVG by its view box, a canvas by a context scaled by `devicePixelRatio / UNITS_PER_PX`).
//! Here too: text is never measured by a browser, and letters come out the same size and height
//! on every backend.
use crate::text_width;
use plotters_backend::text_anchor::Pos;
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind, FontFamily, FontStyle, FontTransform,
};

/// Units of the drawing to one CSS px.
pub const UNITS_PER_PX: u32 = 8;

/// What the inner backend does to letters.
#[derive(Clone, Copy)]
struct Letters {
    /// It draws them smaller than asked by this factor.
    shrink: f64,
    /// It sets vertically centred text too high by this share of the letter size.
    rise: f64,
}

/// A backend in eighths of a CSS px.
pub struct Fine<B> {
    inner: B,
    size: (u32, u32),
    letters: Letters,
}

impl<B> Fine<B> {
    /// Around an SVG backend, made with a size of `units(size_css)`.
    pub fn svg(inner: B, size_css: (u32, u32)) -> Self {
        // plotters-svg divides the letter size by 1.24 and centres on half an x-height.
        Self { inner, size: size_css, letters: Letters { shrink: 1.24, rise: 0.085 } }
    }

    /// Around a canvas backend whose context was scaled by `devicePixelRatio / UNITS_PER_PX`.
    pub fn canvas(inner: B, size_css: (u32, u32)) -> Self {
        Self { inner, size: size_css, letters: Letters { shrink: 1.0, rise: 0.0 } }
    }

    /// The size in CSS px.
    pub fn size_css(&self) -> (u32, u32) {
        self.size
    }
}

/// A size in CSS px as units.
pub(crate) fn units((width, height): (u32, u32)) -> (u32, u32) {
    (width * UNITS_PER_PX, height * UNITS_PER_PX)
}

/// A text style with the size the inner backend must be asked for.
struct Asked<'a, S>(&'a S, f64);

impl<S: BackendTextStyle> BackendTextStyle for Asked<'_, S> {
    type FontError = S::FontError;
    fn color(&self) -> BackendColor {
        self.0.color()
    }
    fn size(&self) -> f64 {
        self.0.size() * self.1
    }
    fn transform(&self) -> FontTransform {
        self.0.transform()
    }
    fn style(&self) -> FontStyle {
        self.0.style()
    }
    fn anchor(&self) -> Pos {
        self.0.anchor()
    }
    fn family(&self) -> FontFamily<'_> {
        self.0.family()
    }
    fn layout_box(&self, text: &str) -> Result<((i32, i32), (i32, i32)), Self::FontError> {
        self.0.layout_box(text)
    }
    fn draw<E, F: FnMut(i32, i32, BackendColor) -> Result<(), E>>(
        &self,
        text: &str,
        pos: BackendCoord,
        draw: F,
    ) -> Result<Result<(), E>, Self::FontError> {
        self.0.draw(text, pos, draw)
    }
}

type Done<B> = Result<(), DrawingErrorKind<<B as DrawingBackend>::ErrorType>>;

impl<B: DrawingBackend> DrawingBackend for Fine<B> {
    type ErrorType = B::ErrorType;

    fn get_size(&self) -> (u32, u32) {
        units(self.size)
    }

    fn ensure_prepared(&mut self) -> Done<B> {
        self.inner.ensure_prepared()
    }

    fn present(&mut self) -> Done<B> {
        self.inner.present()
    }

    fn draw_pixel(&mut self, point: BackendCoord, colour: BackendColor) -> Done<B> {
        self.inner.draw_pixel(point, colour)
    }

    /// As a path: some backends shift level and upright lines by half a unit.
    fn draw_line<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S) -> Done<B> {
        self.inner.draw_path([from, to], style)
    }

    /// A frame as a path: some backends lose the stroke width of a rectangle.
    fn draw_rect<S: BackendStyle>(&mut self, a: BackendCoord, b: BackendCoord, style: &S, fill: bool) -> Done<B> {
        if fill {
            return self.inner.draw_rect(a, b, style, true);
        }
        self.inner.draw_path([a, (b.0, a.1), b, (a.0, b.1), a, (b.0, a.1)], style)
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done<B> {
        self.inner.draw_path(path, style)
    }

    fn draw_circle<S: BackendStyle>(&mut self, centre: BackendCoord, radius: u32, style: &S, fill: bool) -> Done<B> {
        self.inner.draw_circle(centre, radius, style, fill)
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done<B> {
        self.inner.fill_polygon(path, style)
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, pos: BackendCoord) -> Done<B> {
        let fall = (style.size() * self.letters.rise).round() as i32;
        self.inner.draw_text(text, &Asked(style, self.letters.shrink), (pos.0, pos.1 + fall))
    }

    fn estimate_text_size<S: BackendTextStyle>(&self, text: &str, style: &S) -> Result<(u32, u32), DrawingErrorKind<Self::ErrorType>> {
        let bold = matches!(style.style(), FontStyle::Bold);
        let width = text_width::width(text, style.size(), bold).ceil();
        Ok((width as u32, style.size().ceil() as u32))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plotters::prelude::{FontDesc, IntoDrawingArea, Rectangle, TextStyle, WHITE};
    use plotters::style::text_anchor::{HPos, VPos};
    use std::cell::RefCell;

    /// A backend that writes down what it is asked for.
    struct Written<'a>(&'a RefCell<Vec<String>>);

    impl DrawingBackend for Written<'_> {
        type ErrorType = std::io::Error;
        fn get_size(&self) -> (u32, u32) {
            (1, 1)
        }
        fn ensure_prepared(&mut self) -> Done<Self> {
            Ok(())
        }
        fn present(&mut self) -> Done<Self> {
            Ok(())
        }
        fn draw_pixel(&mut self, _: BackendCoord, _: BackendColor) -> Done<Self> {
            Ok(())
        }
        fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done<Self> {
            let points: Vec<_> = path.into_iter().collect();
            self.0.borrow_mut().push(format!("path {points:?} {}", style.stroke_width()));
            Ok(())
        }
        fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, pos: BackendCoord) -> Done<Self> {
            self.0.borrow_mut().push(format!("text {text} {} {pos:?}", style.size()));
            Ok(())
        }
    }

    fn asked(fine: impl for<'a> Fn(Written<'a>) -> Fine<Written<'a>>) -> Vec<String> {
        let written = RefCell::new(Vec::new());
        let area = fine(Written(&written)).into_drawing_area();
        assert_eq!(area.dim_in_pixel(), (800, 400));
        let font = FontDesc::new(FontFamily::SansSerif, 100.0, FontStyle::Normal);
        let style = TextStyle::from(font).pos(Pos::new(HPos::Left, VPos::Center));
        area.draw_text("film", &style, (8, 80)).unwrap();
        area.draw(&Rectangle::new([(0, 0), (80, 40)], WHITE)).unwrap();
        assert_eq!(area.estimate_text_size("film", &style).unwrap(), (189, 100));
        drop(area);
        written.into_inner()
    }

    #[test]
    fn letters_are_corrected_for_the_svg_backend_only() {
        let frame = "path [(0, 0), (80, 0), (80, 40), (0, 40), (0, 0), (80, 0)] 1";
        assert_eq!(asked(|w| Fine::svg(w, (100, 50))), ["text film 124 (8, 89)", frame]);
        assert_eq!(asked(|w| Fine::canvas(w, (100, 50))), ["text film 100 (8, 80)", frame]);
    }
}
