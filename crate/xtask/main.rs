//! Named chores: `cargo xtask NAME`. Without a name it lists them.
//! A new chore is one file with a `CHORE`, and one line in the list below.

mod bless;
mod budgets;
mod ci;
mod count;
mod measure;
mod oracles;
mod page;
mod place;
mod program;
mod screenshots;
mod start;
mod tables;
mod test;
mod types;

use std::process::ExitCode;

/// What a chore hands back: nothing, or why it stopped.
type Outcome = Result<(), String>;

/// One chore: the name it is called by, one line of help, and what it does.
struct Chore {
    name: &'static str,
    help: &'static str,
    run: fn() -> Outcome,
}

/// All chores, in the order a newcomer needs them.
const CHORES: &[Chore] = &[
    start::CHORE,
    page::CHORE,
    test::CHORE,
    screenshots::CHORE,
    measure::CHORE,
    budgets::CHORE,
    count::CHORE,
    oracles::CHORE,
    tables::CHORE,
    types::CHORE,
    bless::CHORE,
    ci::CHORE,
];

fn list() -> String {
    let mut text = String::from("chores, called as `cargo xtask NAME`:\n");
    for chore in CHORES {
        text.push_str(&format!("  {:<11} {}\n", chore.name, chore.help));
    }
    text
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [name] = words.as_slice() else {
        if words.is_empty() {
            print!("{}", list());
            return ExitCode::SUCCESS;
        }
        eprintln!("one chore at a time, without options; got `{}`", words.join(" "));
        return ExitCode::from(2);
    };
    let Some(chore) = CHORES.iter().find(|chore| chore.name == name) else {
        eprint!("no chore `{name}`\n{}", list());
        return ExitCode::from(2);
    };
    match (chore.run)() {
        Ok(()) => ExitCode::SUCCESS,
        Err(reason) => {
            eprintln!("{name}: {reason}");
            ExitCode::FAILURE
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{CHORES, list};

    #[test]
    fn each_chore_has_its_own_name_and_one_line_of_help() {
        for (place, chore) in CHORES.iter().enumerate() {
            assert!(!chore.help.is_empty() && !chore.help.contains('\n'), "{}", chore.name);
            assert!(CHORES[..place].iter().all(|other| other.name != chore.name), "{}", chore.name);
        }
        assert_eq!(list().lines().count(), CHORES.len() + 1);
    }
}
