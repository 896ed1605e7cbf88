//! `faceload order`: an order as JSON, which the page opens; or as a link to the page.

use faceload_core::order::demo;
use faceload_report::link::{Linked, without_own};

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
#[command(after_help = input::DEMOS_HELP)]
pub struct Arguments {
    /// The order.
    order: Option<String>,
    /// Print the end of a link, to be put behind the address of the page; without values of the grade `own`.
    #[arg(long)]
    link: bool,
    /// Leave values of the grade `own` in the link.
    #[arg(long, requires = "link")]
    own: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(None)?;
    let order = input::order(&tables, arguments.order.as_deref().unwrap_or(demo::DEMOS[0].name))?;
    let mut value = order.document.value.clone();
    if !arguments.link {
        return Ok(format!("{}\n", serde_json::to_string_pretty(&value).unwrap_or_default()));
    }
    let left_out = if arguments.own { 0 } else { without_own(&mut value) };
    let linked = Linked {
        order: value,
        per: "m2".to_owned(),
        boundary: order.boundary.name().to_owned(),
        pair: None,
        indicator: "co2e".to_owned(),
        moved: if arguments.own { order.moved.clone() } else { Vec::new() },
        tables: tables.fingerprint.short().to_owned(),
        left_out,
    };
    linked.write().map(|link| format!("{link}\n")).map_err(|fault| Failure::Input(vec![fault.to_string()]))
}
