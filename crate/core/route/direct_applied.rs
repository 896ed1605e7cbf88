//! Direct-applied copy: white letters and border cut from sheeting, applied on coloured sheeting.

use super::{Reason, Route};
use crate::inventory::{Book, Layout, Work};
use crate::order::{Alternative, Base, Colour, Job, Line, Order, RouteName};
use crate::quantity::AirFlow;
use crate::step::{BlankMaking, CopyApplied, Delivery, Plotter, SheetingCut, Step, Visits, Wipe, lay_faces};

pub(super) struct DirectApplied;

/// The dark ground under white copy: two colours, one of them white, the other sold as sheeting.
fn ground(line: &Line) -> Result<Colour, Reason> {
    let dark = |colour: &Colour| matches!(colour, Colour::Red | Colour::Green | Colour::Blue | Colour::Brown | Colour::Purple);
    let grounds: Vec<Colour> = line.colours.keys().copied().filter(|colour| *colour != Colour::White).collect();
    match grounds[..] {
        [ground]
            if dark(&ground)
                && line.colours.get(&Colour::White) < line.colours.get(&ground)
                && line.colours.contains_key(&Colour::White)
                && matches!(line.base, Base::Any | Base::Of(Colour::White)) =>
        {
            Ok(ground)
        }
        _ => Err(Reason::LightCopy),
    }
}

impl Route for DirectApplied {
    fn name(&self) -> RouteName {
        RouteName::DirectApplied
    }

    fn label(&self) -> &'static str {
        "direct-applied copy"
    }

    fn story(&self) -> &'static str {
        "letters and border cut from white sheeting, positioned and applied by hand on coloured sheeting"
    }

    fn work<'a>(&self, job: &'a Job, layout: &'a Layout) -> Result<Work<'a>, Reason> {
        if let Some(reason) = job.line.not.get(&self.name()) {
            return Err(Reason::Excluded(reason.clone()));
        }
        let base = ground(&job.line)?;
        let work = Work { job, layout, base, printed: Vec::new(), cut_out: false, through_printer: false };
        lay_faces(&work, 1).map(|_| work).ok_or(Reason::Roll)
    }

    fn steps(&self, _: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>> {
        vec![
            Box::new(SheetingCut { spoiled: &["direct.spoilage"], make_ready: None, liner: alternative.liners.0 }),
            Box::new(Plotter { spoiled: &["direct.spoilage"] }),
            Box::new(CopyApplied { liner: alternative.liners.0 }),
            Box::new(Wipe),
            Box::new(BlankMaking),
            Box::new(Delivery),
            Box::new(Visits),
        ]
    }

    fn exhausts(&self, _: &Book, _: &Alternative) -> Vec<(&'static str, AirFlow)> {
        Vec::new()
    }
}
