//! The map over two inputs.
use super::read_back::{Element, elements};
use crate::*;

/// A map of so many columns and rows: screen printing where both are large, film where both are small.
pub fn panel(columns: usize, rows: usize) -> MapPanel {
    let side = |letter: &str, name: &str, colour, mark| MapSide {
        letter: letter.to_owned(),
        less_label: format!("{name} loads less"),
        only_label: format!("only {name} can make them"),
        look: Look { colour, mark },
    };
    let cell = |column: usize, row: usize| match column + row {
        0 => MapCell::None,
        1 => MapCell::Only(1),
        n if n < 4 => MapCell::Less(1),
        4 => MapCell::Unclear,
        n if n < 8 => MapCell::Less(0),
        _ => MapCell::Only(0),
    };
    MapPanel {
        title: "Climate over signs of one design and colours, the order of Tern Harbour County".to_owned(),
        across: MapAxis {
            title: "signs of one design in one set-up".to_owned(),
            ticks: (0..columns).map(|i| (5 << i).to_string()).collect(),
        },
        up: MapAxis { title: "colours of the face".to_owned(), ticks: (1..=rows).map(|i| i.to_string()).collect() },
        sides: vec![
            side("S", "screen printing with ultraviolet-cured ink", Colour::SCREEN_PRINTING, Mark::Hatched),
            side("F", "film", Colour::FILM, Mark::Plain),
        ],
        cells: (0..rows).map(|row| (0..columns).map(|column| cell(column, row)).collect()).collect(),
        unclear_label: "no clear difference".to_owned(),
        none_label: "none of them can make it".to_owned(),
        own: Some((columns - 1, 0)),
        own_label: "this order".to_owned(),
    }
}

/// Panels that are hard to draw.
pub fn panels() -> Vec<MapPanel> {
    let mut long = panel(7, 2);
    long.up.ticks[1] = "sheeting with a liner of paper, turned on the roll".to_owned();
    vec![panel(8, 5), panel(1, 1), panel(12, 3), long]
}

fn drawn(panel: &MapPanel, width: u32) -> Vec<Element> {
    elements(&map_svg(panel, (width, map_height(panel, width)), Theme::Light).unwrap())
}

fn letters(all: &[Element], letter: &str) -> usize {
    all.iter().filter(|e| e.text.trim() == letter && e.get("font-weight") == "bold").count()
}

#[test]
fn every_cell_that_has_a_winner_has_its_letter() {
    let panel = panel(8, 5);
    let all = drawn(&panel, 390);
    let of = |side: usize| panel.cells.iter().flatten().filter(|c| matches!(c, MapCell::Less(s) | MapCell::Only(s) if *s == side)).count();
    // Two more in the key: loads less, only it can.
    assert_eq!((letters(&all, "S"), letters(&all, "F")), (of(0) + 2, of(1) + 2));
    let dots = all.iter().filter(|e| e.name == "circle" && e.get("fill") == "#4F4F4F").count();
    assert_eq!(dots, panel.cells.iter().flatten().filter(|c| **c == MapCell::Unclear).count() + 1);
}

#[test]
fn the_key_names_only_what_the_map_holds() {
    let mut panel = panel(3, 2);
    panel.cells = vec![vec![MapCell::Less(1); 3]; 2];
    panel.own = None;
    let texts: Vec<String> = drawn(&panel, 720).iter().filter(|e| e.name == "text").map(|e| e.text.trim().to_owned()).collect();
    assert!(texts.contains(&"film loads less".to_owned()));
    for other in ["no clear difference", "none of them can make it", "this order", "only film can make them"] {
        assert!(!texts.contains(&other.to_owned()), "{other}");
    }
}

#[test]
fn the_frame_stands_around_the_orders_own_cell() {
    let panel = panel(8, 5);
    let (all, places) = (drawn(&panel, 720), map_places(&panel, 720));
    assert_eq!(places.len(), 40);
    let own = places[7];
    let frame = all.iter().find(|e| e.name == "polyline" && e.get("stroke") == "#1A1A1A").expect("a frame");
    let points = frame.get("points").split_whitespace();
    let points: Vec<(f64, f64)> = points
        .map(|p| p.split_once(',').map(|(x, y)| (x.parse::<f64>().unwrap() / 8.0, y.parse::<f64>().unwrap() / 8.0)).unwrap())
        .collect();
    assert_eq!((points[0], points[2]), ((own.x - 1.5, own.y - 1.5), (own.x + own.width + 1.5, own.y + own.height + 1.5)));
    assert!(places[39].y < places[7].y, "the first row is the lowest");
}

#[test]
fn a_grid_that_does_not_fit_its_ticks_is_refused() {
    let refused = |change: &dyn Fn(&mut MapPanel)| {
        let mut panel = panel(8, 5);
        change(&mut panel);
        map_svg(&panel, (320, 2000), Theme::Light).unwrap_err()
    };
    assert!(matches!(refused(&|p| p.across.ticks.clear()), Refused::Empty(_)));
    assert!(matches!(refused(&|p| p.cells.truncate(2)), Refused::Count { came: 2, wanted: 5, .. }));
    assert!(matches!(refused(&|p| p.cells[3].truncate(2)), Refused::Count { came: 2, wanted: 8, .. }));
    assert!(matches!(refused(&|p| p.cells[3][0] = MapCell::Only(2)), Refused::Count { came: 3, wanted: 2, .. }));
    assert!(matches!(refused(&|p| p.own = Some((8, 0))), Refused::Count { came: 9, wanted: 8, .. }));
    assert!(matches!(refused(&|p| p.own = Some((0, 5))), Refused::Count { came: 6, wanted: 5, .. }));
    let words = map_svg(&panel(20, 2), (320, 2000), Theme::Light).unwrap_err().to_string();
    assert!(words.starts_with("cannot draw `signs of one design in one set-up`: it holds `20`, and `1"), "{words}");
    let needed = map_height(&panel(8, 5), 390);
    assert_eq!(map_svg(&panel(8, 5), (390, needed - 1), Theme::Light), Err(Refused::Height { given: needed - 1, needed }));
}

#[test]
fn the_table_behind_has_a_row_for_each_cell() {
    let behind = panel(8, 5).behind();
    assert_eq!(behind.rows.len(), 40);
    let words = |text: &str| Cell::Words(text.to_owned());
    assert_eq!((behind.rows[2].label.as_str(), &behind.rows[2].cells), ("1", &vec![words("20"), words("film loads less")]));
}

#[test]
fn every_column_has_its_number() {
    for width in [320, 720] {
        let panel = panel(12, 3);
        let all = drawn(&panel, width);
        for tick in &panel.across.ticks {
            assert!(all.iter().any(|e| e.text.trim() == tick), "{tick} at {width}");
        }
    }
}
