//! Digital printing: every colour in one pass on white sheeting, under a clear protective overlay.

use super::{Reason, Route, base};
use crate::inventory::{Book, Layout, Work};
use crate::order::{Alternative, Ink, Job, Order, RouteName};
use crate::quantity::AirFlow;
use crate::step::{BlankMaking, Delivery, Inkjet, Laminating, LayoutPiece, SheetingCut, Step, Visits, Wipe, lay};

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

    fn work<'a>(&self, job: &'a Job, layout: &'a Layout, _: &Book) -> Result<Work<'a>, Reason> {
        if let Some(reason) = job.line.not.get(&self.name()) {
            return Err(Reason::Excluded(reason.clone()));
        }
        let (base, printed) = base::choose(&job.line, true)?;
        let work = Work { job, layout, base, printed, cut_out: true, through_printer: true };
        lay_faces(&work, 1).map(|_| work).ok_or(Reason::Roll)
    }

    fn steps(&self, _: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>> {
        let mut steps: Vec<Box<dyn Step>> =
            vec![Box::new(SheetingCut { spoiled: SPOILED, make_ready: None }), Box::new(Inkjet { ink: alternative.ink })];
        if alternative.overlay {
            steps.push(Box::new(Laminating { spoiled: SPOILED }));
        }
        steps.extend([Box::new(Wipe) as Box<dyn Step>, Box::new(BlankMaking), Box::new(Delivery), Box::new(Visits)]);
        steps
    }

    fn exhausts(&self, book: &Book, alternative: &Alternative) -> Vec<(&'static str, AirFlow)> {
        match alternative.ink {
            Ink::Solvent => vec![("printer room", book.choice("air.printer.solvent"))],
            Ink::Uv => vec![("printer room", book.choice("air.printer.uv"))],
            Ink::Resin | Ink::Water => vec![("printer room", book.choice("air.printer.resin"))],
        }
    }
}
