//! What the commands about one pair take: the pair, the indicator, how draws are made, and in which form the
//! figure is wanted.

use std::io::{IsTerminal, Write};

use clap::ValueEnum;
use faceload_core::analysis::{Design, NUMBERS, SCANNED, Settings};
use faceload_core::comparison::Comparison;
use faceload_core::factors::Tables;
use faceload_core::load::Indicator;
use faceload_core::order::Order;
use faceload_report::figure::Figure;
use faceload_report::{result, sureness, terminal, words};

use crate::{Failure, input};

/// The indicators as an argument.
#[derive(Clone, Copy, ValueEnum)]
pub enum IndicatorArgument {
    Energy,
    Water,
    Solvent,
    Waste,
    Co2e,
}

impl IndicatorArgument {
    /// The indicator.
    pub fn indicator(self) -> Indicator {
        match self {
            Self::Energy => Indicator::Energy,
            Self::Water => Indicator::Water,
            Self::Solvent => Indicator::Solvent,
            Self::Waste => Indicator::Waste,
            Self::Co2e => Indicator::Co2e,
        }
    }
}

/// An order, a pair of its alternatives, and the indicator that is looked at.
#[derive(clap::Args)]
pub struct PairArguments {
    #[command(flatten)]
    order: input::OrderArguments,
    /// These two alternatives; without it, the first of the order's pairs.
    #[arg(long, value_name = "A,B")]
    between: Option<String>,
    /// The indicator.
    #[arg(long, value_enum, default_value = "co2e")]
    indicator: IndicatorArgument,
}

/// What is looked at.
pub struct Looked {
    /// The tables.
    pub tables: Tables,
    /// The comparison.
    pub comparison: Comparison,
    /// The pair, which shares a line.
    pub pair: (usize, usize),
    /// The indicator.
    pub indicator: Indicator,
}

impl PairArguments {
    /// Compares the order and finds the pair.
    pub fn looked_at(&self) -> Result<Looked, Failure> {
        let (tables, comparison) = input::compared(&self.order)?;
        let pair = sharing_pair(&comparison, self.between.as_deref())?;
        Ok(Looked { tables, comparison, pair, indicator: self.indicator.indicator() })
    }
}

/// How numbers are spread over the draws.
#[derive(Clone, Copy, ValueEnum)]
pub enum DesignArgument {
    /// In each block of 1,000 draws every input takes one value from each of 1,000 equal slices.
    LatinHypercube,
    /// Independent numbers.
    Plain,
}

/// How draws are made.
#[derive(clap::Args)]
pub struct DrawArguments {
    /// How many draws.
    #[arg(long, value_name = "N")]
    draws: Option<String>,
    /// What the draws begin with; the same seed gives the same draws.
    #[arg(long, value_name = "S", default_value_t = 1)]
    seed: u64,
    /// How numbers are spread over the draws.
    #[arg(long, value_enum, default_value = "latin-hypercube")]
    design: DesignArgument,
}

impl DrawArguments {
    /// The settings of a scan, whose draws are made anew at each of many values.
    pub fn scan(&self, number: usize) -> Result<Settings, Failure> {
        self.up_to(number, SCANNED)
    }

    /// The settings, with another number of draws where none is given.
    pub fn settings(&self, number: usize) -> Result<Settings, Failure> {
        self.up_to(number, *NUMBERS.end())
    }

    fn up_to(&self, number: usize, most: usize) -> Result<Settings, Failure> {
        let numbers = *NUMBERS.start()..=most;
        let number = match &self.draws {
            None => number,
            Some(text) => text.parse().ok().filter(|number| numbers.contains(number)).ok_or_else(|| {
                let help = format!("leave it out for {number}");
                Failure::Input(vec![format!("--draws: `{text}` where {} was wanted; {help}", sureness::numbers(&numbers))])
            })?,
        };
        let design = match self.design {
            DesignArgument::LatinHypercube => Design::LatinHypercube,
            DesignArgument::Plain => Design::Plain,
        };
        let threads = std::thread::available_parallelism().map_or(1, std::num::NonZero::get).min(8);
        Ok(Settings { number, seed: self.seed, design, threads })
    }
}

