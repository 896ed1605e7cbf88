//! Roll layout: how many pieces lie across a roll, and how much of it they take.
//!
//! across = floor((R - 2e + g)/(w + g)), rows = ceil(N/across), L = rows (h + g) + 2e, area = R L;
//! one more piece takes R (h + g)/across. The roll in stock that takes the least area is used.
//! A face wider than every roll, as it may lie, cannot be laid without a splice: none, not zero.

use crate::inventory::Work;
use crate::order::{Blank, Sheeting};
use crate::quantity::{BoughtArea, Length, Span, of};

/// A piece to be laid.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Piece {
    /// Across the roll.
    pub width: Span,
    /// Along the roll.
    pub height: Span,
    /// Trimmed off the roll's sides and ends.
    pub trim: Span,
    /// Left free at each side by a printer.
    pub free: Span,
    /// Between pieces.
    pub gutter: Span,
    /// Whether it may be turned by a right angle.
    pub turns: bool,
}

/// Pieces laid on a roll.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Laid {
    /// The roll's width.
    pub roll: Span,
    /// Pieces side by side.
    pub across: i64,
    /// The length taken.
    pub length: Length,
    /// The area taken, the whole width of the roll.
    pub area: BoughtArea,
    /// What one more piece takes.
    pub per_piece: BoughtArea,
    /// The share of a roll's length.
    pub rolls: f64,
}

impl Piece {
    /// The piece of a face: with bleed where it is cut out after printing, and the sides that a
    /// printer leaves free. Beaded sheeting may be turned, prismatic not.
    pub fn of(work: &Work<'_>) -> Self {
        let line = &work.job.line;
        let bleed = work.bleed() * 2;
        // Strips of a face on panels run along the roll.
        let on_panels = line.blank == Blank::Panels;
        Self {
            width: if on_panels { work.strip_height() } else { work.piece_width() } + bleed,
            height: if on_panels { line.width } else { work.strip_height() } + bleed,
            trim: work.layout.trim,
            free: if work.through_printer { work.layout.printer_margin } else { Span::ZERO },
            gutter: work.gutter(),
            turns: line.sheeting == Sheeting::Beaded && !on_panels,
        }
    }
}

/// Lays so many pieces on the roll in stock that takes the least.
///
/// ```
/// use faceload_core::{quantity::{Kind, Span}, step::{LayoutPiece, lay}};
/// let span = |text| Span::read(text).unwrap();
/// let piece = LayoutPiece { width: span("8 in"), height: span("8 in"), trim: Span::ZERO, free: Span::ZERO, gutter: Span::ZERO, turns: false };
/// let laid = lay(piece, 10, &[span("24 in")], span("45.72 m"), Span::ZERO).unwrap();
/// assert_eq!(laid.across, 3);
/// assert!((laid.length.base() - 4.0 * 0.2032).abs() < 1e-12);
/// ```
pub fn lay(piece: Piece, count: u64, rolls: &[Span], roll_length: Span, start_waste: Span) -> Option<Laid> {
    best_of(piece, count, rolls.iter().copied(), roll_length, start_waste)
}

fn best_of(piece: Piece, count: u64, rolls: impl Iterator<Item = Span>, roll_length: Span, start_waste: Span) -> Option<Laid> {
    let turned = Piece { width: piece.height, height: piece.width, ..piece };
    let ways = if piece.turns { 2 } else { 1 };
    let mut best: Option<Laid> = None;
    // One more piece is laid where it takes least, whatever roll the run itself lies on: else a
    // second sign could lower what make-ready takes.
    let mut per_piece: Option<BoughtArea> = None;
    for roll in rolls {
        for way in &[piece, turned][..ways] {
            let Some(laid) = lay_on(*way, count, roll, roll_length, start_waste) else { continue };
            if per_piece.is_none_or(|least| laid.per_piece < least) {
                per_piece = Some(laid.per_piece);
            }
            if best.is_none_or(|best| (laid.area, laid.length) < (best.area, best.length)) {
                best = Some(laid);
            }
        }
    }
    best.zip(per_piece).map(|(best, per_piece)| Laid { per_piece, ..best })
}

fn lay_on(piece: Piece, count: u64, roll: Span, roll_length: Span, start_waste: Span) -> Option<Laid> {
    let across = (roll - (piece.trim + piece.free) * 2 + piece.gutter) / (piece.width + piece.gutter);
    if across < 1 || piece.width.count() <= 0 {
        return None;
    }
    let rows = i64::try_from(count.div_ceil(across.unsigned_abs())).ok()?;
    let pitch = (piece.height + piece.gutter).metres();
    let length = rows as f64 * pitch + 2.0 * piece.trim.metres() + start_waste.metres();
    Some(Laid {
        roll,
        across,
        length: of(length),
        area: of(roll.metres() * length),
        per_piece: of(roll.metres() * pitch / across as f64),
        rolls: length / roll_length.metres(),
    })
}

/// So many faces of a job laid out, with what one more face takes; none where no roll is wide enough.
pub fn lay_faces(work: &Work<'_>, faces: u64) -> Option<Laid> {
    let layout = work.layout;
    let pieces = u64::from(work.pieces());
    let strips = work.job.line.blank == Blank::Panels && !work.through_printer;
    let rolls = strips.then_some(layout.strip).into_iter().chain(layout.rolls.iter().copied());
    let laid = best_of(Piece::of(work), faces * pieces, rolls, layout.roll_length, layout.start_waste)?;
    Some(Laid { per_piece: laid.per_piece * of::<crate::quantity::Share>(pieces as f64), ..laid })
}

/// The job's faces laid out.
pub(super) fn lay_work(work: &Work<'_>) -> Option<Laid> {
    lay_faces(work, work.faces() as u64)
}
