//! The sentence that may be sent: one pair of one order, what loads less and what more, how sure, and what it is not.

use faceload_core::analysis::Draws;
use faceload_core::comparison::Comparison;
use faceload_core::factors::Origin;

use crate::{sureness, words};

/// The sentence for a pair.
pub fn message(comparison: &Comparison, draws: &Draws, a: usize, b: usize) -> String {
    let models = [a, b].map(|place| &comparison.models[place]);
    let who = models.map(|model| format!("{}: {}", model.alternative.id, words::alternative(&model.alternative)));
    let own = models
        .iter()
        .flat_map(|model| model.parts.iter())
        .flat_map(|part| part.plan.book.used().into_iter().map(|id| part.plan.book.input(id)))
        .filter(|row| row.origin == Origin::Override)
        .map(|row| (&row.id, &row.place))
        .collect::<std::collections::BTreeSet<_>>()
        .len();
    let own = match own {
        0 => String::new(),
        1 => " One value in it is stated by the order in place of the tables.".to_owned(),
        many => format!(" {many} values in it are stated by the order in place of the tables."),
    };
    let moved: String = words::moved(comparison).iter().map(|text| format!(" {text}.")).collect();
    format!(
        "For {} ({}; {}), {}, {}: {} ({}.){own}{moved} {}",
        words::order_line(comparison),
        words::extent(comparison),
        words::conditions(comparison),
        comparison.per.words(),
        words::boundary(comparison.boundary),
        sureness::pair(comparison, draws, a, b),
        who.join("; "),
        words::STANDING,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use faceload_core::analysis::{Kept, Settings};
    use faceload_core::comparison::compare;
    use faceload_core::factors::Tables;
    use faceload_core::load::Per;
    use faceload_core::order::{Boundary, Document, Order};

    fn message_of(order: &str, moved: Vec<(String, f64)>) -> String {
        let tables = Tables::embedded().unwrap();
        let order = Order::read(Document::json("test", order).unwrap(), &tables).unwrap().moved_by_hand(moved, &tables).unwrap();
        let comparison = compare(&tables, &order, Per::M2, Boundary::Face).unwrap();
        let draws = Draws::make(&comparison, &[(0, 1)], Settings { number: 500, ..Settings::default() }, &mut Kept::default(), |_| true);
        message(&comparison, &draws, 0, 1)
    }

    #[test]
    fn it_says_the_order_what_it_is_not_and_what_is_not_of_the_tables() {
        let order = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":12}],"alternative":[{"id":"film","route":"overlay-film"},
            {"id":"ours","route":"digital-printing","with":{"printer.misprint":{"value":"0.02","note":"counted","grade":"own"}}}]}"#;
        let text = message_of(order, Vec::new());
        for said in [
            "For 12 stop signs (R1-1), 30 in (12 signs, ",
            ", per m2 of face, face only: ",
            "film: cut overlay film; ours: digital printing",
            "One value in it is stated by the order in place of the tables.",
            words::STANDING,
        ] {
            assert!(text.contains(said), "nothing of `{said}`: {text}");
        }
        assert!(!text.contains("Moved by hand"));
    }

    #[test]
    fn a_slider_that_was_moved_is_said() {
        let order = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":12}],"alternative":[{"id":"film","route":"overlay-film"},{"id":"ours","route":"digital-printing"}]}"#;
        let text = message_of(order, vec![("printer.misprint".to_owned(), 0.05)]);
        assert!(text.contains("Moved by hand: misprinted share of a digital run is 0.05 instead of 0.03."), "{text}");
        assert!(!text.contains("stated by the order"));
    }
}
