//! Checks of whole pictures, read back from their SVG.
mod crossing;
mod dots;
mod read_back;
mod samples;

use crate::*;
use read_back::{Element, elements};
use samples::{WIDTHS, bar, drawn, loads, many_loads, swings};

#[test]
fn everything_stays_inside_the_view_box() {
    for (name, (w, h), svg) in drawn() {
        let all = elements(&svg);
        assert_eq!(all[0].get("viewBox"), format!("0 0 {} {}", w * 8, h * 8));
        assert_eq!((all[0].get("width"), all[0].get("height")), (&*w.to_string(), &*h.to_string()));
        for e in all.iter().filter(|e| ["text", "rect", "circle"].contains(&&*e.name)) {
            let (left, top, right, bottom) = e.extent();
            assert!(left <= right && top <= bottom, "{name}: turned {} {}", e.name, e.text);
            let inside = left >= 0.0 && top >= 0.0 && right <= f64::from(w) && bottom <= f64::from(h);
            assert!(inside, "{name}: {} `{}` {:?}", e.name, e.text.trim(), e.extent());
        }
        for e in all.iter().filter(|e| e.name == "polyline") {
            for pair in e.get("points").split_whitespace() {
                let (x, y) = pair.split_once(',').unwrap();
                let (x, y): (i64, i64) = (x.parse().unwrap(), y.parse().unwrap());
                assert!((0..=i64::from(w) * 8).contains(&x) && (0..=i64::from(h) * 8).contains(&y), "{name}");
            }
        }
    }
}

#[test]
fn texts_touch_neither_each_other_nor_bars() {
    let apart = |a: (f64, f64, f64, f64), b: (f64, f64, f64, f64)| a.2 <= b.0 || b.2 <= a.0 || a.3 <= b.1 || b.3 <= a.1;
    for (name, _, svg) in drawn() {
        let all = elements(&svg);
        // The first box is the ground.
        let boxes = all.iter().filter(|e| e.name == "rect").skip(1);
        let solid: Vec<&Element> = boxes.chain(all.iter().filter(|e| e.name == "circle")).collect();
        let texts: Vec<&Element> = all.iter().filter(|e| e.name == "text").collect();
        for (i, t) in texts.iter().enumerate() {
            for other in texts[i + 1..].iter().chain(&solid) {
                assert!(
                    apart(t.extent(), other.extent()),
                    "{name}: `{}` {:?} on {} `{}` {:?}",
                    t.text.trim(),
                    t.extent(),
                    other.name,
                    other.text.trim(),
                    other.extent()
                );
            }
        }
    }
}

#[test]
fn drawing_twice_gives_the_same_bytes() {
    assert_eq!(drawn(), drawn());
}

#[test]
fn text_is_text() {
    let label = "<script>&\"'\u{0}";
    let mut panel = loads(vec![bar(label, 4.0, label, Mark::Plain)]);
    panel.title = label.to_owned();
    panel.unit = label.to_owned();
    let svg = loads_svg(&panel, (360, loads_height(&panel, 360)), Theme::Light).unwrap();
    assert!(svg.contains("&lt;script&gt;&amp;&quot;") && !svg.contains("<script"), "{svg}");
    let shown = "<script>&\"'";
    let all = elements(&svg);
    assert_eq!(all[0].get("aria-label").trim(), shown);
    assert_eq!(all.iter().filter(|e| e.text.trim() == shown).count(), 4);
}

/// Boxes in a route's colour.
fn bars_of(svg: &str) -> Vec<(f64, f64)> {
    let all = elements(svg);
    let bars = all.iter().filter(|e| e.name == "rect" && e.get("fill") == "#D55E00");
    bars.map(|e| (e.px("x"), e.px("width"))).collect()
}

