//! Screen printing: ink pressed through a mesh, colour by colour, on sheeting of the blank's size.

use super::{Reason, Route, base};
use crate::inventory::{Book, Layout, Work};
use crate::order::{Alternative, Drying, Job, Order, RouteName};
use crate::quantity::{AirFlow, Kind, Time};
use crate::step::{
    BlankMaking, Delivery, Oven, Press, Racks, ScreenInk, ScreenMaking, SheetingCut, Step, UvLamps, Visits, WashUp, Wipe, lay_faces,
};

pub(super) struct ScreenPrinting;

const SPOILED: &[&str] = &["screen.spoilage"];

impl Route for ScreenPrinting {
    fn name(&self) -> RouteName {
        RouteName::ScreenPrinting
    }

    fn label(&self) -> &'static str {
        "screen printing"
    }

    fn story(&self) -> &'static str {
        "a screen for each colour, ink pressed through it on sheeting of the blank's size, dried, the screens washed and reclaimed"
    }

    fn work<'a>(&self, job: &'a Job, layout: &'a Layout) -> Result<Work<'a>, Reason> {
        let line = &job.line;
        if let Some(reason) = line.not.get(&self.name()) {
            return Err(Reason::Excluded(reason.clone()));
        }
        if line.width.max(line.height) > layout.table {
            return Err(Reason::Table);
        }
        let (base, printed) = base::choose(line, false)?;
        let work = Work { job, layout, base, printed, cut_out: false, through_printer: false };
        lay_faces(&work, 1).map(|_| work).ok_or(Reason::Roll)
    }

    fn steps(&self, order: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>> {
        let drying: Box<dyn Step> = match alternative.drying {
            Drying::Oven => Box::new(Oven),
            Drying::Rack => Box::new(Racks),
            Drying::Uv => Box::new(UvLamps { led: false }),
            Drying::UvLed => Box::new(UvLamps { led: true }),
        };
        vec![
            Box::new(SheetingCut {
                spoiled: SPOILED,
                make_ready: Some(("screen.make-ready", "screen.make-ready-on-sheeting")),
                liner: alternative.liners.0,
            }),
            Box::new(ScreenMaking),
            Box::new(ScreenInk { ink: alternative.ink, voc_rule: order.site.voc_rule }),
            Box::new(Press),
            drying,
            Box::new(WashUp),
            Box::new(Wipe),
            Box::new(BlankMaking),
            Box::new(Delivery),
            Box::new(Visits),
        ]
    }

    fn unusual(&self, work: &Work<'_>) -> Option<&'static str> {
        // Fewer than three pieces of a design (judgement) do not pay for screens of their own.
        let line = &work.job.line;
        (!line.stock && !line.kept && work.faces() < 3.0 * f64::from(line.designs))
            .then_some("screens are made for so few pieces of a design")
    }

    fn waiting(&self, book: &Book, alternative: &Alternative, colours: f64) -> f64 {
        if alternative.drying == Drying::Rack { colours * book.choice::<Time>("rack.time").base() } else { 0.0 }
    }

    fn exhausts(&self, book: &Book, alternative: &Alternative) -> Vec<(&'static str, AirFlow)> {
        match alternative.drying {
            Drying::Oven => vec![("oven", book.choice("oven.exhaust")), ("screen room", book.choice("air.screen-room"))],
            Drying::Rack | Drying::Uv | Drying::UvLed => vec![("screen room", book.choice("air.screen-room"))],
        }
    }
}
