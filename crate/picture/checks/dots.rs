//! The fifty dots of a difference.
use super::read_back::elements;
use crate::*;

/// Fifty values from `from` in equal steps.
pub fn panel(from: f64, step: f64) -> DotsPanel {
    let side = |label: &str, colour, mark| DotsSide { label: label.to_owned(), look: Look { colour, mark } };
    DotsPanel {
        title: "Climate: digital less film, the whole order of stop signs".to_owned(),
        unit: "kg CO\u{2082}e per order".to_owned(),
        values: (0..50).map(|i| from + step * f64::from(i)).collect(),
        less: side("film loads less", Colour::FILM, Mark::Plain),
        more: side("digital printing with ultraviolet-cured ink loads less", Colour::DIGITAL, Mark::Hatched),
        of_label: "of".to_owned(),
        same: None,
    }
}

/// Panels that are hard to draw.
pub fn panels() -> Vec<DotsPanel> {
    let mut same = panel(-20.0, 1.0);
    same.same = Some(DotsBand { ends: (-3.0, 60.0), label: "about the same, within a twentieth of the smaller load".to_owned() });
    vec![panel(-46.5, 1.0), panel(-25.0, 1.0), panel(0.0, 0.0), panel(900.0, 0.01), panel(-1e9, 1e6), same]
}

fn drawn(panel: &DotsPanel, width: u32) -> String {
    dots_svg(panel, (width, dots_height(panel, width)), Theme::Light).unwrap()
}

/// Level place, height and fill of every dot but the two samples above.
fn dots(svg: &str) -> Vec<(f64, f64, String)> {
    let all = elements(svg);
    let circles = all.iter().filter(|e| e.name == "circle" && e.get("fill") != "#FFFFFF");
    circles.map(|e| (e.px("cx"), e.px("cy"), e.get("fill").to_owned())).skip(2).collect()
}

#[test]
fn counts_are_those_of_the_dots_drawn() {
    let panel = panel(-46.5, 1.0);
    assert_eq!(panel.count(), DotsCount { less: 47, same: 0, more: 3 });
    let svg = drawn(&panel, 390);
    for text in ["47 of 50", "3 of 50"] {
        assert_eq!(elements(&svg).iter().filter(|e| e.text.trim() == text).count(), 1, "{text}");
    }
    let dots = dots(&svg);
    assert_eq!(dots.len(), 50);
    // The zero line is the one upright two px wide.
    let zero = elements(&svg).iter().find(|e| e.name == "rect" && e.get("width") == "16").map(|e| e.px("x") + 1.0).unwrap();
    for (x, _, fill) in &dots {
        assert_eq!(fill, if *x < zero { "#D55E00" } else { "#CC79A7" });
    }
    assert_eq!(dots.iter().filter(|d| d.0 < zero).count(), 47);
}

#[test]
fn no_dot_lies_on_another_or_on_the_zero_line() {
    for panel in panels() {
        for width in [320, 720] {
            let svg = drawn(&panel, width);
            let mut at: Vec<(f64, f64)> = dots(&svg).into_iter().map(|d| (d.0, d.1)).collect();
            // What follows is the key.
            at.truncate(50);
            assert_eq!(at.len(), 50);
            for (i, a) in at.iter().enumerate() {
                for b in &at[i + 1..] {
                    assert!((a.0 - b.0).abs() >= 5.8 || (a.1 - b.1).abs() >= 5.8, "{a:?} {b:?}");
                }
            }
        }
    }
}

#[test]
fn equal_alternatives_have_hollow_dots_on_zero() {
    let panel = panel(0.0, 0.0);
    assert_eq!(panel.count(), DotsCount { less: 0, same: 50, more: 0 });
    assert!(dots(&drawn(&panel, 320)).iter().all(|d| d.2 == "#1A1A1A"));
}

#[test]
fn a_band_takes_its_dots_from_both_sides() {
    let mut panel = panel(-24.5, 1.0);
    panel.same = Some(DotsBand { ends: (-5.0, 5.0), label: "about the same".to_owned() });
    assert_eq!(panel.count(), DotsCount { less: 20, same: 10, more: 20 });
    panel.same = Some(DotsBand { ends: (1.0, 5.0), label: String::new() });
    let refused = dots_svg(&panel, (390, 900), Theme::Light).unwrap_err();
    assert!(matches!(refused, Refused::Turned { low: 1.0, high: 5.0, .. }), "{refused}");
}

#[test]
fn dots_without_a_place_are_refused() {
    let mut bad = panel(0.0, 1.0);
    bad.values[7] = f64::NAN;
    assert!(matches!(dots_svg(&bad, (390, 900), Theme::Light), Err(Refused::Number { .. })));
    bad.values.clear();
    assert!(matches!(dots_svg(&bad, (390, 900), Theme::Light), Err(Refused::Empty(_))));
    bad.values = vec![1.0; 201];
    assert!(matches!(dots_svg(&bad, (390, 900), Theme::Light), Err(Refused::Count { came: 201, wanted: 200, .. })));
    let good = panel(0.0, 1.0);
    let needed = dots_height(&good, 390);
    assert_eq!(dots_svg(&good, (390, needed - 1), Theme::Light), Err(Refused::Height { given: needed - 1, needed }));
}

#[test]
fn the_table_behind_rises() {
    let mut panel = panel(0.0, 1.0);
    panel.values.reverse();
    let behind = panel.behind();
    assert_eq!((behind.columns.len(), behind.rows.len()), (1, 50));
    assert_eq!((behind.rows[0].label.as_str(), &behind.rows[0].cells[..]), ("1", &[Cell::Number(0.0)][..]));
}