#[test]
fn zero_draws_its_text_and_no_bar() {
    let panel = loads(vec![bar("film", 0.0, "0 kg", Mark::Plain), bar("digital", -0.0, "0 kg", Mark::Dashed)]);
    let svg = loads_svg(&panel, (360, loads_height(&panel, 360)), Theme::Light).unwrap();
    assert!(bars_of(&svg).is_empty());
    let texts = elements(&svg).iter().filter(|e| e.text.trim() == "0 kg").count();
    let ticks = elements(&svg).iter().filter(|e| e.text.trim() == "0").count();
    assert_eq!((texts, ticks), (2, 1));
}

#[test]
fn bars_start_at_zero_and_are_as_long_as_their_values() {
    let panel = loads(vec![bar("a", 8.0, "8", Mark::Plain), bar("b", 2.0, "2", Mark::Plain), bar("c", -4.0, "\u{2212}4", Mark::Plain)]);
    let svg = loads_svg(&panel, (720, loads_height(&panel, 720)), Theme::Light).unwrap();
    let b = bars_of(&svg);
    assert_eq!(b[0].0, b[1].0, "one zero");
    assert!((b[2].0 + b[2].1 - b[0].0).abs() <= 0.125, "{b:?}");
    assert!((b[0].1 / b[1].1 - 4.0).abs() < 0.02 && (b[0].1 / b[2].1 - 2.0).abs() < 0.01, "{b:?}");
}

#[test]
fn dots_stand_at_low_and_high_and_crossing_rows_are_marked() {
    let panel = swings(10.0);
    let svg = swings_svg(&panel, (720, swings_height(&panel, 720)), Theme::Light).unwrap();
    let all = elements(&svg);
    assert_eq!(all.iter().filter(|e| e.text.trim() == "turns it").count(), 2);
    assert_eq!(all.iter().filter(|e| e.name == "polygon").count(), 2);
    // A row has a ring of two discs at its low and a disc at its high; the key has one of each.
    let dots: Vec<&Element> = all.iter().filter(|e| e.name == "circle").collect();
    assert_eq!(dots.len(), 3 * (panel.rows.len() + 1));
    assert_eq!((dots[1].get("fill"), dots[2].get("fill")), ("#FFFFFF", "#1A1A1A"));
    assert!(dots[1].px("cx") > dots[2].px("cx"), "the first input's low is the larger difference");
    assert!(dots[4].px("cx") < dots[5].px("cx"), "the second input's high is");
}

#[test]
fn numbers_without_a_place_are_refused() {
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300] {
        let mut panel = loads(vec![bar("film", 1.0, "1", Mark::Plain), bar("digital", 2.0, "2", Mark::Plain)]);
        panel.bars[1].value = value;
        let refused = loads_svg(&panel, (360, 900), Theme::Light).unwrap_err();
        assert!(matches!(&refused, Refused::Number { label, .. } if label == "digital"), "{refused}");
        panel.bars[1].value = 2.0;
        panel.bars[0].range = Some(Interval { half: (0.5, 1.5), ninety: (0.0, value) });
        assert!(matches!(loads_svg(&panel, (360, 900), Theme::Light), Err(Refused::Number { .. })));
        let mut panel = swings(1.0);
        panel.rows[2].low = value;
        assert!(matches!(swings_svg(&panel, (360, 900), Theme::Light), Err(Refused::Number { .. })));
        let mut panel = swings(1.0);
        panel.centre = value;
        assert!(matches!(swings_svg(&panel, (360, 900), Theme::Light), Err(Refused::Number { .. })));
    }
    let refused = Refused::Number { label: "digital".to_owned(), value: f64::NAN };
    assert_eq!(refused.to_string(), "cannot draw `digital`: `NaN` has no place on an axis");
}

#[test]
fn sheets_of_the_wrong_size_are_refused() {
    let panel = many_loads(1.0);
    let needed = loads_height(&panel, 360);
    let low = loads_svg(&panel, (360, needed - 1), Theme::Light);
    assert_eq!(low, Err(Refused::Height { given: needed - 1, needed }));
    assert_eq!(loads_svg(&panel, (100, 900), Theme::Light), Err(Refused::Width(100)));
    assert_eq!(swings_svg(&swings(1.0), (0, 0), Theme::Dark), Err(Refused::Width(0)));
}

