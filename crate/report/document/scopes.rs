//! The maker's greenhouse gases by scope (GHG Protocol): what of the inventory is burnt in the shop, bought as electricity, or made by
//! others before and after.
//!
//! - scope 1: fuel burnt in the shop;
//! - scope 2, location-based: what the area's power stations emit for the electricity at the meter;
//! - scope 3: purchased goods (1), fuel and energy besides 1 and 2: grid loss and, in life-cycle orders, the way to the tank (3), transport
//!   in and out (4), waste of making (5), end of life (12), visits (11);
//! - outside: solvent that becomes CO2 in the air, which the protocol asks of nobody.

use faceload_core::inventory::{Terms, What};
use faceload_core::load::{Contribution, Indicator, Part, Per};
use faceload_core::order::Site;

use super::found::Found;
use super::node::{Node, list, paragraph, table};
use super::rows::Rows;
use crate::figure::{Cell, Table};
use crate::words::number;

/// The rows, in the order of the protocol: scope and category, and what of the inventory is in it.
const ROWS: [(&str, &str); 9] = [
    ("scope 1", "fuel burnt in the shop"),
    ("scope 2, location-based", "electricity at the meter"),
    ("scope 3, 1 purchased goods", "sheeting, film, ink, overlay, process materials, water supply"),
    ("scope 3, 3 fuel and energy besides", "grid loss; in life-cycle orders the way to the tank"),
    ("scope 3, 4 transport", "freight in, and the delivery the maker pays (9 where the customer does)"),
    ("scope 3, 5 waste of making", "solid and liquid waste, waste water"),
    ("scope 3, 11 use", "visits to the sign"),
    ("scope 3, 12 end of life", "the discarded face"),
    ("outside the scopes", "solvent oxidised in air"),
];

/// A contribution's kg CO2e by row.
fn shares(site: &Site, part: &Part, one: &Contribution) -> [f64; 9] {
    let amount = part.value(&one.amount);
    let whole = amount * part.value(&one.factor);
    // The part of the factor in whose products a row stands.
    let with = |id: &str| {
        let holds = one.factor.0.iter().filter(|term| term.inputs.iter().any(|(input, _)| part.plan.book.input(*input).id == id));
        amount * part.value(&Terms(holds.cloned().collect()))
    };
    // What the grid loses of the area's generation on the way to the meter.
    let lost = part.plan.book.row(&site.electricity.loss).map_or(0.0, |row| row.value);
    let mut rows = [0.0; 9];
    let mut split = |first: usize, second: usize, part: f64| {
        rows[first] += whole - part;
        rows[second] += part;
    };
    match &part.plan.flows[one.flow].what {
        What::Heat(_) => split(0, 3, with(&site.heat.upstream)),
        What::Electricity(_) => split(1, 3, whole * lost),
        What::Bought(..) => split(2, 4, with("freight.inbound")),
        What::WaterDrawn(_) => rows[2] = whole,
        What::Freight(_) => rows[4] = whole,
        What::SolidWaste(..) | What::LiquidWaste(..) | What::WaterToSewer(_) => rows[5] = whole,
        What::Travel(_) => rows[6] = whole,
        What::Discarded(..) => rows[7] = whole,
        _ => rows[8] = whole,
    }
    rows
}

/// The table of scopes, kg CO2e for the whole order.
pub fn scopes(found: &Found<'_>) -> Table {
    let models = found.models();
    let mut rows = Rows::new(models.len());
    let mut totals = vec![0.0; models.len()];
    for (at, model) in models.iter().enumerate() {
        let mut sums = [0.0; 9];
        for (part, one) in model.contributions_of(Indicator::Co2e, Per::Order) {
            for (sum, share) in sums.iter_mut().zip(shares(&found.comparison.order.site, part, one)) {
                *sum += share;
            }
        }
        for ((scope, what), sum) in ROWS.iter().zip(sums) {
            rows.add(&[scope, what], at, sum);
        }
        totals[at] = sums.iter().sum();
    }
    let mut rows = rows.table_rows(false);
    rows.push(
        [Cell::from("all"), Cell::from("")].into_iter().chain(totals.into_iter().map(|sum| Cell::number(sum, number(sum)))).collect(),
    );
    Table {
        caption: "kg CO2e for the whole order".to_owned(),
        columns: found.columns(&["scope and category", "of the inventory"]),
        rows,
        ..Table::default()
    }
}

/// Greenhouse gases by scope.
pub fn section(found: &Found<'_>) -> Node {
    let mut inside: Vec<Node> = found.own_lines().into_iter().collect();
    inside.extend([
        paragraph("Seen from whoever makes the faces, in the terms of the GHG Protocol. It says where the gases arise, not whose fault they are; the sum is that of the loads."),
        table(&scopes(found)),
    ]);
    inside.extend(list([
        "Scope 2 is location-based: the area's average, no contracts. Where the area is published as a life-cycle factor, scope 2 holds its upstream part too, since the publication does not part them.".to_owned(),
        "Categories of scope 3 that do not occur for one order, or are not in the inventory: capital goods, business travel, commuting, leased assets, processing, franchises, investments.".to_owned(),
    ]));
    super::section("report-scopes", inside)
}
