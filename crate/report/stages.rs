//! Where a load comes from: stage by stage, each alternative beside the others.

use faceload_core::comparison::Comparison;
use faceload_core::inventory::Stage;
use faceload_core::load::{Indicator, Model};
use faceload_picture::{StageLoad, StagesAlternative, StagesPanel, Theme, stages_height, stages_places, stages_svg};

use crate::figure::{Cell, Figure, Table};
use crate::panel::{WIDE, look};
use crate::spot::{Picture, Spot};
use crate::words::{capital, join, number};

/// A model's load of a stage.
fn load(model: &Model, stage: Stage, comparison: &Comparison, indicator: Indicator) -> f64 {
    let of_stage = model.contributions_of(indicator, comparison.per).filter(|(_, one)| one.stage == stage);
    of_stage.fold(0.0, |sum, (part, one)| sum + model.value_of(part, one, comparison.per))
}

/// The stages in which any alternative loads something.
fn stages(comparison: &Comparison, indicator: Indicator) -> Vec<(Stage, Vec<f64>)> {
    let of = |stage: Stage| comparison.models.iter().map(|model| load(model, stage, comparison, indicator)).collect::<Vec<_>>();
    Stage::ALL.into_iter().map(|(stage, ..)| (stage, of(stage))).filter(|(_, loads)| loads.iter().any(|load| *load != 0.0)).collect()
}

/// Below this share of the largest load no bar of a stage could be told from nothing: the table alone has it.
const DRAWN: f64 = 0.01;

/// The stages, those that are drawn before those left to the table; all are drawn where none is large enough.
fn parted(comparison: &Comparison, indicator: Indicator) -> (Vec<(Stage, Vec<f64>)>, Vec<Stage>) {
    let list = stages(comparison, indicator);
    let total = |at: usize| list.iter().fold(0.0, |sum, (_, loads)| sum + loads[at]);
    let most = (0..comparison.models.len()).map(total).fold(0.0, f64::max);
    let (drawn, left): (Vec<_>, Vec<_>) = list.into_iter().partition(|(_, loads)| loads.iter().any(|load| *load >= DRAWN * most));
    (drawn, left.into_iter().map(|(stage, _)| stage).collect())
}

/// The figure of an indicator's stages.
pub fn figure(comparison: &Comparison, indicator: Indicator) -> Figure {
    let list = stages(comparison, indicator);
    let total = |at: usize| list.iter().fold(0.0, |sum, (_, loads)| sum + loads[at]);
    let largest = |at: usize| {
        let (stage, loads) = list.iter().max_by(|x, y| x.1[at].total_cmp(&y.1[at]))?;
        (total(at) > 0.0)
            .then(|| format!("{}: {} ({} %)", comparison.models[at].alternative.id, stage.name(), (100.0 * loads[at] / total(at)).round()))
    };
    let said: Vec<String> = (0..comparison.models.len()).filter_map(largest).collect();
    let sentence = if said.is_empty() {
        format!("Nothing loads {} here.", indicator.label())
    } else {
        format!("The largest stage of each: {}.", said.join("; "))
    };
    let (_, left) = parted(comparison, indicator);
    let left: Vec<&str> = left.iter().map(|stage| stage.name()).collect();
    let not_drawn = (!left.is_empty()).then(|| format!("Too small to be drawn, under 1 % of the largest load: {}.", join(&left)));
    let plain = |value: f64| Cell::number(value, number(value));
    let rows = list.iter().map(|(stage, loads)| {
        let cells = loads.iter().map(|load| plain(*load));
        [Cell::from(stage.name()), Cell::from(stage.module())].into_iter().chain(cells).collect()
    });
    let sums = [Cell::from("all"), Cell::from("")].into_iter().chain((0..comparison.models.len()).map(|at| plain(total(at)))).collect();
    Figure {
        heading: format!("Where it comes from: {}, {}", indicator.label(), comparison.per.words()),
        sentences: std::iter::once(capital(&sentence)).chain(not_drawn).collect(),
        tables: vec![Table {
            caption: format!("{}{}; the module is that of EN 15804", indicator.unit(), comparison.per.suffix()),
            columns: ["stage", "module"]
                .into_iter()
                .map(str::to_owned)
                .chain(comparison.models.iter().map(|model| model.alternative.id.clone()))
                .collect(),
            rows: rows.chain([sums]).collect(),
            ..Table::default()
        }],
    }
}

/// The picture of the stages.
pub fn picture(comparison: &Comparison, indicator: Indicator, width: u32, theme: Theme) -> Result<Picture, String> {
    let ids: Vec<&str> = comparison.models.iter().map(|model| model.alternative.id.as_str()).collect();
    let alternatives = ids.iter().enumerate().map(|(at, id)| StagesAlternative {
        letter: (at + 1).to_string(),
        label: (*id).to_owned(),
        look: look(comparison, at),
    });
    let (list, _) = parted(comparison, indicator);
    let rows = list.iter().map(|(stage, loads)| faceload_picture::Stage {
        label: stage.name().to_owned(),
        loads: loads.iter().map(|value| StageLoad { value: *value, text: number(*value) }).collect(),
    });
    let panel = StagesPanel {
        title: format!("{} by stage", indicator.label()),
        unit: format!("{}{}", indicator.unit(), comparison.per.suffix()),
        alternatives: alternatives.collect(),
        stages: rows.collect(),
    };
    let bars = list.iter().flat_map(|(stage, loads)| ids.iter().zip(loads).map(|(id, load)| (*stage, *id, *load)));
    let spots = stages_places(&panel, width).into_iter().zip(bars).map(|(place, (stage, id, load))| {
        let words = format!("{}, {id}: {} {}", stage.name(), number(load), panel.unit);
        Spot::saying(place, words).leading(id, indicator.id()).at_stage(stage.name())
    });
    let size = (width, stages_height(&panel, width));
    let svg = stages_svg(&panel, size, theme).map_err(|refused| refused.to_string())?;
    Ok(Picture { svg, size, spots: spots.collect() })
}

/// The picture for a file.
pub fn file(comparison: &Comparison, indicator: Indicator) -> Result<String, String> {
    picture(comparison, indicator, WIDE, Theme::Paper).map(|picture| picture.svg)
}
