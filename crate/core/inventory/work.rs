//! Work: one job as one route makes it, before any step has counted it.

use super::Book;
use crate::order::{Colour, Job};
use crate::quantity::{Kind, Length, Piece, Share, Span};

/// A colour that the route prints, with its share of the face.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Printed {
    /// The colour.
    pub colour: Colour,
    /// Its share of the face.
    pub coverage: f64,
}

/// How the shop lays pieces on a roll: choices, never varied.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// The widths in stock.
    pub rolls: Vec<Span>,
    /// The length of a roll.
    pub roll_length: Span,
    /// What is printed beyond the edge of a piece that is cut out afterwards.
    pub bleed: Span,
    /// The space between such pieces.
    pub gutter: Span,
    /// What a printer leaves free at each side of a roll.
    pub printer_margin: Span,
    /// What is trimmed off each side of a roll.
    pub trim: Span,
    /// What is lost at the start of each job.
    pub start_waste: Span,
    /// The least batch made for stock, pieces.
    pub least_batch: f64,
}

impl Layout {
    /// The shop's layout choices.
    pub fn read(book: &Book) -> Self {
        let span = |id: &str| Span::from_metres(book.choice::<Length>(id).base());
        let mut rolls: Vec<Span> = book.family("layout.roll.").iter().map(|id| span(id)).collect();
        rolls.sort_unstable();
        Self {
            rolls,
            roll_length: span("layout.roll-length"),
            bleed: span("layout.bleed"),
            gutter: span("layout.gutter"),
            printer_margin: span("layout.printer-margin"),
            trim: span("layout.trim"),
            start_waste: span("layout.start-waste"),
            least_batch: book.choice::<Piece>("stock.least-batch").base(),
        }
    }
}

/// One job on one route.
#[derive(Debug, Clone)]
pub struct Work<'a> {
    /// The job.
    pub job: &'a Job,
    /// How the shop lays out.
    pub layout: &'a Layout,
    /// The colour of sheeting it is made on.
    pub base: Colour,
    /// The colours printed.
    pub printed: Vec<Printed>,
    /// Whether pieces are cut out after printing (else the sheeting has the blank's size).
    pub cut_out: bool,
    /// Whether sheeting runs through a printer that leaves its sides free.
    pub through_printer: bool,
}

impl Work<'_> {
    /// Faces in use: every sign has one or two.
    pub fn faces(&self) -> f64 {
        f64::from(self.job.line.quantity) * f64::from(self.job.line.sides)
    }

    /// Runs: how often a design is set up, all designs together. For stock it is charged pro rata.
    pub fn runs(&self) -> f64 {
        let line = &self.job.line;
        let designs = f64::from(line.designs);
        let per_design = self.faces() / designs;
        if line.stock {
            let batch = line.batch.map_or(per_design.max(self.layout.least_batch), f64::from);
            designs * (per_design / batch)
        } else {
            designs * line.batch.map_or(1.0, |batch| (per_design / f64::from(batch)).ceil())
        }
    }

    /// The printed bleed, where a printed colour reaches the edge of a piece cut out afterwards.
    pub fn bleed(&self) -> Span {
        let printed = self.printed.iter().any(|printed| printed.colour == self.job.line.rim);
        if self.cut_out && printed { self.layout.bleed } else { Span::ZERO }
    }

    /// The space between pieces: where there is bleed.
    pub fn gutter(&self) -> Span {
        if self.bleed() == Span::ZERO { Span::ZERO } else { self.layout.gutter }
    }

    /// The area of one face.
    pub fn face(&self) -> crate::quantity::FaceArea {
        self.job.line.face()
    }

    /// The share of a face that is printed, all colours together.
    pub fn coverage(&self) -> Share {
        Share::from_base(self.printed.iter().map(|printed| printed.coverage).sum())
    }
}
