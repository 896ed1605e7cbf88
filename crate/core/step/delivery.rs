//! Delivery and visits: distances are facts of the order; an absent one is left out, and said.

use super::Step;
use crate::inventory::{Activity, Book, Flows, Formula, Measure, Stage, What, Work};
use crate::quantity::{Length, Mass, Piece, of};

const SIGNS: Measure<Piece> = Measure::new("signs", "pieces");

/// Delivery of the finished faces; it comes after every step that leaves something on them.
pub struct Delivery;

/// The visits at which a sign is put up.
pub struct Visits;

impl Step for Delivery {
    fn count(&self, _: &Work<'_>, _: &mut Activity) {
        // The steps before it say what is on the faces.
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        for blank in [false, true] {
            let carried =
                flows.list.iter().filter(|flow| flow.blank == blank).fold(Formula::<Mass>::zero(), |sum, flow| match &flow.what {
                    What::OnFace(_, terms) => sum + Formula::of_terms(terms.clone()),
                    _ => sum,
                });
            flows.of_blank(blank);
            flows.carry(
                Stage::Delivery,
                if blank { "delivery of the blanks" } else { "delivery of the faces" },
                carried * book.rate::<Length>("order.delivery"),
            );
        }
        flows.of_blank(false);
    }
}

impl Step for Visits {
    fn count(&self, work: &Work<'_>, activity: &mut Activity) {
        activity.add(SIGNS, of(f64::from(work.job.line.quantity)));
    }

    fn flows(&self, book: &Book, flows: &mut Flows) {
        flows.drive(
            Stage::Service,
            "visit to the sign",
            SIGNS.counted() * book.rate::<Length>("order.visit") / book.rate::<Piece>("visit.signs"),
        );
    }
}
