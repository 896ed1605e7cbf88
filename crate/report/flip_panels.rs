//! Panels of what draws say: dots of a difference, break-even lines, the map.

use faceload_core::analysis::{Axis, BreakEven, Draws, Finding, Map, Over, quantiles};
use faceload_core::comparison::{Comparison, SMALL_SHARE};
use faceload_core::load::Indicator;
use faceload_core::quantity::{ln, write_number};
use faceload_picture::{
    Along, Crossing, CrossingPanel, CrossingPoint, Curve, DotsBand, DotsPanel, DotsSide, InputAxis, InputTick, MapAxis, MapCell, MapPanel,
    MapSide, OwnMark, Theme, crossing_height, crossing_places, crossing_svg, dots_height, dots_places, dots_svg, map_height, map_places,
    map_svg,
};

use crate::flips::value;
use crate::panel::{WIDE, look};
use crate::spot::{Picture, Spot};
use crate::words::number;

/// How many dots stand for the draws.
const DOTS: usize = 50;

fn unit(comparison: &Comparison, indicator: Indicator) -> String {
    format!("{}{}", indicator.unit(), comparison.per.suffix())
}

/// Fifty dots of a pair's difference; none where it was not drawn.
fn dots(comparison: &Comparison, draws: &Draws, (a, b): (usize, usize), indicator: Indicator) -> Option<DotsPanel> {
    let pair = draws.pair(comparison, a, b, indicator)?;
    let spread = draws.spread(comparison, a, b, indicator)?;
    let mut shares = [0.0; DOTS];
    for (place, share) in shares.iter_mut().enumerate() {
        *share = (place as f64 + 0.5) / DOTS as f64;
    }
    let id = |place: usize| comparison.models[place].alternative.id.as_str();
    let side = |place: usize| DotsSide { label: format!("{} loads less", id(place)), look: look(comparison, place) };
    let (model, _) = comparison.of_pair(a, b)?;
    let same = (SMALL_SHARE * spread.first.median.min(spread.second.median)).max(comparison.matters(indicator, &model));
    Some(DotsPanel {
        title: format!("{} minus {} in {}", id(b), id(a), indicator.label()),
        unit: unit(comparison, indicator),
        values: quantiles(&pair.differences(), shares).to_vec(),
        less: side(b),
        more: side(a),
        of_label: "of".to_owned(),
        same: Some(DotsBand { ends: (-same, same), label: format!("about the same: at most {} apart", write_number(same, 2)) }),
    })
}

/// The dots as SVG.
pub fn dots_picture(
    comparison: &Comparison,
    draws: &Draws,
    pair: (usize, usize),
    indicator: Indicator,
    width: u32,
    theme: Theme,
) -> Result<Picture, String> {
    let Some(panel) = dots(comparison, draws, pair, indicator) else { return Err("the two share no line".to_owned()) };
    let size = (width, dots_height(&panel, width));
    let svg = dots_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
    let (count, all) = (panel.count(), panel.values.len());
    let same = panel.same.as_ref().filter(|_| count.same > 0).map_or(String::new(), |band| format!("; {} {}", count.same, band.label));
    let sides = [(count.less, &panel.less), (count.more, &panel.more)];
    let said = |(dots, side): (usize, &DotsSide)| format!("{}: {dots} {} {all}{same}", side.label, panel.of_label);
    let spots = dots_places(&panel, width).into_iter().zip(sides).map(|(place, side)| Spot::saying(place, said(side)));
    Ok(Picture { svg, size, spots: spots.collect() })
}

/// The dots for a file.
pub fn dots_file(comparison: &Comparison, draws: &Draws, pair: (usize, usize), indicator: Indicator) -> Result<String, String> {
    dots_picture(comparison, draws, pair, indicator, WIDE, Theme::Paper).map(|picture| picture.svg)
}

/// Where a value stands on an axis, from 0 to 1: by ratio where the values tried are.
struct Placed {
    from: f64,
    to: f64,
    by_ratio: bool,
}

impl Placed {
    fn on(axis: &Axis) -> Self {
        let (from, to) = (axis.values.first().copied().unwrap_or(0.0), axis.values.last().copied().unwrap_or(1.0));
        let middle = axis.values.get(axis.values.len() / 2).copied().unwrap_or(0.5 * (from + to));
        // Values in even ratios have their middle well below the mean of the ends.
        Self { from, to, by_ratio: from > 0.0 && to / from > 4.0 && middle < 0.35 * (from + to) }
    }

    fn at(&self, value: f64) -> f64 {
        let at = if self.by_ratio { ln(value / self.from) / ln(self.to / self.from) } else { (value - self.from) / (self.to - self.from) };
        at.clamp(0.0, 1.0)
    }

