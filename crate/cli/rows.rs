//! `faceload rows`: rows of a spreadsheet as an order, with what was understood and what was not.

use faceload_core::factors::Tables;
use faceload_core::order::rows::{Field, Rows, SEPARATORS, Wanted, left_out, letters, order};
use faceload_core::order::{Document, OrderFault};
use faceload_report::{row_report, terminal, words};

use crate::{Failure, input};

/// What the command takes.
#[derive(clap::Args)]
pub struct Arguments {
    /// The rows: a CSV file, or `-` for standard input.
    file: String,
    /// Write the order to this file, `-` for standard output; without it, only say what was understood.
    #[arg(short, long, value_name = "FILE")]
    output: Option<String>,
    /// Leave out the rows that cannot be taken; without it, they keep the order from being written.
    #[arg(long)]
    leave_out: bool,
    /// Write the rows that cannot be taken to this file, as CSV with the reason as the last column.
    #[arg(long, value_name = "FILE")]
    left_out: Option<String>,
    /// Take a column, by its name or letter, as a field, or as `nothing`.
    #[arg(long, value_name = "COLUMN=FIELD")]
    take: Vec<String>,
    /// What holds where a row does not say, such as `shape=rectangle`, or `unit=in` for lengths without one.
    #[arg(long, value_name = "FIELD=VALUE")]
    where_missing: Vec<String>,
    /// Whether the first row names the columns; without it, found out.
    #[arg(long, value_name = "yes|no", value_parser = ["yes", "no"])]
    header: Option<String>,
    /// What stands between cells; without it, found out.
    #[arg(long, value_parser = ["comma", "semicolon", "tab"])]
    separator: Option<String>,
    /// Take a comma as the decimal mark.
    #[arg(long)]
    decimal_comma: bool,
    /// The name of the order; without it, the file's.
    #[arg(long)]
    name: Option<String>,
    /// A folder of own tables: sign codes in place of or beside the built-in ones.
    #[arg(long, value_name = "DIR")]
    factors: Option<String>,
    /// Print what was understood as JSON, every line and fault with its rows.
    #[arg(long)]
    json: bool,
}

/// Runs it.
pub fn run(arguments: &Arguments) -> Result<String, Failure> {
    let tables = input::tables(arguments.factors.as_deref())?;
    let bytes = input::bytes_of(&arguments.file)?;
    let (rows, wanted) = arguments.read(&bytes, &tables)?;
    if let Some(file) = &arguments.left_out {
        input::write(file, &left_out(&rows))?;
    }
    let said = if arguments.json {
        format!("{}\n", serde_json::to_string_pretty(&row_report::json(&rows, &wanted, true)).unwrap_or_default())
    } else {
        terminal::figure_alone(&row_report::figure(&rows, &wanted), false)
    };
    if !rows.listed.is_empty() && !arguments.leave_out {
        crate::print(&said);
        let nothing = if arguments.output.is_some() { "nothing was written; " } else { "" };
        return Err(Failure::Input(vec![remaining(&rows, &format!("{nothing}mend them, {WAYS}"))]));
    }
    if rows.lines.is_empty() {
        crate::print(&said);
        return Err(Failure::Input(vec![format!(
            "{}: no row could be taken where at least one was wanted; mend the rows, or say what holds where they say nothing",
            rows.file
        )]));
    }
    let Some(file) = &arguments.output else { return Ok(said) };
    let name = arguments.name.clone().unwrap_or_else(|| name_of(&arguments.file));
    let text = format!("{}\n", serde_json::to_string_pretty(&order(&name, &rows.lines, None)).unwrap_or_default());
    if file == "-" {
        // The order is the result; what was understood goes where words go.
        eprint!("{said}");
        return Ok(text);
    }
    input::write(file, &text)?;
    Ok(said)
}

/// A file of rows as an order, taken as the command does without options; what was understood goes where words go.
pub fn document(file: &str, tables: &Tables) -> Result<Document, Failure> {
    let wanted = Wanted::default();
    let bytes = input::bytes_of(file)?;
    let refused = |fault: OrderFault| Failure::Input(vec![fault.to_string()]);
    let rows = Rows::read(file, &bytes, &wanted, tables).map_err(refused)?;
    if !rows.listed.is_empty() || rows.lines.is_empty() {
        let kinds = row_report::kinds(&rows).iter().map(|kind| kind.all.to_string()).collect::<Vec<_>>();
        let help = format!("mend them, or let `faceload rows {file} -o order.json` {WAYS}");
        return Err(Failure::Input(kinds.into_iter().chain([remaining(&rows, &help)]).collect()));
    }
    for sentence in row_report::sentences(&rows, &wanted) {
        eprintln!("{file}: {sentence}");
    }
    Document::json(file, &order(&name_of(file), &rows.lines, None).to_string()).map_err(refused)
}

