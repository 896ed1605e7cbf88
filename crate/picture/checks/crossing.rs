//! Loads against an input, and where they cross.
use super::read_back::{Element, elements};
use crate::*;

fn along(value: f64) -> Along {
    Along { value, at: value / 400.0 }
}

fn curve(label: &str, colour: Colour, load: impl Fn(f64) -> f64) -> Curve {
    let point = |i: u32| {
        let value = f64::from(i) * 20.0;
        CrossingPoint { input: along(value), load: load(value) }
    };
    Curve { label: label.to_owned(), look: Look { colour, mark: Mark::Plain }, points: (0..=20).map(point).collect() }
}

fn crossing(value: f64, band: f64) -> Crossing {
    Crossing {
        text: format!("{value} signs, in 90 of 100 draws {} to {}", value - band, value + band),
        input: along(value),
        band: Some((along(value - band), along(value + band))),
    }
}

/// Two lines that cross at 100 signs, and one that runs beside them.
pub fn panel() -> CrossingPanel {
    let tick = |value: f64| InputTick { text: value.to_string(), at: value / 400.0 };
    CrossingPanel {
        title: "Climate against signs of one design, the order of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        input: InputAxis { title: "signs of one design".to_owned(), ticks: [0.0, 100.0, 200.0, 300.0, 400.0].map(tick).into() },
        curves: vec![
            curve("screen printing, ultraviolet-cured", Colour::SCREEN_PRINTING, |v| 10.0 - v / 50.0),
            curve("film", Colour::FILM, |v| 6.0 + v / 50.0),
            curve("digital", Colour::DIGITAL, |v| if v < 200.0 { 4.0 } else { 2.1 }),
        ],
        crossings: vec![crossing(100.0, 30.0)],
        none_label: "no crossing from 0 to 400 signs".to_owned(),
        own: Some(OwnMark { label: "this order: 120".to_owned(), input: along(120.0) }),
    }
}

/// Panels that are hard to draw.
pub fn panels() -> Vec<CrossingPanel> {
    let mut none = panel();
    none.crossings.clear();
    none.curves.truncate(1);
    let mut many = panel();
    many.crossings = [40.0, 100.0, 110.0, 370.0, 372.0].map(|value| crossing(value, 20.0)).into();
    many.own = Some(OwnMark { label: "this order, 400 signs of one design, all made in one set-up".to_owned(), input: along(400.0) });
    let mut flat = panel();
    for curve in &mut flat.curves {
        curve.points.iter_mut().for_each(|point| point.load = 0.0);
    }
    flat.own = None;
    vec![panel(), none, many, flat]
}

fn drawn(panel: &CrossingPanel, width: u32) -> Vec<Element> {
    elements(&crossing_svg(panel, (width, crossing_height(panel, width)), Theme::Light).unwrap())
}

#[test]
fn the_upright_line_stands_where_the_lines_cross_and_its_band_around_it() {
    let all = drawn(&panel(), 720);
    let boxes = |fill: &str| -> Vec<(f64, f64, f64)> {
        let boxes = all.iter().filter(|e| e.name == "rect" && e.get("fill") == fill);
        boxes.map(|e| (e.px("x"), e.px("width"), e.px("height"))).collect()
    };
    let band = boxes("#E6E6E6");
    assert_eq!(band.len(), 1);
    let pole = boxes("#1A1A1A").into_iter().find(|b| b.1 == 1.0).expect("an upright line");
    assert!((pole.0 + 0.5 - (band[0].0 + band[0].1 / 2.0)).abs() <= 1.0, "{pole:?} {band:?}");
    // The line of film, in pieces, passes the line of screen printing at the pole.
    let at = |colour: &str| -> Vec<(f64, f64)> {
        let lines = all.iter().filter(|e| e.name == "polyline" && e.get("stroke") == colour && e.get("stroke-width") == "18");
        let points = lines.flat_map(|e| e.get("points").split_whitespace().map(str::to_owned).collect::<Vec<_>>());
        points
            .map(|p| p.split_once(',').map(|(x, y)| (x.parse::<f64>().unwrap() / 8.0, y.parse::<f64>().unwrap() / 8.0)).unwrap())
            .collect()
    };
    let near = |colour| at(colour).into_iter().min_by(|a, b| (a.0 - pole.0).abs().total_cmp(&(b.0 - pole.0).abs())).unwrap();
    assert!((near("#0072B2").1 - near("#D55E00").1).abs() < 8.0, "{:?} {:?}", near("#0072B2"), near("#D55E00"));
}

