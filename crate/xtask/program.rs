//! Starting other programs: cargo, rustup, Node, npm, the browsers.

use crate::{Outcome, place};
use std::path::Path;
use std::process::{Command, Stdio};

/// Cargo, the same one that started this program.
pub fn cargo(words: &[&str]) -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.args(words);
    from_root(command)
}

/// Any other program, started in the repository's root.
pub fn program(name: &str, words: &[&str]) -> Command {
    let mut command = Command::new(name);
    command.args(words);
    from_root(command)
}

fn from_root(mut command: Command) -> Command {
    command.current_dir(place::root()).env("CARGO_TARGET_DIR", place::target());
    command.stdin(Stdio::null());
    command
}

/// Runs it with its output shown; anything but success is a reason to stop.
pub fn run(command: &mut Command) -> Outcome {
    let status = command.status().map_err(|error| not_started(command, &error))?;
    if status.success() { Ok(()) } else { Err(format!("`{}` gave {status}", words(command))) }
}

/// Runs it and hands back what it wrote to its output.
pub fn read(command: &mut Command) -> Result<Vec<u8>, String> {
    let output = command.stderr(Stdio::inherit()).output().map_err(|error| not_started(command, &error))?;
    if output.status.success() { Ok(output.stdout) } else { Err(format!("`{}` gave {}", words(command), output.status)) }
}

/// Whether a program of this name can be started at all.
pub fn is_there(name: &str) -> bool {
    let mut command = program(name, &["--version"]);
    command.stdout(Stdio::null()).stderr(Stdio::null());
    command.status().is_ok_and(|status| status.success())
}

fn not_started(command: &Command, error: &std::io::Error) -> String {
    format!("`{}` can't be started: {error}", command.get_program().display())
}

fn words(command: &Command) -> String {
    let path = Path::new(command.get_program());
    let mut text = path.file_name().unwrap_or(path.as_os_str()).display().to_string();
    for word in command.get_args() {
        text.push(' ');
        text.push_str(&word.display().to_string());
    }
    text
}