    fn along(&self, value: f64) -> Along {
        Along { value, at: self.at(value) }
    }

    /// Values a reader expects: 1, 2, 5 times powers of ten by ratio, else round steps.
    fn ticks(&self, axis: &Axis) -> Vec<InputTick> {
        let mut values = Vec::new();
        if self.by_ratio {
            let mut decade = 1e-9;
            while decade <= self.to {
                values.extend([1.0, 2.0, 5.0].map(|step| step * decade));
                decade *= 10.0;
            }
        } else {
            let span = self.to - self.from;
            let mut step = 1e-9;
            while 8.0 * step < span {
                step *= [2.0, 2.5, 2.0][values.len() % 3];
                values.push(step);
            }
            values = (0..=(self.to / step) as u32 + 1).map(|n| f64::from(n) * step).collect();
        }
        let wanted = values.into_iter().filter(|value| *value >= self.from * (1.0 - 1e-12) && *value <= self.to * (1.0 + 1e-12));
        wanted
            .filter(|value| !axis.whole || value.fract() == 0.0)
            .map(|value| InputTick { text: short(number_on(axis, value)), at: self.at(value) })
            .collect()
    }
}

/// Without the zeros that say nothing on an axis.
fn short(number: String) -> String {
    if number.contains('.') { number.trim_end_matches('0').trim_end_matches('.').to_owned() } else { number }
}

fn number_on(axis: &Axis, at: f64) -> String {
    value(&Axis { unit: String::new(), ..axis.clone() }, at)
}

/// The loads of a pair against what varies.
fn crossing(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, found: &BreakEven) -> CrossingPanel {
    let axis = &found.axis;
    let placed = Placed::on(axis);
    let curve = |place: usize, load: fn(&faceload_core::analysis::Point) -> f64| Curve {
        label: comparison.models[place].alternative.id.clone(),
        look: look(comparison, place),
        points: found.points.iter().map(|point| CrossingPoint { input: placed.along(point.at), load: load(point) }).collect(),
    };
    let band = found.spread.as_ref().map(|spread| (placed.along(spread.p5), placed.along(spread.p95)));
    let stretches = crate::flips::stretches(&found.crossings);
    let only = stretches.len() == 1;
    let crossings = stretches.iter().map(|(from, to, _)| {
        let at = if from == to { number(*from) } else { format!("{}\u{2013}{}", number_on(axis, *from), number_on(axis, *to)) };
        let range = found.spread.as_ref().filter(|_| only).map(|spread| {
            let round = |value: f64| if axis.whole { value.round() } else { value };
            format!(" ({} to {})", number_on(axis, round(spread.p5)), number_on(axis, round(spread.p95)))
        });
        Crossing { text: format!("{at}{}", range.unwrap_or_default()), input: placed.along(0.5 * (from + to)), band: band.filter(|_| only) }
    });
    let per = axis.over.per(comparison.per);
    let title = if axis.unit.is_empty() { axis.item.clone() } else { format!("{}, {}", axis.item, axis.unit) };
    CrossingPanel {
        title: format!("{} over {}", indicator.label(), axis.item),
        unit: format!("{}{}", indicator.unit(), per.suffix()),
        input: InputAxis { title, ticks: placed.ticks(axis) },
        curves: vec![curve(a, |point| point.first), curve(b, |point| point.second)],
        crossings: crossings.collect(),
        none_label: "no crossing".to_owned(),
        own: axis.own.filter(|own| *own >= placed.from && *own <= placed.to).map(|own| OwnMark {
            label: if axis.over == Over::Quantity { "as many as ordered" } else { "as ordered" }.to_owned(),
            input: placed.along(own),
        }),
    }
}

/// The break-even lines as SVG.
pub fn crossing_picture(
    comparison: &Comparison,
    pair: (usize, usize),
    indicator: Indicator,
    found: &BreakEven,
    width: u32,
    theme: Theme,
) -> Result<Picture, String> {
    let panel = crossing(comparison, pair, indicator, found);
    let size = (width, crossing_height(&panel, width));
    let svg = crossing_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
    let at = |point: &CrossingPoint| format!("{} {} at {}", number(point.load), panel.unit, value(&found.axis, point.input.value));
    let curve = |curve: &Curve| match curve.points.as_slice() {
        [first, .., last] => format!("{}: {}, {}", curve.label, at(first), at(last)),
        _ => curve.label.clone(),
    };
    let crossings = panel.crossings.iter().map(|crossing| format!("{}: {}", panel.input.title, crossing.text));
    let words = panel.curves.iter().map(curve).chain(crossings);
    let spots = crossing_places(&panel, width).into_iter().zip(words).map(|(place, words)| Spot::saying(place, words));
    Ok(Picture { svg, size, spots: spots.collect() })
}

