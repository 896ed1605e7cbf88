//! Bytes of a file as text: UTF-8, UTF-16 with its mark, else Windows-1252, as older spreadsheets save.

use super::super::OrderFault;

/// How the bytes were taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Encoding {
    /// UTF-8.
    Utf8,
    /// UTF-16, which spreadsheets call Unicode text.
    Utf16,
    /// Windows-1252: no UTF-8, so the usual code page of the West.
    Windows1252,
}

/// What 0x80 to 0x9F stand for in Windows-1252; five of them for nothing.
const C1: [char; 32] = [
    '€', '\u{fffd}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{fffd}', 'Ž', '\u{fffd}', '\u{fffd}', '‘', '’', '“', '”',
    '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{fffd}', 'ž', 'Ÿ',
];

/// The longest file taken, in bytes.
const LONGEST: usize = 5_000_000;

/// The text of a file.
pub(super) fn read(file: &str, bytes: &[u8]) -> Result<(String, Encoding), OrderFault> {
    let refuse = |came: &str, wanted: &str, help: &str| {
        Err(OrderFault {
            file: file.to_owned(),
            line: None,
            field: String::new(),
            came: came.to_owned(),
            wanted: wanted.to_owned(),
            help: help.to_owned(),
        })
    };
    if bytes.len() > LONGEST {
        return refuse("more than 5 MB", "rows of at most 5 MB", "split them into several files");
    }
    if bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(&[0xd0, 0xcf, 0x11, 0xe0]) {
        return refuse("a spreadsheet program's own file", "rows as text (CSV)", "save the sheet as CSV, or copy its cells and paste them");
    }
    let (text, encoding) = match bytes {
        [0xff, 0xfe, rest @ ..] => (utf16(rest, u16::from_le_bytes), Encoding::Utf16),
        [0xfe, 0xff, rest @ ..] => (utf16(rest, u16::from_be_bytes), Encoding::Utf16),
        _ => match std::str::from_utf8(bytes) {
            Ok(text) => (text.trim_start_matches('\u{feff}').to_owned(), Encoding::Utf8),
            Err(_) => (bytes.iter().map(|byte| windows_1252(*byte)).collect(), Encoding::Windows1252),
        },
    };
    if text.contains('\0') {
        return refuse("bytes that are no text", "rows as text (CSV)", "save the sheet as CSV, or copy its cells and paste them");
    }
    // Lines of an old kind end in a carriage return alone.
    let text = if text.contains('\r') && !text.contains('\n') { text.replace('\r', "\n") } else { text };
    Ok((text, encoding))
}

fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> String {
    let units = bytes.chunks_exact(2).map(|pair| unit([pair[0], pair[1]]));
    char::decode_utf16(units).map(|c| c.unwrap_or(char::REPLACEMENT_CHARACTER)).collect()
}

fn windows_1252(byte: u8) -> char {
    match byte {
        0x80..=0x9f => C1[usize::from(byte - 0x80)],
        _ => char::from(byte),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_encoding_is_told_apart() {
        assert_eq!(read("f", "\u{feff}24″".as_bytes()).unwrap(), ("24″".to_owned(), Encoding::Utf8));
        assert_eq!(read("f", b"caf\xe9 24\x94").unwrap(), ("café 24”".to_owned(), Encoding::Windows1252));
        assert_eq!(read("f", b"\xff\xfeR\x001\x00").unwrap(), ("R1".to_owned(), Encoding::Utf16));
        assert_eq!(read("f", b"\xfe\xff\x00R\x001").unwrap(), ("R1".to_owned(), Encoding::Utf16));
        assert_eq!(read("f", b"a\rb").unwrap().0, "a\nb");
    }
}