#[test]
fn rows_lie_one_under_the_other_within_the_picture() {
    for w in WIDTHS {
        let (a, b) = (many_loads(1.0), swings(3.0));
        let pictures = [(loads_rows(&a, w), loads_height(&a, w), a.bars.len()), (swings_rows(&b, w), swings_height(&b, w), b.rows.len())];
        for (rows, height, n) in pictures {
            assert_eq!(rows.len(), n);
            assert!(rows.windows(2).all(|p| p[0].y + p[0].height == p[1].y));
            assert!(rows.iter().all(|r| r.x == 0.0 && r.width == f64::from(w) && r.y + r.height < f64::from(height)));
        }
    }
}

#[test]
fn a_panel_without_rows_is_drawn() {
    let mut panel = swings(0.0);
    panel.rows.clear();
    panel.title.clear();
    assert!(swings_svg(&panel, (360, swings_height(&panel, 360)), Theme::Light).is_ok());
    let panel = loads(Vec::new());
    assert!(loads_svg(&panel, (720, loads_height(&panel, 720)), Theme::Light).is_ok());
}

#[test]
fn the_numbers_behind_are_those_given() {
    let behind = many_loads(1.0).behind();
    let points = [5, 25, 75, 95].map(Column::Percentile);
    assert_eq!((&behind.columns[0], &behind.columns[1..]), (&Column::Value, &points[..]));
    let numbers = [1240.0, 0.7 * 1240.0, 0.9 * 1240.0, 1.2 * 1240.0, 1.4 * 1240.0];
    assert_eq!(behind.rows[0].cells, numbers.map(Cell::Number));
    assert_eq!((&behind.rows[3].cells[0], &behind.rows[3].cells[1]), (&Cell::Number(0.0), &Cell::Empty));
    assert!(behind.rows.iter().all(|row| row.cells.len() == behind.columns.len()));
    assert_eq!(swings(5.0).behind().rows[1].cells, [-35.0, 65.0].map(Cell::Number));
}

#[test]
fn an_interval_lies_over_its_bar_and_its_number_beyond_both() {
    let mut panel = loads(vec![bar("film", 100.0, "100 kg", Mark::Plain)]);
    let size = (720, loads_height(&panel, 720));
    let svg = loads_svg(&panel, size, Theme::Light).unwrap();
    let lines = |colour: &str| {
        let all = elements(&svg);
        let lines = all.iter().filter(|e| e.name == "polyline" && e.get("stroke") == colour);
        lines.map(|e| e.get("points").trim().to_owned()).collect::<Vec<_>>()
    };
    // Thin and thick line at the bar and in the key, an edge of ground under each.
    assert_eq!((lines("#1A1A1A").len(), lines("#FFFFFF").len()), (4, 4));
    let end = |points: &str| points.rsplit([' ', ',']).nth(1).unwrap().parse::<f64>().unwrap() / 8.0;
    let number = elements(&svg).into_iter().find(|e| e.text.trim() == "100 kg").unwrap().px("x");
    assert!(number > end(&lines("#1A1A1A")[0]), "the number stands right of the thin line");
    // Without an interval nothing of it is drawn.
    panel.bars[0].range = None;
    let bare = loads_svg(&panel, (720, loads_height(&panel, 720)), Theme::Light).unwrap();
    assert!(!elements(&bare).iter().any(|e| e.name == "polyline"));
    assert!(loads_height(&panel, 720) < size.1, "nor its key");
    panel.bars[0].range = Some(Interval { half: (80.0, 120.0), ninety: (90.0, 140.0) });
    let refused = loads_svg(&panel, size, Theme::Light).unwrap_err();
    assert_eq!(refused.to_string(), "cannot draw `film`: `90` should not lie above `80`");
}
