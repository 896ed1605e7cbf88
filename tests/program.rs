//! The program as a person runs it, from the top of the repository.

use std::io::Write;
use std::process::{Command, Stdio};

/// What a run left.
#[derive(Debug)]
pub struct Ran {
    /// The exit code.
    pub code: i32,
    /// Standard output: the result.
    pub result: String,
    /// Standard error: the words.
    pub words: String,
}

/// Runs the program with these words.
pub fn faceload(words: &[&str]) -> Ran {
    faceload_with(words, b"", &[])
}

/// Runs it with standard input and some of the environment.
pub fn faceload_with(words: &[&str], input: &[u8], environment: &[(&str, &str)]) -> Ran {
    let mut command = Command::new(env!("CARGO_BIN_EXE_faceload"));
    command.args(words).envs(environment.iter().copied()).current_dir(env!("CARGO_MANIFEST_DIR"));
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the program starts");
    // A program that does not read its input closes it; that is no fault of the test.
    let _ = child.stdin.take().expect("its input").write_all(input);
    let output = child.wait_with_output().expect("the program ends");
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("the program writes UTF-8");
    Ran { code: output.status.code().expect("an exit code"), result: text(output.stdout), words: text(output.stderr) }
}
