//! Panels that are hard to draw: long words, small and large numbers, zero far to one side.
use super::{crossing, dots, map, stages};
use crate::*;

pub fn bar(label: &str, value: f64, text: &str, mark: Mark) -> Bar {
    let range = (value > 10.0).then_some(Interval { half: (0.9 * value, 1.2 * value), ninety: (0.7 * value, 1.4 * value) });
    Bar { label: label.to_owned(), value, text: text.to_owned(), range, look: Look { colour: Colour::FILM, mark } }
}

pub fn loads(bars: Vec<Bar>) -> LoadsPanel {
    LoadsPanel {
        close: false,
        title: "Climate, the whole order of stop signs and diamonds".to_owned(),
        unit: "kg CO\u{2082}e per order".to_owned(),
        range_label: "thick line: half of the draws; thin line: 90 of 100 draws".to_owned(),
        bars,
    }
}

pub fn many_loads(scale: f64) -> LoadsPanel {
    loads(vec![
        bar("screen printing, ultraviolet-cured ink, reclaimed screens, short run", 1240.0 * scale, "1\u{202F}240", Mark::Plain),
        bar("screen printing", 12.0 * scale, "12", Mark::Hatched),
        bar("transfer-film-squeegee-weeding-bench-and-edge-sealing", 1630.5 * scale, "1\u{202F}630.5 (shop value)", Mark::Dashed),
        bar("digital", 0.0, "0", Mark::Plain),
        bar("credit", -400.0 * scale, "\u{2212}400", Mark::Hatched),
    ])
}

fn swing(label: &str, low: f64, high: f64) -> Swing {
    Swing { label: label.to_owned(), low, high, crosses: low * high < 0.0 }
}

pub fn swings(shift: f64) -> SwingsPanel {
    SwingsPanel {
        title: "Climate: digital minus screen printing".to_owned(),
        unit: "kg CO\u{2082}e per order".to_owned(),
        centre: shift,
        less_label: "digital loads less".to_owned(),
        more_label: "digital loads more".to_owned(),
        turns_label: "turns it".to_owned(),
        key: SwingsKey { low: "input at its low".to_owned(), high: "input at its high".to_owned(), centre: "as entered".to_owned() },
        rows: vec![
            swing("service life of the digital face, from 7 to 12 years, as the warranty has it", shift + 70.0, shift - 70.0),
            swing("signs of one design, 10 to 400", shift - 40.0, shift + 60.0),
            swing("ink laid down", shift - 3.0, shift + 2.0),
            swing("transfer film", shift, shift),
        ],
    }
}

pub const WIDTHS: [u32; 7] = [320, 360, 420, 559, 560, 720, 900];

/// Every picture these checks look at, with its name and size.
pub fn drawn() -> Vec<(String, (u32, u32), String)> {
    let mut out = Vec::new();
    for w in WIDTHS {
        for theme in [Theme::Light, Theme::Dark, Theme::Paper] {
            for scale in [1e-9, 1e-3, 1.0, 1e4, 1e12] {
                let panel = many_loads(scale);
                let size = (w, loads_height(&panel, w));
                out.push((format!("loads {scale} {w}"), size, loads_svg(&panel, size, theme).unwrap()));
            }
            for shift in [-500.0, -41.0, 0.0, 33.0, 4e6] {
                let panel = swings(shift);
                let size = (w, swings_height(&panel, w));
                out.push((format!("swings {shift} {w}"), size, swings_svg(&panel, size, theme).unwrap()));
            }
            for (i, panel) in crossing::panels().iter().enumerate() {
                let size = (w, crossing_height(panel, w));
                out.push((format!("crossing {i} {w}"), size, crossing_svg(panel, size, theme).unwrap()));
            }
            for (i, panel) in map::panels().iter().enumerate() {
                let size = (w, map_height(panel, w));
                out.push((format!("map {i} {w}"), size, map_svg(panel, size, theme).unwrap()));
            }
            for (i, panel) in stages::panels().iter().enumerate() {
                let size = (w, stages_height(panel, w));
                out.push((format!("stages {i} {w}"), size, stages_svg(panel, size, theme).unwrap()));
            }
            for (i, panel) in dots::panels().iter().enumerate() {
                let size = (w, dots_height(panel, w));
                out.push((format!("dots {i} {w}"), size, dots_svg(panel, size, theme).unwrap()));
            }
        }
    }
    out
}