/// The break-even lines for a file.
pub fn crossing_file(comparison: &Comparison, pair: (usize, usize), indicator: Indicator, found: &BreakEven) -> Result<String, String> {
    crossing_picture(comparison, pair, indicator, found, WIDE, Theme::Paper).map(|picture| picture.svg)
}

/// The map of a pair.
fn map(comparison: &Comparison, (a, b): (usize, usize), indicator: Indicator, map: &Map) -> MapPanel {
    let id = |place: usize| comparison.models[place].alternative.id.as_str();
    let letters = letters([id(a), id(b)]);
    let side = |place: usize, letter: &str| MapSide {
        letter: letter.to_owned(),
        less_label: format!("{} clearly loads less", id(place)),
        only_label: format!("only {} can make it", id(place)),
        look: look(comparison, place),
    };
    let axis = |axis: &Axis| MapAxis {
        title: if axis.unit.is_empty() { axis.item.clone() } else { format!("{}, {}", axis.item, axis.unit) },
        ticks: axis.values.iter().map(|value| number_on(axis, *value)).collect(),
    };
    let cell = |finding: Option<Finding>| match finding {
        Some(Finding::FirstLess) => MapCell::Less(0),
        Some(Finding::SecondLess) => MapCell::Less(1),
        Some(Finding::AboutTheSame | Finding::NoClearDifference) => MapCell::Unclear,
        None => MapCell::None,
    };
    MapPanel {
        title: format!("{} over {} and {}", indicator.label(), map.across.item, map.down.item),
        across: axis(&map.across),
        up: axis(&map.down),
        sides: vec![side(a, &letters[0]), side(b, &letters[1])],
        cells: map.rows.iter().map(|row| row.iter().map(|one| cell(one.map(|one| one.finding))).collect()).collect(),
        unclear_label: "no clear difference, or about the same".to_owned(),
        none_label: "the two share no line".to_owned(),
        own: nearest(&map.across).zip(nearest(&map.down)),
        own_label: "nearest to the order".to_owned(),
    }
}

/// The place of the value nearest to the order's own, by ratio.
fn nearest(axis: &Axis) -> Option<usize> {
    let own = axis.own.filter(|own| *own > 0.0)?;
    let far = |value: f64| if value > own { value / own } else { own / value.max(1e-12) };
    let (place, value) = axis.values.iter().enumerate().min_by(|x, y| far(*x.1).total_cmp(&far(*y.1)))?;
    (far(*value) < 2.0).then_some(place)
}

/// A letter for each of two names: the first of a name that the other has not taken.
fn letters(names: [&str; 2]) -> [String; 2] {
    let first = names[0].chars().next().unwrap_or('A').to_ascii_uppercase();
    let second =
        names[1].chars().filter(char::is_ascii_alphanumeric).map(|letter| letter.to_ascii_uppercase()).find(|letter| *letter != first);
    [first.to_string(), second.unwrap_or('2').to_string()]
}

/// The map as SVG.
pub fn map_picture(
    comparison: &Comparison,
    pair: (usize, usize),
    indicator: Indicator,
    found: &Map,
    width: u32,
    theme: Theme,
) -> Result<Picture, String> {
    let panel = map(comparison, pair, indicator, found);
    let size = (width, map_height(&panel, width));
    let svg = map_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
    let cells = panel.cells.iter().zip(&panel.up.ticks).flat_map(|(row, down)| {
        let one = |(cell, across): (&MapCell, &String)| {
            let said = match cell {
                MapCell::Less(side) => panel.sides[*side].less_label.as_str(),
                MapCell::Only(side) => panel.sides[*side].only_label.as_str(),
                MapCell::Unclear => panel.unclear_label.as_str(),
                MapCell::None => panel.none_label.as_str(),
            };
            format!("{} {across}, {} {down}: {said}", panel.across.title, panel.up.title)
        };
        row.iter().zip(&panel.across.ticks).map(one).collect::<Vec<_>>()
    });
    let spots = map_places(&panel, width).into_iter().zip(cells).map(|(place, words)| Spot::saying(place, words));
    Ok(Picture { svg, size, spots: spots.collect() })
}

/// The map for a file.
pub fn map_file(comparison: &Comparison, pair: (usize, usize), indicator: Indicator, found: &Map) -> Result<String, String> {
    map_picture(comparison, pair, indicator, found, WIDE, Theme::Paper).map(|picture| picture.svg)
}