/// The pair looked at.
pub fn pair(comparison: &Comparison, between: Option<&str>) -> Result<(usize, usize), Failure> {
    let pair = match between {
        None => comparison.pairs().first().copied().ok_or_else(|| {
            Failure::Input(vec!["this order has one alternative where a pair was wanted; add another `[[alternative]]`".to_owned()])
        })?,
        Some(text) => match text.split(',').map(str::trim).collect::<Vec<_>>()[..] {
            [first, second] if first != second => (input::alternative(comparison, first)?, input::alternative(comparison, second)?),
            _ => {
                return Err(Failure::Input(vec![format!("`{text}` where two different alternatives were wanted; write `screen,digital`")]));
            }
        },
    };
    Ok(pair)
}

/// The same, where the two must share a line.
pub fn sharing_pair(comparison: &Comparison, between: Option<&str>) -> Result<(usize, usize), Failure> {
    let (a, b) = pair(comparison, between)?;
    if comparison.shared(a, b).is_empty() {
        let id = |place: usize| comparison.models[place].alternative.id.as_str();
        return Err(Failure::Input(vec![format!(
            "{} and {} share no line where a pair on the same lines was wanted; `faceload lines` says who makes what, and `otherwise` lets another make the rest",
            id(a),
            id(b)
        )]));
    }
    Ok((a, b))
}

/// In which form a figure is wanted.
#[derive(clap::Args)]
pub struct FormArguments {
    /// Print the figure as JSON.
    #[arg(long, conflicts_with = "csv")]
    json: bool,
    /// Print its tables as CSV.
    #[arg(long)]
    csv: bool,
    /// Write its picture to a file, as SVG.
    #[arg(long, value_name = "FILE")]
    svg: Option<String>,
}

impl FormArguments {
    /// The figure as asked for; the picture goes to its file.
    pub fn show(&self, figure: &Figure, order: &Order, svg: impl FnOnce() -> Result<String, String>) -> Result<String, Failure> {
        if let Some(file) = &self.svg {
            let drawing = svg().map_err(|reason| Failure::Input(vec![format!("--svg: {reason}")]))?;
            write(file, &drawing, "the picture")?;
        }
        if self.json {
            return Ok(result::figure(figure, order));
        }
        if self.csv {
            return Ok(figure.csv());
        }
        let bold = std::io::stdout().is_terminal() && std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
        Ok(terminal::figure(figure, order, bold))
    }
}

/// Writes a text to a file.
pub fn write(file: &str, text: &str, what: &str) -> Result<(), Failure> {
    std::fs::write(file, text).map_err(|error| {
        Failure::Input(vec![format!("{file}: cannot be written ({error}) where a file for {what} was wanted; give another place")])
    })
}

/// Says on a terminal how far the work is; silent elsewhere.
pub fn progress(what: &'static str) -> impl FnMut(f64) -> bool {
    let shown = std::io::stderr().is_terminal();
    let start = std::time::Instant::now();
    let mut last = 0;
    move |share| {
        let percent = (share * 100.0) as u32;
        if shown && start.elapsed().as_millis() > 400 && percent != last {
            last = percent;
            let end = if share >= 1.0 { "\r\u{1b}[K" } else { "" };
            let _ = write!(std::io::stderr(), "\r{what} {percent} %{end}");
        }
        true
    }
}

/// An axis that cannot be varied, in words.
pub fn unvaried(option: &str, fault: &faceload_core::analysis::Unvaried) -> Failure {
    Failure::Input(vec![words::capital(&format!("{option}: {} where {} was wanted; {}", fault.came, fault.wanted, fault.help))])
}
