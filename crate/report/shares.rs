//! Shares of draws in tables: in per cent, and never as none or all of them where some are otherwise.

use faceload_core::analysis::Draws;
use faceload_core::comparison::Comparison;
use faceload_core::load::Indicator;
use faceload_core::quantity::write_to_place;

use crate::figure::{Cell, Table};

/// A share of draws to a tenth of a per cent; none of many draws is not never.
pub fn fine_percent(share: f64) -> String {
    match write_to_place(share * 100.0, -1).as_str() {
        "0.0" => "under 0.1 %".to_owned(),
        "100.0" => "over 99.9 %".to_owned(),
        between => format!("{between} %"),
    }
}

/// A share of draws in whole per cent; what rounds to none though there are some, and to all though there are others, says so.
pub fn percent(share: f64) -> String {
    match (share * 100.0).round() {
        0.0 if share > 0.0 => "under 1 %".to_owned(),
        100.0 if share < 1.0 => "over 99 %".to_owned(),
        whole => format!("{whole} %"),
    }
}

/// How often each alternative takes each rank in an indicator, on the lines of the table.
pub fn ranks(comparison: &Comparison, draws: &Draws, indicator: Indicator) -> Option<Table> {
    if comparison.common.is_empty() || comparison.models.len() < 2 {
        return None;
    }
    let loads: Vec<&[f64]> = (0..comparison.models.len()).map(|at| draws.load(comparison, at, indicator)).collect();
    let shares = faceload_core::analysis::rank_shares(&loads);
    let rank = |place: usize| match place {
        0 => "least".to_owned(),
        1 => "2nd".to_owned(),
        2 => "3rd".to_owned(),
        place => format!("{}th", place + 1),
    };
    let rows = comparison.models.iter().zip(shares).map(|(model, shares)| {
        let cells = shares.into_iter().map(|share| Cell::number(share, percent(share)));
        std::iter::once(Cell::from(model.alternative.id.as_str())).chain(cells).collect()
    });
    Some(Table {
        caption: format!("Share of the draws in which an alternative takes a rank in {}", indicator.label()),
        columns: std::iter::once(String::new()).chain((0..comparison.models.len()).map(rank)).collect(),
        rows: rows.collect(),
        ..Table::default()
    })
}

#[cfg(test)]
mod tests {
    use super::{fine_percent, percent};

    #[test]
    fn few_draws_are_not_none_and_most_are_not_all() {
        assert_eq!(
            [0.0, 0.0004, 0.0006, 0.5, 0.9994, 1.0].map(fine_percent),
            ["under 0.1 %", "under 0.1 %", "0.1 %", "50.0 %", "99.9 %", "over 99.9 %"]
        );
        assert_eq!([0.0, 0.004, 0.006, 0.994, 0.996, 1.0].map(percent), ["0 %", "under 1 %", "1 %", "99 %", "over 99 %", "100 %"]);
    }
}
