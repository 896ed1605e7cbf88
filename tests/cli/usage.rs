//! Exit codes, and what goes where: 0 done, 2 usage, 3 bad input.

use faceload_core::order::demo;
use faceload_report::terminal;

use crate::program::{faceload, faceload_with};
use crate::shop;

const STOP: &str = r#"{"schema_version":1,"line":[{"code":"R1-1","size":"30 in","quantity":100}]}"#;

#[test]
fn check_is_silent() {
    let ran = faceload(&["check"]);
    assert_eq!((ran.code, ran.result.as_str(), ran.words.as_str()), (0, "", ""));
}

#[test]
fn usage_is_exit_2_with_words_and_no_result() {
    for words in [
        &["weigh"][..],
        &["compare", "--weather"],
        &["compare", "--per", "acre"],
        &["compare", "--boundary", "post"],
        &["explain"],
        &["explain", "--alternative", "screen", "--indicator", "noise"],
        &[],
    ] {
        let ran = faceload(words);
        assert_eq!(ran.code, 2, "{words:?}: {ran:?}");
        assert!(
            ran.result.is_empty() && (ran.words.contains("Usage: faceload") || ran.words.contains("try '--help'")),
            "{words:?}: {ran:?}"
        );
    }
}

#[test]
fn help_names_the_demos_and_every_command() {
    let help = faceload(&["--help"]);
    assert_eq!((help.code, help.words.as_str()), (0, ""));
    for command in ["compare", "explain", "lines", "sources", "areas", "check"] {
        assert!(help.result.contains(&format!("  {command} ")), "{}", help.result);
        assert_eq!(faceload(&[command, "--help"]).code, 0);
    }
    for demo in demo::DEMOS {
        for help in [&["--help"][..], &["compare", "--help"], &["explain", "--help"]] {
            assert!(faceload(help).result.contains(demo.name), "{help:?} without {}", demo.name);
        }
    }
    let version = faceload(&["--version"]);
    assert_eq!(version.result.trim(), format!("faceload {}", env!("CARGO_PKG_VERSION")));
}

#[test]
fn a_file_that_is_not_there_is_exit_3_and_the_demos_are_offered() {
    let ran = faceload(&["compare", "tests/refused/no-such-order.toml"]);
    assert_eq!((ran.code, ran.result.as_str()), (3, ""));
    assert!(
        ran.words.starts_with(
            "tests/refused/no-such-order.toml: cannot be read (no such file) where an order file was wanted; give a file, or a demo: stop, "
        ),
        "{}",
        ran.words
    );
    assert!(demo::DEMOS.iter().all(|demo| ran.words.contains(demo.name)), "{}", ran.words);
    let folder = faceload(&["compare", "tests"]);
    assert_eq!((folder.code, folder.result.as_str()), (3, ""));
    assert!(folder.words.starts_with("tests: cannot be read ("), "{}", folder.words);
}

#[test]
fn bytes_that_are_no_text_are_exit_3_with_their_line() {
    let ran = faceload_with(&["compare", "-"], b"schema_version = 1\nname = \"caf\xe9\"\n", &[]);
    assert_eq!((ran.code, ran.result.as_str()), (3, ""));
    assert_eq!(ran.words, "-, line 2: bytes that are not UTF-8 where text was wanted; save the file as UTF-8\n");
}

#[test]
fn an_order_of_more_than_5_mb_is_exit_3() {
    for first in ["{", "schema_version = 1\n"] {
        let long = format!("{first}{}", " ".repeat(5_000_001));
        let ran = faceload_with(&["compare", "-"], long.as_bytes(), &[]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{first}");
        assert!(ran.words.contains("bytes where an order of at most 5 MB was wanted"), "{first}: {}", ran.words);
    }
}

#[test]
fn an_order_nested_too_deep_is_exit_3() {
    for deep in [format!("{{\"a\":{}", "[".repeat(100_000)), format!("a = {}", "[".repeat(100_000))] {
        let ran = faceload_with(&["compare", "-"], deep.as_bytes(), &[]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{}", ran.words);
    }
}

#[test]
fn piped_output_has_no_escape_codes_with_or_without_no_color() {
    for environment in [&[("NO_COLOR", "1")][..], &[("NO_COLOR", "")], &[("TERM", "xterm-256color"), ("CLICOLOR_FORCE", "1")]] {
        for words in [
            &["compare"][..],
            &["explain", "--alternative", "screen", "--indicator", "co2e"],
            &["--help"],
            &["compare", "tests/refused/quantity-zero.toml"],
            &["compare", "--weather"],
        ] {
            let ran = faceload_with(words, b"", environment);
            assert!(!ran.result.contains('\u{1b}') && !ran.words.contains('\u{1b}'), "{words:?} with {environment:?}");
        }
    }
}

#[test]
fn bold_changes_nothing_but_escape_codes() {
    let comparison = shop::compared(STOP);
    let draws = shop::draws(&comparison);
    let (plain, bold) = (terminal::comparison(&comparison, &draws, None, false), terminal::comparison(&comparison, &draws, None, true));
    assert!(!plain.contains('\u{1b}') && bold.contains("\u{1b}[1m"));
    assert_eq!(bold.replace("\u{1b}[1m", "").replace("\u{1b}[0m", ""), plain);
}

#[test]
fn a_reader_that_has_gone_away_is_no_fault() {
    use std::process::{Command, Stdio};
    let mut child = Command::new(env!("CARGO_BIN_EXE_faceload"))
        .arg("compare")
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    drop(child.stdout.take());
    let output = child.wait_with_output().expect("the program ends");
    assert_eq!((output.status.code(), output.stderr.as_slice()), (Some(0), &b""[..]));
}

#[test]
fn an_order_writes_no_escape_codes_to_the_terminal() {
    // A key, a value, a code, an alternative's id, a row's id: all from outside.
    let line = r#""code":"R1-1","size":"30 in","quantity":10"#;
    let red = r"\u001b[31m";
    for order in [
        format!(r#"{{"schema_version":1,"line":[{{{line},"{red}key":1}}]}}"#),
        format!(r#"{{"schema_version":1,"{red}":{{"a":1}},"line":[{{{line}}}]}}"#),
        format!(r#"{{"schema_version":1,"line":[{{"code":"{red}R1-1","size":"30 in","quantity":10}}]}}"#),
        format!(r#"{{"schema_version":1,"line":[{{"label":"{red}","code":"R1-1","size":"30 in","quantity":10}}]}}"#),
        format!(r#"{{"schema_version":1,"line":[{{"shape":"disc","size":"600 mm","quantity":10,"colours":{{"{red}":"5 %"}}}}]}}"#),
        format!(r#"{{"schema_version":1,"line":[{{{line}}}],"alternative":[{{"id":"{red}","route":"screen-printing"}}]}}"#),
        format!(
            r#"{{"schema_version":1,"line":[{{{line}}}],"alternative":[{{"id":"a","route":"screen-printing","with":{{"{red}":"1"}}}}]}}"#
        ),
        format!(r#"{{"schema_version":1,"name":"{red}","line":[{{{line}}}]}}"#),
    ] {
        let ran = faceload_with(&["compare", "-"], order.as_bytes(), &[]);
        assert_eq!((ran.code, ran.result.as_str()), (3, ""), "{order}");
        assert!(!ran.words.contains('\u{1b}'), "{order}: {:?}", ran.words);
    }
}