#[test]
fn every_line_has_its_own_dashes_and_its_name() {
    let all = drawn(&panel(), 720);
    let pieces =
        |colour: &str| all.iter().filter(|e| e.name == "polyline" && e.get("stroke") == colour && e.get("stroke-width") == "18").count();
    assert_eq!(pieces("#0072B2"), 1, "whole");
    assert!(pieces("#D55E00") > 20 && pieces("#CC79A7") > 2 * pieces("#D55E00"), "long and short dashes");
    for name in ["film", "digital"] {
        assert_eq!(all.iter().filter(|e| e.text.trim() == name).count(), 1);
    }
}

#[test]
fn without_a_crossing_nothing_is_marked_and_a_sentence_says_so() {
    let mut panel = panel();
    let uprights = |all: &[Element]| all.iter().filter(|e| e.name == "rect" && e.get("fill") == "#1A1A1A" && e.px("width") == 1.0).count();
    assert_eq!(uprights(&drawn(&panel, 720)), 1);
    panel.crossings.clear();
    let all = drawn(&panel, 720);
    assert_eq!(uprights(&all), 0);
    assert!(!all.iter().any(|e| e.get("fill") == "#E6E6E6"));
    assert_eq!(all.iter().filter(|e| e.text.trim() == "no crossing from 0 to 400 signs").count(), 1);
}

#[test]
fn numbers_without_a_place_on_either_axis_are_refused() {
    let refused = |change: &dyn Fn(&mut CrossingPanel)| {
        let mut panel = panel();
        change(&mut panel);
        crossing_svg(&panel, (720, 2000), Theme::Light).unwrap_err()
    };
    assert!(matches!(refused(&|p| p.curves[1].points[3].load = f64::NAN), Refused::Number { .. }));
    assert!(matches!(refused(&|p| p.curves[1].points[3].load = -1.0), Refused::Negative { .. }));
    assert!(matches!(refused(&|p| p.curves[1].points[3].input.at = 1.01), Refused::Position { .. }));
    assert!(matches!(refused(&|p| p.curves[1].points[3].input.at = 0.9), Refused::Turned { .. }));
    assert!(matches!(refused(&|p| p.curves[1].points.truncate(1)), Refused::Empty(_)));
    assert!(matches!(refused(&|p| p.curves.clear()), Refused::Empty(_)));
    assert!(matches!(refused(&|p| p.crossings[0].input.at = f64::NAN), Refused::Position { .. }));
    assert!(matches!(refused(&|p| p.crossings[0].band = Some((along(120.0), along(80.0)))), Refused::Turned { .. }));
    assert!(matches!(refused(&|p| p.input.ticks[0].at = -0.1), Refused::Position { .. }));
    assert!(matches!(refused(&|p| p.own = Some(OwnMark { label: String::new(), input: along(500.0) })), Refused::Position { .. }));
    let needed = crossing_height(&panel(), 390);
    assert_eq!(crossing_svg(&panel(), (390, needed - 1), Theme::Light), Err(Refused::Height { given: needed - 1, needed }));
}

#[test]
fn the_table_behind_holds_points_and_crossings() {
    let behind = panel().behind();
    assert_eq!(behind.rows.len(), 3 * 21 + 1);
    assert_eq!(behind.rows[1].cells, [Cell::Number(20.0), Cell::Number(9.6), Cell::Empty, Cell::Empty]);
    assert_eq!(behind.rows[63].cells, [Cell::Number(100.0), Cell::Empty, Cell::Number(70.0), Cell::Number(130.0)]);
}

#[test]
fn places_hold_names_and_crossings() {
    for width in [320, 720] {
        let places = crossing_places(&panel(), width);
        assert_eq!(places.len(), 4);
        assert!(places.iter().all(|p| p.x >= 0.0 && p.x + p.width <= f64::from(width) && p.width >= 10.0), "{places:?}");
    }
}
