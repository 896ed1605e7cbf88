//! How sure: in how many of 100 draws, and fifty dots.

use faceload_picture::Theme;

use super::found::Found;
use super::node::{Node, aside, element, paragraph, picture, table};
use crate::figure::{Cell, Table};
use crate::{flip_panels, sureness};

/// How wide the dots are drawn, in CSS px.
const DRAWN: u32 = 520;

/// How sure the pair's differences are.
pub fn section(found: &Found<'_>) -> Node {
    let Some(pair) = found.pair else {
        return super::section("report-sure", vec![paragraph("Nothing is compared, so nothing is more or less sure.")]);
    };
    let (comparison, draws, indicator) = (found.comparison, &found.draws, found.indicator);
    let ids = found.ids(pair);
    let number = draws.settings.number;
    let spreads = found.spreads_of(pair);
    let rows = spreads.iter().map(|one| {
        vec![
            Cell::from(one.indicator.label()),
            Cell::from(sureness::of_hundred(one.first_less, number)),
            Cell::from(sureness::of_hundred(1.0 - one.first_less, number)),
            Cell::from(sureness::finding_word(one.finding, ids)),
        ]
    });
    let counted = Table {
        caption: "In how many of 100 draws each loads less".to_owned(),
        columns: vec![String::new(), ids[0].to_owned(), ids[1].to_owned(), "so".to_owned()],
        rows: rows.collect(),
        ..Table::default()
    };
    let drawn = flip_panels::dots_picture(comparison, draws, pair, indicator, DRAWN, Theme::Paper);
    let said = sureness::difference_of(comparison, draws, pair.0, pair.1, indicator);
    super::section(
        "report-sure",
        vec![
            element(
                "div",
                vec![
                    element("div", vec![table(&counted), aside("A draw in which both load the same counts half for each. Each dot stands for 2 of 100 draws. They are draws of our ranges, not a chance that something happens.")]),
                    element(
                        "div",
                        vec![
                    picture(drawn.map(|drawn| drawn.svg), &format!("{} of {} and {}: {said}", indicator.label(), ids[0], ids[1])),
                        ],
                    ),
                ],
            )
            .with("class", "two"),
        ],
    )
}
