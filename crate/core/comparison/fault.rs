//! Why there is no comparison.

use super::Dropped;
use crate::factors::TableFault;
use crate::inventory::Gap;
use crate::load::PlanFault;
use crate::order::OrderFault;

/// Why there is no comparison.
#[derive(Debug)]
pub enum CompareFault {
    /// The order is at fault.
    Order(Vec<OrderFault>),
    /// A table is at fault.
    Table(Vec<TableFault>),
    /// Mass does not close: a fault of the program.
    Mass(Vec<Gap>),
    /// No alternative can make any line.
    NothingMade(Vec<Dropped>),
}

impl From<PlanFault> for CompareFault {
    fn from(fault: PlanFault) -> Self {
        match fault {
            PlanFault::Order(faults) => Self::Order(faults),
            PlanFault::Table(faults) => Self::Table(faults),
            PlanFault::Mass(gaps) => Self::Mass(gaps),
        }
    }
}
