//! The loads of one indicator as a figure: its table, its picture, its spots.

use faceload_core::analysis::Interval;
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_picture::{LoadsPanel, Theme, loads_height, loads_rows, loads_svg};

use crate::figure::{Cell, Figure, Table};
use crate::labels::label;
use crate::panel::{WIDE, loads as panel};
use crate::spot::{Picture, Spot};
use crate::sureness::{by_interval, range};
use crate::words;

/// The 5, 25, 50, 75 and 95 % points of each alternative's load, where they are known.
pub type Points<'a> = Option<&'a Vec<[f64; 5]>>;

fn interval(&[p5, p25, median, p75, p95]: &[f64; 5]) -> Interval {
    Interval { p5, p25, median, p75, p95 }
}

/// The figure.
pub fn figure(comparison: &Comparison, indicator: Indicator, points: Points) -> Figure {
    let rows = comparison.models.iter().enumerate().map(|(at, model)| {
        let value = model.load(indicator, comparison.per).value;
        let head = vec![Cell::from(model.alternative.id.as_str()), Cell::number(value, words::number(value))];
        let known = points.and_then(|points| points.get(at)).map(interval);
        let cells = known.iter().flat_map(|one| [one.p5, one.p25, one.median, one.p75, one.p95].map(|point| (point, one)));
        head.into_iter().chain(cells.map(|(point, one)| Cell::number(point, by_interval(point, one)))).collect()
    });
    let of_draws =
        if points.is_some() { ["draws-5", "draws-25", "draws-median", "draws-75", "draws-95"].map(label).to_vec() } else { Vec::new() };
    let columns = [label("alternative"), label("load")].into_iter().chain(of_draws);
    Figure {
        heading: format!("{}, {}", indicator.label(), comparison.per.words()),
        sentences: Vec::new(),
        tables: vec![Table {
            caption: format!("{}: {}{}", indicator.label(), indicator.unit(), comparison.per.suffix()),
            columns: columns.map(str::to_owned).collect(),
            rows: rows.collect(),
            ..Table::default()
        }],
    }
}

/// The spots of its picture at a width.
pub fn spots(comparison: &Comparison, indicator: Indicator, points: Points, width: u32) -> Vec<Spot> {
    let panel = panel(comparison, indicator, points);
    let known = |at: usize| points.and_then(|points| points.get(at)).map(interval).filter(|one| one.p5 != one.p95);
    let each = loads_rows(&panel, width).into_iter().zip(&panel.bars).enumerate().map(|(at, (place, bar))| {
        let draws = known(at).map_or(String::new(), |one| format!("; {} {}", label("middle-90"), range(&one)));
        let words = format!("{}, {}: {} {}{draws}", bar.label, indicator.label(), bar.text, panel.unit);
        Spot::saying(place, words).leading(&bar.label, indicator.id())
    });
    each.collect()
}

/// Its picture at a width, with a title of its own where it stands alone: on paper and in files.
pub fn picture(comparison: &Comparison, indicator: Indicator, points: Points, (width, theme): (u32, Theme)) -> Result<Picture, String> {
    let bare = panel(comparison, indicator, points);
    let title = if theme == Theme::Paper { format!("{}, {}", indicator.label(), comparison.per.words()) } else { String::new() };
    let panel = LoadsPanel { title, ..bare };
    let size = (width, loads_height(&panel, width));
    let svg = loads_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
    Ok(Picture { svg, size, spots: spots(comparison, indicator, points, width) })
}

/// The picture for a file.
pub fn file(comparison: &Comparison, indicator: Indicator, points: Points) -> Result<String, String> {
    picture(comparison, indicator, points, (WIDE, Theme::Paper)).map(|picture| picture.svg)
}
