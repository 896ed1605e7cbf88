//! Loads by stage.
use super::read_back::elements;
use crate::*;

/// A panel of two stages and a load of almost nothing.
pub fn panel() -> StagesPanel {
    let alternative = |letter: &str, label: &str, colour, mark| StagesAlternative {
        letter: letter.to_owned(),
        label: label.to_owned(),
        look: Look { colour, mark },
    };
    let stage = |label: &str, values: [f64; 3]| Stage {
        label: label.to_owned(),
        loads: values.map(|value| StageLoad { value, text: value.to_string() }).into(),
    };
    StagesPanel {
        title: "Climate by stage, the order of Tern Harbour County".to_owned(),
        unit: "kg CO\u{2082}e/m\u{B2} of face".to_owned(),
        alternatives: vec![
            alternative("S", "screen printing", Colour::SCREEN_PRINTING, Mark::Plain),
            alternative("U", "screen printing with ultraviolet-cured ink on a press of two lamps", Colour::SCREEN_PRINTING, Mark::Hatched),
            alternative("F", "film", Colour::FILM, Mark::Dashed),
        ],
        stages: vec![
            stage("materials", [2.0, 1.0, 4.0]),
            stage("drying in racks that stand in the printing room between two colours of one run", [0.5, 0.001, 0.0]),
        ],
    }
}

/// Panels that are hard to draw.
pub fn panels() -> Vec<StagesPanel> {
    let mut bare = panel();
    bare.alternatives.iter_mut().for_each(|a| a.letter.clear());
    bare.stages.iter_mut().flat_map(|s| &mut s.loads).for_each(|load| load.text = format!("{} as the bill of the shop has it", load.value));
    let mut nothing = panel();
    nothing.stages.iter_mut().flat_map(|s| &mut s.loads).for_each(|load| load.value = 0.0);
    vec![panel(), bare, nothing]
}

#[test]
fn bars_are_as_long_as_their_loads_and_the_smallest_is_a_hair() {
    let panel = panel();
    let svg = stages_svg(&panel, (720, stages_height(&panel, 720)), Theme::Light).unwrap();
    let all = elements(&svg);
    let plain: Vec<f64> = all.iter().filter(|e| e.name == "rect" && e.get("fill") == "#0072B2").map(|e| e.px("width")).collect();
    // The key, two of screen printing, and the hair of the second alternative.
    assert_eq!(plain.len(), 4, "{plain:?}");
    assert!((plain[1] / plain[2] - 4.0).abs() < 0.03 && plain[3] == 1.0, "{plain:?}");
    // What loads nothing has its number and no bar: key and one bar are dashed.
    let frames = all.iter().filter(|e| e.name == "polyline" && e.get("stroke") == "#D55E00");
    let mut heights: Vec<String> = frames.map(|e| e.get("points").trim().split(',').next_back().unwrap().to_owned()).collect();
    heights.dedup();
    assert_eq!(all.iter().filter(|e| e.text.trim() == "0").count(), 2, "the number and the tick");
    let lowest = heights.iter().map(|y| y.parse::<f64>().unwrap() / 8.0).fold(0.0, f64::max);
    assert!(lowest < stages_places(&panel, 720)[3].y, "no frame in the second stage");
}

#[test]
fn bars_lie_under_the_key_one_under_the_other() {
    for width in [320, 720] {
        let places = stages_places(&panel(), width);
        assert_eq!(places.len(), 6);
        assert!(places[0].y > 40.0);
        assert!(places.windows(2).all(|two| two[0].y + two[0].height <= two[1].y), "{places:?}");
        assert!(places[2].y + places[2].height < places[3].y, "one stage apart from the next");
        let last = places[5];
        assert!(last.y + last.height < f64::from(stages_height(&panel(), width)) && last.x + last.width == f64::from(width));
    }
}

#[test]
fn a_place_holds_its_bar() {
    let panel = panel();
    let svg = stages_svg(&panel, (720, stages_height(&panel, 720)), Theme::Light).unwrap();
    let bars: Vec<(f64, f64)> = elements(&svg)
        .iter()
        .filter(|e| e.name == "rect" && e.get("fill") == "#0072B2")
        .map(|e| (e.px("y"), e.px("y") + e.px("height")))
        .collect();
    let first = stages_places(&panel, 720)[0];
    assert!(first.y <= bars[1].0 && bars[1].1 <= first.y + first.height, "{first:?} {bars:?}");
}

#[test]
fn stages_that_cannot_be_drawn_are_refused() {
    let refused = |change: &dyn Fn(&mut StagesPanel)| {
        let mut panel = panel();
        change(&mut panel);
        stages_svg(&panel, (720, 2000), Theme::Light).unwrap_err()
    };
    assert!(matches!(refused(&|p| p.stages[1].loads[0].value = f64::INFINITY), Refused::Number { .. }));
    let words = refused(&|p| p.stages[0].loads[0].value = -0.5).to_string();
    assert_eq!(words, "cannot draw `materials`: `-0.5` is below zero");
    let words = refused(&|p| p.stages[0].loads.truncate(2)).to_string();
    assert_eq!(words, "cannot draw `materials`: it holds `2`, and `3` fit");
    assert!(matches!(refused(&|p| p.stages.clear()), Refused::Empty(_)));
    let needed = stages_height(&panel(), 320);
    assert_eq!(stages_svg(&panel(), (320, needed - 1), Theme::Light), Err(Refused::Height { given: needed - 1, needed }));
}

#[test]
fn the_table_behind_has_a_column_for_each_alternative() {
    let behind = panel().behind();
    assert_eq!(behind.columns[2], Column::Alternative("film".to_owned()));
    assert_eq!(behind.rows[1].cells, [0.5, 0.001, 0.0].map(Cell::Number));
}
