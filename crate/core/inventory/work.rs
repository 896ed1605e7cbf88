//! Work: one job as one route makes it, before any step has counted it.

use super::Book;
use crate::in_order;
use crate::order::{Blank, Colour, Job, Sheeting};
use crate::quantity::{FaceArea, Kind, Length, Piece, Share, Span};

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
    /// The narrow width for strips on panels, film and direct-applied.
    pub strip: Span,
    /// The height of a panel.
    pub panel_height: Span,
    /// What is wrapped round each edge of a panel.
    pub wrap: Span,
    /// The overlap of a splice.
    pub splice_overlap: Span,
    /// The most splices on a flat face.
    pub splices_most: f64,
    /// The side of the screen table.
    pub table: Span,
    /// The face area below which designs share a screen, m2.
    pub n_up_below: f64,
    /// The most designs on one screen.
    pub n_up_most: f64,
    /// The most film colours on one face.
    pub film_most_colours: f64,
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
        in_order(&mut rolls, Ord::cmp);
        Self {
            rolls,
            strip: span("layout.roll-strip.13"),
            panel_height: span("layout.panel-height"),
            wrap: span("layout.wrap"),
            splice_overlap: span("layout.splice-overlap"),
            splices_most: book.choice::<Piece>("layout.splices-most").base(),
            table: span("screen.table"),
            n_up_below: book.choice::<FaceArea>("screen.n-up-below").base(),
            n_up_most: book.choice::<Piece>("screen.n-up-most").base(),
            film_most_colours: book.choice::<Piece>("film.most-colours").base(),
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

    /// How many designs share a screen: small faces, as many as the table takes.
    pub fn n_up(&self) -> f64 {
        let line = &self.job.line;
        if self.face().base() >= self.layout.n_up_below || line.designs < 2 {
            return 1.0;
        }
        let fits = (self.layout.table / line.width) * (self.layout.table / line.height);
        (fits.max(1) as f64).min(self.layout.n_up_most).min(f64::from(line.designs)).max(1.0)
    }

    /// The sets of designs that are printed together, over the designs.
    fn sets(&self) -> f64 {
        let designs = f64::from(self.job.line.designs);
        (designs / self.n_up()).ceil() / designs
    }

    /// The runs of one colour whose pieces need make-ready: its artwork may be shared by all designs.
    pub fn runs_of(&self, colour: Colour) -> f64 {
        let shared = self.job.line.shared.contains(&colour);
        self.runs() / if shared { f64::from(self.job.line.designs) } else { 1.0 }
    }

    /// The make-ready of all colours, in runs.
    pub fn make_ready_runs(&self) -> f64 {
        self.printed.iter().fold(0.0, |sum, printed| sum + self.runs_of(printed.colour))
    }

    /// Screens set up: one per colour and run, designs that share one counted once.
    pub fn set_ups(&self) -> f64 {
        self.printed.iter().fold(0.0, |sum, printed| {
            let shared = self.job.line.shared.contains(&printed.colour);
            sum + self.runs_of(printed.colour) * if shared { 1.0 } else { self.sets() }
        })
    }

    /// Impressions: faces and colours, designs on one screen printed at once.
    pub fn impressions(&self) -> f64 {
        self.faces() * self.sets() * self.printed.len() as f64
    }

    /// Whether a flat face is wider than every roll, so that two widths are spliced at its centre.
    pub fn is_spliced(&self) -> bool {
        let line = &self.job.line;
        let margin = self.layout.trim * 2 + if self.through_printer { self.layout.printer_margin * 2 } else { Span::ZERO };
        let widest = self.layout.rolls.last().copied().unwrap_or_default();
        let across = if line.sheeting == Sheeting::Beaded { line.width.min(self.strip_height()) } else { line.width };
        line.blank != Blank::Panels && self.layout.splices_most >= 1.0 && across + self.bleed() * 2 + margin > widest
    }

    /// The width of one piece across the roll, without bleed: half of a spliced face and its overlap.
    pub fn piece_width(&self) -> Span {
        let width = self.job.line.width;
        if self.is_spliced() { Span::nanometres(width.count() / 2) + self.layout.splice_overlap } else { width }
    }

    /// The pieces that a face is made of: strips on panels, two where it is spliced.
    pub fn pieces(&self) -> u32 {
        if self.is_spliced() { 2 } else { self.strips() }
    }

    /// The strips that a face on panels is made of; one where it is on a flat blank.
    pub fn strips(&self) -> u32 {
        let height = self.job.line.height.count();
        match self.job.line.blank {
            Blank::Panels => {
                u32::try_from((height + self.layout.panel_height.count() - 1) / self.layout.panel_height.count().max(1)).unwrap_or(1).max(1)
            }
            _ => 1,
        }
    }

    /// The height of one strip, the wrap round both its edges included; of the whole face on a flat blank.
    pub fn strip_height(&self) -> Span {
        let line = &self.job.line;
        match line.blank {
            Blank::Panels => Span::nanometres(line.height.count() / i64::from(self.strips())) + self.layout.wrap * 2,
            _ => line.shape.piece_height(line.width, line.height),
        }
    }

    /// The sheeting that lies on one face, wrapped edges included, m2.
    pub fn covered(&self) -> f64 {
        let wrapped = match self.job.line.blank {
            Blank::Panels => 2.0 * self.layout.wrap.metres() * self.job.line.width.metres() * f64::from(self.strips()),
            _ if self.is_spliced() => 2.0 * self.layout.splice_overlap.metres() * self.strip_height().metres(),
            _ => 0.0,
        };
        self.face().base() + wrapped
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
    pub fn face(&self) -> FaceArea {
        self.job.line.face()
    }

    /// The share of a face that is printed, all colours together.
    pub fn coverage(&self) -> Share {
        Share::from_base(self.printed.iter().map(|printed| printed.coverage).sum())
    }
}
