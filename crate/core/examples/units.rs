//! Asks the unit code of the program: each line of standard input holds two units apart by a tab, the answer is how
//! many of the second one of the first is, with every digit; `none` where they do not measure the same. A line
//! `length TAB text` is answered in nanometres, as an order's lengths are read. For checks from outside.

use faceload_core::quantity::{Span, UnitText};

/// The answer to one line.
fn answer(line: &str) -> Result<String, String> {
    let (of, unit) = line.split_once('\t').ok_or_else(|| format!("`{line}` where two texts apart by a tab were wanted"))?;
    if of == "length" {
        return Span::read(unit).map(|span| span.count().to_string()).map_err(|fault| format!("`{unit}` is no length: {fault:?}"));
    }
    let read = |text: &str| UnitText::read(text).map_err(|fault| format!("`{text}` is no unit: {fault:?}"));
    Ok(read(unit)?.from_plain(&read(of)?).map_or_else(|| "none".to_owned(), |count| format!("{count:e}")))
}

fn main() {
    for line in std::io::stdin().lines().map_while(Result::ok) {
        match answer(&line) {
            Ok(answer) => println!("{answer}"),
            Err(words) => {
                eprintln!("{words}");
                std::process::exit(3);
            }
        }
    }
}
