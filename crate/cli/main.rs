//! The command line. Words go to standard error, results to standard output.
//!
//! Exit: 0 done, 2 usage, 3 bad input, 4 a table at fault.

mod areas;
mod asked;
mod break_even;
mod check;
mod compare;
mod drivers;
mod explain;
mod input;
mod lines;
mod map;
mod order;
mod plan;
mod rows;
mod report;
mod sources;
mod spread;
mod stages;
mod statement;
mod switches;
mod verify;

use std::process::ExitCode;

use clap::{Parser, Subcommand, ValueEnum};
use faceload_core::load::Per;
use faceload_core::order::Boundary;

/// Compares the environmental load of the ways to make a traffic-sign face.
#[derive(Parser)]
#[command(name = "faceload", version, about, max_term_width = 100, after_help = input::DEMOS_HELP)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Compare an order's alternatives in five indicators.
    Compare(compare::Arguments),
    /// Show how a load is computed, down to source, place and grade.
    Explain(explain::Arguments),
    /// Show where a load comes from, stage by stage.
    Stages(stages::Arguments),
    /// Show how sure a pair's difference is: intervals, ratio, ranks.
    Spread(spread::Arguments),
    /// Show which inputs move a pair's difference, and whose its variance is.
    Drivers(drivers::Arguments),
    /// Show where a pair's difference crosses zero as one thing varies.
    BreakEven(break_even::Arguments),
    /// Show who loads less over two things varied at once.
    Map(map::Arguments),
    /// Show a pair under other choices of method, side by side.
    Switches(switches::Arguments),
    /// Show each job by whoever clearly loads least.
    Plan(plan::Arguments),
    /// Write the report, two pages for a board and the rest for a critical reviewer, and its data.
    Report(report::Arguments),
    /// Print the text about a pair that may be sent, or why none may.
    Statement(statement::Arguments),
    /// Make a report or a folder of data again from what it carries, and say what differs.
    Verify(verify::Arguments),
    /// Show for each job which alternative can make it, why not, and its loads.
    Lines(lines::Arguments),
    /// Read rows of a spreadsheet as an order; say what was understood and what was not.
    Rows(rows::Arguments),
    /// Print an order as JSON, which the page opens, or as a link to it.
    Order(order::Arguments),
    /// List the sources of the tables, with licence and credit.
    Sources(sources::Arguments),
    /// List the electricity areas, fuels, freight and vehicles, with what each emits.
    Areas(areas::Arguments),
    /// Check the tables; silent where nothing is at fault.
    Check(check::Arguments),
}

/// Why a command failed.
pub enum Failure {
    /// The input is at fault.
    Input(Vec<String>),
    /// A table is at fault.
    Table(Vec<String>),
}

/// Per what loads are given.
#[derive(Clone, Copy, ValueEnum)]
enum PerArgument {
    /// A square metre of face.
    M2,
    /// The whole order.
    Order,
    /// A square metre of face kept in service for a year.
    M2Year,
}

impl PerArgument {
    fn per(self) -> Per {
        match self {
            Self::M2 => Per::M2,
            Self::Order => Per::Order,
            Self::M2Year => Per::M2Year,
        }
    }
}

/// What is counted.
#[derive(Clone, Copy, ValueEnum)]
enum BoundaryArgument {
    /// The face alone.
    Face,
    /// The face with its blank.
    FaceWithBlank,
}

impl BoundaryArgument {
    fn boundary(self) -> Boundary {
        match self {
            Self::Face => Boundary::Face,
            Self::FaceWithBlank => Boundary::FaceWithBlank,
        }
    }
}

fn main() -> ExitCode {
    let done = match Arguments::parse().command {
        Command::Compare(arguments) => compare::run(&arguments),
        Command::Explain(arguments) => explain::run(&arguments),
        Command::Stages(arguments) => stages::run(&arguments),
        Command::Spread(arguments) => spread::run(&arguments),
        Command::Drivers(arguments) => drivers::run(&arguments),
        Command::BreakEven(arguments) => break_even::run(&arguments),
        Command::Map(arguments) => map::run(&arguments),
        Command::Switches(arguments) => switches::run(&arguments),
        Command::Plan(arguments) => plan::run(&arguments),
        Command::Report(arguments) => report::run(&arguments),
        Command::Statement(arguments) => statement::run(&arguments),
        Command::Verify(arguments) => verify::run(&arguments),
        Command::Lines(arguments) => lines::run(&arguments),
        Command::Rows(arguments) => rows::run(&arguments),
        Command::Order(arguments) => order::run(&arguments),
        Command::Sources(arguments) => sources::run(&arguments),
        Command::Areas(arguments) => areas::run(&arguments),
        Command::Check(arguments) => check::run(&arguments),
    };
    let (words, code) = match done {
        Ok(result) => {
            print(&result);
            return ExitCode::SUCCESS;
        }
        Err(Failure::Input(words)) => (words, 3),
        Err(Failure::Table(words)) => (words, 4),
    };
    for line in words {
        eprintln!("{line}");
    }
    ExitCode::from(code)
}

/// Prints a result; a reader that has gone away is no fault.
fn print(result: &str) {
    use std::io::Write;
    let _ = std::io::stdout().write_all(result.as_bytes());
}
