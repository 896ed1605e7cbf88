//! Blank: flat aluminium sheet, cut to shape; what falls off is melted again.
//!
//! mass = bounding rectangle x thickness x density: 0.080 in gives 5.4864 kg/m2.
//! Load of a kilogram of sheet = primary metal x (1 - scrap share) + remelted scrap x scrap share
//! + rolling: 5.315 kg CO2e at the North American scrap share of 0.5927.

use super::Step;
use crate::inventory::{Activity, Book, Flows, Material, Measure, Part, Work};
use crate::order::Blank;
use crate::quantity::{Area, Kind, Mass, Per, Volume, of};

const BOUGHT: Measure<Volume> = Measure::new("aluminium bought", "m3");
const KEPT: Measure<Volume> = Measure::new("aluminium in the blanks", "m3");

const PANELS: Measure<Area> = Measure::new("panels bought", "m2");

static PANEL: Material = Material::of("aluminium panels", &[Part::Whole("aluminium-panel")]);
static ALUMINIUM: Material = Material::of(
    "aluminium blank",
    &[
        Part::Rest("aluminium-primary", "aluminium.scrap-share"),
        Part::Share("aluminium-scrap", "aluminium.scrap-share"),
        Part::Whole("aluminium-rolling"),
    ],
);

/// Making the blank.
pub struct BlankMaking;

impl Step for BlankMaking {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        let line = &work.job.line;
        let signs = f64::from(line.quantity);
        if line.blank == Blank::Panels {
            activity.add(PANELS, of(line.width.metres() * line.height.metres() * signs));
        }
        let Blank::Aluminium(thickness) = line.blank else { return };
        activity.add(BOUGHT, of(line.shape.blank(line.width, line.height).base() * thickness.metres() * signs));
        activity.add(KEPT, of(line.face().base() * thickness.metres() * signs));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        let density = book.rate::<Per<Mass, Volume>>("blank.density");
        let (bought, kept) = (BOUGHT.counted() * density, KEPT.counted() * density);
        flows.of_blank(true);
        flows.buy(&ALUMINIUM, bought.clone());
        flows.on_face(&ALUMINIUM, kept.clone());
        flows.recycle(&ALUMINIUM, bought - kept);
        let panels = PANELS.counted() * book.rate::<Per<Mass, Area>>("panel.mass");
        flows.buy(&PANEL, panels.clone());
        flows.on_face(&PANEL, panels);
        flows.of_blank(false);
    }
}
