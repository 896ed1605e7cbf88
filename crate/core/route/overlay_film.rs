//! Overlay film: transparent coloured film cut by a plotter, laid whole on white sheeting, weeded there.

use super::{Reason, Route, base};
use crate::inventory::{Book, Layout, Work};
use crate::order::{Alternative, Colour, Job, Order, RouteName};
use crate::quantity::AirFlow;
use crate::step::{BlankMaking, Delivery, FilmLaid, Plotter, SheetingCut, Step, Visits, Wipe, lay_faces};

pub(super) struct OverlayFilm;

impl Route for OverlayFilm {
    fn name(&self) -> RouteName {
        RouteName::OverlayFilm
    }

    fn label(&self) -> &'static str {
        "cut overlay film"
    }

    fn story(&self) -> &'static str {
        "a film for each colour, cut by a plotter, laid on the sheeting and weeded there"
    }

    fn work<'a>(&self, job: &'a Job, layout: &'a Layout) -> Result<Work<'a>, Reason> {
        if let Some(reason) = job.line.not.get(&self.name()) {
            return Err(Reason::Excluded(reason.clone()));
        }
        let (base, printed) = base::choose(&job.line, false)?;
        if printed.len() as f64 > layout.film_most_colours {
            return Err(Reason::FilmColours);
        }
        if printed.iter().any(|one| one.colour == Colour::White) {
            return Err(Reason::WhiteFilm);
        }
        let work = Work { job, layout, base, printed, cut_out: false, through_printer: false };
        lay_faces(&work, 1).map(|_| work).ok_or(Reason::Roll)
    }

    fn steps(&self, _: &Order, alternative: &Alternative) -> Vec<Box<dyn Step>> {
        vec![
            Box::new(SheetingCut { spoiled: &["film.rework", "film.rework-sheeting"], make_ready: None, liner: alternative.liners.0 }),
            Box::new(Plotter { spoiled: &["film.rework"] }),
            Box::new(FilmLaid { liner: alternative.liners.1 }),
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