/// What the command may do about rows that cannot be taken.
const WAYS: &str = "say what holds where they say nothing (`--where-missing`) or leave them out (`--leave-out`)";

/// What stands in the way while rows are listed.
fn remaining(rows: &Rows, help: &str) -> String {
    format!("{}: {} could not be taken where every row was wanted; {help}", rows.file, words::count(rows.listed.len() as u64, "row"))
}

/// An order's name from a file's.
pub fn name_of(file: &str) -> String {
    let stem = std::path::Path::new(file).file_stem().map(|stem| stem.to_string_lossy().into_owned());
    let name = stem.filter(|stem| stem != "-").unwrap_or_else(|| "rows".to_owned());
    name.chars().filter(|c| !c.is_control()).take(200).collect()
}

impl Arguments {
    /// Reads the rows; columns are named by what the first reading found.
    fn read(&self, bytes: &[u8], tables: &Tables) -> Result<(Rows, Wanted), Failure> {
        let mut wanted = Wanted {
            separator: self
                .separator
                .as_ref()
                .and_then(|name| SEPARATORS.iter().find(|(_, known)| known == name))
                .map(|(separator, _)| *separator),
            header: self.header.as_ref().map(|word| word == "yes"),
            decimal_comma: self.decimal_comma,
            ..Wanted::default()
        };
        for text in &self.where_missing {
            match text.split_once('=').map(|(word, value)| (word.trim(), value.trim())).filter(|(_, value)| !value.is_empty()) {
                Some(("unit", unit @ ("in" | "ft" | "mm" | "cm" | "m"))) => wanted.unit = Some(unit.to_owned()),
                Some((word, value)) if Field::read(word).is_some_and(|field| field != Field::Code) => {
                    wanted.where_missing.extend(Field::read(word).map(|field| (field, value.to_owned())));
                }
                _ => {
                    let fields: Vec<&str> = Field::all().filter(|field| *field != Field::Code).map(Field::word).collect();
                    return Err(Failure::Input(vec![format!(
                        "--where-missing: `{text}` where a field and its value was wanted; write `shape=rectangle`; fields are {}; `unit` takes in, ft, mm, cm or m",
                        words::join(&fields)
                    )]));
                }
            }
        }
        let read = |wanted: &Wanted| Rows::read(&self.file, bytes, wanted, tables).map_err(|fault| Failure::Input(vec![fault.to_string()]));
        let rows = read(&wanted)?;
        if self.take.is_empty() {
            return Ok((rows, wanted));
        }
        for text in &self.take {
            let (place, field) = taken(text, &rows)?;
            if field.is_some() && wanted.columns.values().any(|other| *other == field) {
                return Err(Failure::Input(vec![format!(
                    "--take: `{text}` where a field that no other choice takes was wanted; two columns can't give the same"
                )]));
            }
            wanted.columns.insert(place, field);
        }
        Ok((read(&wanted)?, wanted))
    }
}

/// A column and the field it is to be taken as.
fn taken(text: &str, rows: &Rows) -> Result<(usize, Option<Field>), Failure> {
    let refuse = |wanted: &str, help: String| Failure::Input(vec![format!("--take: `{text}` where {wanted} was wanted; {help}")]);
    let fields: Vec<&str> = Field::all().map(Field::word).chain(["nothing"]).collect();
    let Some((column, word)) = text.rsplit_once('=').map(|(column, word)| (column.trim(), word.trim())) else {
        return Err(refuse("a column and a field", "write `Notes=label`".to_owned()));
    };
    let field = Field::read(word);
    if field.is_none() && word != "nothing" {
        return Err(refuse("a field", format!("use {}", words::join(&fields))));
    }
    let named = |name: &dyn Fn(usize, &str) -> bool| rows.columns.iter().enumerate().position(|(place, one)| name(place, &one.name));
    let place = named(&|_, name| name == column).or_else(|| named(&|place, _| letters(place).eq_ignore_ascii_case(column)));
    place.map(|place| (place, field)).ok_or_else(|| {
        let names: Vec<String> = rows.columns.iter().enumerate().map(|(place, one)| format!("{} {}", letters(place), one.name)).collect();
        refuse("a column of the file", format!("it has {}", words::join(&names.iter().map(|name| name.trim()).collect::<Vec<_>>())))
    })
}
