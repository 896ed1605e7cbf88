//! Pictures: plain data in, a plotters drawing out, on any backend.
//!
//! A picture is a panel (its data), a height for a width, and a drawing. The canvas of the page
//! and the SVG of print and export run the same code. One file per picture.
mod axis;
mod bar;
mod behind;
#[cfg(test)]
mod checks;
mod crossing;
mod dash;
mod dot;
mod dots;
mod end_labels;
mod fine;
mod flags;
mod interval;
mod key;
mod loads;
mod look;
mod map;
mod refused;
mod rising;
mod rows;
mod sheet;
mod stages;
mod svg;
mod swings;
mod text_width;
mod ticks;

pub use behind::{Behind, BehindRow, Cell, Column};
pub use crossing::{
    Along, Crossing, CrossingPanel, CrossingPoint, Curve, InputAxis, InputTick, OwnMark, crossing_height, crossing_places, crossing_svg,
    draw_crossing,
};
pub use dots::{DotsBand, DotsCount, DotsPanel, DotsSide, dots_height, dots_places, dots_svg, draw_dots};
pub use fine::{Fine, UNITS_PER_PX};
pub use interval::Interval;
pub use loads::{Bar, LoadsPanel, draw_loads, loads_height, loads_rows, loads_svg};
pub use look::{Colour, Look, Mark, Theme};
pub use map::{MapAxis, MapCell, MapPanel, MapSide, draw_map, map_height, map_places, map_svg};
pub use refused::Refused;
pub use sheet::Place;
pub use stages::{Stage, StageLoad, StagesAlternative, StagesPanel, draw_stages, stages_height, stages_places, stages_svg};
pub use swings::{Swing, SwingsKey, SwingsPanel, draw_swings, swings_height, swings_rows, swings_svg};
