//! Digital printing: every colour in one pass on white sheeting, under a clear protective overlay.

use super::{Reason, Route, base};
use crate::inventory::{Book, Layout, Work};
use crate::order::{Alternative, Ink, Job, Order, RouteName};
use crate::quantity::{AirFlow, Kind, Time};
use crate::step::{BlankMaking, Delivery, Inkjet, Laminating, SheetingCut, Step, Visits, Wipe, lay_faces};

pub(super) struct Digital;

const SPOILED: &[&str] = &["printer.misprint"];

impl Route for Digital {
    fn name(&self) -> RouteName {
        RouteName::DigitalPrinting
    }

    fn label(&self) -> &'static str {
        "digital printing"
    }

    fn story(&self) -> &'static str {
        "every colour jetted in one pass on white sheeting from the roll, left to outgas where the ink holds solvent, covered by a clear overlay, cut out"
    }

    fn work<'a>(&self, job: &'a Job, layout: &'a Layout) -> Result<Work<'a>, Reason> {
        if let Some(reason) = job.line.not.get(&self.name()) {
            return Err(Reason::Excluded(reason.clone()));
        }
        let (base, printed) = base::choose(&job.line, true)?;
        let work = Work { job, layout, base, printed, cut_out: true, through_printer: true };
        lay_faces(&work, 1).map(|_| work).ok_or(Reason::Roll)
    }

    fn steps(&self, _: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>> {
        let mut steps: Vec<Box<dyn Step>> = vec![
            Box::new(SheetingCut { spoiled: SPOILED, make_ready: None, liner: alternative.liners.0 }),
            Box::new(Inkjet { ink: alternative.ink }),
        ];
        if alternative.overlay {
            steps.push(Box::new(Laminating { spoiled: SPOILED, liner: alternative.liners.1 }));
        }
        steps.extend([Box::new(Wipe) as Box<dyn Step>, Box::new(BlankMaking), Box::new(Delivery), Box::new(Visits)]);
        steps
    }

    fn waiting(&self, book: &Book, alternative: &Alternative, _: f64) -> f64 {
        if alternative.ink == Ink::Solvent && alternative.overlay { book.choice::<Time>("air.outgassing-time").base() } else { 0.0 }
    }

    fn exhausts(&self, book: &Book, alternative: &Alternative) -> Vec<(&'static str, AirFlow)> {
        match alternative.ink {
            Ink::Solvent => vec![("printer room", book.choice("air.printer.solvent"))],
            Ink::Uv => vec![("printer room", book.choice("air.printer.uv"))],
            Ink::Resin | Ink::Water => vec![("printer room", book.choice("air.printer.resin"))],
        }
    }
}
